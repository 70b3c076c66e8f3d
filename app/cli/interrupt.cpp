#include "app/cli/photo_options.h"

#include <csignal>
#include <iostream>

#include <unistd.h>

namespace lathhouse::cli {
namespace {

std::atomic<bool> interrupted = false;
static_assert(std::atomic<bool>::is_always_lock_free, "a signal's handler may touch nothing else");

void set_interrupted(int)
{
    interrupted = true;
}

} // namespace

Interrupt::Interrupt()
{
    interrupted = false;
    before_ = std::signal(SIGINT, set_interrupted);
}

Interrupt::~Interrupt()
{
    std::signal(SIGINT, before_);
}

const std::atomic<bool>& Interrupt::flag()
{
    return interrupted;
}

void show_progress(std::size_t done, std::size_t total, const char* things)
{
    if (isatty(STDERR_FILENO) != 0) {
        std::cerr << '\r' << done << " of " << total << ' ' << things << (done == total ? "\n" : "") << std::flush;
    }
}

} // namespace lathhouse::cli
