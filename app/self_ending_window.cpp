#include "app/self_ending_window.h"

#include "app/free_memory.h"
#include "app/models/ask_model.h"
#include "app/models/changes_model.h"
#include "app/models/home_data_model.h"
#include "app/models/home_model.h"
#include "app/models/home_people_model.h"
#include "app/models/home_record_model.h"
#include "app/models/mend_model.h"
#include "app/models/plant_model.h"
#include "app/models/plants_model.h"
#include "app/models/round_model.h"
#include "app/models/seeds_model.h"
#include "app/models/tonight_model.h"
#include "app/models/year_model.h"

#include <QGuiApplication>
#include <QQuickItem>
#include <QQuickWindow>
#include <QTimer>

#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <fstream>
#include <functional>
#include <iostream>
#include <mutex>
#include <string>

#include <unistd.h>

namespace lathhouse {

namespace {

/// Messages of Qt while the window is tested. Qt calls the handler without a place for our data.
struct Messages {
    std::mutex guard;
    QStringList warnings;
};

Messages& messages()
{
    static Messages kept;
    return kept;
}

void keep_message(QtMsgType type, const QMessageLogContext&, const QString& message)
{
    if (type == QtDebugMsg || type == QtInfoMsg) {
        return;
    }
    const std::lock_guard lock(messages().guard);
    messages().warnings.append(message);
}

/// Megabytes of memory held now; 0 where the system does not tell.
long resident_megabytes()
{
    std::ifstream statm("/proc/self/statm");
    long total = 0;
    long resident = 0;
    if (!(statm >> total >> resident)) {
        return 0;
    }
    return resident * sysconf(_SC_PAGESIZE) / (1024 * 1024);
}

/// What is open, in a word for the name of its picture.
QString name_of_view(const QString& page, bool keys, models::MendModel& mend, const models::AskModel& ask,
                     const models::PlantsModel& plants, models::PlantModel& plant, const models::HomeModel& home)
{
    if (keys) {
        return QStringLiteral("keys");
    }
    static const std::array<const char*, 7> kAsked{"", "ask-cold", "ask-damage", "ask-spray", "ask-course", "ask-water", "ask-harden"};
    if (ask.open()) {
        return QLatin1String(kAsked[static_cast<std::size_t>(ask.what())]);
    }
    static const std::array<const char*, 8> kForms{"",           "add-plants", "add-spots", "change-spot",
                                                   "change-place", "change-plant", "add-lot",    "keep-at-spot"};
    if (mend.plants()->looked()->open()) {
        return QStringLiteral("kind");
    }
    if (mend.form() != models::MendModel::None) {
        return QLatin1String(kForms[static_cast<std::size_t>(mend.form())]);
    }
    if (page == QLatin1String("plants") && plants.opened() != 0 && plant.album()->view() != models::PhotosModel::Closed) {
        return plant.album()->view() == models::PhotosModel::Measuring ? QStringLiteral("measure")
               : plant.album()->view() == models::PhotosModel::Two     ? QStringLiteral("two-photos")
                                                                       : QStringLiteral("photo");
    }
    if (page == QLatin1String("plants")) {
        return plants.opened() != 0               ? QStringLiteral("plant")
               : plant.comparison()->shown() ? QStringLiteral("compare")
                                             : page;
    }
    return page == QLatin1String("home")
               ? page + QLatin1Char('-') + QString::fromStdString(home_sections()[static_cast<std::size_t>(home.section())])
               : page;
}

/// Whether a picture that is to be seen is still read, in a thread of its own, or a part of a page still made between frames.
bool is_being_made(const QQuickItem& item)
{
    constexpr int kLoading = 2; // Image.Loading and Loader.Loading.
    if (!item.isVisible()) {
        return false;
    }
    const auto children = item.childItems();
    return ((item.inherits("QQuickImageBase") || item.inherits("QQuickLoader")) && item.property("status").toInt() == kLoading) ||
           item.property("waiting").toBool() || // A page that is being compiled.
           std::ranges::any_of(children, [](const QQuickItem* child) { return is_being_made(*child); });
}

} // namespace

bool is_working(const WindowModels& of)
{
    return of.year.planning() || of.round.working() || of.tonight.working() || of.plants.working() || of.plant.working() ||
           of.plant.album()->working() || of.plant.measure()->working() ||
           of.plant.coming()->running() || of.seeds.working() || of.home.working() || of.home.months()->working() || of.keeping.working() ||
           of.keeping.running() != models::HomeDataModel::Nothing || of.record.working() || of.people.working() ||
           (of.home.journal() != nullptr && of.home.journal()->working()) ||
           of.changes.working() || of.mend.working() || of.ask.working() || of.plant.comparison()->working();
}

KeptMessages::KeptMessages()
{
    qInstallMessageHandler(keep_message);
}

KeptMessages::~KeptMessages()
{
    qInstallMessageHandler(nullptr);
}

SelfEndingWindow::SelfEndingWindow(QQuickWindow& window, const WindowOptions& options, WindowModels models,
                                   const qint64& first_frame)
    : window_(window), options_(options), models_(models), first_frame_(first_frame),
      seen_{options.self_test ? Album::of_environment() : Album{}, {}}, pages_{QString::fromStdString(options.page)}
{
    auto* wait = new QTimer(&window_);
    QObject::connect(wait, &QTimer::timeout, &window_, [this, wait] {
        if (is_done()) {
            wait->stop();
            QTimer::singleShot(50, &window_, [this] { finish(); });
        }
    });
    wait->start(10);
    QTimer::singleShot(60'000, &window_, [] { QGuiApplication::exit(1); });
}

void SelfEndingWindow::look_at_texts()
{
    seen_.look(window_, name_of_view(window_.property("page").toString(), window_.property("keysShown").toBool(), models_.mend, models_.ask, models_.plants, models_.plant,
                                     models_.home));
}

bool SelfEndingWindow::opens_next()
{
    auto& plants = models_.plants;
    for (const std::string& page : window_pages()) {
        const QString next = QString::fromStdString(page);
        if (!pages_.contains(next)) {
            look_at_texts();
            window_.setProperty("page", next);
            pages_.append(next);
            return true;
        }
    }
    if (pages_.contains(QStringLiteral("home")) && window_.property("page").toString() == QLatin1String("home")) {
        const int section = models_.home.section();
        if (!models_.home.months()->open()) { // The sections with all that opens in them.
            models_.home.months()->setOpen(true);
            models_.home.entry()->setListed(true);
            return true;
        }
        look_at_texts();
        models_.home.step(1);
        if (models_.home.section() != section) {
            return true;
        }
    }
    // The page of a plant is one of its own; the first is as good as another.
    if (plants.opened() == 0 && plants.count() > 0) {
        look_at_texts();
        window_.setProperty("page", QStringLiteral("plants"));
        plants.openId(plants.facts().cards.front().id);
        return true;
    }
    // Two plants beside each other.
    if (!compared_ && plants.count() > 1) {
        look_at_texts();
        compared_ = true;
        plants.close();
        plants.mark(0);
        plants.mark(1);
        models_.plant.comparison()->open();
        return true;
    }
    // Last the forms by which the household is changed, those that ask of a plant, and the keys; each lies over the page.
    const auto ask = [this](int what) {
        return [this, what] {
            models_.plants.openId(models_.plants.facts().cards.front().id);
            models_.ask.ask(what);
        };
    };
    const std::array<std::function<void()>, 18> forms{
        [this] { models_.mend.addPlants(); },
        [this] { models_.mend.addSpots(); },
        [this] {
            models_.mend.spots()->setProperty("measuring", true);
            models_.mend.editSpot(0);
        },
        [this] { models_.mend.editPlace(); },
        [this] { models_.mend.editPlant(models_.plants.facts().cards.front().id); },
        [this] { models_.mend.addLot(); },
        [this] { models_.mend.pinPlant(models_.plants.facts().cards.front().id); },
        ask(models::AskModel::AfterCold),
        ask(models::AskModel::Damage),
        ask(models::AskModel::Spray),
        ask(models::AskModel::Course),
        ask(models::AskModel::Water),
        ask(models::AskModel::Harden),
        [this] { models_.plant.album()->open(0); },
        [this] { models_.plant.album()->openTwo(); },
        [this] {
            models_.plant.album()->openMeasuring();
            models_.plant.measure()->setMode(models::MeasureModel::Grey);
        },
        [this] {
            models_.plant.album()->close();
            QObject::connect(
                &models_.mend, &models::MendModel::formChanged, &models_.mend,
                [this] {
                    models_.mend.plants()->setFind(QStringLiteral("Nerium"));
                    models_.mend.plants()->look(0);
                },
                Qt::SingleShotConnection);
            models_.mend.addPlants();
        },
        [this] { window_.setProperty("keysShown", true); }};
    if (form_ < forms.size() && plants.count() > 0) {
        look_at_texts();
        models_.mend.leave();
        models_.ask.leave();
        models_.plant.comparison()->close();
        forms[form_++]();
        return true;
    }
    return false;
}

bool SelfEndingWindow::is_done()
{
    if (is_working(models_) || first_frame_ < 0 || is_being_made(*window_.contentItem())) {
        return false;
    }
    constexpr int kForPhotos = 30; // Looks: photographs are read in threads of their own.
    if (seen_.album.wanted() && ++quiet_ < kForPhotos) {
        return false;
    }
    quiet_ = 0;
    return !options_.self_test || !opens_next();
}

void SelfEndingWindow::finish()
{
    if (options_.picture && !save_picture(window_, *options_.picture)) {
        status_ = 1;
    }
    if (options_.self_test) {
        look_at_texts();
        print_answer();
    }
    QGuiApplication::exit(status_);
}

void SelfEndingWindow::print_answer()
{
    nlohmann::json answer;
    const std::lock_guard lock(messages().guard);
    answer["pages"] = json_lines(pages_);
    // A page that cannot be read is a fault as well.
    const auto& of = models_;
    for (const QString& error : {of.year.error(), of.round.error(), of.tonight.error(), of.plants.error(), of.plant.error(), of.seeds.error(), of.home.error(), of.keeping.error(), of.record.error(), of.people.error()}) {
        if (!error.isEmpty()) {
            messages().warnings.append(error);
        }
    }
    if (options_.untranslated) {
        for (const QString& sentence : options_.untranslated()) {
            messages().warnings.append(QStringLiteral("not translated, ") + sentence);
        }
    }
    answer["warnings"] = json_lines(messages().warnings);
    answer["cut"] = json_lines(seen_.cut);
    answer["forms"] = form_;
    answer["nameless"] = json_lines(seen_.nameless);
    answer["first_frame_ms"] = first_frame_;
    answer["over"] = json_lines(seen_.over);
    answer["small"] = json_lines(seen_.small);
    give_back_free_memory(); // As a window does that is left alone.
    answer["memory_mb"] = resident_megabytes();
    std::cout << answer.dump() << '\n';
    status_ = messages().warnings.isEmpty() && seen_.nameless.isEmpty() && seen_.small.isEmpty() ? status_ : 1;
}

} // namespace lathhouse
