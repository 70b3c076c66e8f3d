#include <QMetaObject>
#include <QThreadPool>

#include <sanitizer/tsan_interface.h>

#include <functional>
#include <utility>

// What the thread sanitizer cannot see for itself. It watches our code; Qt's library is compiled without it, and the locks
// in which Qt hands a job to a thread, and its result back to the window, are Qt's own. Unseen, every hand-over looks
// like a race, and a suppression for them would hide the real ones too. So the linker turns the few calls by which our
// code hands over (`--wrap`) to here, where the order that Qt promises is told to the sanitizer and nothing else is done:
// - QThreadPool: what was written before `start` is seen by the job, what a job wrote by the next one and by whoever waited
//   for the pool. (The pools of the models have one thread each; in a larger one jobs do not see each other.)
// - QMetaObject::invokeMethod: what was written before a call is seen by what is called.

// The names are the linker's for the functions of Qt.
bool invoked_by_qt(QObject* of, QtPrivate::QSlotObjectBase* what, Qt::ConnectionType how, void* result)
    asm("__real__ZN11QMetaObject16invokeMethodImplEP7QObjectPN9QtPrivate15QSlotObjectBaseEN2Qt14ConnectionTypeEPv");
bool invoked_in_order(QObject* of, QtPrivate::QSlotObjectBase* what, Qt::ConnectionType how, void* result)
    asm("__wrap__ZN11QMetaObject16invokeMethodImplEP7QObjectPN9QtPrivate15QSlotObjectBaseEN2Qt14ConnectionTypeEPv");
void started_by_qt(QThreadPool* pool, std::function<void()> job, int priority)
    asm("__real__ZN11QThreadPool5startESt8functionIFvvEEi");
void started_in_order(QThreadPool* pool, std::function<void()> job, int priority)
    asm("__wrap__ZN11QThreadPool5startESt8functionIFvvEEi");
bool awaited_by_qt(QThreadPool* pool, int milliseconds) asm("__real__ZN11QThreadPool11waitForDoneEi");
bool awaited_in_order(QThreadPool* pool, int milliseconds) asm("__wrap__ZN11QThreadPool11waitForDoneEi");

namespace {

/// Calls and destroys another one, in order behind whatever was done before this one was made.
class OrderedCall : public QtPrivate::QSlotObjectBase {
public:
    explicit OrderedCall(QtPrivate::QSlotObjectBase* inner) : QSlotObjectBase(&OrderedCall::act), inner_(inner)
    {
        __tsan_release(inner_);
    }

private:
    // Its own members are read before the order is known, so that one is not watched.
    __attribute__((no_sanitize("thread"))) static void act(int asked, QSlotObjectBase* base, QObject* receiver, void** arguments, bool*)
    {
        auto* const self = static_cast<OrderedCall*>(base);
        auto* const inner = self->inner_;
        __tsan_acquire(inner);
        if (asked == Call) {
            inner->call(receiver, arguments);
            __tsan_release(inner); // Whoever lets go of it last destroys it, in whichever thread.
        } else if (asked == Destroy) {
            inner->destroyIfLastRef();
            delete self;
        }
    }

    QtPrivate::QSlotObjectBase* inner_;
};

/// Runs a job of a pool in order behind what was done before it was started, and behind the job before it.
class OrderedJob {
public:
    OrderedJob(QThreadPool* pool, std::function<void()> job) : pool_(pool), job_(std::move(job)) {}

    // As above.
    __attribute__((no_sanitize("thread"))) void operator()()
    {
        __tsan_acquire(pool_);
        run();
    }

private:
    __attribute__((noinline)) void run()
    {
        job_();
        job_ = {}; // What it holds is given back in the thread, as Qt does, before whoever waits goes on.
        __tsan_release(pool_);
    }

    QThreadPool* pool_;
    std::function<void()> job_;
};

} // namespace

bool invoked_in_order(QObject* of, QtPrivate::QSlotObjectBase* what, Qt::ConnectionType how, void* result)
{
    return invoked_by_qt(of, new OrderedCall{what}, how, result);
}

void started_in_order(QThreadPool* pool, std::function<void()> job, int priority)
{
    // Made before the release, so that what is written in making it is seen as well.
    std::function<void()> ordered = OrderedJob{pool, std::move(job)};
    __tsan_release(pool);
    started_by_qt(pool, std::move(ordered), priority);
}

bool awaited_in_order(QThreadPool* pool, int milliseconds)
{
    const bool done = awaited_by_qt(pool, milliseconds);
    __tsan_acquire(pool);
    return done;
}
