#include "app/desktop_notices.h"

#include <QDBusConnectionInterface>
#include <QDBusError>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QFileInfo>
#include <QStringList>
#include <QUuid>
#include <QVariantMap>

#include <utility>

namespace lathhouse {

namespace {

constexpr const char* kService = "org.freedesktop.Notifications";
constexpr const char* kPath = "/org/freedesktop/Notifications";
constexpr int kPatience = 5000; // Milliseconds; an answer to a notice is no human's.

QDBusMessage call_of(const char* method)
{
    return QDBusMessage::createMethodCall(QString::fromLatin1(kService), QString::fromLatin1(kPath),
                                          QString::fromLatin1(kService), QString::fromLatin1(method));
}

QDBusMessage bus_call(const char* method)
{
    return QDBusMessage::createMethodCall(QStringLiteral("org.freedesktop.DBus"), QStringLiteral("/org/freedesktop/DBus"),
                                          QStringLiteral("org.freedesktop.DBus"), QString::fromLatin1(method));
}

/// Asks, and hands the answer to `then` while `alive` is.
template <class Then>
void ask(const QDBusConnection& bus, const QDBusMessage& message, QObject& alive, Then then)
{
    auto* watcher = new QDBusPendingCallWatcher(bus.asyncCall(message, kPatience), &alive);
    QObject::connect(watcher, &QDBusPendingCallWatcher::finished, &alive,
                     [then = std::move(then)](QDBusPendingCallWatcher* done) {
                         done->deleteLater();
                         then(*done);
                     });
}

/// Of the session bus; empty where there is none. Without an address the library would start one, which is not ours to
/// do. Source: D-Bus Specification 0.43, "Well-known Message Bus Instances"; the usual place of systemd's sessions.
QString bus_address()
{
    if (!qEnvironmentVariableIsEmpty("DBUS_SESSION_BUS_ADDRESS")) {
        return qEnvironmentVariable("DBUS_SESSION_BUS_ADDRESS");
    }
    const QString folder = qEnvironmentVariable("XDG_RUNTIME_DIR");
    const QString socket = folder + QStringLiteral("/bus");
    return !folder.isEmpty() && QFileInfo::exists(socket) ? QStringLiteral("unix:path=") + socket : QString{};
}

} // namespace

DesktopNotices::DesktopNotices() : name_(QStringLiteral("lathhouse-") + QUuid::createUuid().toString(QUuid::WithoutBraces))
{
}

DesktopNotices::~DesktopNotices()
{
    QDBusConnection::disconnectFromBus(name_);
}

std::optional<QDBusConnection> DesktopNotices::bus()
{
    const QString address = bus_address();
    if (address.isEmpty()) {
        return std::nullopt;
    }
    auto known = QDBusConnection(name_);
    if (!known.isConnected()) {
        QDBusConnection::disconnectFromBus(name_); // One that broke is made anew.
        known = QDBusConnection::connectToBus(address, name_);
    }
    return known.isConnected() ? std::optional{known} : std::nullopt;
}

void DesktopNotices::look(std::function<void(State)> answer)
{
    const auto on = bus();
    if (!on) {
        answer(State::NoBus);
        return;
    }
    auto owner = bus_call("NameHasOwner");
    owner << QString::fromLatin1(kService);
    ask(*on, owner, alive_, [this, on = *on, answer = std::move(answer)](const QDBusPendingCall& done) {
        const QDBusPendingReply<bool> runs = done;
        if (runs.isError()) {
            answer(State::NoBus);
            return;
        }
        if (runs.value()) {
            answer(State::There);
            return;
        }
        // It may be one that the bus starts when it is called.
        ask(on, bus_call("ListActivatableNames"), alive_, [answer](const QDBusPendingCall& names) {
            const QDBusPendingReply<QStringList> known = names;
            answer(known.isValid() && known.value().contains(QString::fromLatin1(kService)) ? State::There
                                                                                             : State::NoService);
        });
    });
}

void DesktopNotices::show(const QString& title, const QString& words, std::function<void(const QString&)> answer)
{
    const auto on = bus();
    if (!on) {
        answer(QStringLiteral("no session bus"));
        return;
    }
    // Some services read marks in the body and some show them; names of spots may have a < or a &.
    ask(*on, call_of("GetCapabilities"), alive_,
        [this, on = *on, title, words, answer = std::move(answer)](const QDBusPendingCall& done) {
            const QDBusPendingReply<QStringList> can = done;
            if (can.isError()) {
                answer(can.error().message());
                return;
            }
            const bool marks = can.value().contains(QStringLiteral("body-markup"));
            const QVariantMap hints{{QStringLiteral("desktop-entry"), QStringLiteral("lathhouse")},
                                    {QStringLiteral("urgency"), QVariant::fromValue(static_cast<uchar>(1))}};
            auto notify = call_of("Notify");
            notify << QStringLiteral("Lathhouse") << 0U << QStringLiteral("lathhouse") << title
                   << (marks ? words.toHtmlEscaped() : words) << QStringList{} << hints << -1;
            ask(on, notify, alive_, [answer](const QDBusPendingCall& shown) {
                answer(shown.isError() ? shown.error().message() : QString{});
            });
        });
}

} // namespace lathhouse
