#include "app/models/evening_notice.h"

namespace lathhouse::models {

namespace {

constexpr const char* kWantedKey = "evening_notice";
constexpr const char* kSaidKey = "evening_notice_of"; // The day of the last one.

} // namespace

EveningNotice::EveningNotice(std::shared_ptr<KeptSettings> kept, std::unique_ptr<NoticeService> service, QDate today,
                             std::function<QDateTime()> clock, QObject* parent)
    : QObject(parent), kept_(std::move(kept)), service_(std::move(service)), today_(today), clock_(std::move(clock)),
      wanted_(kept_->is(kWantedKey))
{
}

void EveningNotice::setWanted(bool wanted)
{
    if (wanted == wanted_) {
        return;
    }
    wanted_ = wanted;
    kept_->keep(kWantedKey, wanted ? QStringLiteral("true") : QStringLiteral("false"));
    emit wantedChanged();
    if (wanted) {
        look();
        remind();
    }
}

QString EveningNotice::standing() const
{
    switch (state_) {
    case NoticeService::State::NoBus:
        return tr("Nothing comes of it here: no desktop is reached from this window.");
    case NoticeService::State::NoService:
        return tr("Nothing comes of it here: the desktop has nothing that shows notices.");
    case NoticeService::State::There:
        break;
    }
    return trouble_.isEmpty() ? QString{}
                              : tr("The desktop did not show it (%1); it is tried again this evening.").arg(trouble_);
}

void EveningNotice::look()
{
    service_->look([this](NoticeService::State state) {
        if (state != state_) {
            state_ = state;
            emit standingChanged();
        }
    });
}

void EveningNotice::know(const QString& title, const QString& words)
{
    title_ = title;
    words_ = words;
    remind();
}

void EveningNotice::remind()
{
    const QDateTime now = clock_();
    if (!wanted_ || said_ || title_.isEmpty() || now.date() != today_ || now.time().hour() < kFromHour) {
        return;
    }
    const QString evening = today_.toString(Qt::ISODate);
    kept_->refresh(); // Another window may have said it.
    if (kept_->value(kSaidKey).toString() == evening) {
        said_ = true;
        return;
    }
    // Noted before it is shown: rather none than two, should the desktop answer late or the window be closed meanwhile.
    said_ = true;
    kept_->keep(kSaidKey, evening);
    service_->show(title_, words_, [this](const QString& trouble) {
        if (!trouble.isEmpty()) {
            said_ = false;
            kept_->keep(kSaidKey, QString{});
        }
        stand(trouble);
    });
}

void EveningNotice::stand(const QString& trouble)
{
    if (trouble != trouble_) {
        trouble_ = trouble;
        emit standingChanged();
    }
}

} // namespace lathhouse::models
