#include "app/models/tonight_model.h"

#include "app/models/typed_number.h"
#include "app/words/phrase.h"

#include <chrono>

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

calendar::Instant now()
{
    return std::chrono::floor<std::chrono::seconds>(std::chrono::system_clock::now());
}

TonightModel::TonightModel(HouseholdDoor door, TodayLook look, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), look_(std::move(look)),
      plants_({"plant", "spot", "spotColour", "chance", "damageLine", "what", "carry", "lowAt", "middleAt", "highAt",
               "lineAt", "sentence"}),
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
        [load = door_.load, look = look_] {
            return load().transform([&](const plan::HouseholdFacts& facts) { return tonight_facts(facts, look); });
        },
        [this](Result<TonightFacts> made) {
            if (!made) {
                fail(made.error().message);
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

bool TonightModel::keepForecast(const QString& low, int sky)
{
    clear_error();
    const auto typed = typed_temperature(low, look_.words);
    if (!typed.value) {
        fail_with(typed.trouble);
        return false;
    }
    const home::KeptForecast forecast{look_.today, look_.today + calendar::Days{1}, *typed.value,
                                      weather_of_chip(sky), std::nullopt, now()};
    work<bool>(
        [keep = door_.keep_forecast, forecast]() -> Result<bool> {
            const auto kept = keep(forecast);
            return kept ? Result<bool>{true} : Result<bool>{kept.error()};
        },
        [this, forecast](const Result<bool>& kept) {
            if (!kept) {
                fail(words::phrase("the forecast could not be kept: %1", kept.error().message));
                return;
            }
            say(tr("Kept: a forecast of %1 for tonight. It is not taken back from here; a number typed later "
                   "today counts instead.")
                    .arg(look_.words.temperature(forecast.low)));
            emit written();
            read();
        });
    return true;
}

} // namespace lathhouse::models
