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
    : SheetModel(parent), log_(std::move(log)), look_(std::move(look)), rows_({"name", "hand"})
{
}

void NightEntryModel::know(std::vector<Spot> spots)
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
        emit spotChanged();
    }
}

bool NightEntryModel::refuse(Answer answer, const QString& why)
{
    wrong_ = answer;
    fail_with(why);
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
        return refuse(Low, lowest.trouble);
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
            return refuse(Station, there.trouble);
        }
        reading.station_low = there.value;
    }
    if (!ago.trimmed().isEmpty()) {
        const auto days = typed_days_ago(ago.trimmed());
        if (!days) {
            return refuse(Ago, tr("Write how many days ago the night ended, 0 to %1.").arg(kLongestDaysAgo));
        }
        reading.night = look_.today - calendar::Days{*days};
    }
    work<void>([log = log_, reading] { return log(reading); },
               [this, reading, name = spot.name](const Result<void>& kept) {
                   if (!kept) {
                       fail(words::phrase("the night could not be kept: %1", words::refusal(kept.error())));
                       return;
                   }
                   say(tr("Kept: %1 at %2, the night to %3. The same night logged again takes its place; Undo above the pages "
                          "takes it back.")
                           .arg(look_.words.temperature(reading.low), name, look_.words.long_date(reading.night)));
                   emit written();
               });
    return true;
}

} // namespace lathhouse::models
