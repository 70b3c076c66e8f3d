#include "app/cli/moves.h"

#include "app/clock.h"
#include "app/cli/forecast_options.h"
#include "app/cli/household_options.h"
#include "app/words/credits.h"
#include "app/words/ladder_words.h"
#include "app/words/plan_words.h"
#include "core/journal/household_store.h"
#include "core/plan/hardening.h"
#include "core/plan/hardening_done.h"
#include "core/plan/year_plan.h"

#include <algorithm>
#include <memory>
#include <sstream>

namespace lathhouse::cli {
namespace {

struct MovesOptions {
    double risk_percent = 10.0;
    std::string from;
    std::string effort = "fast";
    bool accept = false;
};

Json risk_json(const std::optional<Probability>& risk)
{
    return risk ? json_number(risk->fraction()) : Json(nullptr);
}

Json steps_of(home::PlantId plant, const std::vector<plan::Ladder>& ladders)
{
    Json steps = Json::array();
    for (const auto& ladder : ladders) {
        for (const auto& item : ladder.items) {
            if (ladder.plant == plant) {
                steps.push_back({{"date", calendar::to_text(item.date)},
                                 {"until", calendar::to_text(item.until)},
                                 {"what", words::ladder_item(item)}});
            }
        }
    }
    return steps;
}

/// Carries from one indoor spot to another, or between two outdoors, have no ladder, and are steps of their own.
void add_plain_carries(Json& steps, const plan::PlantYear& year, const home::Household& household)
{
    for (std::size_t at = 1; at < year.stays.size(); ++at) {
        const auto& before = *household.spot(year.stays[at - 1].spot);
        const auto& spot = *household.spot(year.stays[at].spot);
        if (home::is_outdoors(before.kind) == home::is_outdoors(spot.kind)) {
            steps.push_back({{"date", calendar::to_text(year.stays[at].from)},
                             {"until", calendar::to_text(year.stays[at].from)},
                             {"what", "to " + spot.name}});
        }
    }
}

Json json_of(const plan::YearPlan& plan, const std::vector<plan::Ladder>& ladders,
             const std::vector<plan::PlanChange>& changes, const home::Household& household,
             words::UnitSystem units)
{
    Json plants = Json::array();
    for (const auto& year : plan.plants) {
        Json stays = Json::array();
        Json steps = steps_of(year.plant, ladders);
        add_plain_carries(steps, year, household);
        for (const auto& stay : year.stays) {
            stays.push_back({{"spot", stay.spot},
                             {"from", calendar::to_text(stay.from)},
                             {"to", calendar::to_text(stay.to)},
                             {"why", words::why(stay.why, units)},
                             {"risk_out", risk_json(stay.risk_out)},
                             {"risk_in", risk_json(stay.risk_in)}});
        }
        plants.push_back({{"id", year.plant},
                          {"name", household.plant(year.plant)->name},
                          {"stays", stays},
                          {"steps", steps}});
    }
    Json changed = Json::array();
    for (const auto& change : changes) {
        changed.push_back({{"plant", change.plant},
                           {"from", calendar::to_text(change.from)},
                           {"to", calendar::to_text(change.to)},
                           {"was", change.was ? Json(*change.was) : Json(nullptr)},
                           {"is", change.is}});
    }
    Json refusals = Json::array();
    for (const auto& refusal : plan.refusals) {
        refusals.push_back({{"plant", refusal.plant}, {"why", words::refusal(refusal, units)}});
    }
    return {{"plants", plants},
            {"refusals", refusals},
            {"changes", changed},
            {"gap", json_number(plan.gap)},
            {"solve_ms", json_number(plan.solve_time.count())}};
}

std::string risks_in_words(const plan::Stay& stay)
{
    std::string text;
    if (stay.risk_out) {
        text += ", " + words::chance(*stay.risk_out) + " before the turn";
    }
    if (stay.risk_in) {
        text += ", " + words::chance(*stay.risk_in) + " after it";
    }
    return text.empty() ? text : " (harmful night:" + text.substr(1) + ")";
}

std::string changes_in_words(const std::optional<home::AcceptedPlan>& accepted,
                             const std::vector<plan::PlanChange>& changes, const home::Household& household)
{
    if (!accepted) {
        return {};
    }
    std::string text = "Against the plan accepted on " + calendar::to_text(calendar::utc_date(accepted->accepted)) +
                       (changes.empty() ? ": no change.\n" : ":\n");
    for (const auto& change : changes) {
        text += "  " + words::change(change, household) + '\n';
    }
    return text;
}

std::string text_of(const plan::YearPlan& plan, const home::Household& household,
                    const climate::PlaceClimate& climate, const plan::ColdChances& chances,
                    words::UnitSystem units)
{
    std::ostringstream text;
    text << "The year from " << words::full_day(plan.from) << ", " << household.name << ", "
         << household.place.name << (household.demonstration ? " (demonstration household, invented)" : "")
         << '\n'
         << "Risk accepted: " << words::chance(plan.risk)
         << " for a night that begins to damage, for each plant, each way; a tenth of it for a deadly one. "
            "The turn is "
         << words::day(chances.nights().turn().last_day()) << ".\n\n";
    for (const auto& year : plan.plants) {
        const auto& plant = *household.plant(year.plant);
        text << plant.name << " (" << plant.kind << "), damage begins at "
             << words::temperature(plant.lines.damage_begins, units)
             << (plant.hazardous ? ", keep out of reach" : "") << '\n';
        for (const auto& stay : year.stays) {
            text << "  " << words::right_aligned(words::day(stay.from), 6) << " to "
                 << words::padded(words::day(stay.to), 6) << "  "
                 << words::padded(household.spot(stay.spot)->name, 14) << "  " << words::why(stay.why, units)
                 << risks_in_words(stay) << '\n';
        }
        for (const auto& refusal : plan.refusals) {
            if (refusal.plant == year.plant) {
                text << "  " << words::refusal(refusal, units) << '\n';
            }
        }
    }
    text << "\nA stay's dates are its evenings, both included. `lathhouse harden` has the days before and after "
            "each carry.\n";
    text << words::stations_in_use(climate, units) << "; dates right to about "
         << words::number(chances.place_nights().expected_error_days(climate, Celsius::from_degrees(0.0)), 0)
         << " days. Frost dates are chances, not promises.\n"
         << words::credits(climate) << '\n';
    text << "Plan within " << words::number(plan.gap * 100.0, 1) << " % of the best there can be.\n";
    return std::move(text).str();
}

} // namespace

Result<Answer> moves_of(const Globals& globals, const home::Household& household, calendar::Date from,
                        Probability risk, plan::Effort effort, const plan::PlanWishes& wishes, bool accept,
                        std::span<const home::Event> events)
{
    const auto climate = climate_of(household);
    if (!climate) {
        return climate.error();
    }
    const plan::ColdChances chances{climate::PlaceNights::of(*climate)};
    const auto plan = plan::plan_year(household, *climate, chances, from, risk, effort, wishes);
    const auto ladders = plan::with_days_hardened(
        plan::ladders_of(household, home::SpotClimate{household, *climate}, plan, globals.today), events, globals.today);
    const auto changes =
        wishes.accepted ? plan::changes_between(*wishes.accepted, plan) : std::vector<plan::PlanChange>{};
    Answer answer{json_of(plan, ladders, changes, household, globals.units),
                  text_of(plan, household, *climate, chances, globals.units) +
                      changes_in_words(wishes.accepted, changes, household),
                  texts(climate->warnings)};
    for (const auto& breach : plan.breaches) {
        answer.warnings.push_back(words::breach(breach, household));
    }
    if (accept) {
        auto store = journal::HouseholdStore::open(globals.home);
        if (!store) {
            return store.error();
        }
        if (const auto kept = store->accept(plan::to_accept(plan, now())); !kept) {
            return kept.error();
        }
        answer.text += "Accepted: plans to come keep to it where changing it would not pay.\n";
    }
    return answer;
}

void add_moves(Commands& commands)
{
    auto options = std::make_shared<MovesOptions>();
    CLI::App& command = commands.add("moves", "Plans where every plant stands through the next 365 nights",
                                     "lathhouse moves --risk 10");
    command
        .add_option("--risk", options->risk_percent,
                    "Accepted chance of a damaging night, each way, in percent (default 10)")
        ->type_name("PERCENT");
    command.add_option("--from", options->from, "First evening of the plan (default: today)")
        ->type_name("YYYY-MM-DD");
    command.add_option("--effort", options->effort, "fast, as the window and all other answers plan (default), or full: looks longer, and may find another plan")->check(CLI::IsMember({"fast", "full"}));
    command.add_flag("--accept", options->accept, "Keep this plan: later ones change it only where it pays");
    commands.on_run(command, [options](const Globals& globals) -> Result<Answer> {
        const auto risk = Probability::from_percent(options->risk_percent);
        if (!risk || options->risk_percent < 0.1 || options->risk_percent > 50.0) {
            return Error{ErrorCode::OutOfRange, "--risk must lie within 0.1 and 50 percent"};
        }
        auto from = globals.today;
        if (!options->from.empty()) {
            const auto date = calendar::parse_date(options->from);
            if (!date) {
                return date.error();
            }
            from = *date;
        }
        const auto household = household_of(globals, WithoutHousehold::IsAnError);
        if (!household) {
            return household.error();
        }
        const auto wishes = wishes_of(globals);
        if (!wishes) {
            return wishes.error();
        }
        const auto events =
            journal::HouseholdStore::open(globals.home).and_then([](const auto& store) { return store.events(); });
        if (!events) {
            return events.error();
        }
        return moves_of(globals, *household, from, *risk,
                        options->effort == "fast" ? plan::Effort::Fast : plan::Effort::Full, *wishes,
                        options->accept, *events);
    });
}

} // namespace lathhouse::cli
