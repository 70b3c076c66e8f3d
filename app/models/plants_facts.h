#pragma once

#include "app/models/plant_door.h"
#include "app/models/plant_habit.h"
#include "app/models/tonight_facts.h"
#include "app/words/words.h"
#include "core/growth/recovery.h"
#include "core/plan/round.h"

#include <QString>

#include <map>
#include <memory>
#include <optional>
#include <vector>

namespace lathhouse::models {

/// What is known of the household, with the day's plan once that is worked out. Made in a thread, never changed
/// after that.
struct PlantsGround {
    std::shared_ptr<const PlantBook> kept; ///< Shared by what was made from one reading.
    const PlantBook& book;                 ///< That one.
    home::Household household; ///< With the offsets that its thermometers have taught.
    calendar::Date today;
    std::shared_ptr<const climate::NightModel> nights; ///< The parts refer to it.
    std::optional<plan::RoundParts> parts;                ///< None before the plan is made.
    std::vector<plan::Task> tasks;                        ///< Of today.
    std::map<home::PlantId, growth::Verdict> verdicts;    ///< By each plant's first measure.
};

/// A plant as it stands on its shelf, in words.
struct PlantCard {
    home::PlantId id;
    QString name;
    QString botanical;
    QString spot; ///< Empty where it stands nowhere.
    int shelf;    ///< Place among the shelves.
    Habit habit;
    bool fruit;
    int clay;      ///< 0..3, of the pot.
    QString state; ///< Two or three words; empty where nothing is to be said.
    QString next;  ///< "to Roofed balcony Sat 30 May"; empty without a move ahead.
    std::optional<calendar::Date> next_on;
    QString hazard; ///< "poisonous to cats and dogs"; empty where nothing is known.
    QString picture; ///< Address of the photo that stands for it; empty where its drawing does.
    bool outdoors = false;
    bool hardening = false;
    bool look = false; ///< Something is to be looked at today, or pests may be on it.
    bool poisonous = false;
    bool apart = false;
    bool gone = false; ///< It died, was given away or taken off the list: state says so, and of the rest there are only names.
    std::optional<growth::Verdict> verdict;
    std::string find; ///< Names in lower case.
};

/// A spot as a lath.
struct PlantShelf {
    home::SpotId spot; ///< -1: plants that stand nowhere; -2: those that are gone.
    QString name;
    int hand;
    int capacity;
    QString nights; ///< "8 to 12 °C"; empty where nothing is known.
    bool outdoors = false;
};

struct PlantsFacts {
    std::shared_ptr<const PlantsGround> ground;
    std::vector<PlantCard> cards;    ///< Shelf by shelf; those that are gone come last.
    int living = 0;                  ///< Cards of plants that are there.
    std::vector<PlantShelf> shelves; ///< In walking order.
};

enum class PlantsDepth { Names, Plan };
/// Works out. Names is quick; Plan takes the time of a year's plan. Errors: as PlantArchive::leading.
Result<std::shared_ptr<const PlantsGround>> plants_ground(std::shared_ptr<const PlantBook> book, calendar::Date today,
                                                          PlantsDepth depth);
PlantsFacts plants_facts(std::shared_ptr<const PlantsGround> ground, const TodayLook& look);

/// "died on 3 May 2026".
QString gone_words(const home::GonePlant& gone, const YearWords& words);
/// What a kind does to whom, short; empty where nothing is known.
QString hazard_in_short(const home::Plant& plant, const plants::PlantKind* kind);
/// The kind of a plant in the reference; nullptr for one of the grower's own.
const plants::PlantKind* kind_of(const home::Plant& plant);
} // namespace lathhouse::models
