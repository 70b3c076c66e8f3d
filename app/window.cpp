#include "app/window.h"

#include "app/desktop.h"
#include "app/models/home_model.h"
#include "app/models/plant_model.h"
#include "app/models/plants_model.h"
#include "app/models/round_model.h"
#include "app/models/seeds_model.h"
#include "app/models/tonight_model.h"
#include "app/models/year_model.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QImage>
#include <QPalette>
#include <QQmlApplicationEngine>
#include <QQmlError>
#include <QQuickWindow>
#include <QStringList>
#include <QTimer>

#include <nlohmann/json.hpp>

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

QString scheme_of_desktop()
{
    const QString wanted = qEnvironmentVariable("LATHHOUSE_THEME");
    if (wanted == QLatin1String("light") || wanted == QLatin1String("dark") ||
        wanted == QLatin1String("contrast")) {
        return wanted;
    }
    const QPalette palette = QGuiApplication::palette();
    const bool dark =
        palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
    return dark ? QStringLiteral("dark") : QStringLiteral("light");
}

/// Size of the text in parts of a hundred: what LATHHOUSE_TEXT says, else 100.
int text_percent()
{
    constexpr int kSmallest = 85;
    constexpr int kUsual = 100;
    constexpr int kLargest = 200;
    if (!qEnvironmentVariableIsSet("LATHHOUSE_TEXT")) {
        return kUsual;
    }
    bool is_number = false;
    const int wanted = qEnvironmentVariableIntValue("LATHHOUSE_TEXT", &is_number);
    if (!is_number || wanted < kSmallest || wanted > kLargest) {
        std::cerr << "lathhouse: LATHHOUSE_TEXT takes a whole number from 85 to 200, not \""
                  << qEnvironmentVariable("LATHHOUSE_TEXT").toStdString() << "\"; the text stays at 100\n";
        return kUsual;
    }
    return wanted;
}

/// Whether nothing may move: LATHHOUSE_MOTION=reduced.
bool reduced_motion()
{
    const QString wanted = qEnvironmentVariable("LATHHOUSE_MOTION");
    if (!wanted.isEmpty() && wanted != QLatin1String("reduced") && wanted != QLatin1String("full")) {
        std::cerr << "lathhouse: LATHHOUSE_MOTION takes full or reduced, not \"" << wanted.toStdString()
                  << "\"; bars move\n";
    }
    return wanted == QLatin1String("reduced");
}

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
void connect_pages(models::RoundModel& round, models::TonightModel& tonight, models::PlantsModel& plants,
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

} // namespace

const std::vector<std::string>& window_pages()
{
    static const std::vector<std::string> kPages{"round", "year", "plants", "seeds", "home"};
    return kPages;
}

int run_window(int& argc, char** argv, WindowOptions options)
{
    QElapsedTimer since_start;
    since_start.start();
    const bool ends_by_itself = options.self_test || options.picture;
    if (options.self_test) {
        qInstallMessageHandler(keep_message);
    }
    std::optional<Desktop> desktop;
    if (QCoreApplication::instance() == nullptr) { // After a first start the desktop is there already.
        desktop.emplace(argc, argv, ends_by_itself);
    }

    const models::TodayLook look{options.year.today, models::YearWords(options.units), hands_of(options.year)};
    models::RoundModel round(std::move(options.round), {look.today, look.words, look.hands});
    models::TonightModel tonight(options.door, look);
    models::PlantsModel plants(options.plants, look);
    models::PlantModel plant(plants);
    models::SeedsModel seeds(options.door, look);
    models::HomeModel home(options.door, look);
    home.setSection(options.home_section);
    connect_pages(round, tonight, plants, seeds, home);
    if (options.plant != 0) {
        plants.openId(options.plant);
    }
    models::YearModel year(std::move(options.year), std::move(options.solver),
                           models::YearWords(options.units));
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
                                 {QStringLiteral("page"), QString::fromStdString(options.page)},
                                 {QStringLiteral("scheme"), scheme_of_desktop()},
                                 {QStringLiteral("textPercent"), text_percent()},
                                 {QStringLiteral("reducedMotion"), reduced_motion()},
                                 {QStringLiteral("width"), options.width},
                                 {QStringLiteral("height"), options.height}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Lathhouse/Ui/Main.qml")));
    auto* window =
        engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().first());
    if (window == nullptr) {
        std::cerr << "lathhouse: the window could not be made; its parts are missing from this build\n";
        return 1;
    }

    qint64 first_frame = -1;
    QObject::connect(window, &QQuickWindow::frameSwapped, window, [&first_frame, &since_start] {
        if (first_frame < 0) {
            first_frame = since_start.elapsed();
        }
    });
    int status = 0;
    QStringList pages{QString::fromStdString(options.page)};
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
            nlohmann::json answer;
            const std::lock_guard lock(messages().guard);
            answer["pages"] = nlohmann::json::array();
            for (const QString& page : pages) {
                answer["pages"].push_back(page.toStdString());
            }
            // A page that cannot be read is a fault as well.
            for (const QString& error : {round.error(), tonight.error(), plants.error(), plant.error(), seeds.error(), home.error()}) {
                if (!error.isEmpty()) {
                    messages().warnings.append(error);
                }
            }
            answer["warnings"] = nlohmann::json::array();
            for (const QString& warning : messages().warnings) {
                answer["warnings"].push_back(warning.toStdString());
            }
            answer["first_frame_ms"] = first_frame;
            answer["memory_mb"] = resident_megabytes();
            std::cout << answer.dump() << '\n';
            status = messages().warnings.isEmpty() ? status : 1;
        }
        QGuiApplication::exit(status);
    };
    if (ends_by_itself) {
        // Once everything is there and drawn; a self-test goes on to the other pages first.
        const auto when_planned = [&] {
            if (year.planning() || round.working() || tonight.working() || plants.working() || plant.working() ||
                seeds.working() || home.working() ||
                first_frame < 0) {
                return false;
            }
            if (options.self_test) {
                for (const std::string& page : window_pages()) {
                    const QString next = QString::fromStdString(page);
                    if (!pages.contains(next)) {
                        window->grabWindow(); // What is open is drawn in whole before it is left.
                        window->setProperty("page", next);
                        pages.append(next);
                        return false;
                    }
                }
                // The page of a plant is one of its own; the first is as good as another.
                if (plants.opened() == 0 && plants.count() > 0) {
                    window->grabWindow();
                    window->setProperty("page", QStringLiteral("plants"));
                    plants.openId(plants.facts().cards.front().id);
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
