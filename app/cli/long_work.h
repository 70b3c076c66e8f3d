#pragma once

#include "core/base/progress.h"

#include <cstdint>
#include <string>

namespace lathhouse::cli {

/// While this lives, Ctrl-C and a polite request to end stop the work in hand rather than the program, so that it can
/// clear away what it had begun; a file that may not grow becomes an error of writing. Where standard error is a
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

private:
    void show(std::uint64_t done, std::uint64_t whole);

    std::string what_;
    bool terminal_;
    int shown_percent_ = -1;
};

} // namespace lathhouse::cli
