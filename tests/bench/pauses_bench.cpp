// How long the window stands still at most while it works: with a household of 200,000 measurements from page to page, and
// with one of real photos while they come in, while a backup is written, while a record of 28 years is read.
// pauses_bench [Google Benchmark's own]. Judges nothing: the machine may be busy.

#include "app/cli/household_facts.h"
#include "app/cli/shipped_climate.h"
#include "app/models/home_data_model.h"
#include "app/models/kept_facts.h"
#include "app/models/home_journal_model.h"
#include "app/models/home_model.h"
#include "app/models/home_record_model.h"
#include "app/models/photo_import_model.h"
#include "app/models/plant_model.h"
#include "app/models/plants_model.h"
#include "app/models/round_model.h"
#include "app/models/seeds_model.h"
#include "app/models/tonight_model.h"
#include "app/models/year_door.h"
#include "app/models/year_model.h"
#include "app/self_ending_window.h"
#include "app/window.h"
#include "core/home/demonstration.h"
#include "core/journal/household_store.h"
#include "tests/bench/large_household.h"
#include "tests/bench/recorded_times.h"
#include "tests/photo/sample_photos.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTimer>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <string>
#include <vector>

#include <time.h>

namespace lathhouse {
namespace {

namespace fs = std::filesystem;

const calendar::Date kToday{2026, 5, 16};
constexpr int kPhotos = 60;
constexpr int kYearsOfRecord = 28;

/// Something that the window is told to do, and whether that is over.
struct Step {
    std::string name;
    std::function<void(const WindowModels&, QQuickWindow&)> begin;
    std::function<bool(const WindowModels&)> is_over;
};

/// Processor time of this thread, seconds: what a busy machine leaves nearly alone. Source: POSIX, clock_gettime.
double thread_seconds()
{
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) + 1e-9 * static_cast<double>(time.tv_nsec);
}

/// Beats once a millisecond while the window's thread is free: the longest time between two beats is how long nobody could
/// have done anything, and no frame came.
class Heart : public QObject {
public:
    Heart(RecordedTimes& taken, std::vector<Step> steps) : taken_(taken), steps_(std::move(steps))
    {
        connect(&beat_, &QTimer::timeout, this, [this] { beat(); });
        beat_.setTimerType(Qt::PreciseTimer);
    }
    /// To be called where the window is made.
    void start(QQuickWindow& window, const WindowModels& models)
    {
        window_ = &window;
        models_ = &models;
        since_beat_.start();
        since_step_.start();
        beat_.start(1);
    }

private:
    void beat()
    {
        longest_ = std::max(longest_, 1e-6 * static_cast<double>(since_beat_.nsecsElapsed()));
        busiest_ = std::max(busiest_, thread_seconds() - at_beat_);
        at_beat_ = thread_seconds();
        since_beat_.start();
        // What a step shows is drawn after it is over.
        constexpr int kRest = 400;
        const bool over = step_ < 0 || steps_[static_cast<std::size_t>(step_)].is_over(*models_);
        if (since_step_.elapsed() > 600'000) {
            std::fprintf(stderr, "pauses_bench: %s does not end\n", step_ < 0 ? "the start" : steps_[static_cast<std::size_t>(step_)].name.c_str());
            std::exit(1);
        }
        if (!over || is_working(*models_)) {
            resting_.invalidate();
            return;
        }
        if (!resting_.isValid()) {
            resting_.start();
        }
        if (resting_.elapsed() < kRest) {
            return;
        }
        resting_.invalidate();
        if (step_ >= 0) {
            const auto& name = steps_[static_cast<std::size_t>(step_)].name;
            taken_.add("longest_pause/" + name, 0.001 * longest_);
            taken_.tell("longest_pause/" + name, "processor_ms", 1000.0 * busiest_);
            taken_.tell("longest_pause/" + name, "whole_ms", static_cast<double>(since_step_.elapsed() - kRest));
        }
        ++step_;
        longest_ = 0.0;
        busiest_ = 0.0;
        at_beat_ = thread_seconds();
        since_step_.start();
        since_beat_.start();
        if (step_ == static_cast<int>(steps_.size())) {
            QGuiApplication::exit(0);
            beat_.stop();
            return;
        }
        steps_[static_cast<std::size_t>(step_)].begin(*models_, *window_);
    }

    RecordedTimes& taken_;
    std::vector<Step> steps_;
    QQuickWindow* window_ = nullptr;
    const WindowModels* models_ = nullptr;
    QTimer beat_;
    QElapsedTimer since_beat_;
    QElapsedTimer since_step_;
    QElapsedTimer resting_;
    double longest_ = 0.0; ///< Milliseconds.
    double busiest_ = 0.0; ///< Seconds.
    double at_beat_ = 0.0;
    int step_ = -1;
};

[[noreturn]] void end_by(const Error& error)
{
    std::fprintf(stderr, "pauses_bench: %s\n", error.message.c_str());
    std::exit(1);
}

/// The window of a household in a folder, through the steps.
void go_through(RecordedTimes& taken, const fs::path& folder, std::vector<Step> steps)
{
    const cli::Globals globals{.home = folder, .home_given = true, .today = kToday};
    const auto load = models::kept_facts(folder, [globals] { return cli::household_facts(globals); });
    const models::ShownUnits units{models::Units::Metric};
    auto year = models::year_in_folder(folder, load, kToday, units);
    auto shown = year.load();
    if (!shown) {
        end_by(shown.error());
    }
    Heart heart(taken, std::move(steps));
    WindowOptions options{.year = std::move(shown->year),
                          .solver = std::move(shown->solver),
                          .year_door = std::move(year),
                          .round = models::round_in_folder(folder, load),
                          .door = models::door_to_folder(folder, load),
                          .plants = models::plants_in_folder(folder, load),
                          .mend = models::mend_in_folder(folder, load, {}),
                          .turn = {},
                          .record = models::record_in_folder(folder, cli::shipped_climate),
                          .units = units,
                          .folder = folder,
                          .keeps_settings = false,
                          .made = [&heart](QQuickWindow& window, const WindowModels& of) { heart.start(window, of); }};
    int none = 1;
    char name[] = "pauses_bench";
    char* words[] = {name, nullptr};
    if (run_window(none, words, std::move(options)) != 0) {
        std::fprintf(stderr, "pauses_bench: the window ended badly\n");
        std::exit(1);
    }
}

std::function<void(const WindowModels&, QQuickWindow&)> page(const char* name)
{
    return [name](const WindowModels&, QQuickWindow& window) { window.setProperty("page", QString::fromLatin1(name)); };
}

bool at_once(const WindowModels&)
{
    return true;
}

std::vector<Step> from_page_to_page()
{
    std::vector<Step> steps;
    for (const char* name : {"round", "plants", "seeds", "home", "year"}) {
        steps.push_back({std::string{"opens "} + name, page(name), at_once});
    }
    steps.push_back({"opens a plant",
                     [](const WindowModels& of, QQuickWindow& window) {
                         page("plants")(of, window);
                         of.plants.openId(1);
                     },
                     at_once});
    steps.push_back({"opens the journal",
                     [](const WindowModels& of, QQuickWindow& window) {
                         page("home")(of, window);
                         const auto& sections = home_sections();
                         of.home.setSection(static_cast<int>(std::ranges::find(sections, "journal") - sections.begin()));
                     },
                     at_once});
    steps.push_back({"finds in the journal",
                     [](const WindowModels& of, QQuickWindow&) { of.home.journal()->setProperty("find", QStringLiteral("fed")); },
                     at_once});
    steps.push_back({"writes and reads all anew",
                     [](const WindowModels& of, QQuickWindow& window) {
                         page("plants")(of, window);
                         of.plants.close();
                         of.plants.mark(0);
                         of.plants.log(0, QString{}, 0, QString{});
                     },
                     at_once});
    return steps;
}

/// Photos of twelve megapixels, no two alike.
QList<QUrl> photos_in(const fs::path& folder)
{
    fs::create_directories(folder);
    QList<QUrl> files;
    for (int i = 0; i < kPhotos; ++i) {
        auto exif = photo::sample_exif();
        *exif.taken += std::chrono::minutes{i};
        const auto file = folder / ("p" + std::to_string(100 + i) + ".jpg");
        photo::write_bytes(file, photo::jpeg_with(photo::drawn_plant(4000, 3000, static_cast<unsigned>(i % 10) + 1), exif));
        files.append(QUrl::fromLocalFile(QString::fromStdString(file.string())));
    }
    return files;
}

fs::path record_in(const fs::path& folder)
{
    const auto file = folder / "record.csv";
    std::ofstream record(file);
    record << "date,low,high,rain\n";
    for (calendar::Date day{2026 - kYearsOfRecord, 1, 1}; day < calendar::Date{2026, 1, 1}; day = day + calendar::Days{1}) {
        const double warmth = 9.0 - 10.0 * std::cos(0.0172 * (calendar::ordinal_of_year(day) - 15)) + static_cast<double>((calendar::ordinal_of_year(day) * 37) % 11) - 5.0;
        record << calendar::to_text(day) << ',' << warmth - 5.0 << ',' << warmth + 5.0 << ",1.0\n";
    }
    return file;
}

std::vector<Step> long_works(const fs::path& root)
{
    const auto text = [](const fs::path& path) { return QString::fromStdString(path.string()); };
    const auto photos = photos_in(root / "in");
    const auto record = record_in(root);
    return {{"opens plants, of photos",
             [](const WindowModels& of, QQuickWindow& window) {
                 of.plants.openId(1); // As the year does.
                 page("plants")(of, window);
             },
             at_once},
            {"photos come in",
             [photos](const WindowModels& of, QQuickWindow&) { of.plant.coming()->add(photos, 1); },
             [](const WindowModels& of) { return of.plant.coming()->total() == kPhotos; }},
            {"opens data",
             [](const WindowModels& of, QQuickWindow& window) {
                 page("home")(of, window);
                 of.home.setSection(static_cast<int>(std::ranges::find(home_sections(), "data") - home_sections().begin()));
             },
             at_once},
            {"writes a backup",
             [file = text(root / "kept.zip")](const WindowModels& of, QQuickWindow&) {
                 of.keeping.setLeaves(models::HomeDataModel::BackUp, true);
                 of.keeping.backUp(file);
             },
             at_once},
            {"restores a backup",
             [file = text(root / "kept.zip"), to = text(root / "again")](const WindowModels& of, QQuickWindow&) {
                 of.keeping.restore(file, to);
             },
             at_once},
            {"checks the household", [](const WindowModels& of, QQuickWindow&) { of.keeping.check(); }, at_once},
            {"reads a record of 28 years",
             [file = text(record)](const WindowModels& of, QQuickWindow&) {
                 of.home.setSection(static_cast<int>(std::ranges::find(home_sections(), "record") - home_sections().begin()));
                 of.record.take(file, 0, {}, {}, {}, true);
             },
             [](const WindowModels& of) { return of.record.isThere(); }},
            {"shows the year of that record", page("year"), at_once}};
}

void make_household(const fs::path& folder)
{
    const auto made = home::demonstration({.today = kToday, .plants = 60, .spots = 20});
    if (!made) {
        end_by(made.error());
    }
    const auto store = journal::HouseholdStore::create(folder, made->household, made->history);
    if (!store) {
        end_by(store.error());
    }
}

} // namespace
} // namespace lathhouse

int main(int argc, char** argv)
{
    using namespace lathhouse;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication application(argc, argv);
    RecordedTimes taken;
    {
        const LargeHousehold large(200'000, kToday);
        go_through(taken, large.folder(), from_page_to_page());
    }
    const QTemporaryDir root;
    const fs::path folder = root.path().toStdString();
    make_household(folder / "home");
    go_through(taken, folder / "home", long_works(folder));
    return taken.tell_all(argc, argv);
}
