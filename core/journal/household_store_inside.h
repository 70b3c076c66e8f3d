#pragma once

#include "core/home/member.h"
#include "core/journal/database.h"
#include "core/journal/household_store.h"

#include <span>
#include <string>
#include <utility>

// What the files of the store share; of use inside core/journal only.

namespace lathhouse::journal {

struct HouseholdStore::Inside {
    std::filesystem::path folder;
    std::filesystem::path file;
    SQLite::Database database;
};

/// Binds values in the order of the statement's question marks.
class Row {
public:
    explicit Row(SQLite::Statement& statement) : statement_(&statement) { statement_->reset(); }
    Row& operator<<(const std::string& text) { return bound(text); }
    Row& operator<<(int value) { return bound(value); }
    Row& operator<<(double value) { return bound(value); }
    Row& operator<<(std::optional<int> value) { return value ? bound(*value) : none(); }
    Row& operator<<(const std::optional<std::string>& text) { return text ? bound(*text) : none(); }
    Row& operator<<(std::optional<double> value) { return value ? bound(*value) : none(); }
    void insert() { statement_->exec(); }

private:
    template <class Value>
    Row& bound(const Value& value)
    {
        statement_->bind(++place_, value);
        return *this;
    }
    Row& none()
    {
        statement_->bind(++place_);
        return *this;
    }
    SQLite::Statement* statement_;
    int place_ = 0;
};

/// Adds rows, within the caller's transaction. They throw SQLite::Exception.
void insert_spots(SQLite::Database& database, std::span<const home::Spot> added); ///< With their views.
void insert_plants(SQLite::Database& database, std::span<const home::Plant> added);
/// Makes the row of a spot (with its view) or a plant what is given, but for where the plant stands.
void update_spot(SQLite::Database& database, const home::Spot& spot);
void update_plant(SQLite::Database& database, const home::Plant& plant);
/// Puts the rows of a change back as they were before it, or as it left them; nothing where the event is no change.
/// Errors: OutOfRange where a spot that it added is in use, Damaged.
Result<void> turn_changed_rows(SQLite::Database& database, home::EventId change, HouseholdStore::Direction direction,
                               calendar::Instant now);
/// Makes a plant that was added part of a change, and an event that belongs to it: they count while the change does, and
/// are undone with it and not by themselves. Within the caller's transaction; throw SQLite::Exception.
void keep_with_change(SQLite::Database& database, home::EventId change, home::PlantId added);
void keep_event_with_change(SQLite::Database& database, home::EventId change, home::EventId event);
void insert_events(SQLite::Database& database, std::span<const home::Event> events);
/// The latest move that counts is where a plant stands.
void set_spot_of(SQLite::Database& database, home::PlantId plant);

/// A row by its id, whether it counts or not. Errors: Damaged where it cannot be read. They throw SQLite::Exception.
Result<home::Event> event_of(SQLite::Database& database, const std::filesystem::path& file, int id);
Result<home::Measurement> measurement_of(SQLite::Database& database, const std::filesystem::path& file, int id);
Result<home::Reading> reading_of(SQLite::Database& database, const std::filesystem::path& file, int id);
/// What an entry of photos is, by its kind among the entries and its row.
Result<home::PhotoChange> photo_change_of(SQLite::Database& database, const std::filesystem::path& file,
                                          const std::string& kind, int id);

/// Children and animals to be kept from harm, as the events that count tell of them. Errors: Damaged. Throws the same.
Result<std::vector<home::Member>> load_members(SQLite::Database& database, const std::filesystem::path& file);

inline std::optional<double> degrees_of(std::optional<Celsius> temperature)
{
    return temperature ? std::optional{temperature->degrees()} : std::nullopt;
}

inline std::optional<Celsius> celsius_in(const SQLite::Column& column)
{
    return column.isNull() ? std::nullopt : std::optional{Celsius::from_degrees(column.getDouble())};
}

inline std::optional<int> id_in(const SQLite::Column& column)
{
    return column.isNull() ? std::nullopt : std::optional{column.getInt()};
}

/// `YYYY-MM-DDThh:mm:ssZ`, as the tables' CHECKs have made sure of.
Result<calendar::Instant> read_instant(const std::string& text);

} // namespace lathhouse::journal
