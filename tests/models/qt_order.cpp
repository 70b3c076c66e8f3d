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
    static void act(int asked, QSlotObjectBase* base, QObject* receiver, void** arguments, bool*)
    {
        auto* const self = static_cast<OrderedCall*>(base);
        __tsan_acquire(self->inner_);
        if (asked == Call) {
            self->inner_->call(receiver, arguments);
        } else if (asked == Destroy) {
            self->inner_->destroyIfLastRef();
            delete self;
        }
    }

    QtPrivate::QSlotObjectBase* inner_;
};

} // namespace

bool invoked_in_order(QObject* of, QtPrivate::QSlotObjectBase* what, Qt::ConnectionType how, void* result)
{
    return invoked_by_qt(of, new OrderedCall{what}, how, result);
}

void started_in_order(QThreadPool* pool, std::function<void()> job, int priority)
{
    __tsan_release(pool);
    started_by_qt(
        pool,
        [pool, job = std::move(job)]() mutable {
            __tsan_acquire(pool);
            job();
            job = {}; // What it holds is given back in the thread, as Qt does, before whoever waits goes on.
            __tsan_release(pool);
        },
        priority);
}

bool awaited_in_order(QThreadPool* pool, int milliseconds)
{
    const bool done = awaited_by_qt(pool, milliseconds);
    __tsan_acquire(pool);
    return done;
}
