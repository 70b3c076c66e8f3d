#pragma once

#include "core/base/result.h"
#include "core/climate/own_record.h"
#include "core/home/history.h"
#include "core/home/household.h"
#include "core/home/thermometer.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <vector>

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

    HouseholdStore(HouseholdStore&&) noexcept;
    HouseholdStore& operator=(HouseholdStore&&) noexcept;
    ~HouseholdStore();

    const std::filesystem::path& folder() const;

    /// Spots and plants in the order of their ids, and the own record. Errors: Damaged, Locked.
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
    /// Thermometer readings and kept forecasts, those that count. Errors: Damaged, Locked.
    Result<home::NightLog> night_log() const;
    /// Adds readings, all or nothing. Errors: NotFound for an unknown spot or a temperature out of range,
    /// Locked, Unwritable.
    Result<void> record(std::span<const home::Reading> readings);
    /// Keeps forecasts, all or nothing. Errors: OutOfRange where one was made after its night, Locked,
    /// Unwritable.
    Result<void> record(std::span<const home::KeptForecast> forecasts);
    /// Keeps an imported station record, in the place of one that may be there. Errors: OutOfRange where it
    /// breaks a rule of the tables, Locked, Unwritable.
    Result<void> keep_own_record(const climate::OwnRecord& record);
    /// Errors: NotFound where there is none, Locked, Unwritable.
    Result<void> remove_own_record();
    /// Writes a checked copy of the database in one file. Errors: Unwritable, Damaged.
    Result<void> copy_to(const std::filesystem::path& file) const;

private:
    struct Inside;
    explicit HouseholdStore(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

} // namespace lathhouse::journal
