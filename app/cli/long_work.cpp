#include "app/cli/long_work.h"

#include <array>
#include <csignal>
#include <cstdio>
#include <utility>

#include <unistd.h>

namespace lathhouse::cli {
namespace {

std::atomic<bool> asked_to_stop = false;
static_assert(std::atomic<bool>::is_always_lock_free, "a signal's handler may touch nothing else");

void on_signal(int)
{
    asked_to_stop = true;
}

constexpr std::array kStopping{SIGINT, SIGTERM, SIGHUP};

std::array<struct sigaction, kStopping.size() + 1>& former()
{
    static std::array<struct sigaction, kStopping.size() + 1> actions{};
    return actions;
}

} // namespace

LongWork::LongWork(std::string what) : what_(std::move(what)), terminal_(isatty(STDERR_FILENO) == 1)
{
    asked_to_stop = false;
    struct sigaction stop {};
    stop.sa_handler = &on_signal;
    sigemptyset(&stop.sa_mask);
    stop.sa_flags = SA_RESTART;
    for (std::size_t index = 0; index < kStopping.size(); ++index) {
        sigaction(kStopping[index], &stop, &former()[index]);
        if (former()[index].sa_handler == SIG_IGN) { // As nohup has it, and a shell for what it sets going beside itself.
            sigaction(kStopping[index], &former()[index], nullptr);
        }
    }
    struct sigaction ignored {};
    ignored.sa_handler = SIG_IGN;
    sigaction(SIGXFSZ, &ignored, &former().back());
}

LongWork::~LongWork()
{
    for (std::size_t index = 0; index < kStopping.size(); ++index) {
        sigaction(kStopping[index], &former()[index], nullptr);
    }
    sigaction(SIGXFSZ, &former().back(), nullptr);
    if (shown_percent_ >= 0) {
        std::fputs("\r\x1B[K", stderr);
        std::fflush(stderr);
    }
}

const std::atomic<bool>& LongWork::stop_asked()
{
    return asked_to_stop;
}

void LongWork::count(std::size_t done, std::size_t whole)
{
    if (terminal_) {
        show(done, whole);
    }
}

Progress LongWork::progress()
{
    return [this](std::uint64_t done, std::uint64_t whole) {
        if (terminal_) {
            show(done, whole);
        }
        return asked_to_stop ? GoOn::No : GoOn::Yes;
    };
}

void LongWork::show(std::uint64_t done, std::uint64_t whole)
{
    const double share = whole == 0 ? 1.0 : static_cast<double>(done) / static_cast<double>(whole);
    const int percent = share >= 1.0 ? 100 : static_cast<int>(share * 100.0);
    if (percent != shown_percent_) {
        shown_percent_ = percent;
        std::fprintf(stderr, "\r%s %d %% (Ctrl-C stops)\x1B[K", what_.c_str(), percent);
        std::fflush(stderr);
    }
}

} // namespace lathhouse::cli
