#pragma once

#include "core/base/progress.h"

#include <atomic>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <vector>

namespace lathhouse::models {

/// How far long work has come, told by its thread and read by the window's; and the word to stop.
class LongWay {
public:
    /// To be handed to the work; holds this.
    static Progress progress_of(const std::shared_ptr<LongWay>& way);

    void stop() { stopped_ = true; }
    bool stopped() const { return stopped_; }
    std::uint64_t done() const { return done_; }
    std::uint64_t whole() const { return whole_; }
    /// 0..1.
    double share() const;
    /// Where each photo ends among the bytes of the work; told before the work begins.
    void set_photo_ends(std::vector<std::uint64_t> ends);
    bool counts_photos() const { return counts_photos_; }
    std::size_t photos() const { return photo_ends_.size(); }
    /// Photos behind that many bytes.
    std::size_t photos_within(std::uint64_t bytes) const;

private:
    std::atomic<std::uint64_t> done_ = 0;
    std::atomic<std::uint64_t> whole_ = 0;
    std::atomic<bool> stopped_ = false;
    std::atomic<bool> counts_photos_ = false;
    std::vector<std::uint64_t> photo_ends_; ///< Not touched once counts_photos_ is set.
};

/// Ends of the files below `photos/` of a household, in the order of their paths, the first one after `before` bytes.
/// Empty where the folder cannot be read.
std::vector<std::uint64_t> photo_ends(const std::filesystem::path& folder, std::uint64_t before);

} // namespace lathhouse::models
