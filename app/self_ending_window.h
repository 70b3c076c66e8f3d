#pragma once

#include "app/window.h"
#include "app/window_look.h"

#include <QStringList>

#include <cstddef>

class QQuickWindow;

namespace lathhouse {

namespace models {
class AskModel;
class ChangesModel;
class HomeDataModel;
class HomeModel;
class HomePeopleModel;
class HomeRecordModel;
class MendModel;
class PlantModel;
class PlantsModel;
class RoundModel;
class SeedsModel;
class TonightModel;
class YearModel;
} // namespace models

/// What the window shows, page by page.
struct WindowModels {
    models::YearModel& year;
    models::RoundModel& round;
    models::TonightModel& tonight;
    models::PlantsModel& plants;
    models::PlantModel& plant;
    models::SeedsModel& seeds;
    models::HomeModel& home;
    models::HomeDataModel& keeping;
    models::HomeRecordModel& record;
    models::HomePeopleModel& people;
    models::ChangesModel& changes;
    models::MendModel& mend;
    models::AskModel& ask;
};

/// Whether anything is still read, worked out or written.
bool is_working(const WindowModels& models);

/// While it lives, warnings of Qt are kept for the answer of a self-test rather than printed. One at a time.
class KeptMessages {
public:
    KeptMessages();
    ~KeptMessages();
    KeptMessages(const KeptMessages&) = delete;
    KeptMessages& operator=(const KeptMessages&) = delete;
};

/// Ends a window by itself once everything is read and drawn: with the picture that was asked for, or, for a self-test,
/// with one JSON line on standard output after every page, section and form was opened. The exit status is 1 where the
/// picture could not be written, where anything warned or has no name to be read aloud, and after a minute.
class SelfEndingWindow {
public:
    /// first_frame: milliseconds to it; negative before it.
    SelfEndingWindow(QQuickWindow& window, const WindowOptions& options, WindowModels models, const qint64& first_frame);

private:
    void look_at_texts();
    /// Opens what was not looked at yet; false where that is all.
    bool opens_next();
    bool is_done();
    void finish();
    void print_answer();

    QQuickWindow& window_;
    const WindowOptions& options_;
    WindowModels models_;
    const qint64& first_frame_;
    WindowLook seen_;
    QStringList pages_; ///< That were opened.
    std::size_t form_ = 0;
    bool compared_ = false;
    int quiet_ = 0; ///< Looks at which nothing was read any more.
    int status_ = 0;
};

} // namespace lathhouse
