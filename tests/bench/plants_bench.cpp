#include "app/models/plant_model.h"
#include "app/models/plants_model.h"
#include "core/climate/place_climate.h"
#include "core/climate/station_table.h"
#include "core/home/demonstration.h"
#include "tests/bench/window_times.h"

#include <QGuiApplication>
#include <QQmlEngine>
#include <QQuickItem>
#include <QQuickView>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

namespace lathhouse {
namespace {

void scroll(FrameClock& clock, QQuickItem* list, double step, const char* what)
{
    std::vector<double> times;
    const double end = std::max(0.0, list->property("contentHeight").toDouble() - list->height());
    double at = 0.0;
    for (int frame = 0; end > 0.0 && frame < 300; ++frame) {
        at = std::clamp(at + step, 0.0, end);
        const double time = clock.frame_after([&] { list->setProperty("contentY", at); });
        if (time >= 0.0) {
            times.push_back(time);
        }
    }
    keep(what, times);
}

int measure(int plants)
{
    const calendar::Date today{2026, 5, 16};
    const auto table = climate::StationTable::find().and_then(
        [](const std::filesystem::path& file) { return climate::StationTable::load(file); });
    const auto shown = home::demonstration({.today = today, .plants = plants, .spots = std::max(8, plants / 25), .years = 0});
    if (!table || !shown) {
        std::fprintf(stderr, "plants_bench: no household\n");
        return 1;
    }
    auto climate = climate::climate_at(*table, shown->household.place.position, shown->household.place.elevation);
    if (!climate) {
        std::fprintf(stderr, "plants_bench: %s\n", climate.error().message.c_str());
        return 1;
    }
    const plan::HouseholdFacts facts{.as_told = shown->household,
                                     .log = {},
                                     .events = shown->history,
                                     .climate = std::move(climate).value()};
    models::PlantsModel model(models::plants_in_memory(std::make_shared<models::MemoryHousehold>(facts)),
                              {today, models::YearWords(models::Units::Metric)});
    models::PlantModel page(model);
    QQuickView view;
    view.engine()->addImportPath(QStringLiteral("qrc:/qt/qml"));
    view.setResizeMode(QQuickView::SizeRootObjectToView);
    view.setInitialProperties({{QStringLiteral("plants"), QVariant::fromValue(&model)},
                               {QStringLiteral("plant"), QVariant::fromValue(&page)},
                               {QStringLiteral("narrow"), false},
                               {QStringLiteral("wide"), false}});
    view.setSource(QUrl(QStringLiteral("qrc:/qt/qml/Lathhouse/Ui/PlantsPage.qml")));
    if (view.status() != QQuickView::Ready) {
        std::fprintf(stderr, "plants_bench: the page could not be made\n");
        return 1;
    }
    view.resize(1256, 744);
    view.show();
    QElapsedTimer since;
    since.start();
    model.start();
    wait_for([&] { return model.known(); }, "the plants");
    keep("plants_on_their_shelves", {milliseconds(since)});
    FrameClock clock(&view);
    QTest::qWait(200);
    auto* shelves = view.rootObject()->findChild<QQuickItem*>(QStringLiteral("shelves"));
    auto* rows = view.rootObject()->findChild<QQuickItem*>(QStringLiteral("plantTable"));
    scroll(clock, shelves, 40.0, "scroll_of_shelves");
    scroll(clock, shelves, 400.0, "fast_scroll_of_shelves");
    std::vector<double> steps;
    for (int at = 0; at < 200; ++at) {
        const double time = clock.frame_after([&] { model.setCurrent(at); });
        if (time >= 0.0) {
            steps.push_back(time);
        }
    }
    keep("arrow_step", steps);
    model.setByTable(true);
    QTest::qWait(200);
    scroll(clock, rows, 40.0, "scroll_of_table");
    scroll(clock, rows, 400.0, "fast_scroll_of_table");
    std::vector<double> sorts;
    for (int column = 0; column < 5; ++column) {
        sorts.push_back(clock.frame_after([&] { model.sortBy(column); }));
    }
    keep("sort", sorts);
    std::vector<double> finds;
    for (const char* word : {"l", "le", "lem", "lemo", ""}) {
        finds.push_back(clock.frame_after([&] { model.setFind(QString::fromLatin1(word)); }));
    }
    keep("letter_found", finds);
    wait_for([&] { return !model.working(); }, "the plan");
    keep("plan_with_state_words", {milliseconds(since)});
    return 0;
}

int tell_all(int argc, char** argv)
{
    return taken().tell_all(argc, argv);
}

} // namespace
} // namespace lathhouse

/// Times of the page Plants, drawn by software into memory: plants_bench [--plants N] [Google Benchmark's own]. Judges
/// nothing.
int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication application(argc, argv);
    int plants = 5000;
    for (int i = 1; i + 1 < argc; ++i) {
        if (std::string{argv[i]} == "--plants") {
            plants = std::clamp(std::atoi(argv[i + 1]), 1, 5000);
        }
    }
    const int failed = lathhouse::measure(plants);
    return failed != 0 ? failed : lathhouse::tell_all(argc, argv);
}
