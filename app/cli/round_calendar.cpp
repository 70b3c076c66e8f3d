#include "app/cli/round_calendar.h"

#include "app/words/calendar_words.h"
#include "app/words/round_words.h"
#include "core/base/csv.h"
#include "core/calendar/time_zone.h"

#include <map>

namespace lathhouse::cli {
namespace {

bool belongs(const plan::TaskMatter& matter)
{
    return !std::holds_alternative<plan::Hygiene>(matter) && !std::holds_alternative<plan::WaterDue>(matter) &&
           !std::holds_alternative<plan::CarryInTonight>(matter);
}

const char* category_of(const plan::TaskMatter& matter)
{
    if (std::holds_alternative<plan::FeedingDue>(matter)) {
        return "Feeding";
    }
    if (std::holds_alternative<plan::SowingTask>(matter)) {
        return "Seeds";
    }
    return std::holds_alternative<plan::LadderStep>(matter) || std::holds_alternative<plan::PlainMove>(matter)
               ? "Moves"
               : "Care";
}

/// How much of the day is over by the clock of the place.
std::chrono::seconds hour_of(const home::Place& place, calendar::Instant at)
{
    const auto zone = calendar::TimeZone::named(place.time_zone);
    if (!zone) {
        return std::chrono::hours{24};
    }
    const auto local = zone->local(at);
    return local - std::chrono::floor<std::chrono::days>(local);
}

bool is_day_out(const plan::Task& task)
{
    const auto* step = std::get_if<plan::LadderStep>(&task.matter);
    return step != nullptr && step->item.kind == plan::LadderItemKind::OutByDay;
}

} // namespace

std::vector<exchange::CalendarEvent> round_calendar(const plan::HouseholdFacts& facts,
                                                    const plan::RoundParts& parts, int days,
                                                    words::UnitSystem units)
{
    const auto household = facts.household();
    std::vector<exchange::CalendarEvent> events;
    std::map<std::string, int> before;
    struct DaysOut {
        std::size_t event;
        std::string cautions; ///< Behind the last of its days.
    };
    std::map<home::PlantId, DaysOut> hardening; // The event of days out that is still growing.
    for (int day = 0; day < days; ++day) {
        const auto date = parts.today + calendar::Days{day};
        for (const auto& task : plan::round_of(household, facts.events, parts, date)) {
            if (!belongs(task.matter)) {
                continue;
            }
            const auto* plant = task.plant ? household.plant(*task.plant) : nullptr;
            const std::string who = plant != nullptr ? plant->name + ": " : std::string{};
            std::string details = words::task_why(task, household, units) + "\n";
            if (is_day_out(task)) {
                const auto known = hardening.find(*task.plant);
                details = words::day(date) + ": " + words::task(task, household, units) + "\n";
                if (known != hardening.end() && events[known->second.event].to + calendar::Days{1} >= date) {
                    auto& event = events[known->second.event];
                    event.to = date;
                    event.description.insert(event.description.size() - known->second.cautions.size(), details);
                    continue;
                }
            }
            const auto matter = task.key.substr(0, task.key.rfind('/'));
            const int count = before[matter]++;
            std::string cautions;
            for (const auto& caution : words::task_cautions(task, household)) {
                cautions += caution + "\n";
            }
            cautions += words::caution_in_calendar();
            details += cautions;
            if (is_day_out(task)) {
                hardening[*task.plant] = {events.size(), cautions};
            }
            events.push_back(
                {exchange::calendar_uid(household.name + "\n" + household.place.name,
                                        matter + "/" + std::to_string(count)),
                 date, date,
                 who + (is_day_out(task) ? words::hardening_in_calendar()
                                         : words::task(task, household, units)),
                 details, category_of(task.matter)});
        }
    }
    return events;
}

Result<std::size_t> write_round_calendar(const plan::HouseholdFacts& facts, calendar::Date today, calendar::Instant at, int days,
                                         std::optional<int> alarm, words::UnitSystem units, const std::filesystem::path& file)
{
    const auto nights = facts.climate.nights();
    const auto parts = plan::round_parts(facts, nights, today, plan::kUsualRisk);
    const auto events = round_calendar(facts, parts, days, units);
    const auto text = exchange::icalendar(
        {facts.as_told.name + " (plants)", calendar::start_of_day_utc(today), alarm, hour_of(facts.as_told.place, at)}, events);
    if (const auto written = write_file_whole(file, text); !written) {
        return written.error();
    }
    return events.size();
}

} // namespace lathhouse::cli
