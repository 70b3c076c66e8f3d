#include "app/window.h"

#include "app/album.h"
#include "app/desktop.h"
#include "app/desktop_notices.h"
#include "app/free_memory.h"
#include "app/mirrored_sides.h"
#include "app/models/changes_model.h"
#include "app/models/day_turn.h"
#include "app/models/dose_model.h"
#include "app/models/home_data_model.h"
#include "app/models/home_journal_model.h"
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
#include "app/page_links.h"
#include "app/self_ending_window.h"
#include "app/sheet/sheet_printer.h"
#include "app/told_items.h"

#include <QGuiApplication>
#include <QProcess>
#include <QQmlApplicationEngine>
#include <QQmlComponent>
#include <QQmlError>
#include <QQuickWindow>

#include <iostream>
#include <map>
#include <memory>
#include <optional>

namespace lathhouse {

namespace {

/// Colour and pattern of each spot, so that the round shows it as the year does.
std::map<std::string, int> hands_of(const models::YearData& year)
{
    std::map<std::string, int> hands;
    for (const auto& spot : year.spots) {
        hands[spot.name] = static_cast<int>(spot.colour) + (spot.turned ? models::kSpotColours : 0);
    }
    return hands;
}

QUrl main_part()
{
    return QUrl(QStringLiteral("qrc:/qt/qml/Lathhouse/Ui/Main.qml"));
}

} // namespace

WindowEngine::WindowEngine() : engine_(std::make_unique<QQmlApplicationEngine>())
{
    engine_->addImportPath(QStringLiteral("qrc:/qt/qml"));
    compiled_ = std::make_unique<QQmlComponent>(engine_.get(), main_part());
}

WindowEngine::~WindowEngine() = default;

void WindowEngine::load()
{
    engine_->load(main_part());
}

const std::vector<std::string>& window_pages()
{
    static const std::vector<std::string> kPages{"round", "year", "plants", "seeds", "home"};
    return kPages;
}

const std::vector<std::string>& home_sections()
{
    static const std::vector<std::string> kSections{"place",  "spots", "thermometer", "record",
                                                    "people", "journal", "data",    "settings"};
    return kSections;
}

int run_window(int& argc, char** argv, WindowOptions options)
{
    const bool ends_by_itself = options.self_test || options.picture;
    if (const auto size = size_of_environment(); ends_by_itself && size) {
        options.width = size->width();
        options.height = size->height();
    }
    std::optional<KeptMessages> messages;
    if (options.self_test) {
        messages.emplace();
    }
    std::optional<Desktop> desktop;
    if (QCoreApplication::instance() == nullptr) { // After a first start the desktop is there already.
        desktop.emplace(argc, argv, ends_by_itself);
    }
    if (!ends_by_itself) {
        const QSize size = within_screen({options.width, options.height});
        options.width = size.width();
        options.height = size.height();
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
    const DesktopWatch watch(settings);

    const models::TodayLook look{options.year.today, models::YearWords(options.units), hands_of(options.year)};
    models::RoundModel round(std::move(options.round), {look.today, look.words, look.hands});
    models::TonightModel tonight(options.door, look);
    models::PlantsModel plants(options.plants, look);
    models::PlantModel plant(plants);
    models::SeedsModel seeds(options.door, look);
    models::HomeDataModel keeping(options.door.load, options.folder, look, kept);
    const bool has_record = static_cast<bool>(options.record.load);
    keeping.opens_with([](const QString& folder) {
        return QProcess::startDetached(QCoreApplication::applicationFilePath(), {"--home", folder, "window"});
    });
    models::HomeRecordModel record(std::move(options.record), look);
    const bool has_people = static_cast<bool>(options.people.load);
    models::HomePeopleModel people(std::move(options.people), look);
    const bool has_calendar = static_cast<bool>(options.calendar);
    models::CalendarModel calendar(std::move(options.calendar), look);
    models::PhotoExportModel leaving(plants);
    models::HomeJournalModel journal(options.plants, options.folder, look);
    models::PhotosAsideModel aside(options.plants, look);
    models::HomeModel home(options.door, look);
    home.join({.keeping = &keeping,
               .record = has_record ? &record : nullptr,
               .people = has_people ? &people : nullptr,
               .settings = &settings,
               .calendar = has_calendar ? &calendar : nullptr,
               .leaving = &leaving,
               .journal = &journal,
               .aside = &aside});
    home.setSection(options.home_section);
    // A record changes the climate, and who reaches a spot the plan: all that rests on them is read anew, as after any
    // change of Home's.
    for (models::SheetModel* section : {static_cast<models::SheetModel*>(&record), static_cast<models::SheetModel*>(&people),
                                        static_cast<models::SheetModel*>(&journal), static_cast<models::SheetModel*>(&aside)}) {
        QObject::connect(section, &models::SheetModel::written, &home, [&home] {
            home.follow();
            emit home.written();
        });
    }
    QObject::connect(&plants, &models::SheetModel::written, &people, &models::SheetModel::follow);
    QObject::connect(&round, &models::RoundModel::written, &people, &models::SheetModel::follow);
    QObject::connect(&plants, &models::SheetModel::written, &aside, &models::SheetModel::follow);
    models::EveningNotice notice(kept, std::make_unique<DesktopNotices>(), models::to_qdate(look.today));
    settings.join(&notice);
    models::MendModel mend(std::move(options.mend), look);
    if (options.plant != 0) {
        plants.openId(options.plant);
    }
    models::YearModel year(std::move(options.year), std::move(options.solver),
                           models::YearWords(options.units), nullptr, std::move(options.year_door));
    year.plants()->remember(kept);
    connect_pages(year, round, tonight, plants, seeds, home);
    models::ChangesModel changes(std::move(options.turn));
    connect_changes(changes, year, round, tonight, plants, seeds, home);
    connect_mend(mend, changes, year, round, {&tonight, &plants, &seeds, &home, &people});
    connect_said(year, round, {&plants, &seeds, &people, &record, &mend, &changes}, {&tonight, &journal, &aside});
    // What Home writes itself; its sections have their own words, and are told above.
    QObject::connect(&home, &models::SheetModel::written, &plants, &models::SheetModel::hush);
    QObject::connect(&home, &models::SheetModel::written, &seeds, &models::SheetModel::hush);
    QObject::connect(&home, &models::SheetModel::written, &round, [&round] { round.hush(); });
    if (!ends_by_itself) {
        watch_household(std::move(options.written_elsewhere), year, round,
                        {&tonight, &plants, &seeds, &home, &changes, &mend});
    }
    if (!ends_by_itself) {
        connect_notice(notice, round, tonight);
    }
    models::DoseModel dose(std::move(options.jugs), kept, models::YearWords(options.units));
    connect_dose(dose, round, plant);
    models::AskModel ask(plants);
    connect_ask(ask, round);
    sheet::SheetPrinter printer(options.plants, look.today, look.words);
    printer.setYear(&year);
    printer.follow(tonight, seeds);
    QObject::connect(&settings, &models::SettingsModel::unitsChanged, &settings, [&] {
        year.say_again();
        dose.say_again();
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
    models::DayTurn day(look, [&options] {
        QStringList words;
        if (options.folder) {
            words << QStringLiteral("--home") << QString::fromStdString(options.folder->string());
        }
        return QProcess::startDetached(QCoreApplication::applicationFilePath(), words << QStringLiteral("window"));
    });
    const auto drawing = options.engine ? std::move(options.engine) : std::make_unique<WindowEngine>();
    QQmlApplicationEngine& engine = drawing->engine();
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
                                 {QStringLiteral("dose"), QVariant::fromValue(&dose)},
                                 {QStringLiteral("ask"), QVariant::fromValue(&ask)},
                                 {QStringLiteral("day"), QVariant::fromValue(&day)},
                                 {QStringLiteral("page"), QString::fromStdString(options.page)},
                                 {QStringLiteral("scheme"), settings.scheme()},
                                 {QStringLiteral("textPercent"), settings.textPercent()},
                                 {QStringLiteral("reducedMotion"), settings.reducedMotion()},
                                 {QStringLiteral("touch"), settings.touch()},
                                 {QStringLiteral("width"), options.width},
                                 {QStringLiteral("height"), options.height}});
    drawing->load();
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

    QObject::connect(&settings, &models::SettingsModel::touchChanged, window,
                     [&] { window->setProperty("touch", settings.touch()); });

    QObject::connect(&day, &models::DayTurn::begun, window, &QQuickWindow::close);
    const FreeMemoryWatch memory(*window);
    qint64 first_frame = -1;
    QObject::connect(window, &QQuickWindow::frameSwapped, window, [&first_frame, &options] {
        if (first_frame < 0) {
            first_frame = std::chrono::round<std::chrono::milliseconds>(std::chrono::steady_clock::now() - options.opened).count();
        }
    });
    const WindowModels shown{year, round, tonight, plants, plant, seeds, home, keeping, record, people, changes, mend, ask};
    std::optional<SelfEndingWindow> ending;
    if (ends_by_itself) {
        ending.emplace(*window, options, shown, first_frame);
    }
    if (options.made) {
        options.made(*window, shown);
    }
    const int ended = QGuiApplication::exec();
    messages.reset();
    return ended;
}

} // namespace lathhouse
