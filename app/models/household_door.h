#pragma once

#include "app/potting.h"
#include "core/base/result.h"
#include "core/home/seed_lot.h"
#include "core/home/thermometer.h"
#include "core/plan/round_parts.h"

#include <filesystem>
#include <functional>
#include <memory>
#include <mutex>
#include <string>
#include <vector>

namespace lathhouse::models {

/// Facts without a folder, changed as a journal would change them. Several threads may use it at once.
class MemoryHousehold {
public:
    explicit MemoryHousehold(plan::HouseholdFacts facts) : facts_(std::move(facts)) {}

    plan::HouseholdFacts facts() const;
    /// name: what the change is taken back by. A change that fails leaves everything as it was.
    Result<void> change(const std::string& name, const std::function<Result<void>(plan::HouseholdFacts&)>& make);
    /// Errors: NotFound where the last change (or the one that was taken back last) has another name.
    Result<void> take_back(const std::string& name);
    Result<void> bring_back(const std::string& name);
    /// The same for whatever the last change was; false where there is none.
    bool take_back_last();
    bool bring_back_last();

private:
    struct Change {
        std::string name;
        plan::HouseholdFacts other; ///< As it was before the change, or after the one taken back.
    };
    mutable std::mutex guard_;
    plan::HouseholdFacts facts_;
    std::vector<Change> done_;
    std::vector<Change> undone_;
};

/// Where the pages read the household and write what was seen. The functions are called from threads of the
/// models; each is one short transaction. Why something cannot be done is a sentence for people.
struct HouseholdDoor {
    std::function<Result<plan::HouseholdFacts>()> load;
    std::function<Result<void>(const home::Reading&)> log;
    /// All of them or none, here and below.
    std::function<Result<void>(const std::vector<home::Reading>&)> log_all;
    std::function<Result<void>(const std::vector<home::KeptForecast>&)> keep_forecasts;
    std::function<Result<void>(const home::TrayCount&, calendar::Date today, calendar::Instant entered)> count;
    /// A tray that was sown today or before; its number is given to it. Taken back as whatever came last (TurnLast).
    std::function<Result<void>(const home::Tray&, calendar::Date today, calendar::Instant entered)> sow;
    /// Seedlings of a tray become plants. Taken back as whatever came last (TurnLast).
    std::function<Result<void>(const Potting&, calendar::Instant now)> pot_up;
    /// Takes a count back that was written last, or writes one again that was taken back last. Errors:
    /// NotFound where something else was written since.
    std::function<Result<void>(const home::TrayCount&, calendar::Instant now)> take_back;
    std::function<Result<void>(const home::TrayCount&, calendar::Instant now)> bring_back;
    /// Whether what is written outlasts the window.
    bool keeps = true;
};

/// The household in a folder; `load` reads it.
HouseholdDoor door_to_folder(std::filesystem::path folder, std::function<Result<plan::HouseholdFacts>()> load);
HouseholdDoor door_to_memory(std::shared_ptr<MemoryHousehold> household);
/// No household at all; everything gives that error.
HouseholdDoor no_door(Error why);

/// Puts a tray into facts in memory, under the next free number. Errors: as home::check.
Result<void> add_tray(plan::HouseholdFacts& facts, const home::Tray& tray, calendar::Date today);

/// The plants of a potting in facts in memory, as the journal makes them. Errors: as potted_plants; OutOfRange where a name
/// is taken, the tray has not that many seedlings left, or was sown later.
Result<void> pot_up_in(plan::HouseholdFacts& facts, const Potting& potting, calendar::Instant now);

/// What is said where another program wrote in between.
Error something_else_came();

} // namespace lathhouse::models
