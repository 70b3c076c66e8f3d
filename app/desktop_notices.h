#pragma once

#include "app/models/evening_notice.h"

#include <QDBusConnection>
#include <QObject>
#include <QString>

#include <optional>

namespace lathhouse {

/// Notices by the desktop's own service, org.freedesktop.Notifications on the session bus. The bus is asked for when it
/// is first needed and never started; all calls are asynchronous, and none keeps the window waiting.
/// Source: Desktop Notifications Specification 1.2, "D-BUS Protocol" and "Markup".
class DesktopNotices : public models::NoticeService {
public:
    DesktopNotices();
    ~DesktopNotices() override;

    void look(std::function<void(State)> answer) override;
    void show(const QString& title, const QString& words, std::function<void(const QString&)> answer) override;

private:
    std::optional<QDBusConnection> bus();

    QString name_; ///< Of the connection.
    QObject alive_; ///< Answers that come once it is gone are not heard.
};

} // namespace lathhouse
