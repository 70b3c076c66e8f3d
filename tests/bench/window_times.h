#pragma once

#include "tests/bench/recorded_times.h"

#include <QElapsedTimer>
#include <QQuickWindow>
#include <QTest>

#include <functional>
#include <string>
#include <vector>

namespace lathhouse {

/// What does not come within ten minutes ends the program: there would be nothing to measure.
inline void wait_for(const std::function<bool()>& event, const char* name)
{
    if (!QTest::qWaitFor(event, 600'000)) {
        std::fprintf(stderr, "%s did not come\n", name);
        std::exit(1);
    }
}

inline double milliseconds(const QElapsedTimer& since)
{
    return static_cast<double>(since.nsecsElapsed()) / 1e6;
}

/// All that this program measured.
inline RecordedTimes& taken()
{
    static RecordedTimes all;
    return all;
}

/// Keeps times in milliseconds under that name.
inline void keep(const std::string& name, const std::vector<double>& times)
{
    for (const double time : times) {
        taken().add(name, time / 1000.0);
    }
}

/// The time that drawing takes: from the window's request for a frame to the frame.
class FrameClock : public QObject {
public:
    explicit FrameClock(QQuickWindow* window) : window_(window)
    {
        window->installEventFilter(this);
        connect(window, &QQuickWindow::frameSwapped, this, [this] {
            if (begun_) {
                last_ = milliseconds(clock_);
                begun_ = false;
            }
            ++frames_;
        });
    }
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (watched == window_ && event->type() == QEvent::UpdateRequest) {
            clock_.start();
            begun_ = true;
        }
        return false;
    }
    /// Runs `change` and the frame that shows it; milliseconds of both, without the wait between them. Negative
    /// where nothing was to be drawn.
    double frame_after(const std::function<void()>& change)
    {
        const int before = frames_;
        QElapsedTimer changing;
        changing.start();
        change();
        const double changed = milliseconds(changing);
        if (!QTest::qWaitFor([this, before] { return frames_ > before; }, 2000)) {
            return -1.0;
        }
        return changed + last_;
    }
    int frames() const { return frames_; }

private:
    QQuickWindow* window_;
    QElapsedTimer clock_;
    bool begun_ = false;
    double last_ = 0.0;
    int frames_ = 0;
};

} // namespace lathhouse
