#include "app/start_window.h"

#include "app/desktop.h"
#include "app/models/kept_settings.h"

#include <QElapsedTimer>
#include <QGuiApplication>
#include <QImage>
#include <QQmlApplicationEngine>
#include <QQmlError>
#include <QQuickWindow>
#include <QStringList>
#include <QTimer>

#include <nlohmann/json.hpp>

#include <iostream>

namespace lathhouse {

namespace {

bool save_picture(QQuickWindow& window, const std::string& file)
{
    const QImage shown = window.grabWindow();
    if (!shown.isNull() && shown.save(QString::fromStdString(file), "PNG")) {
        return true;
    }
    std::cerr << "lathhouse: the picture could not be written to " << file
              << "; check that its folder exists and can be written\n";
    return false;
}

void print_test(const QStringList& warnings, int steps)
{
    nlohmann::json answer;
    answer["pages"] = {"start"};
    answer["steps"] = steps;
    answer["warnings"] = nlohmann::json::array();
    for (const QString& warning : warnings) {
        answer["warnings"].push_back(warning.toStdString());
    }
    std::cout << answer.dump() << '\n';
}

} // namespace

StartAnswer run_start_window(const StartOptions& options)
{
    StartAnswer answer{StartChoice::Left, 0};
    const auto kept = std::make_shared<models::KeptSettings>(
        options.self_test ? QString{} : models::KeptSettings::usual_file());
    models::SettingsModel settings(kept, settings_of_surroundings(), options.units);
    settings.set_desktop_dark(desktop_is_dark());
    models::FirstStartModel start(options.door, options.folder, models::YearWords(options.units), options.today);
    start.setStep(options.step);
    if (options.fill) {
        options.fill(start);
    }
    QStringList warnings;
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
                                 {QStringLiteral("width"), options.width},
                                 {QStringLiteral("height"), options.height}});
    engine.load(QUrl(QStringLiteral("qrc:/qt/qml/Lathhouse/Ui/StartWindow.qml")));
    auto* window =
        engine.rootObjects().isEmpty() ? nullptr : qobject_cast<QQuickWindow*>(engine.rootObjects().first());
    if (window == nullptr) {
        std::cerr << "lathhouse: the window could not be made; its parts are missing from this build\n";
        return {StartChoice::Left, 1};
    }
    const auto choose = [&answer](StartChoice choice) {
        answer.choice = choice;
        QGuiApplication::exit(0);
    };
    QObject::connect(&start, &models::FirstStartModel::made, window, [&choose] { choose(StartChoice::Made); });
    QObject::connect(&start, &models::FirstStartModel::exampleAsked, window, [&choose] { choose(StartChoice::Example); });
    QTimer wait;
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
                print_test(warnings, start.step() + 1);
                answer.status = warnings.isEmpty() ? answer.status : 1;
            }
            QGuiApplication::exit(0);
        };
        QObject::connect(&wait, &QTimer::timeout, window, [&, finish] {
            if (start.working() || start.place()->working() || !start.place()->known()) {
                return;
            }
            if (options.self_test && start.step() + 1 < models::FirstStartModel::kSteps) {
                window->grabWindow(); // What is open is drawn in whole before it is left.
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
