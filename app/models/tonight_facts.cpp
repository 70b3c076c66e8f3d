#include "app/models/tonight_facts.h"

#include "app/models/round_rows.h"
#include "app/models/word_form.h"
#include "app/words/round_words.h"
#include "app/words/tonight_words.h"
#include "core/home/learned_offset.h"
#include "core/plan/whereabouts.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>
#include <tuple>

namespace lathhouse::models {

namespace {

constexpr int kWeek = 7;
constexpr std::string_view kCarriedIn = "tonight/"; ///< With what the keys of those tasks begin.
constexpr std::size_t kMostMarks = 4;
constexpr std::size_t kMostOfWeek = 12; ///< Lines; more days have as many more.

bool stands_outdoors(const plan::PlantNight& of)
{
    return of.reason != plan::NightReason::RoomHolds && of.reason != plan::NightReason::RoomTooCold;
}

/// The coming nights, each with its forecast where one is kept; else the season alone speaks.
std::vector<plan::NightAhead> nights_ahead(const home::NightLog& log, calendar::Date today)
{
    const auto forecast = plan::nights_of_forecast(log.forecasts, today);
    std::vector<plan::NightAhead> nights;
    for (int day = 1; day <= plan::kNightsAhead; ++day) {
        const auto night = today + calendar::Days{day};
        const auto known = std::ranges::find(forecast, night, &plan::NightAhead::night);
        nights.push_back(known != forecast.end() ? *known : plan::NightAhead{.night = night});
    }
    return nights;
}

/// The outdoor spot at which most plants stand, else the most sheltered one.
const home::Spot* spot_of_tonight(const home::Household& household)
{
    const auto plants_at = [&](const home::Spot& spot) {
        return std::ranges::count(household.plants, std::optional{spot.id}, &home::Plant::spot);
    };
    const home::Spot* best = nullptr;
    for (const auto& spot : household.spots) {
        if (!home::is_outdoors(spot.kind)) {
            continue;
        }
        const auto is_better = [&] {
            const auto here = plants_at(spot);
            const auto there = plants_at(*best);
            return here != there ? here > there : spot.offset.mean > best->offset.mean;
        };
        if (best == nullptr || is_better()) {
            best = &spot;
        }
    }
    return best;
}

class Tonight {
    Q_DECLARE_TR_FUNCTIONS(TonightFacts)

public:
    Tonight(const plan::HouseholdFacts& facts, const TodayLook& look, const TonightChoice& choice)
        : facts_(facts), evening_(put_back(facts.as_told, facts.events, look.today, kCarriedIn)), look_(look), choice_(choice), words_(look.words), season_(facts.climate.nights()),
          ahead_(nights_ahead(facts.log, look.today)),
          parts_(plan::round_parts(facts, season_, look.today, plan::kUsualRisk)),
          plans_(plan::plan_nights(evening_, facts.log, season_, ahead_, look.today, choice.risk, &*parts_.place_nights)), spot_(spot_of_tonight(evening_))
    {
    }

    TonightFacts all()
    {
        shown_.has_forecast = ahead_.front().forecast.has_value();
        say_missing();
        if (spot_ != nullptr) {
            shown_.has_spot = true;
            add_nights();
            say_low();
            add_marks();
        }
        add_plants();
        add_spots();
        say_carries();
        add_week();
        return std::move(shown_);
    }

private:
    struct Ends {
        Celsius low, middle, high;
    };
    climate::NightOffset offset_at(const home::Spot& spot, const plan::NightAhead& ahead) const
    {
        return home::offset_of(spot, facts_.log, season_).of_night(climate::kind_of(ahead.weather));
    }
    Ends ends_at(const home::Spot& spot) const
    {
        const auto offset = offset_at(spot, ahead_.front());
        const auto& outlook = plans_.front().outlook;
        return {outlook.quantile(Probability::literal(0.05), offset), outlook.quantile(Probability::literal(0.5), offset),
                outlook.quantile(Probability::literal(0.95), offset)};
    }
    QString chance(Probability of) const { return YearWords::chance(of); }
    const home::Plant& plant(home::PlantId id) const { return *evening_.plant(id); }
    QString night_name(calendar::Date night) const
    {
        return night == look_.today + calendar::Days{1} ? tr("tonight")
                                                        : tr("in the night to %1").arg(words_.short_date(night));
    }

    void say_missing()
    {
        if (spot_ == nullptr) { // Nothing is asked for then.
            return;
        }
        const auto known = std::ranges::count_if(ahead_, [](const auto& night) { return night.forecast.has_value(); });
        if (known == 0) {
            shown_.missing = tr("No forecast is kept, so these nights are what the season usually brings and "
                                "nothing is said about carrying in. Type tonight’s low below, or take a file with "
                                "ten nights.");
        } else if (!shown_.has_forecast) {
            shown_.missing = tr("The forecast has no low for tonight. Type it below.");
        } else if (known < plan::kNightsAhead) {
            shown_.missing = tr("Forecast for %1 of ten nights; the paler ones are what the season usually brings. "
                                "More come in with a file.")
                                 .arg(known);
        }
    }

    void add_nights()
    {
        for (const auto& plan : plans_) {
            const auto offset = offset_at(*spot_, plan.ahead);
            const auto low = [&](Probability share) { return plan.outlook.quantile(share, offset); };
            ComingNight night{.night = plan.ahead.night,
                              .low5 = low(Probability::literal(0.05)),
                              .low25 = low(Probability::literal(0.25)),
                              .low50 = low(Probability::literal(0.5)),
                              .low75 = low(Probability::literal(0.75)),
                              .low95 = low(Probability::literal(0.95)),
                              .forecast = plan.ahead.forecast.has_value(),
                              .day = words_.short_date(plan.ahead.night).section(QLatin1Char(' '), 0, 0)};
            const QString date = words_.short_date(night.night);
            const QString basis = night.forecast ? tr("forecast") : tr("season alone");
            const QString spread = tr("%1 to %2").arg(words_.bare(night.low5), words_.bare(night.low95));
            shown_.nights.push_back({date, words_.temperature(night.low50), spread, basis,
                                     tr("%1: middle low %2, 9 in 10: %3, %4")
                                         .arg(date, words_.temperature(night.low50), spread, basis)});
            shown_.ten.nights.push_back(std::move(night));
        }
        shown_.chart_title = tr("Night lows at %1, next ten nights, %2").arg(text(spot_->name), words_.unit());
        shown_.chart_note = tr("A night is named by its morning. Box: half of such nights; line: 9 in 10. "
                               "Key T: the same as a table.");
    }

    void say_low()
    {
        const auto& tonight = shown_.ten.nights.front();
        shown_.low = words_.temperature(tonight.low50);
        shown_.where = tr("at %1").arg(text(spot_->name));
        shown_.spread = (shown_.has_forecast ? tr("9 nights in 10 like this: %1 to %2") : tr("by the season, 9 in 10: %1 to %2"))
                            .arg(words_.bare(tonight.low5), words_.bare(tonight.low95));
        const auto offset = home::offset_of(*spot_, facts_.log, season_);
        const auto of_night = offset_at(*spot_, ahead_.front());
        QString against = text(words::against_open_air(of_night.mean, unit_system_of(words_)));
        against = offset.nights > 0 ? tr("%1 there, from %2 logged nights").arg(against).arg(offset.nights)
                                    : tr("%1 there, a guess until nights are logged").arg(against);
        if (const auto& forecast = ahead_.front().forecast) {
            const QString sky = climate::kind_of(ahead_.front().weather) == climate::NightKind::ClearCalm
                                    ? tr(", clear and calm")
                                : climate::kind_of(ahead_.front().weather) == climate::NightKind::Other
                                    ? tr(", cloud or wind")
                                    : QString{};
            shown_.why = tr("Forecast %1%2; with the season weighed in, the open air has %3; nights are %4.")
                             .arg(words_.temperature(forecast->low), sky, words_.temperature(tonight.low50 - of_night.mean), against);
        } else {
            shown_.why = tr("Nights are %1.").arg(against);
        }
    }

    void add_marks()
    {
        std::vector<std::pair<Celsius, QStringList>> lines;
        for (const auto& plant : evening_.plants) {
            if (plant.spot != spot_->id) {
                continue;
            }
            const auto known = std::ranges::find(lines, plant.lines.damage_begins, &std::pair<Celsius, QStringList>::first);
            if (known != lines.end()) {
                known->second.append(text(plant.name));
            } else {
                lines.push_back({plant.lines.damage_begins, {text(plant.name)}});
            }
        }
        std::ranges::sort(lines, std::greater{}, &std::pair<Celsius, QStringList>::first);
        for (const auto& [line, names] : lines) {
            if (shown_.ten.marks.size() == kMostMarks) {
                break;
            }
            const auto others = names.size() - 1;
            shown_.ten.marks.push_back({line, others == 0 ? names.front() : tr("%1 and %2 more").arg(names.front()).arg(others),
                                        others == 0 ? names.front() : tr("%1 +%2").arg(names.front()).arg(others)});
        }
    }

    void add_plants()
    {
        std::vector<const plan::PlantNight*> outdoors;
        for (const auto& of : plans_.front().plants) {
            if (stands_outdoors(of)) {
                outdoors.push_back(&of);
            }
        }
        std::ranges::stable_sort(outdoors, [](const auto* a, const auto* b) {
            return std::tuple{!a->carry_in, -a->damage.fraction()} < std::tuple{!b->carry_in, -b->damage.fraction()};
        });
        double coldest = 0.0;
        double warmest = 0.0;
        for (const auto* of : outdoors) {
            const auto ends = ends_at(*evening_.spot(of->spot));
            const double line = words_.shown(plant(of->plant).lines.damage_begins);
            const bool first = of == outdoors.front();
            coldest = std::min({first ? line : coldest, line, words_.shown(ends.low)});
            warmest = std::max({first ? line : warmest, line, words_.shown(ends.high)});
        }
        const double step = words_.fahrenheit() ? 10.0 : 5.0;
        coldest = std::floor((coldest - 0.5) / step) * step;
        warmest = std::ceil((warmest + 0.5) / step) * step;
        ruler_ = {coldest, warmest};
        const auto place = [&](Celsius value) { return place_of(words_.shown(value)); };
        const double zero = place(Celsius::from_degrees(0.0));
        if (!outdoors.empty()) {
            shown_.ruler = {words_.whole(static_cast<int>(coldest)), words_.whole(static_cast<int>(warmest))};
            shown_.ruler_zero = zero > 0.0 && zero < 1.0 ? zero : -1.0;
            for (double mark = coldest; mark <= warmest; mark += step) {
                add_tick(mark);
            }
            if (words_.fahrenheit() && shown_.ruler_zero >= 0.0) {
                add_tick(words_.shown(Celsius::from_degrees(0.0)));
            }
        }
        for (const auto* of : outdoors) {
            const auto& pot = plant(of->plant);
            const auto& spot = *evening_.spot(of->spot);
            const auto ends = ends_at(spot);
            const QString line = words_.temperature(pot.lines.damage_begins);
            const bool carry = of->carry_in && shown_.has_forecast;
            shown_.carries += carry ? 1 : 0;
            const QString what = carry ? (pot.pinned_spot ? tr("carry in, though kept there by hand") : tr("carry in"))
                                 : shown_.has_forecast ? tr("may stay")
                                                       : tr("by the season alone");
            const QString why = text(words::why(*of, ahead_.front(), evening_, unit_system_of(words_)));
            const auto to = plan::shelter_of(of->plant, parts_.plan.plants, evening_, look_.today);
            const QString shelter = carry && to ? text(evening_.spot(*to)->name) : QString{};
            const auto pests = std::ranges::find(parts_.pests.plants, of->plant, &plan::PlantCondition::plant);
            const QString order = !carry || pests == parts_.pests.plants.end() ? QString{}
                                  : pests->state == plan::PestState::Infested  ? tr("infested: carried last, then wash")
                                  : pests->state == plan::PestState::Suspect   ? tr("suspect: after the clean ones")
                                                                               : QString{};
            QString sentence = tr("%1, %2: %3. %4.").arg(text(pot.name), text(spot.name), what, why);
            if (!shelter.isEmpty()) {
                sentence += QLatin1Char(' ') + tr("It goes to: %1.").arg(shelter);
            }
            if (!order.isEmpty()) {
                sentence += QLatin1Char(' ') + upper_first(order) + QLatin1Char('.');
            }
            shown_.plants.push_back({text(pot.name), text(spot.name), look_.hand_of(spot.name), chance(of->damage), line,
                                     what, carry, place(ends.low), place(ends.middle), place(ends.high),
                                     place(pot.lines.damage_begins), sentence, of->plant, shelter, order});
            if (std::ranges::find(spots_, &spot) == spots_.end()) {
                spots_.push_back(&spot);
            }
        }
    }

    /// On the ruler, of a temperature in the reader's unit.
    double place_of(double shown) const { return (shown - ruler_.first) / (ruler_.second - ruler_.first); }

    void add_tick(double mark)
    {
        const bool last = mark >= ruler_.second;
        const double freezing = words_.shown(Celsius::from_degrees(0.0));
        const QString figure = words_.whole(static_cast<int>(std::lround(mark)));
        shown_.ticks.push_back({place_of(mark), last ? tr("%1 %2").arg(figure, words_.unit()) : figure, mark == freezing});
    }

    /// How likely each low is tonight at each spot where plants stand outdoors.
    void add_spots()
    {
        constexpr int kSteps = 160;
        const auto plants_at = [&](const home::Spot* spot) {
            return std::ranges::count(evening_.plants, std::optional{spot->id}, &home::Plant::spot);
        };
        std::ranges::stable_sort(spots_, std::greater{}, plants_at);
        const auto& outlook = plans_.front().outlook;
        double highest = 0.0;
        QStringList lines;
        for (const auto* spot : spots_) {
            const auto ends = ends_at(*spot);
            const auto offset = offset_at(*spot, ahead_.front());
            SpotNight night{.hand = look_.hand_of(spot->name),
                            .head = tr("%1, middle %2").arg(text(spot->name), words_.temperature(ends.middle)),
                            .spread = tr("9 in 10: %1 to %2").arg(words_.bare(ends.low), words_.bare(ends.high)),
                            .middle_at = place_of(words_.shown(ends.middle)),
                            .heights = {}};
            const double reach = (words_.shown(ends.high) - words_.shown(ends.low)) / 20.0; // Smooth over a reading's step.
            for (int step = 0; step <= kSteps; ++step) {
                const double at = ruler_.first + (ruler_.second - ruler_.first) * step / kSteps;
                const auto below = [&](double shown) {
                    const auto low = words_.fahrenheit() ? Celsius::from_fahrenheit(shown) : Celsius::from_degrees(shown);
                    return outlook.chance_at_or_below(low, offset).fraction();
                };
                night.heights.push_back((below(at + reach) - below(at - reach)) / (2.0 * reach));
                highest = std::max(highest, night.heights.back());
            }
            lines.append(tr("%1, %2").arg(night.head, night.spread));
            shown_.spots.push_back(std::move(night));
        }
        for (auto& night : shown_.spots) {
            for (double& height : night.heights) {
                height /= highest;
            }
        }
        shown_.spots_line = lines.join(QStringLiteral("; "));
    }

    void say_carries()
    {
        if (shown_.carries > 0) {
            shown_.carry_head = shown_.carries == 1 ? tr("Carry in one plant.") : tr("Carry in %1 plants.").arg(shown_.carries);
        } else if (shown_.has_forecast) {
            shown_.carry_head = tr("Nothing to carry in.");
        } else {
            shown_.carry_head = tr("No forecast for tonight.");
        }
        const plan::PlantNight* closest = nullptr;
        const plan::NightPlan* when = nullptr;
        for (int day = 0; day < kWeek; ++day) {
            const auto& plan = plans_[static_cast<std::size_t>(day)];
            for (const auto& of : plan.plants) {
                const bool named_already = day == 0 && of.carry_in && shown_.has_forecast;
                if (stands_outdoors(of) && !named_already && (closest == nullptr || of.damage > closest->damage)) {
                    closest = &of;
                    when = &plan;
                }
            }
        }
        if (closest == nullptr) {
            shown_.closest = shown_.carries > 0 ? QString{} : tr("No plant stands outdoors.");
            return;
        }
        shown_.closest = closed(tr("Closest this week: %1, %2 %3.")
                                    .arg(text(plant(closest->plant).name), chance(closest->damage), night_name(when->ahead.night)));
    }

    void add_week()
    {
        const auto household = facts_.household();
        const auto units = unit_system_of(words_);
        std::size_t more = 0;
        std::optional<std::size_t> coldest;
        for (std::size_t day = 1; day < kWeek && spot_ != nullptr; ++day) {
            if (!coldest || shown_.ten.nights[day].low50 < shown_.ten.nights[*coldest].low50) {
                coldest = day;
            }
        }
        const std::size_t most = kMostOfWeek * static_cast<std::size_t>(std::max(1, choice_.days / kWeek));
        for (int day = 1; day <= choice_.days; ++day) {
            const auto date = look_.today + calendar::Days{day};
            const auto add = [&](const QString& what, const QString& whom) {
                if (shown_.week.size() >= most) {
                    ++more;
                    return;
                }
                const QString when = words_.short_date(date);
                shown_.week.push_back({when, what, whom,
                                       whom.isEmpty() ? tr("%1: %2").arg(when, what)
                                                      : tr("%1: %2, %3").arg(when, what, whom)});
            };
            if (coldest && shown_.ten.nights[*coldest].night == date) {
                const auto& night = shown_.ten.nights[*coldest];
                add(tr("Coldest night ahead, %1").arg(words_.temperature(night.low50)),
                    night.forecast ? QString{} : tr("by the season alone"));
            }
            // One line for what is the same for several plants.
            std::vector<std::pair<QString, QStringList>> lines;
            for (const auto& task : plan::round_of(household, facts_.events, parts_, date)) {
                const bool tells = !std::holds_alternative<plan::Hygiene>(task.matter) &&
                                   !std::holds_alternative<plan::WaterDue>(task.matter);
                if (!tells || task.due != date) {
                    continue;
                }
                const QString what = upper_first(text(words::task(task, household, units)));
                const QString whom = task.plant ? text(household.plant(*task.plant)->name) : QString{};
                auto known = std::ranges::find(lines, what, &std::pair<QString, QStringList>::first);
                if (known == lines.end()) {
                    lines.push_back({what, {}});
                    known = lines.end() - 1;
                }
                if (!whom.isEmpty() && !known->second.contains(whom)) {
                    known->second.append(whom);
                }
            }
            for (const auto& [what, whom] : lines) {
                add(what, whom.size() > 3 ? tr("%1, %2 and %3 more").arg(whom[0], whom[1]).arg(whom.size() - 2)
                                          : whom.join(QStringLiteral(", ")));
            }
        }
        if (more > 0) {
            const QString rest = tr("%1 more until %2").arg(more).arg(words_.short_date(look_.today + calendar::Days{choice_.days}));
            shown_.week.push_back({QString{}, rest, QString{}, rest});
        }
    }

    const plan::HouseholdFacts& facts_;
    home::Household evening_; ///< Before anything was carried in for the night: what is in stays in the list.
    const TodayLook& look_;
    const TonightChoice& choice_;
    const YearWords& words_;
    climate::NightModel season_;
    std::vector<plan::NightAhead> ahead_;
    plan::RoundParts parts_;
    std::vector<plan::NightPlan> plans_;
    const home::Spot* spot_;
    std::pair<double, double> ruler_ = {0.0, 1.0}; ///< Its ends in the reader's unit.
    std::vector<const home::Spot*> spots_;         ///< Where plants stand outdoors.
    TonightFacts shown_;
};

} // namespace

int TodayLook::hand_of(const std::string& spot) const
{
    const auto hand = hands.find(spot);
    return hand == hands.end() ? -1 : hand->second;
}

TonightFacts tonight_facts(const plan::HouseholdFacts& facts, const TodayLook& look, const TonightChoice& choice)
{
    return Tonight(facts, look, choice).all();
}

} // namespace lathhouse::models
