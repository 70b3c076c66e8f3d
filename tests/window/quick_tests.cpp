#include <QQmlEngine>
#include <QQmlFileSelector>
#include <QtQuickTest>

namespace {

/// The engine of the tests finds the modules where the program has them.
class Setup : public QObject {
    Q_OBJECT

public slots:
    void qmlEngineAvailable(QQmlEngine* engine)
    {
        new QQmlFileSelector(engine, engine);
        engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    }
};

} // namespace

QUICK_TEST_MAIN_WITH_SETUP(lathhouse_window, Setup)

#include "quick_tests.moc"
