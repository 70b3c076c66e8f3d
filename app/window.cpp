#include "app/window.h"

#include "app/album.h"
#include "app/desktop.h"
#include "app/desktop_notices.h"
#include "app/mirrored_sides.h"
#include "app/models/changes_model.h"
#include "app/models/home_data_model.h"
#include "app/models/home_model.h"
#include "app/models/home_people_model.h"
#include "app/models/home_record_model.h"
#include "app/models/kept_settings.h"
#include "app/models/mend_model.h"
#include "app/models/plant_model.h"
#include "app/models/plants_model.h"
#include "app/models/round_model.h"
#include "app/models/seeds_model.h"
#include "app/models/settings_model.h"
#include "app/models/tonight_model.h"
#include "app/models/year_model.h"
#include "app/sheet/sheet_printer.h"
#include "app/spoken_items.h"
#include "app/text_fit.h"
#include "app/told_items.h"

#include <QElapsedTimer>
#include <QEvent>
#include <QGuiApplication>
#include <QImage>
#include <QQmlApplicationEngine>
#include <QQmlError>
#include <QQuickWindow>
#include <QStringList>
#include <QTimer>

#include <nlohmann/json.hpp>

#include <array>
#include <cstdio>
#include <fstream>
#include <iostream>
#include <map>
#include <memory>
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
QString name_of_view(const QString& page, const models::MendModel& mend, const models::PlantsModel& plants,
                     models::PlantModel& plant, const models::HomeModel& home)
{
    static const std::array<const char*, 7> kForms{"",           "add-plants", "add-spots", "change-spot",
                                                   "change-place", "change-plant", "add-lot"};
    if (mend.form() != models::MendModel::None) {
        return QLatin1String(kForms[static_cast<std::size_t>(mend.form())]);
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

/// Tells when the desktop goes from light to dark or back.
class DesktopWatch : public QObject {
public:
    explicit DesktopWatch(models::SettingsModel& settings) : settings_(settings) {}

protected:
    bool eventFilter(QObject* watched, QEvent* event) override
    {
        if (event->type() == QEvent::ApplicationPaletteChange) {
            settings_.set_desktop_dark(desktop_is_dark());
        }
        return QObject::eventFilter(watched, event);
    }

private:
    models::SettingsModel& settings_;
};

/// Colour and pattern of each spot, so that the round shows it as the year does.
std::map<std::string, int> hands_of(const models::YearData& year)
{
    std::map<std::string, int> hands;
    for (const auto& spot : year.spots) {
        hands[spot.name] = static_cast<int>(spot.colour) + (spot.turned ? models::kSpotColours : 0);
    }
    return hands;
}

/// What one page writes is read by the others that were opened.
void connect_pages(models::YearModel& year, models::RoundModel& round, models::TonightModel& tonight, models::PlantsModel& plants,
                   models::SeedsModel& seeds, models::HomeModel& home)
{
    const auto follow_round = [&round] {
        if (round.known()) {
            round.reload();
        }
    };
    for (models::SheetModel* page : {static_cast<models::SheetModel*>(&tonight), static_cast<models::SheetModel*>(&plants), static_cast<models::SheetModel*>(&seeds),
                                     static_cast<models::SheetModel*>(&home)}) {
        QObject::connect(page, &models::SheetModel::written, &round, follow_round);
    }
    for (models::SheetModel* page : {static_cast<models::SheetModel*>(&tonight), static_cast<models::SheetModel*>(&plants),
                                     static_cast<models::SheetModel*>(&seeds), static_cast<models::SheetModel*>(&home)}) {
        QObject::connect(page, &models::SheetModel::written, &year, &models::YearModel::follow);
        QObject::connect(&year, &models::YearModel::written, page, &models::SheetModel::follow);
    }
    QObject::connect(&round, &models::RoundModel::written, &year, &models::YearModel::follow);
    QObject::connect(&year, &models::YearModel::written, &round, follow_round);
    QObject::connect(&home, &models::SheetModel::written, &tonight, &models::SheetModel::follow);
    QObject::connect(&plants, &models::SheetModel::written, &tonight, &models::SheetModel::follow);
    QObject::connect(&plants, &models::SheetModel::written, &home, &models::SheetModel::follow);
    QObject::connect(&home, &models::SheetModel::written, &plants, &models::SheetModel::follow);
    QObject::connect(&round, &models::RoundModel::written, &plants, &models::SheetModel::follow);
    QObject::connect(&tonight, &models::SheetModel::written, &home, &models::SheetModel::follow);
    QObject::connect(&seeds, &models::SheetModel::written, &tonight, &models::SheetModel::follow);
    QObject::connect(&round, &models::RoundModel::written, &tonight, &models::SheetModel::follow);
    QObject::connect(&round, &models::RoundModel::written, &home, &models::SheetModel::follow);
}

/// What is taken back for the whole window is read by every page; none of them takes back its own any more. Once
/// something new is written, the words on what was taken back go.
void connect_changes(models::ChangesModel& changes, models::YearModel& year, models::RoundModel& round,
                     models::TonightModel& tonight, models::PlantsModel& plants, models::SeedsModel& seeds,
                     models::HomeModel& home)
{
    QObject::connect(&changes, &models::SheetModel::written, &round, [&round] {
        round.forget();
        if (round.known()) {
            round.reload();
        }
    });
    QObject::connect(&changes, &models::SheetModel::written, &plants, &models::PlantsModel::forget);
    QObject::connect(&changes, &models::SheetModel::written, &seeds, &models::SeedsModel::forget);
    QObject::connect(&changes, &models::SheetModel::written, &year, &models::YearModel::follow);
    for (models::SheetModel* page : {static_cast<models::SheetModel*>(&tonight), static_cast<models::SheetModel*>(&plants),
                                     static_cast<models::SheetModel*>(&seeds), static_cast<models::SheetModel*>(&home)}) {
        QObject::connect(&changes, &models::SheetModel::written, page, &models::SheetModel::follow);
        QObject::connect(page, &models::SheetModel::written, &changes, &models::ChangesModel::leave);
    }
    QObject::connect(&round, &models::RoundModel::written, &changes, &models::ChangesModel::leave);
    QObject::connect(&year, &models::YearModel::written, &changes, &models::ChangesModel::leave);
}

/// What was changed in the household itself is read by every page. The words on it go once something else is done, as
/// those on what was taken back do.
void connect_mend(models::MendModel& mend, models::ChangesModel& changes, models::YearModel& year, models::RoundModel& round,
                  const std::vector<models::SheetModel*>& pages)
{
    QObject::connect(&mend, &models::SheetModel::written, &changes, &models::ChangesModel::leave);
    QObject::connect(&changes, &models::SheetModel::written, &mend, &models::MendModel::hush);
    QObject::connect(&mend, &models::SheetModel::written, &year, &models::YearModel::follow);
    QObject::connect(&year, &models::YearModel::written, &mend, &models::MendModel::hush);
    QObject::connect(&mend, &models::SheetModel::written, &round, [&round] {
        if (round.known()) {
            round.reload();
        }
    });
    QObject::connect(&round, &models::RoundModel::written, &mend, &models::MendModel::hush);
    for (models::SheetModel* page : pages) {
        QObject::connect(&mend, &models::SheetModel::written, page, &models::SheetModel::follow);
        QObject::connect(page, &models::SheetModel::written, &mend, &models::MendModel::hush);
    }
}

/// Reads every page again once another program wrote into the household.
void watch_household(std::function<bool()> written_elsewhere, models::YearModel& year, models::RoundModel& round,
                     const std::vector<models::SheetModel*>& pages)
{
    if (!written_elsewhere) {
        return;
    }
    const auto asked = std::make_shared<std::function<bool()>>(std::move(written_elsewhere));
    const auto own = [asked] { (*asked)(); }; // What this window writes is read by whoever must.
    QObject::connect(&year, &models::YearModel::written, &year, own);
    QObject::connect(&round, &models::RoundModel::written, &round, own);
    for (models::SheetModel* page : pages) {
        QObject::connect(page, &models::SheetModel::written, page, own);
    }
    auto* timer = new QTimer(&year);
    constexpr int kEvery = 2000; // Milliseconds.
    QObject::connect(timer, &QTimer::timeout, &year, [asked, &year, &round, pages] {
        if (!(*asked)()) {
            return;
        }
        year.follow();
        if (round.known()) {
            round.reload();
        }
        for (models::SheetModel* page : pages) {
            page->follow();
        }
    });
    timer->start(kEvery);
}

/// What the window's title says of a cold night is said once by the desktop as well, where that is wanted: then round
/// and tonight are read whether or not anyone opens their page.
void connect_notice(models::EveningNotice& notice, models::RoundModel& round, models::TonightModel& tonight)
{
    const auto know = [&notice, &round, &tonight] {
        if (round.known() && tonight.known()) {
            notice.know(round.coldTitle(), tonight.line());
        }
    };
    QObject::connect(&round, &models::RoundModel::roundChanged, &notice, know);
    QObject::connect(&tonight, &models::TonightModel::tonightChanged, &notice, know);
    const auto read = [&notice, &round, &tonight] {
        if (notice.wanted()) {
            tonight.start();
            round.start();
        }
    };
    QObject::connect(&notice, &models::EveningNotice::wantedChanged, &notice, read);
    constexpr int kOnceShown = 2000; // Milliseconds: the window comes first.
    QTimer::singleShot(kOnceShown, &notice, read);
    auto* timer = new QTimer(&notice);
    constexpr int kEvery = 60'000;
    QObject::connect(timer, &QTimer::timeout, &notice, &models::EveningNotice::remind);
    timer->start(kEvery);
}

} // namespace

const std::vector<std::string>& window_pages()
{
    static const std::vector<std::string> kPages{"round", "year", "plants", "seeds", "home"};
    return kPages;
}

const std::vector<std::string>& home_sections()
{
    static const std::vector<std::string> kSections{"place",  "spots", "thermometer", "record",
                                                    "people", "data",  "settings"};
    return kSections;
}

int run_window(int& argc, char** argv, WindowOptions options)
{
    QElapsedTimer since_start;
    since_start.start();
    const bool ends_by_itself = options.self_test || options.picture;
    Album album = options.self_test ? Album::of_environment() : Album{};
    if (const auto size = size_of_environment(); ends_by_itself && size) {
        options.width = size->width();
        options.height = size->height();
    }
    if (options.self_test) {
        qInstallMessageHandler(keep_message);
    }
    std::optional<Desktop> desktop;
    if (QCoreApplication::instance() == nullptr) { // After a first start the desktop is there already.
        desktop.emplace(argc, argv, ends_by_itself);
    }

    const auto kept = std::make_shared<models::KeptSettings>(
        options.keeps_settings && !options.self_test ? models::KeptSettings::usual_file() : QString{});
    auto asked = settings_of_surroundings();
    if (options.units_given) {
        asked.units = options.units.measures();
    }
    if (options.language) {
        asked.language = QString::fromStdString(*options.language);
    }
    models::SettingsModel settings(kept, std::move(asked), options.units);
    settings.set_desktop_dark(desktop_is_dark());
    DesktopWatch watch(settings);
    QCoreApplication::instance()->installEventFilter(&watch);

    const models::TodayLook look{options.year.today, models::YearWords(options.units), hands_of(options.year)};
    models::RoundModel round(std::move(options.round), {look.today, look.words, look.hands});
    models::TonightModel tonight(options.door, look);
    models::PlantsModel plants(options.plants, look);
    models::PlantModel plant(plants);
    models::SeedsModel seeds(options.door, look);
    models::HomeDataModel keeping(options.door.load, options.folder, look, kept);
    const bool has_record = static_cast<bool>(options.record.load);
    models::HomeRecordModel record(std::move(options.record), look);
    const bool has_people = static_cast<bool>(options.people.load);
    models::HomePeopleModel people(std::move(options.people), look);
    const bool has_calendar = static_cast<bool>(options.calendar);
    models::CalendarModel calendar(std::move(options.calendar), look);
    models::HomeModel home(options.door, look);
    home.join({.keeping = &keeping,
               .record = has_record ? &record : nullptr,
               .people = has_people ? &people : nullptr,
               .settings = &settings,
               .calendar = has_calendar ? &calendar : nullptr});
    home.setSection(options.home_section);
    // A record changes the climate, and who reaches a spot the plan: all that rests on them is read anew, as after any
    // change of Home's.
    for (models::SheetModel* section : {static_cast<models::SheetModel*>(&record), static_cast<models::SheetModel*>(&people)}) {
        QObject::connect(section, &models::SheetModel::written, &home, [&home] {
            home.follow();
            emit home.written();
        });
    }
    QObject::connect(&plants, &models::SheetModel::written, &people, &models::SheetModel::follow);
    QObject::connect(&round, &models::RoundModel::written, &people, &models::SheetModel::follow);
    models::EveningNotice notice(kept, std::make_unique<DesktopNotices>(), models::to_qdate(look.today));
    settings.join(&notice);
    models::MendModel mend(std::move(options.mend), look);
    if (options.plant != 0) {
        plants.openId(options.plant);
    }
    models::YearModel year(std::move(options.year), std::move(options.solver),
                           models::YearWords(options.units), nullptr, std::move(options.year_door));
    connect_pages(year, round, tonight, plants, seeds, home);
    models::ChangesModel changes(std::move(options.turn));
    connect_changes(changes, year, round, tonight, plants, seeds, home);
    connect_mend(mend, changes, year, round, {&tonight, &plants, &seeds, &home, &people});
    if (!ends_by_itself) {
        watch_household(std::move(options.written_elsewhere), year, round,
                        {&tonight, &plants, &seeds, &home, &changes, &mend});
    }
    if (!ends_by_itself) {
        connect_notice(notice, round, tonight);
    }
    sheet::SheetPrinter printer(options.plants, look.today, look.words);
    printer.setYear(&year);
    QObject::connect(&settings, &models::SettingsModel::unitsChanged, &settings, [&] {
        year.say_again();
        if (round.known()) {
            round.reload();
        }
        for (models::SheetModel* page : {static_cast<models::SheetModel*>(&tonight), static_cast<models::SheetModel*>(&plants),
                                         static_cast<models::SheetModel*>(&seeds), static_cast<models::SheetModel*>(&home),
                                         static_cast<models::SheetModel*>(&record)}) {
            page->follow();
        }
    });
    tell_spoken_roles();
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QObject::connect(&engine, &QQmlEngine::warnings, &engine, [&options](const QList<QQmlError>& errors) {
        if (options.self_test) { // Qt prints them through the handler as well; kept once.
            return;
        }
        for (const QQmlError& error : errors) {
            std::cerr << "lathhouse: " << error.toString().toStdString() << '\n';
        }
    });
    engine.setInitialProperties({{QStringLiteral("year"), QVariant::fromValue(&year)},
                                 {QStringLiteral("round"), QVariant::fromValue(&round)},
                                 {QStringLiteral("tonight"), QVariant::fromValue(&tonight)},
                                 {QStringLiteral("plants"), QVariant::fromValue(&plants)},
                                 {QStringLiteral("plant"), QVariant::fromValue(&plant)},
                                 {QStringLiteral("seeds"), QVariant::fromValue(&seeds)},
                                 {QStringLiteral("home"), QVariant::fromValue(&home)},
                                 {QStringLiteral("changes"), QVariant::fromValue(&changes)},
                                 {QStringLiteral("printer"), QVariant::fromValue(&printer)},
                                 {QStringLiteral("mend"), QVariant::fromValue(&mend)},
                                 {QStringLiteral("page"), QString::fromStdString(options.page)},
                                 {QStringLiteral("scheme"), settings.scheme()},
                                 {QStringLiteral("textPercent"), settings.textPercent()},
                                 {QStringLiteral("reducedMotion"), settings.reducedMotion()},
                                 {QStringLiteral("width"), options.width},
                                 {QStringLiteral("height"), options.height}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Lathhouse/Ui/Main.qml")));
    auto* window =
        engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().first());
    if (window == nullptr) {
        std::cerr << "lathhouse: the window could not be made; its parts are missing from this build\n";
        return 1;
    }

    if (QGuiApplication::layoutDirection() == Qt::RightToLeft) {
        mirror_sides(*window);
    }
    QObject::connect(&settings, &models::SettingsModel::themeChanged, window,
                     [&] { window->setProperty("scheme", settings.scheme()); });
    QObject::connect(&settings, &models::SettingsModel::textChanged, window,
                     [&] { window->setProperty("textPercent", settings.textPercent()); });
    QObject::connect(&settings, &models::SettingsModel::motionChanged, window,
                     [&] { window->setProperty("reducedMotion", settings.reducedMotion()); });

    qint64 first_frame = -1;
    QObject::connect(window, &QQuickWindow::frameSwapped, window, [&first_frame, &since_start, &options] {
        if (first_frame < 0) {
            first_frame = since_start.elapsed() + options.milliseconds_of_desktop;
        }
    });
    int status = 0;
    QStringList pages{QString::fromStdString(options.page)};
    QStringList cut;
    QStringList silent;
    std::size_t form = 0;
    bool compared = false;
    int quiet = 0;
    const auto look_at_texts = [&] {
        const QImage shown = window->grabWindow(); // What is open is drawn in whole before it is looked at, and left.
        album.keep(name_of_view(window->property("page").toString(), mend, plants, plant, home), shown);
        for (const QString& text : texts_that_do_not_fit(*window)) {
            if (!cut.contains(text)) {
                cut.append(text);
            }
        }
        for (const QString& item : items_that_say_nothing(*window)) {
            if (!silent.contains(item)) {
                silent.append(item);
            }
        }
    };
    const auto finish = [&] {
        if (options.picture) {
            const QImage shown = window->grabWindow();
            const auto file = QString::fromStdString(*options.picture);
            if (shown.isNull() || !shown.save(file, "PNG")) {
                std::cerr << "lathhouse: the picture could not be written to " << *options.picture
                          << "; check that its folder exists and can be written\n";
                status = 1;
            }
        }
        if (options.self_test) {
            look_at_texts();
            nlohmann::json answer;
            const std::lock_guard lock(messages().guard);
            answer["pages"] = nlohmann::json::array();
            for (const QString& page : pages) {
                answer["pages"].push_back(page.toStdString());
            }
            // A page that cannot be read is a fault as well.
            for (const QString& error : {year.error(), round.error(), tonight.error(), plants.error(), plant.error(), seeds.error(), home.error(), keeping.error(), record.error(), people.error()}) {
                if (!error.isEmpty()) {
                    messages().warnings.append(error);
                }
            }
            if (options.untranslated) {
                for (const QString& sentence : options.untranslated()) {
                    messages().warnings.append(QStringLiteral("not translated, ") + sentence);
                }
            }
            answer["warnings"] = nlohmann::json::array();
            for (const QString& warning : messages().warnings) {
                answer["warnings"].push_back(warning.toStdString());
            }
            answer["cut"] = nlohmann::json::array();
            for (const QString& text : cut) {
                answer["cut"].push_back(text.toStdString());
            }
            answer["forms"] = form;
            answer["nameless"] = nlohmann::json::array();
            for (const QString& item : silent) {
                answer["nameless"].push_back(item.toStdString());
            }
            answer["first_frame_ms"] = first_frame;
            answer["memory_mb"] = resident_megabytes();
            std::cout << answer.dump() << '\n';
            status = messages().warnings.isEmpty() && silent.isEmpty() ? status : 1;
        }
        QGuiApplication::exit(status);
    };
    if (ends_by_itself) {
        // Once everything is there and drawn; a self-test goes on to the other pages first.
        const auto when_planned = [&] {
            if (year.planning() || round.working() || tonight.working() || plants.working() || plant.working() ||
                seeds.working() || home.working() || keeping.working() || record.working() || people.working() ||
                changes.working() || mend.working() || plant.comparison()->working() ||
                first_frame < 0) {
                return false;
            }
            constexpr int kForPhotos = 30; // Looks: photographs are read in threads of their own.
            if (album.wanted() && ++quiet < kForPhotos) {
                return false;
            }
            quiet = 0;
            if (options.self_test) {
                for (const std::string& page : window_pages()) {
                    const QString next = QString::fromStdString(page);
                    if (!pages.contains(next)) {
                        look_at_texts();
                        window->setProperty("page", next);
                        pages.append(next);
                        return false;
                    }
                }
                if (pages.contains(QStringLiteral("home")) && window->property("page").toString() == QLatin1String("home")) {
                    const int section = home.section();
                    look_at_texts();
                    home.step(1);
                    if (home.section() != section) {
                        return false;
                    }
                }
                // The page of a plant is one of its own; the first is as good as another.
                if (plants.opened() == 0 && plants.count() > 0) {
                    look_at_texts();
                    window->setProperty("page", QStringLiteral("plants"));
                    plants.openId(plants.facts().cards.front().id);
                    return false;
                }
                // Two plants beside each other.
                if (!compared && plants.count() > 1) {
                    look_at_texts();
                    compared = true;
                    plants.close();
                    plants.mark(0);
                    plants.mark(1);
                    plant.comparison()->open();
                    return false;
                }
                // Last the forms by which the household is changed; each lies over the page.
                const std::array<std::function<void()>, 6> forms{
                    [&mend] { mend.addPlants(); },
                    [&mend] { mend.addSpots(); },
                    [&mend] { mend.editSpot(0); },
                    [&mend] { mend.editPlace(); },
                    [&mend, &plants] { mend.editPlant(plants.facts().cards.front().id); },
                    [&mend] { mend.addLot(); }};
                if (form < forms.size() && plants.count() > 0) {
                    look_at_texts();
                    mend.leave();
                    plant.comparison()->close();
                    forms[form++]();
                    return false;
                }
            }
            QTimer::singleShot(50, window, finish);
            return true;
        };
        auto* wait = new QTimer(window);
        QObject::connect(wait, &QTimer::timeout, window, [wait, when_planned] {
            if (when_planned()) {
                wait->stop();
            }
        });
        wait->start(10);
        QTimer::singleShot(60'000, window, [&] { QGuiApplication::exit(1); });
    }
    const int ended = QGuiApplication::exec();
    if (options.self_test) {
        qInstallMessageHandler(nullptr);
    }
    return ended;
}

} // namespace lathhouse
