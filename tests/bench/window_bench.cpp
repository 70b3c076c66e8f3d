#include "app/models/changes_model.h"
#include "app/models/home_model.h"
#include "app/models/plant_model.h"
#include "app/models/plants_model.h"
#include "app/models/round_model.h"
#include "app/models/seeds_model.h"
#include "app/models/tonight_model.h"
#include "app/models/year_model.h"
#include "tests/bench/window_times.h"
#include "tests/window/demonstration_year.h"

#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQuickItem>
#include <QQuickWindow>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <memory>
#include <string>
#include <vector>

namespace lathhouse {
namespace {

/// Keeps times of a household.
void keep(const char* household, const char* what, const std::vector<double>& times)
{
    lathhouse::keep(std::string{what} + "/" + household, times);
}

struct Opened {
    std::unique_ptr<models::YearModel> model;
    std::unique_ptr<models::RoundModel> round;
    std::unique_ptr<models::TonightModel> tonight;
    std::unique_ptr<models::PlantsModel> plants;
    std::unique_ptr<models::PlantModel> plant;
    std::unique_ptr<models::SeedsModel> seeds;
    std::unique_ptr<models::HomeModel> home;
    std::unique_ptr<models::ChangesModel> changes;
    std::unique_ptr<QQmlApplicationEngine> engine;
    QQuickWindow* window = nullptr;
    double first_frame = 0.0;
};

/// From the household's data to the first frame; what the plan takes comes after.
Opened open(const home::DemonstrationOptions& options, const char* name)
{
    Opened opened;
    QElapsedTimer since;
    since.start();
    auto shown = models::demonstration_year(options);
    if (!shown) {
        std::fprintf(stderr, "window_bench: %s\n", shown.error().message.c_str());
        std::exit(1);
    }
    const double data = milliseconds(since);
    opened.model = std::make_unique<models::YearModel>(
        std::move(shown->year), std::move(shown->solver),
        models::YearWords(models::Units::Metric, QLocale(QLocale::English, QLocale::UnitedKingdom)));
    // The other pages are read only when they are opened; here they are not.
    opened.round = std::make_unique<models::RoundModel>(
        models::no_round({ErrorCode::NotFound, "the round is not measured here"}),
        models::TodayLook{models::shown_today(), models::YearWords(models::Units::Metric)});
    const Error unread{ErrorCode::NotFound, "this page is not measured here"};
    const models::TodayLook look{models::shown_today(), models::YearWords(models::Units::Metric)};
    opened.tonight = std::make_unique<models::TonightModel>(models::no_door(unread), look);
    opened.plants = std::make_unique<models::PlantsModel>(models::no_plants(unread), look);
    opened.plant = std::make_unique<models::PlantModel>(*opened.plants);
    opened.seeds = std::make_unique<models::SeedsModel>(models::no_door(unread), look);
    opened.home = std::make_unique<models::HomeModel>(models::no_door(unread), look);
    opened.changes = std::make_unique<models::ChangesModel>(models::TurnLast{});
    opened.engine = std::make_unique<QQmlApplicationEngine>();
    opened.engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    opened.engine->setInitialProperties({{QStringLiteral("year"), QVariant::fromValue(opened.model.get())},
                                         {QStringLiteral("round"), QVariant::fromValue(opened.round.get())},
                                         {QStringLiteral("tonight"), QVariant::fromValue(opened.tonight.get())},
                                         {QStringLiteral("plants"), QVariant::fromValue(opened.plants.get())},
                                         {QStringLiteral("plant"), QVariant::fromValue(opened.plant.get())},
                                         {QStringLiteral("seeds"), QVariant::fromValue(opened.seeds.get())},
                                         {QStringLiteral("home"), QVariant::fromValue(opened.home.get())},
                                         {QStringLiteral("changes"), QVariant::fromValue(opened.changes.get())},
                                         {QStringLiteral("scheme"), QStringLiteral("light")}});
    opened.engine->load(QUrl(QStringLiteral("qrc:/qt/qml/Lathhouse/Ui/Main.qml")));
    if (opened.engine->rootObjects().isEmpty()) {
        std::fprintf(stderr, "window_bench: the window could not be made\n");
        std::exit(1);
    }
    opened.window = qobject_cast<QQuickWindow*>(opened.engine->rootObjects().first());
    bool drawn = false;
    QObject::connect(opened.window, &QQuickWindow::frameSwapped, opened.window, [&drawn] { drawn = true; });
    wait_for([&drawn] { return drawn; }, "the first frame");
    opened.first_frame = milliseconds(since);
    keep(name, "data_of_the_year", {data});
    keep(name, "first_frame", {opened.first_frame});
    opened.window->disconnect();
    wait_for([&opened] { return !opened.model->planning(); }, "the first plan");
    keep(name, "first_plan", {milliseconds(since) - opened.first_frame});
    return opened;
}

void measure(const home::DemonstrationOptions& options, const char* name)
{
    const Opened opened = open(options, name);
    models::YearModel& model = *opened.model;
    FrameClock clock(opened.window);

    constexpr int kSlides = 24;
    constexpr int kStops[] = {3, 4, 1, 0, 2};
    std::vector<double> dates;
    std::vector<double> solved;
    std::vector<double> known;
    std::vector<double> settled;
    std::vector<double> moving;
    for (int slide = 0; slide < kSlides; ++slide) {
        QElapsedTimer since;
        since.start();
        const int before = clock.frames();
        model.setRiskStop(kStops[slide % 5]);
        const bool was_known = !model.planning();
        wait_for([&] { return clock.frames() > before; }, "a frame");
        dates.push_back(milliseconds(since));
        double on_screen = dates.back(); // A plan that was known stands in the same frame.
        if (was_known) {
            known.push_back(on_screen);
        } else {
            wait_for([&] { return !model.planning(); }, "a plan");
            const int planned = clock.frames();
            wait_for([&] { return clock.frames() > planned; }, "a frame");
            on_screen = milliseconds(since);
            solved.push_back(on_screen);
        }
        // The bars are on their way for 200 ms; after as long without a frame they stand.
        int frames = clock.frames();
        QElapsedTimer between;
        between.start();
        double last = on_screen;
        while (between.elapsed() < 120) {
            QCoreApplication::processEvents(QEventLoop::AllEvents, 5);
            if (clock.frames() > frames) {
                frames = clock.frames();
                moving.push_back(milliseconds(between));
                last = milliseconds(since);
                between.restart();
            }
        }
        settled.push_back(last);
    }
    keep(name, "slider_to_dates", dates);
    keep(name, "slider_to_known_plan", known);
    keep(name, "slider_to_solved_plan", solved);
    keep(name, "slider_to_bars_at_rest", settled);
    keep(name, "between_moving_frames", moving);

    std::vector<double> steps;
    for (int day = 1; day < model.dayCount(); ++day) {
        const double time = clock.frame_after([&] { model.setCursorDay(day); });
        if (time >= 0.0) {
            steps.push_back(time);
        }
    }
    keep(name, "cursor_step", steps);

    auto* list = opened.window->findChild<QQuickItem*>(QStringLiteral("plantRows"));
    std::vector<double> scrolls;
    const double end = std::max(0.0, list->property("contentHeight").toDouble() - list->height());
    double at = 0.0;
    double step = 12.0;
    for (int frame = 0; end > 0.0 && frame < 200; ++frame) {
        if (at + step > end || at + step < 0.0) {
            step = -step;
        }
        at = std::clamp(at + step, 0.0, end);
        const double time = clock.frame_after([&] { list->setProperty("contentY", at); });
        if (time >= 0.0) {
            scrolls.push_back(time);
        }
    }
    keep(name, "scroll_of_rows", scrolls);
}

} // namespace
} // namespace lathhouse

/// Times of the window, drawn by software into memory. Judges nothing: the machine may be busy.
int main(int argc, char** argv)
{
    using namespace lathhouse;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication application(argc, argv);
    measure({.today = models::shown_today()}, "demonstration");
    measure({.today = models::shown_today(), .plants = 60, .spots = 20}, "60_plants");
    return taken().tell_all(argc, argv);
}
