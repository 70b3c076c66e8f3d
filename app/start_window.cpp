#include "app/start_window.h"

#include "app/album.h"
#include "app/desktop.h"
#include "app/mirrored_sides.h"
#include "app/models/kept_settings.h"
#include "app/told_items.h"
#include "app/window_look.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QQmlApplicationEngine>
#include <QQmlError>
#include <QQuickWindow>
#include <QStringList>
#include <QTimer>

#include <nlohmann/json.hpp>

#include <iostream>

namespace lathhouse {

namespace {

/// The start half typed, so that a test sees more than empty fields: what belongs to a step.
void type_something(models::FirstStartModel& start)
{
    if (start.step() == 0) {
        start.place()->setFind(QStringLiteral("48.2, 20.8"));
    } else if (start.step() == 1) {
        for (const int ready : {0, 1, 4}) {
            start.spots()->addReady(ready);
        }
        start.spots()->setCurrent(1);
    } else {
        for (const char* name : {"Citrus limon", "Nerium oleander", "Ocimum basilicum"}) {
            start.plants()->setFind(QString::fromLatin1(name));
            start.plants()->pick(0);
        }
        start.plants()->setFind(QStringLiteral("lav"));
    }
}

void print_test(const WindowLook& look, const QStringList& warnings, int steps)
{
    nlohmann::json answer;
    answer["cut"] = json_lines(look.cut);
    answer["nameless"] = json_lines(look.nameless);
    answer["pages"] = {"start"};
    answer["over"] = json_lines(look.over);
    answer["small"] = json_lines(look.small);
    answer["steps"] = steps;
    answer["warnings"] = json_lines(warnings);
    std::cout << answer.dump() << '\n';
}

} // namespace

StartAnswer run_start_window(const StartOptions& options)
{
    StartAnswer answer{StartChoice::Left, 0};
    const auto kept = std::make_shared<models::KeptSettings>(
        options.self_test ? QString{} : models::KeptSettings::usual_file());
    models::SettingsModel settings(kept, settings_of_surroundings(), options.units);
    const DesktopWatch watch(settings);
    models::FirstStartModel start(options.door, options.folder, models::YearWords(options.units), options.today);
    start.setStep(options.step);
    if (options.fill) {
        options.fill(start);
    }
    QStringList warnings;
    WindowLook seen{options.self_test ? Album::of_environment() : Album{}, {}};
    const QSize usual{options.width, options.height};
    const QSize size = options.self_test || options.picture ? size_of_environment().value_or(usual) : within_screen(usual);
    tell_spoken_roles();
    QQmlApplicationEngine engine;
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    QObject::connect(&engine, &QQmlEngine::warnings, &engine, [&](const QList<QQmlError>& errors) {
        for (const QQmlError& error : errors) {
            warnings.append(error.toString());
            std::cerr << "lathhouse: " << error.toString().toStdString() << '\n';
        }
    });
    engine.setOutputWarningsToStandardError(false);
    engine.setInitialProperties({{QStringLiteral("start"), QVariant::fromValue(&start)},
                                 {QStringLiteral("scheme"), settings.scheme()},
                                 {QStringLiteral("textPercent"), settings.textPercent()},
                                 {QStringLiteral("reducedMotion"), settings.reducedMotion()},
                                 {QStringLiteral("touch"), settings.touch()},
                                 {QStringLiteral("width"), size.width()},
                                 {QStringLiteral("height"), size.height()}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Lathhouse/Ui/StartWindow.qml")));
    auto* window =
        engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().first());
    if (window == nullptr) {
        std::cerr << "lathhouse: the window could not be made; its parts are missing from this build\n";
        return {StartChoice::Left, 1};
    }
    if (QGuiApplication::layoutDirection() == Qt::RightToLeft) {
        mirror_sides(*window);
    }
    QObject::connect(&settings, &models::SettingsModel::touchChanged, window,
                     [&] { window->setProperty("touch", settings.touch()); });
    const auto choose = [&answer](StartChoice choice) {
        answer.choice = choice;
        QGuiApplication::exit(0);
    };
    QObject::connect(&start, &models::FirstStartModel::made, window, [&choose] { choose(StartChoice::Made); });
    QObject::connect(&start, &models::FirstStartModel::exampleAsked, window, [&choose] { choose(StartChoice::Example); });
    QTimer wait;
    int typed = -1; // The last step that was filled.
    const auto look = [&](const char* state = "") {
        seen.look(*window, QStringLiteral("start-%1%2").arg(start.step() + 1).arg(QLatin1String(state)));
    };
    if (options.self_test || options.picture) {
        const auto finish = [&] {
            if (options.picture && !save_picture(*window, *options.picture)) {
                answer.status = 1;
            }
            if (options.self_test) {
                if (options.untranslated) {
                    for (const QString& sentence : options.untranslated()) {
                        warnings.append(QStringLiteral("not translated, ") + sentence);
                    }
                }
                look();
                print_test(seen, warnings, start.step() + 1);
                answer.status = warnings.isEmpty() && seen.nameless.isEmpty() && seen.small.isEmpty() ? answer.status : 1;
            }
            QGuiApplication::exit(0);
        };
        QObject::connect(&wait, &QTimer::timeout, window, [&, finish] {
            if (start.working() || start.place()->working() || !start.place()->known()) {
                return;
            }
            if (options.self_test && typed < start.step()) {
                look("-empty");
                typed = start.step();
                type_something(start);
                return;
            }
            if (options.self_test && start.step() + 1 < models::FirstStartModel::kSteps) {
                look();
                start.setStep(start.step() + 1);
                return;
            }
            wait.stop();
            constexpr int kToDraw = 100; // Milliseconds.
            QTimer::singleShot(kToDraw, window, finish);
        });
        wait.start(20);
        constexpr int kTooLong = 60'000;
        QTimer::singleShot(kTooLong, window, [&answer] {
            answer.status = 1;
            QGuiApplication::exit(0);
        });
    }
    QGuiApplication::exec();
    return answer;
}

} // namespace lathhouse
