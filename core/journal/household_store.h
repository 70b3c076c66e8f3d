#pragma once

#include "core/base/result.h"
#include "core/climate/own_record.h"
#include "core/home/entry.h"
#include "core/home/history.h"
#include "core/home/household.h"
#include "core/home/jug.h"
#include "core/home/lineage.h"
#include "core/home/planned_stays.h"
#include "core/home/thermometer.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace lathhouse::home {
struct HouseholdChange;
struct SeedBook;
struct SeedLot;
struct Tray;
struct TrayCount;
} // namespace lathhouse::home

namespace lathhouse::journal {

/// A household's folder on disk: `household.sqlite3` and `photos/`. Several programs may have one open at
/// once; every call is one short transaction.
class HouseholdStore {
public:
    /// Makes the folder with everything in it or leaves nothing: it is written under another name beside it
    /// and then renamed. The folder may be there already if it is empty; folders above it are made.
    /// Errors: Unwritable (no right, no room, a file or a filled folder in the way), OutOfRange where the
    /// household breaks a rule of the tables (two plants of one name).
    static Result<HouseholdStore> create(const std::filesystem::path& folder,
                                         const home::Household& household,
                                         std::span<const home::Event> history = {});
    /// Errors: NotFound (no such folder), NotAHousehold, Damaged, TooNew (nothing is touched), Locked,
    /// Unreadable, Unwritable (a folder that is read-only).
    static Result<HouseholdStore> open(const std::filesystem::path& folder);

    /// The time zone of a folder's household, read without changing it or waiting for others; nullopt where it cannot be
    /// read.
    static std::optional<std::string> time_zone_in(const std::filesystem::path& folder);

    HouseholdStore(HouseholdStore&&) noexcept;
    HouseholdStore& operator=(HouseholdStore&&) noexcept;
    ~HouseholdStore();

    const std::filesystem::path& folder() const;

    /// Spots and plants in the order of their ids, without plants that are gone, and the own record. Errors: Damaged,
    /// Locked.
    Result<home::Household> load() const;
    /// What happened, oldest first, of one plant or of all. Errors: Damaged, Locked.
    Result<std::vector<home::Event>> events(std::optional<home::PlantId> plant = {}) const;
    /// Adds what happened, all or nothing; a move that is the plant's latest is where it now stands.
    /// Errors: NotFound for an unknown plant or spot, Locked, Unwritable.
    Result<void> record(std::span<const home::Event> happened);
    enum class Direction { Undo, Redo };
    /// Undoes the event that was entered last and still counts, or lets the one count again that was undone
    /// last with nothing entered since. Gives that event; nullopt where there is none. Survives a restart.
    /// Errors: Damaged, Locked, Unwritable.
    Result<std::optional<home::Event>> turn_back(Direction direction, calendar::Instant now);
    /// As turn_back, over all that can be undone: events, measurements and readings of the thermometer. What was
    /// entered last is told by the order of entry, not by the clock, which may have been set back. Photos, and readings, that
    /// were entered in one moment are turned as one.
    Result<std::optional<home::Entry>> turn_last(Direction direction, calendar::Instant now);
    /// Plants that died, were given away or taken off the list, by that date; what is known of them stays, and they
    /// are back once that event is undone. Errors: Damaged, Locked.
    Result<std::vector<home::GonePlant>> gone_plants() const;
    /// What plants came of, by plant; those that were bought are not among them. Errors: Damaged, Locked.
    Result<std::vector<home::Descent>> descents() const;
    /// Where a plant stood and where accepted plans would have had it. Errors: Damaged, Locked.
    Result<home::Stays> stays(home::PlantId plant) const;
    /// Divides a plant: the pieces become plants under the next free ids, which are given back; the parent stays.
    /// Errors: NotFound where the parent is not there, OutOfRange for no pieces or a name that is taken, Locked,
    /// Unwritable.
    Result<std::vector<home::PlantId>> divide(home::PlantId parent, std::span<const home::Plant> pieces,
                                              calendar::Date on, calendar::Instant entered, const std::string& note);
    /// Adds a spot or a plant under the next free id, which is given back; the plant's coming is an event of
    /// `since` where it has a spot. Errors: as home::make (a blank name, one that is taken without case); OutOfRange
    /// where it breaks a rule of the tables (a name of a plant that is gone, an unknown spot), Locked, Unwritable.
    Result<home::SpotId> add(home::Spot spot);
    Result<home::PlantId> add(home::Plant plant, calendar::Date since, calendar::Instant now);
    /// Makes the household's place, spots or plants others, all or nothing, as one event that is undone as one
    /// (household_change.h); gives it. A new plant's coming is an event of `since` where it has a spot. A spot goes only
    /// where nothing tells of it. A spot's mark "in reach" that it has by a member's reach alone is not kept as one by
    /// hand. Errors: as home::make; OutOfRange also for a name of a plant that is gone; Locked, Unwritable.
    Result<home::EventId> change(const home::HouseholdChange& change, calendar::Date since, calendar::Instant now);
    /// Keeps a plan as the accepted one; those before it stay in the file. Errors: Locked, Unwritable.
    Result<void> accept(const home::AcceptedPlan& plan);
    /// The plan that was accepted last; nullopt where none was. Errors: Damaged, Locked.
    Result<std::optional<home::AcceptedPlan>> accepted_plan() const;
    /// Thermometer readings and kept forecasts, those that count. Errors: Damaged, Locked.
    Result<home::NightLog> night_log() const;
    /// Adds readings, all or nothing. Errors: NotFound for an unknown spot or a temperature out of range,
    /// Locked, Unwritable.
    Result<void> record(std::span<const home::Reading> readings);
    /// Keeps forecasts, all or nothing. Errors: OutOfRange where one was made after its night, Locked,
    /// Unwritable.
    Result<void> record(std::span<const home::KeptForecast> forecasts);
    /// Lots, trays, counts and the plants that came of them, as far as they are not undone (seed_lot.h).
    /// Errors: Damaged, Locked.
    Result<home::SeedBook> seeds() const;
    /// Each is checked against what the journal has, written with an event that can be undone, and gives its id.
    /// Errors: as home::check; OutOfRange for a lot of a name that is there, NotFound for an unknown spot, Locked,
    /// Unwritable.
    Result<int> add_lot(const home::SeedLot& lot, calendar::Date on, calendar::Instant entered);
    Result<int> record(const home::Tray& tray, calendar::Date today, calendar::Instant entered);
    Result<int> record(const home::TrayCount& count, calendar::Date today, calendar::Instant entered);
    /// Adds plants that a tray's seedlings became, under the next free ids, which are given back; each is an event
    /// of that date. Errors: NotFound for an unknown tray; OutOfRange where the tray has not that many seedlings
    /// left, the date lies before its sowing, or a plant breaks a rule of the tables; Locked, Unwritable.
    Result<std::vector<home::PlantId>> pot_up(int tray, std::span<const home::Plant> plants, calendar::Date on,
                                              calendar::Instant entered);
    /// Measurements that count, of one plant and one kind or of all, by date, time of day (noon where none was
    /// said) and order of entry. Errors: Damaged, Locked.
    Result<std::vector<home::Measurement>> measurements(std::optional<home::PlantId> plant = {},
                                                        std::optional<home::MeasurementKind> kind = {}) const;
    /// Adds measurements, all or nothing, and gives their ids. Errors: as home::check, NotFound for an unknown
    /// plant, Locked, Unwritable.
    Result<std::vector<int>> record(std::span<const home::Measurement> measurements);
    /// Jugs of the household by name. Errors: Damaged, Locked.
    Result<std::vector<home::Jug>> jugs() const;
    /// Adds a jug; one of that name (without case) is followed by it. Errors: Locked, Unwritable.
    Result<void> keep_jug(const home::Jug& jug, calendar::Instant entered);
    /// Keeps an imported station record, in the place of one that may be there. Errors: OutOfRange where it
    /// breaks a rule of the tables, Locked, Unwritable.
    Result<void> keep_own_record(const climate::OwnRecord& record);
    /// Errors: NotFound where there is none, Locked, Unwritable.
    Result<void> remove_own_record();
    /// Writes a checked copy of the database in one file. Errors: Unwritable, Damaged.
    Result<void> copy_to(const std::filesystem::path& file) const;

private:
    friend class PhotoBook;
    struct Inside;
    explicit HouseholdStore(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

} // namespace lathhouse::journal
