#include "app/free_memory.h"

#include <QQuickWindow>

#include <chrono>

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace lathhouse {

void bound_free_memory()
{
#ifdef __GLIBC__
    constexpr int kLarge = 512 * 1024;
    constexpr int kArenas = 4;
    mallopt(M_MMAP_THRESHOLD, kLarge);
    mallopt(M_TRIM_THRESHOLD, kLarge);
    mallopt(M_ARENA_MAX, kArenas);
#endif
}

void give_back_free_memory()
{
#ifdef __GLIBC__
    malloc_trim(0);
#endif
}

FreeMemoryWatch::FreeMemoryWatch(QQuickWindow& window)
{
    using std::chrono_literals::operator""s;
    still_.setSingleShot(true);
    still_.setInterval(2s);
    connect(&still_, &QTimer::timeout, &still_, &give_back_free_memory);
    connect(&window, &QQuickWindow::frameSwapped, &still_, qOverload<>(&QTimer::start), Qt::QueuedConnection);
}

} // namespace lathhouse
