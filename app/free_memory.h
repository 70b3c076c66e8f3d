#pragma once

#include <QObject>
#include <QTimer>

class QQuickWindow;

namespace lathhouse {

/// What the C library keeps of memory that is free: it is bounded from the program's start on, and given back to the system
/// while nothing is drawn. Elsewhere than with glibc these do nothing.

/// To be called before any thread is begun. Large blocks go back as soon as they are free: by itself glibc raises what it takes for
/// large with the first picture that is freed, and keeps the room of all others up to that size (mallopt(3), M_MMAP_THRESHOLD). Threads
/// share four arenas: with one each, what a page's reading leaves free is of no use to the next (mallopt(3), M_ARENA_MAX).
void bound_free_memory();
/// Gives back what is free now; takes some milliseconds.
void give_back_free_memory();

/// Gives free memory back once a window has drawn nothing for two seconds, while it lives.
class FreeMemoryWatch : public QObject {
public:
    explicit FreeMemoryWatch(QQuickWindow& window);

private:
    QTimer still_;
};

} // namespace lathhouse
