#include "app/words/round_words.h"

#include "app/words/phrase.h"
#include "app/words/table_words.h"
#include "app/words/course_words.h"
#include "app/words/damage_words.h"
#include "app/words/growing_words.h"
#include "app/words/ladder_words.h"
#include "core/plan/cautions.h"

#include <algorithm>
#include <set>

namespace lathhouse::words {
namespace {

template <class... Visitors>
struct Overloaded : Visitors... {
    using Visitors::operator()...;
};
template <class... Visitors>
Overloaded(Visitors...) -> Overloaded<Visitors...>;

std::string place_of(home::SpotId id, const home::Household& household)
{
    const auto* spot = household.spot(id);
    return spot != nullptr ? spot->name : phrase("a spot that is gone");
}

std::string seeds(plan::SowingTaskKind kind)
{
    switch (kind) {
    case plan::SowingTaskKind::SowIndoors:
        return phrase("sow indoors");
    case plan::SowingTaskKind::SowOutdoors:
        return phrase("sow outdoors");
    case plan::SowingTaskKind::CountTray:
        return phrase("count the seedlings");
    case plan::SowingTaskKind::PotUp:
        return phrase("pot the seedlings up");
    case plan::SowingTaskKind::Harden:
        return phrase("begin to harden the seedlings");
    case plan::SowingTaskKind::PlantOut:
        return phrase("plant out");
    }
    return {};
}

bool is_carry(const plan::TaskMatter& matter)
{
    const auto* ladder = std::get_if<plan::LadderStep>(&matter);
    return std::holds_alternative<plan::CarryInTonight>(matter) || std::holds_alternative<plan::PlainMove>(matter) ||
           ladder != nullptr;
}

} // namespace

std::string task(const plan::Task& task, const home::Household& household, UnitSystem units)
{
    const auto water = [&](const plan::FeedingDue& feed) {
        return feed.water ? phrase("wash the mix through with %1 of water", volume(*feed.water, units))
                          : phrase("wash the mix through with water");
    };
    return std::visit(
        Overloaded{[](plan::Hygiene step) -> std::string {
                       switch (step) {
                       case plan::Hygiene::BeforeSuspect:
                           return phrase("wash hands and tools before going on");
                       case plan::Hygiene::BeforeInfested:
                           return phrase("wash hands and tools; put on an apron or a shirt for these plants alone");
                       case plan::Hygiene::AtTheEnd:
                           return phrase("wash hands and tools and change; nothing clean is touched before that");
                       }
                       return {};
                   },
                   [&](const plan::CarryInTonight& tonight) {
                       return tonight.stays && tonight.to ? phrase("carry it in, to stay: %1", place_of(*tonight.to, household))
                              : tonight.to ? phrase("carry it in for the night: %1", place_of(*tonight.to, household))
                                           : phrase("carry it in for the night");
                   },
                   [&](const plan::PlainMove& move) { return phrase("carry it to %1", place_of(move.to, household)); },
                   [&](const plan::LadderStep& step) {
                       const bool arrives = step.item.kind == plan::LadderItemKind::FirstNightOut ||
                                            step.item.kind == plan::LadderItemKind::CarryIn;
                       std::string words = ladder_item(step.item);
                       if (arrives) {
                           words = phrase("%1, %2", words, place_of(step.to, household));
                       }
                       return step.item.until != step.item.date ? phrase("%1, until %2", words, day(step.item.until))
                                                                : words;
                   },
                   [](const plan::CourseStep& course) { return step(course); },
                   [](const plan::WaterDue&) -> std::string {
                       return phrase("feel whether the mix is dry, and water only if it is");
                   },
                   [&](const plan::FeedingDue& feed) {
                       return feed.task == plan::FeedingTask::Leach ? water(feed)
                              : feed.nitrogen_ppm && feed.first && feed.every_days > 0
                                  ? phrase("feed, %1 ppm nitrogen, unless it was fed in the last %2 days", number(*feed.nitrogen_ppm, 0),
                                           std::to_string(feed.every_days))
                              : feed.nitrogen_ppm ? phrase("feed, %1 ppm nitrogen", number(*feed.nitrogen_ppm, 0))
                                                  : phrase("feed");
                   },
                   [](const plan::ColdStep& cold) { return cold_step(cold.act); },
                   [](const plan::DamageStep& damage) { return damage_step(damage.act); },
                   [](const plan::SowingTask& sowing) { return phrase("%1: %2", seeds(sowing.kind), sowing.name); }},
        task.matter);
}

std::string task_why(const plan::Task& task, const home::Household&, UnitSystem units)
{
    return std::visit(
        Overloaded{[](plan::Hygiene) -> std::string { return phrase("pests travel with hands, tools and clothes"); },
                   [&](const plan::CarryInTonight& tonight) {
                       const auto why = phrase("%1 for a low at or below %2", chance(tonight.damage), temperature(tonight.line, units));
                       return tonight.stays ? phrase("%1; the plan's date too", why) : why;
                   },
                   [&](const plan::PlainMove& move) -> std::string {
                       auto reason = move.why ? why(*move.why, units) : std::string{};
                       return reason.empty() ? phrase("the plan has it there from tonight on") : reason;
                   },
                   [&](const plan::LadderStep& step) -> std::string {
                       switch (step.item.kind) {
                       case plan::LadderItemKind::OutByDay:
                           return phrase("it is being used to the open");
                       case plan::LadderItemKind::FirstNightOut:
                       case plan::LadderItemKind::CarryIn: {
                           auto reason = step.why ? why(*step.why, units) : std::string{};
                           return reason.empty() ? phrase("the plan's date") : reason;
                       }
                       default:
                           return phrase("on the way in");
                       }
                   },
                   [](const plan::CourseStep& step) -> std::string {
                       return step.pest != nullptr ? phrase("course against %1", table_text(step.pest->name))
                                                   : phrase("course against a pest");
                   },
                   [](const plan::WaterDue& look) { return why(look.why); },
                   [](const plan::FeedingDue& feed) -> std::string {
                       return feed.task == plan::FeedingTask::Leach ? phrase("salts gather in the mix")
                              : feed.young                          ? phrase("it is young: half the strength")
                              : feed.first                          ? phrase("it grows, and no feed is logged: if it was fed, log that or leave this out")
                                                                    : phrase("it grows, and the last feed is used up");
                   },
                   [](const plan::ColdStep&) -> std::string { return phrase("after a cold night"); },
                   [](const plan::DamageStep&) -> std::string { return phrase("after weed-killer or another chemical"); },
                   [](const plan::SowingTask& sowing) -> std::string {
                       return sowing.last_day ? phrase("today is the last day on which it is of use") : phrase("its time is now");
                   }},
        task.matter);
}

std::vector<std::string> task_cautions(const plan::Task& task, const home::Household& household)
{
    std::vector<std::string> texts;
    const auto say = [&](const std::vector<const plan::Caution*>& cautions) {
        for (const auto* caution : cautions) {
            if (auto text = table_text(caution->text); std::ranges::find(texts, text) == texts.end()) {
                texts.push_back(std::move(text));
            }
        }
    };
    const auto say_topics = [&](std::initializer_list<plan::CautionTopic> topics) {
        for (const auto topic : topics) {
            say(plan::cautions_for(topic));
        }
    };
    const auto* plant = task.plant ? household.plant(*task.plant) : nullptr;
    const bool handled = is_carry(task.matter) || std::holds_alternative<plan::CourseStep>(task.matter) ||
                         std::holds_alternative<plan::DamageStep>(task.matter) ||
                         std::holds_alternative<plan::ColdStep>(task.matter);
    if (plant != nullptr && handled) {
        if (const auto kind = plants::PlantReference::built_in().find(plant->kind)) {
            say(plan::cautions_for_plant(**kind));
        }
    }
    if (plant != nullptr && is_carry(task.matter) && plant->pot_kilograms >= kHeavyKilograms) {
        say_topics({plan::CautionTopic::HeavyPot});
    }
    if (const auto* step = std::get_if<plan::CourseStep>(&task.matter);
        step != nullptr && step->act == plan::CourseAct::Treat) {
        say_topics({plan::CautionTopic::Label, plan::CautionTopic::TestLeaf, plan::CautionTopic::SprayWeather,
                    plan::CautionTopic::Bees, plan::CautionTopic::Ventilation, plan::CautionTopic::ChildOrAnimal});
    }
    if (const auto* feed = std::get_if<plan::FeedingDue>(&task.matter)) {
        if (feed->task == plan::FeedingTask::Feed) {
            say_topics({plan::CautionTopic::Label, plan::CautionTopic::FertiliserStorage});
        } else {
            say_topics({plan::CautionTopic::SaltyWater});
        }
    }
    if (std::holds_alternative<plan::DamageStep>(task.matter)) {
        say_topics({plan::CautionTopic::WeedKillerDrift, plan::CautionTopic::FoodAfterWeedKiller});
    }
    return texts;
}

std::string round_class(plan::PestState state)
{
    switch (state) {
    case plan::PestState::Clean:
        return phrase("clean plants");
    case plan::PestState::Suspect:
        return phrase("suspect plants");
    case plan::PestState::Infested:
        return phrase("infested plants");
    }
    return {};
}

} // namespace lathhouse::words
