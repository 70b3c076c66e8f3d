#pragma once

#include <sys/resource.h>
#include <sys/syscall.h>
#include <unistd.h>

namespace lathhouse::models {

/// To be called first in what a thread of a pool does: where there is more to do than there are processors, the window's own
/// thread comes first from then on. Each page reads in a thread of its own, and after a change all of them at once.
/// Where the system refuses, nothing changes. Source: setpriority(2); Linux keeps the figure by thread.
inline void stay_behind_window()
{
    constexpr int kNicer = 10; // A tenth of the share of a thread that asks for nothing (sched(7)).
    setpriority(PRIO_PROCESS, static_cast<id_t>(syscall(SYS_gettid)), kNicer);
}

} // namespace lathhouse::models
