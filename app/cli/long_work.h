#pragma once

#include "core/base/progress.h"

#include <atomic>
#include <cstddef>
#include <cstdint>
#include <string>

namespace lathhouse::cli {

/// While this lives, Ctrl-C and a polite request to end stop the work in hand rather than the program, so that it can
/// clear away what it had begun; what whoever started the program had it ignore stays ignored. A file that may not grow
/// becomes an error of writing. Where standard error is a
/// terminal it shows there how far the work has come, on a line that is gone afterwards.
class LongWork {
public:
    /// what: as in "Backing up".
    explicit LongWork(std::string what);
    LongWork(const LongWork&) = delete;
    LongWork& operator=(const LongWork&) = delete;
    ~LongWork();

    /// To be handed to the work; refers to this.
    Progress progress();
    /// The same in two pieces, for work that takes them so.
    void count(std::size_t done, std::size_t whole);
    static const std::atomic<bool>& stop_asked();

private:
    void show(std::uint64_t done, std::uint64_t whole);

    std::string what_;
    bool terminal_;
    int shown_percent_ = -1;
};

} // namespace lathhouse::cli
