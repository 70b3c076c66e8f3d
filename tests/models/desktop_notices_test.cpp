#include "app/desktop_notices.h"

#include <QCoreApplication>
#include <QDBusConnection>
#include <QFile>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include <optional>

namespace lathhouse {
namespace {

/// A desktop's service of notices, which notes what it is asked to show.
class NoticesOnABus : public QObject {
    Q_OBJECT
    Q_CLASSINFO("D-Bus Interface", "org.freedesktop.Notifications")

public:
    QStringList capabilities{"body"};
    QStringList titles;
    QStringList bodies;
    QVariantMap hints;

public slots:
    QStringList GetCapabilities() { return capabilities; }
    uint Notify(const QString&, uint, const QString&, const QString& summary, const QString& body, const QStringList&,
                const QVariantMap& given, int)
    {
        titles.append(summary);
        bodies.append(body);
        hints = given;
        return 7;
    }
};

/// A session bus of its own, as the daemon of a desktop makes it.
class DesktopNoticesTest : public testing::Test {
protected:
    void SetUp() override
    {
        if (QCoreApplication::instance() == nullptr) {
            static int count = 1;
            static char name[] = "notices_test";
            static char* arguments[] = {name, nullptr};
            static QCoreApplication application(count, arguments);
        }
        qunsetenv("DBUS_SESSION_BUS_ADDRESS");
        qputenv("XDG_RUNTIME_DIR", folder.path().toUtf8());
        const QString daemon = QStandardPaths::findExecutable("dbus-daemon");
        ASSERT_FALSE(daemon.isEmpty()) << "dbus-daemon (tests/packages.txt) is missing";
        QFile config(folder.filePath("bus.conf"));
        ASSERT_TRUE(config.open(QIODevice::WriteOnly));
        config.write(("<busconfig><type>session</type><listen>unix:dir=" + folder.path() +
                      "</listen><policy context=\"default\"><allow send_destination=\"*\" eavesdrop=\"true\"/>"
                      "<allow eavesdrop=\"true\"/><allow own=\"*\"/></policy></busconfig>")
                         .toUtf8());
        config.close();
        bus.start(daemon, {"--config-file=" + config.fileName(), "--nofork", "--print-address"});
        ASSERT_TRUE(bus.waitForStarted());
        ASSERT_TRUE(bus.waitForReadyRead());
        address = bus.readLine().trimmed();
        ASSERT_FALSE(address.isEmpty());
    }
    void TearDown() override
    {
        QDBusConnection::disconnectFromBus("desk");
        qunsetenv("DBUS_SESSION_BUS_ADDRESS");
        bus.kill();
        bus.waitForFinished();
    }
    void offer(NoticesOnABus& service)
    {
        auto desk = QDBusConnection::connectToBus(QString::fromUtf8(address), "desk");
        ASSERT_TRUE(desk.isConnected());
        ASSERT_TRUE(desk.registerObject("/org/freedesktop/Notifications", &service, QDBusConnection::ExportAllSlots));
        ASSERT_TRUE(desk.registerService("org.freedesktop.Notifications"));
    }
    static models::NoticeService::State state_of(DesktopNotices& notices)
    {
        std::optional<models::NoticeService::State> answered;
        notices.look([&](models::NoticeService::State state) { answered = state; });
        EXPECT_TRUE(QTest::qWaitFor([&] { return answered.has_value(); }, 20'000));
        return *answered;
    }
    static std::optional<QString> shown(DesktopNotices& notices, const QString& title, const QString& words)
    {
        std::optional<QString> answered;
        notices.show(title, words, [&](const QString& trouble) { answered = trouble; });
        EXPECT_TRUE(QTest::qWaitFor([&] { return answered.has_value(); }, 20'000));
        return answered;
    }
    QTemporaryDir folder;
    QProcess bus;
    QByteArray address;
};

TEST_F(DesktopNoticesTest, WithoutABusThereIsNone)
{
    DesktopNotices notices;
    EXPECT_EQ(state_of(notices), models::NoticeService::State::NoBus);
    EXPECT_FALSE(shown(notices, "a", "b")->isEmpty());
    qputenv("DBUS_SESSION_BUS_ADDRESS", "unix:path=/no/such/bus");
    EXPECT_EQ(state_of(notices), models::NoticeService::State::NoBus);
}

TEST_F(DesktopNoticesTest, ABusWithoutAServiceSaysSo)
{
    qputenv("DBUS_SESSION_BUS_ADDRESS", address);
    DesktopNotices notices;
    EXPECT_EQ(state_of(notices), models::NoticeService::State::NoService);
    EXPECT_FALSE(shown(notices, "a", "b")->isEmpty());
}

TEST_F(DesktopNoticesTest, TheServiceIsHandedTheSentences)
{
    qputenv("DBUS_SESSION_BUS_ADDRESS", address);
    NoticesOnABus service;
    offer(service);
    DesktopNotices notices;
    EXPECT_EQ(state_of(notices), models::NoticeService::State::There);
    const auto trouble = shown(notices, "Carry two plants in this evening", "Tonight < 2 & falling");
    EXPECT_TRUE(trouble->isEmpty()) << trouble->toStdString();
    EXPECT_EQ(service.titles, QStringList{"Carry two plants in this evening"});
    EXPECT_EQ(service.bodies, QStringList{"Tonight < 2 & falling"});
    EXPECT_EQ(service.hints.value("desktop-entry").toString(), "lathhouse");
    EXPECT_EQ(service.hints.value("urgency").toInt(), 1);
}

TEST_F(DesktopNoticesTest, NamesAreNoMarksWhereMarksAreRead)
{
    qputenv("DBUS_SESSION_BUS_ADDRESS", address);
    NoticesOnABus service;
    service.capabilities = {"body", "body-markup"};
    offer(service);
    DesktopNotices notices;
    ASSERT_TRUE(shown(notices, "Title", "Porch <b> & rail")->isEmpty());
    EXPECT_EQ(service.bodies, QStringList{"Porch &lt;b&gt; &amp; rail"});
}

TEST_F(DesktopNoticesTest, AnAnswerAfterItIsGoneIsNotHeard)
{
    qputenv("DBUS_SESSION_BUS_ADDRESS", address);
    NoticesOnABus service;
    offer(service);
    bool heard = false;
    {
        DesktopNotices notices;
        notices.show("Title", "Words", [&](const QString&) { heard = true; });
    }
    QCoreApplication::processEvents();
    QTest::qWait(50);
    EXPECT_FALSE(heard);
}

} // namespace
} // namespace lathhouse

#include "desktop_notices_test.moc"
