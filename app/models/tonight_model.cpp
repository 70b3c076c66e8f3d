#include "app/models/tonight_model.h"

#include "app/clock.h"
#include "app/models/days_ago.h"
#include "app/models/typed_number.h"
#include "app/models/typed_path.h"
#include "app/words/phrase.h"
#include "app/words/refusal.h"
#include "core/base/csv.h"
#include "core/home/night_log_file.h"

#include <algorithm>
#include <chrono>
#include <utility>

namespace lathhouse::models {

climate::NightWeather weather_of_chip(int sky)
{
    switch (sky) {
    case 1:
        return {climate::Sky::Clear, climate::Wind::Calm};
    case 2: // Cloud or wind alone makes it another night; which of the two is not kept apart.
        return {climate::Sky::Cloudy, std::nullopt};
    default:
        return {};
    }
}

TonightModel::TonightModel(HouseholdDoor door, TodayLook look, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), look_(std::move(look)),
      plants_({"plant", "spot", "spotColour", "chance", "damageLine", "what", "carry", "lowAt", "middleAt", "highAt",
               "lineAt", "sentence", "plantId", "shelter", "order"}),
      nights_({"date", "middle", "spread", "basis", "sentence"}), week_({"date", "what", "whom", "sentence"})
{
}

QString TonightModel::line() const
{
    if (!known()) {
        return {};
    }
    if (!facts_.has_spot) {
        return tr("No outdoor spot.");
    }
    return tr("Tonight %1 %2, %3. %4").arg(facts_.low, facts_.where, facts_.spread, facts_.carry_head);
}

void TonightModel::read()
{
    work<TonightFacts>(
        [load = door_.load, look = look_, choice = choice_] {
            return load().transform([&](const plan::HouseholdFacts& facts) { return tonight_facts(facts, look, choice); });
        },
        [this](Result<TonightFacts> made) {
            if (!made) {
                fail(made.error());
                return;
            }
            facts_ = std::move(*made);
            plants_.show(std::move(facts_.plants));
            nights_.show(std::move(facts_.nights));
            week_.show(std::move(facts_.week));
            set_known();
            emit tonightChanged();
        });
}

void TonightModel::setDays(int days)
{
    constexpr int kFewest = 7;
    constexpr int kMost = 60; // As `lathhouse round --days`.
    days = std::clamp(days, kFewest, kMost);
    if (days != choice_.days) {
        choice_.days = days;
        emit daysChanged();
        follow();
    }
}

void TonightModel::setRiskStop(int stop)
{
    if (stop >= 0 && stop < static_cast<int>(std::size(kRiskStops)) && stop != risk_stop_) {
        risk_stop_ = stop;
        choice_.risk = risk_at(stop);
        emit riskChanged();
        follow();
    }
}

bool TonightModel::keepForecast(const QString& low, int sky, int wind, const QString& dew_point)
{
    clear_error();
    const auto typed = typed_temperature(low, look_.words);
    if (!typed.value) {
        fail_with(typed.trouble, typed.instead);
        return false;
    }
    if (const auto& nights = facts_.ten.nights; !nights.empty()) {
        // The last of the ten is by the season, or by a forecast that is not typed here.
        if (const Slip slip = slip_of_low(*typed.value, nights.back().low50, look_.words); !slip.trouble.isEmpty()) {
            fail_with(slip.trouble, slip.instead);
            return false;
        }
    }
    std::optional<Celsius> dew;
    if (!dew_point.trimmed().isEmpty()) {
        const auto typed_dew = typed_temperature(dew_point, look_.words);
        if (!typed_dew.value) {
            fail_with(tr("The dew point: %1").arg(typed_dew.trouble));
            return false;
        }
        dew = typed_dew.value;
    }
    climate::NightWeather weather;
    if (sky == 1 || sky == 2) {
        weather.sky = sky == 1 ? climate::Sky::Clear : climate::Sky::Cloudy;
    }
    if (wind == 1 || wind == 2) {
        weather.wind = wind == 1 ? climate::Wind::Calm : climate::Wind::Windy;
    }
    const home::KeptForecast forecast{look_.today, look_.today + calendar::Days{1}, *typed.value, weather, dew, now()};
    keep([forecast] { return Result<std::vector<home::KeptForecast>>{std::vector{forecast}}; },
         [this, forecast](std::size_t) {
             return tr("Kept: a forecast of %1 for tonight. It is not taken back from here; a number typed later "
                       "today counts instead.")
                 .arg(look_.words.temperature(forecast.low));
         });
    return true;
}

bool TonightModel::keepForecastFile(const QString& path, const QString& columns, const QString& days_ago)
{
    clear_error();
    const auto days = typed_days_ago(days_ago.trimmed());
    if (!days) {
        fail_with(tr("Write how many days ago the forecast was made, 0 to %1.").arg(kLongestDaysAgo));
        return false;
    }
    const QString file = whole_path(path);
    if (file.isEmpty()) {
        fail_with(tr("Say which file has the forecast."));
        return false;
    }
    keep(
        [file = to_path(file), columns = columns.trimmed().toStdString(), today = look_.today,
         made = look_.today - calendar::Days{*days}]() -> Result<std::vector<home::KeptForecast>> {
            const auto names = columns.empty() ? Result<std::vector<ColumnName>>{std::vector<ColumnName>{}}
                                               : parse_column_names(columns, home::kForecastColumns);
            if (!names) {
                return names.error();
            }
            const auto text = read_text_file(file);
            if (!text) {
                return text.error();
            }
            auto forecasts = NamedRows::parse(*text, file.filename().string(), home::kForecastColumns, *names)
                                 .and_then([&](const NamedRows& rows) { return home::forecast_from(rows, made, now()); });
            if (forecasts && std::ranges::any_of(*forecasts, [&](const auto& of) { return of.issued > today; })) {
                return Error{ErrorCode::OutOfRange, words::phrase("%1 has a forecast that was made after today", file.filename().string())};
            }
            return forecasts;
        },
        [this](std::size_t count) {
            return count == 1 ? tr("Kept: a forecast of 1 night. One read later today counts instead.")
                              : tr("Kept: a forecast of %1 nights. One read later today counts instead.").arg(count);
        });
    return true;
}

void TonightModel::keep(std::function<Result<std::vector<home::KeptForecast>>()> forecasts,
                        std::function<QString(std::size_t)> kept)
{
    work<std::size_t>(
        [keep = door_.keep_forecasts, forecasts = std::move(forecasts)]() -> Result<std::size_t> {
            const auto read = forecasts();
            if (!read) {
                return read.error();
            }
            const auto done = keep(*read);
            return done ? Result<std::size_t>{read->size()} : Result<std::size_t>{done.error()};
        },
        [this, kept = std::move(kept)](const Result<std::size_t>& count) {
            if (!count) {
                fail(words::phrase("the forecast could not be kept: %1", words::refusal(count.error())));
                return;
            }
            say(kept(*count));
            emit written();
            read();
        });
}

} // namespace lathhouse::models
