#include "app/models/night_entry_model.h"

#include "app/clock.h"
#include "app/models/days_ago.h"
#include "app/models/tonight_model.h"
#include "app/models/typed_number.h"
#include "app/words/phrase.h"
#include "app/words/refusal.h"

#include <algorithm>
#include <utility>

namespace lathhouse::models {

NightEntryModel::NightEntryModel(std::function<Result<void>(const home::Reading&)> log, TodayLook look, QObject* parent)
    : SheetModel(parent), log_(std::move(log)), look_(std::move(look)), rows_({"name", "hand"}),
      readings_({"date", "low", "high", "station", "sky", "note", "sentence"})
{
}

void NightEntryModel::know(std::vector<Spot> spots, std::vector<home::Reading> readings)
{
    known_readings_ = std::move(readings);
    show_spots(std::move(spots));
    show_readings();
}

void NightEntryModel::show_spots(std::vector<Spot> spots)
{
    if (spots == known_spots_) {
        return;
    }
    const auto chosen = known_spots_.empty() ? home::SpotId{} : known_spots_[static_cast<std::size_t>(spot_)].id;
    known_spots_ = std::move(spots);
    const auto found = std::ranges::find(known_spots_, chosen, &Spot::id);
    spot_ = found == known_spots_.end() ? 0 : static_cast<int>(found - known_spots_.begin());
    std::vector<SheetRows::Row> rows;
    for (const auto& spot : known_spots_) {
        rows.push_back({spot.name, spot.hand});
    }
    rows_.show(std::move(rows));
    emit spotChanged();
}

void NightEntryModel::setSpot(int spot)
{
    if (spot != spot_ && spot >= 0 && spot < static_cast<int>(known_spots_.size())) {
        spot_ = spot;
        all_ = false;
        mended_.reset();
        emit spotChanged();
        show_readings();
    }
}

void NightEntryModel::setListed(bool listed)
{
    if (listed != listed_) {
        listed_ = listed;
        all_ = false;
        show_readings();
    }
}

void NightEntryModel::listAll()
{
    all_ = true;
    show_readings();
}

std::vector<const home::Reading*> NightEntryModel::of_spot() const
{
    std::vector<const home::Reading*> nights;
    if (known_spots_.empty()) {
        return nights;
    }
    for (auto reading = known_readings_.rbegin(); reading != known_readings_.rend(); ++reading) {
        if (reading->spot == known_spots_[static_cast<std::size_t>(spot_)].id) {
            nights.push_back(&*reading);
        }
    }
    return nights;
}

QString NightEntryModel::kept() const
{
    if (known_spots_.empty()) {
        return {};
    }
    const QString& name = known_spots_[static_cast<std::size_t>(spot_)].name;
    const int count = static_cast<int>(of_spot().size());
    return count == 0   ? tr("No night is kept of %1 yet.").arg(name)
           : count == 1 ? tr("One night is kept of %1.").arg(name)
                        : tr("%1 nights are kept of %2.").arg(look_.words.whole(count), name);
}

int NightEntryModel::more() const
{
    return listed_ ? static_cast<int>(of_spot().size()) - readings_.count() : 0;
}

void NightEntryModel::show_readings()
{
    std::vector<SheetRows::Row> rows;
    if (listed_) {
        const auto nights = of_spot();
        const std::size_t most = all_ ? nights.size() : std::min<std::size_t>(nights.size(), kFirstShown);
        for (std::size_t at = 0; at < most; ++at) {
            const auto& of = *nights[at];
            const auto degrees = [this](const std::optional<Celsius>& value) { return value ? look_.words.temperature(*value) : QString{}; };
            const auto kind = climate::kind_of(of.weather);
            const QString sky = kind == climate::NightKind::ClearCalm ? tr("clear, calm")
                                : kind == climate::NightKind::Other   ? tr("cloud or wind")
                                                                      : QString{};
            const QString date = look_.words.date_with_year(of.night);
            QStringList said{tr("Night to %1: low %2").arg(date, degrees(of.low))};
            if (of.high) {
                said.append(tr("high %1").arg(degrees(of.high)));
            }
            if (of.station_low) {
                said.append(tr("at the station %1").arg(degrees(of.station_low)));
            }
            for (const QString& part : {sky, text(of.note)}) {
                if (!part.isEmpty()) {
                    said.append(part);
                }
            }
            rows.push_back({date, degrees(of.low), degrees(of.high), degrees(of.station_low), sky, text(of.note), said.join(QStringLiteral(", "))});
        }
    }
    readings_.show(std::move(rows));
    emit readingsChanged();
}

QVariantMap NightEntryModel::mend(int row)
{
    const auto nights = of_spot();
    if (row < 0 || row >= readings_.count()) {
        return {};
    }
    clear_error();
    say({});
    mended_ = *nights[static_cast<std::size_t>(row)];
    const auto degrees = [this](const std::optional<Celsius>& value) { return value ? look_.words.bare(*value) : QString{}; };
    const auto kind = climate::kind_of(mended_->weather);
    return {{QStringLiteral("low"), degrees(mended_->low)},
            {QStringLiteral("high"), degrees(mended_->high)},
            {QStringLiteral("station"), degrees(mended_->station_low)},
            {QStringLiteral("sky"), kind == climate::NightKind::ClearCalm ? 1 : kind == climate::NightKind::Other ? 2 : 0},
            {QStringLiteral("ago"), QString::number(calendar::days_between(mended_->night, look_.today))},
            {QStringLiteral("note"), text(mended_->note)}};
}

void NightEntryModel::keep_what_was_not_touched(home::Reading& reading, const QString& low, const QString& high, const QString& station,
                                                int sky) const
{
    if (!mended_ || mended_->spot != reading.spot) {
        return;
    }
    const auto as_shown = [this](const QString& typed, const std::optional<Celsius>& was) { return was && typed.trimmed() == look_.words.bare(*was); };
    if (as_shown(low, mended_->low)) {
        reading.low = mended_->low;
    }
    if (as_shown(high, mended_->high)) {
        reading.high = mended_->high;
    }
    if (as_shown(station, mended_->station_low)) {
        reading.station_low = mended_->station_low;
    }
    if (climate::kind_of(weather_of_chip(sky)) == climate::kind_of(mended_->weather)) {
        reading.weather = mended_->weather; // Which of cloud and wind it was.
    }
}

bool NightEntryModel::refuse(Answer answer, const QString& why, const QString& instead)
{
    wrong_ = answer;
    fail_with(why, instead);
    return false;
}

bool NightEntryModel::keep(const QString& low, const QString& high, const QString& station, int sky, const QString& ago,
                           const QString& note)
{
    clear_error();
    say({});
    wrong_ = None;
    if (known_spots_.empty()) {
        return false;
    }
    const auto lowest = typed_temperature(low, look_.words);
    if (!lowest.value) {
        return refuse(Low, lowest.trouble, lowest.instead);
    }
    const auto& spot = known_spots_[static_cast<std::size_t>(spot_)];
    home::Reading reading{spot.id, look_.today, *lowest.value, {}, weather_of_chip(sky), {}, now(), note.trimmed().toStdString()};
    if (!high.trimmed().isEmpty()) {
        reading.high = typed_degrees(high, look_.words);
        if (!reading.high || *reading.high > home::kWarmestLogged) {
            return refuse(High, tr("“%1” is no temperature of the air.").arg(high.trimmed()));
        }
        if (*reading.high < reading.low) {
            return refuse(High, tr("The high lies below the low; exchange the two."));
        }
    }
    if (!station.trimmed().isEmpty()) {
        const auto there = typed_temperature(station, look_.words);
        if (!there.value) {
            return refuse(Station, there.trouble, there.instead);
        }
        reading.station_low = there.value;
    }
    keep_what_was_not_touched(reading, low, high, station, sky);
    if (!ago.trimmed().isEmpty()) {
        const auto days = typed_days_ago(ago.trimmed());
        if (!days) {
            return refuse(Ago, tr("Write how many days ago the night ended, 0 to %1.").arg(kLongestDaysAgo));
        }
        reading.night = look_.today - calendar::Days{*days};
    }
    if (spot.usual_lows) {
        const auto usual = home::of_night(*spot.usual_lows, reading.night);
        if (const Slip slip = slip_of_low(reading.low, usual, look_.words); !slip.trouble.isEmpty()) {
            return refuse(Low, slip.trouble, slip.instead);
        }
    }
    work<void>([log = log_, reading] { return log(reading); },
               [this, reading, name = spot.name](const Result<void>& kept) {
                   if (!kept) {
                       fail(words::phrase("the night could not be kept: %1", words::refusal(kept.error())));
                       return;
                   }
                   mended_.reset();
                   say(tr("Kept: %1 at %2, the night to %3. The same night logged again takes its place; Undo above the pages "
                          "takes it back.")
                           .arg(look_.words.temperature(reading.low), name, look_.words.long_date(reading.night)));
                   emit written();
               });
    return true;
}

} // namespace lathhouse::models
