#include "core/journal/household_store.h"

#include "core/home/household_change.h"
#include "core/journal/household_store_inside.h"

#include <nlohmann/json.hpp>
#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <set>
#include <span>
#include <string_view>
#include <utility>
#include <vector>

namespace lathhouse::journal {
namespace {

using RowJson = nlohmann::json;

/// A table whose rows changes make another, and what finds a row of it.
struct ChangedTable {
    const char* name;
    const char* key;
};
constexpr std::array<ChangedTable, 4> kChangedTables{
    {{"household", "id"}, {"spots", "id"}, {"spot_views", "spot_id"}, {"plants", "id"}}};

const ChangedTable& table_called(const std::string& name)
{
    for (const auto& table : kChangedTables) {
        if (name == table.name) {
            return table;
        }
    }
    throw SQLite::Exception{"a change of no known table, " + name, SQLITE_CORRUPT};
}

/// The row as it stands, by column; null where it is not there.
RowJson row_of(SQLite::Database& database, const ChangedTable& table, int id)
{
    SQLite::Statement row{database, std::string{"SELECT * FROM "} + table.name + " WHERE " + table.key + " = ?"};
    row.bind(1, id);
    if (!row.executeStep()) {
        return nullptr;
    }
    RowJson json = RowJson::object();
    for (int column = 0; column < row.getColumnCount(); ++column) {
        const auto cell = row.getColumn(column);
        auto& value = json[row.getColumnName(column)];
        if (cell.isInteger()) {
            value = cell.getInt64();
        } else if (cell.isFloat()) {
            value = cell.getDouble();
        } else if (cell.isText()) {
            value = cell.getString();
        } else {
            value = nullptr;
        }
    }
    return json;
}

void bind_value(SQLite::Statement& statement, int place, const RowJson& value)
{
    if (value.is_number_integer()) {
        statement.bind(place, value.get<std::int64_t>());
    } else if (value.is_number()) {
        statement.bind(place, value.get<double>());
    } else if (value.is_string()) {
        statement.bind(place, value.get<std::string>());
    } else {
        statement.bind(place);
    }
}

/// Makes the row what `json` says. Columns that the table no longer has are left out; where a plant stands is told by
/// its moves.
void set_row(SQLite::Database& database, const ChangedTable& table, int id, const RowJson& json)
{
    if (json.is_null()) {
        SQLite::Statement erase{database, std::string{"DELETE FROM "} + table.name + " WHERE " + table.key + " = ?"};
        erase.bind(1, id);
        erase.exec();
        return;
    }
    std::set<std::string> columns;
    SQLite::Statement known{database, "SELECT name FROM pragma_table_info(?)"};
    known.bind(1, std::string{table.name});
    while (known.executeStep()) {
        columns.insert(known.getColumn(0).getString());
    }
    std::string names;
    std::string marks;
    std::string settings;
    std::vector<const RowJson*> values;
    for (const auto& [name, value] : json.items()) {
        if (columns.contains(name) && name != "spot_id") {
            names += ", " + name;
            marks += ", ?";
            settings += (settings.empty() ? "" : ", ") + name + " = ?";
            values.push_back(&value);
        }
    }
    SQLite::Statement update{database, std::string{"UPDATE "} + table.name + " SET " + settings + " WHERE " + table.key + " = ?"};
    int place = 0;
    for (const auto* value : values) {
        bind_value(update, ++place, *value);
    }
    update.bind(++place, id);
    if (update.exec() > 0) {
        return;
    }
    if (std::string_view{table.key} != "spot_id") {
        throw SQLite::Exception{std::string{"a row of "} + table.name + " that was changed is missing", SQLITE_CORRUPT};
    }
    SQLite::Statement insert{database, std::string{"INSERT INTO "} + table.name + " (spot_id" + names + ") VALUES (?" + marks + ")"};
    insert.bind(1, id);
    place = 1;
    for (const auto* value : values) {
        bind_value(insert, ++place, *value);
    }
    insert.exec();
}

/// A row that stays while it is off the list; its name is free for another.
RowJson off_the_list(RowJson row, const char* flag)
{
    row[flag] = 1;
    row["name"] = row["name"].get<std::string>() + " (" + std::to_string(row["id"].get<int>()) + ", off the list)";
    return row;
}

/// What speaks against taking a spot off the list; nullopt where nothing does.
std::optional<Said> why_spot_stays(SQLite::Database& database, home::SpotId spot)
{
    struct Reason {
        const char* query;
        Sentence<0> words;
    };
    constexpr std::array<Reason, 6> kReasons{
        {{"SELECT 1 FROM plants WHERE (spot_id = ?1 OR pinned_spot_id = ?1) AND id NOT IN (SELECT plant_id FROM "
          "gone_plants)",
          said_later("a plant stands there or is kept there")},
         {"SELECT 1 FROM pins WHERE spot_id = ?1 AND taken_back_at IS NULL", said_later("a plant is pinned to it")},
         {"SELECT 1 FROM readings_that_count WHERE spot_id = ?1", said_later("its thermometer has readings")},
         {"SELECT 1 FROM events_that_count WHERE spot_id = ?1", said_later("the journal tells of it")},
         {"SELECT 1 FROM planned_stays WHERE spot_id = ?1", said_later("a plan that was accepted uses it")},
         {"SELECT 1 FROM plants WHERE spot_id = ?1 OR pinned_spot_id = ?1",
          said_later("a plant that is gone stood there")}}};
    for (const auto& reason : kReasons) {
        SQLite::Statement used{database, reason.query};
        used.bind(1, spot);
        if (used.executeStep()) {
            return said_now(reason.words);
        }
    }
    return std::nullopt;
}

/// Takes part in one change: keeps each row as it was and as it is.
class Change {
public:
    /// members: whose reach the household's spots were read with.
    Change(SQLite::Database& database, const home::HouseholdChange& change, std::span<const home::Member> members,
           calendar::Date since, calendar::Instant now)
        : database_(database), change_(change), members_(members), since_(since), now_(now)
    {
    }

    Result<home::EventId> make()
    {
        change_household();
        for (const auto& spot : change_.spots) {
            if (const auto put = put_spot(spot); !put) {
                return put.error();
            }
        }
        for (const auto& plant : change_.plants) {
            if (const auto put = put_plant(plant); !put) {
                return put.error();
            }
        }
        for (const auto id : change_.spots_gone) {
            if (const auto taken = take_off(id); !taken) {
                return taken.error();
            }
        }
        for (const auto plant : change_.unpinned) {
            unpin(plant);
        }
        for (const auto& pin : change_.pins) {
            set_pin(pin);
        }
        // Entered last, so that it is what an undo meets first.
        const home::Event event{.plant = {},
                                .kind = home::EventKind::Noted,
                                .spot = {},
                                .happened = since_,
                                .entered = now_,
                                .note = change_.words,
                                .details = {{"change", "household"}}};
        insert_events(database_, std::span{&event, 1});
        const auto id = static_cast<home::EventId>(database_.getLastInsertRowid());
        SQLite::Statement insert{database_, "INSERT INTO changed_rows (event_id, in_table, row_id, before, after) VALUES (?, ?, ?, ?, ?)"};
        for (const auto& row : rows_) {
            (Row{insert} << id << row.table << row.id << row.before << row.after).insert();
        }
        SQLite::Statement of_pin{database_, "INSERT INTO pin_changes (event_id, pin_id, holds) VALUES (?, ?, ?)"};
        for (const auto& [pin, holds] : pins_) {
            (Row{of_pin} << id << pin << int{holds}).insert();
        }
        return id;
    }

private:
    struct Kept {
        std::string table;
        int id;
        std::optional<std::string> before;
        std::optional<std::string> after;
    };

    static std::optional<std::string> text_of(const RowJson& row)
    {
        return row.is_null() ? std::nullopt
                             : std::optional{row.dump(-1, ' ', false, RowJson::error_handler_t::replace)};
    }
    void keep(const ChangedTable& table, int id, const RowJson& before)
    {
        rows_.push_back({table.name, id, text_of(before), text_of(row_of(database_, table, id))});
    }

    void change_household()
    {
        if (!change_.place && !change_.name) {
            return;
        }
        const auto& table = table_called("household");
        const auto before = row_of(database_, table, 1);
        if (change_.name) {
            SQLite::Statement name{database_, "UPDATE household SET name = ?"};
            (Row{name} << *change_.name).insert();
        }
        if (change_.place) {
            const auto& place = *change_.place;
            SQLite::Statement update{database_, "UPDATE household SET place_name = ?, latitude_degrees = ?, "
                                                "longitude_degrees = ?, elevation_metres = ?, time_zone = ?"};
            (Row{update} << place.name << place.position.latitude.degrees() << place.position.longitude.degrees()
                         << (place.elevation ? std::optional{place.elevation->metres()} : std::nullopt) << place.time_zone)
                .insert();
        }
        keep(table, 1, before);
    }

    int next(const char* table)
    {
        return database_.execAndGet(std::string{"SELECT coalesce(max(id), 0) + 1 FROM "} + table).getInt();
    }

    bool is_reached(home::SpotId spot) const
    {
        return std::ranges::any_of(members_, [spot](const home::Member& member) {
            return std::ranges::binary_search(member.reaches, spot);
        });
    }

    Result<void> put_spot(home::Spot spot)
    {
        const auto& table = table_called("spots");
        const auto& views = table_called("spot_views");
        if (spot.id == 0) {
            spot.id = next("spots");
            insert_spots(database_, std::span{&spot, 1});
            keep(table, spot.id, off_the_list(row_of(database_, table, spot.id), "gone"));
            if (spot.view) {
                keep(views, spot.id, nullptr);
            }
            return {};
        }
        const auto before = row_of(database_, table, spot.id);
        if (before.is_null() || before["gone"] == 1) {
            return Error{ErrorCode::NotFound, said("the spot \"%1\" is no longer there", spot.name)};
        }
        const auto view_before = row_of(database_, views, spot.id);
        if (spot.in_reach && is_reached(spot.id)) {
            spot.in_reach = before["in_reach"] == 1; // What a member reaches is no mark by hand.
        }
        update_spot(database_, spot);
        keep(table, spot.id, before);
        if (!view_before.is_null() || spot.view) {
            keep(views, spot.id, view_before);
        }
        return {};
    }

    Result<void> put_plant(home::Plant plant)
    {
        const auto& table = table_called("plants");
        if (plant.id != 0) {
            const auto before = row_of(database_, table, plant.id);
            if (before.is_null() || before["withdrawn"] == 1) {
                return Error{ErrorCode::NotFound, said("the plant \"%1\" is no longer there", plant.name)};
            }
            update_plant(database_, plant);
            keep(table, plant.id, before);
            return {};
        }
        plant.id = next("plants");
        insert_plants(database_, std::span{&plant, 1});
        keep(table, plant.id, off_the_list(row_of(database_, table, plant.id), "withdrawn"));
        if (plant.spot) {
            const home::Event moved{plant.id, home::EventKind::Moved, plant.spot, since_, now_, "added"};
            insert_events(database_, std::span{&moved, 1});
            const auto id = static_cast<int>(database_.getLastInsertRowid());
            rows_.push_back({"events", id, std::nullopt, std::nullopt});
            // It is undone with the change and not by itself.
            SQLite::Statement erase{database_, "DELETE FROM entries WHERE kind = 'event' AND row_id = ?"};
            (Row{erase} << id).insert();
        }
        return {};
    }

    Result<void> take_off(home::SpotId id)
    {
        const auto& table = table_called("spots");
        const auto before = row_of(database_, table, id);
        if (before.is_null() || before["gone"] == 1) {
            return Error{ErrorCode::NotFound, said("the spot is no longer there")};
        }
        if (const auto why = why_spot_stays(database_, id)) {
            return Error{ErrorCode::OutOfRange, said("%1 stays on the list: %2; with 0 pots the plan uses it no more",
                                                     before["name"].get<std::string>(), *why)};
        }
        set_row(database_, table, id, off_the_list(before, "gone"));
        keep(table, id, before);
        return {};
    }

    void unpin(home::PlantId plant)
    {
        SQLite::Statement held{database_, "SELECT id FROM pins WHERE plant_id = ? AND taken_back_at IS NULL"};
        held.bind(1, plant);
        while (held.executeStep()) {
            pins_.emplace_back(held.getColumn(0).getInt(), false);
        }
        SQLite::Statement dated{database_, "UPDATE pins SET taken_back_at = ? WHERE plant_id = ? AND taken_back_at IS NULL"};
        (Row{dated} << calendar::to_text(now_) << plant).insert();
        const auto& table = table_called("plants");
        const auto before = row_of(database_, table, plant);
        if (before.is_object() && !before["pinned_spot_id"].is_null()) {
            SQLite::Statement always{database_, "UPDATE plants SET pinned_spot_id = NULL WHERE id = ?"};
            (Row{always} << plant).insert();
            keep(table, plant, before);
        }
    }

    void set_pin(const home::Pin& pin)
    {
        SQLite::Statement insert{database_, "INSERT INTO pins (plant_id, spot_id, from_on, to_on, entered_at) VALUES (?, ?, ?, ?, ?)"};
        (Row{insert} << pin.plant << pin.spot << calendar::to_text(pin.from) << calendar::to_text(pin.to)
                     << calendar::to_text(now_))
            .insert();
        pins_.emplace_back(static_cast<int>(database_.getLastInsertRowid()), true);
    }

    SQLite::Database& database_;
    const home::HouseholdChange& change_;
    std::span<const home::Member> members_;
    calendar::Date since_;
    calendar::Instant now_;
    std::vector<Kept> rows_;
    std::vector<std::pair<int, bool>> pins_; ///< Those that the change set (true) or took back.
};

} // namespace

void keep_with_change(SQLite::Database& database, home::EventId change, home::PlantId added)
{
    const auto after = row_of(database, table_called("plants"), added);
    auto before = off_the_list(after, "withdrawn");
    before["from_tray_id"] = nullptr; // Its seedling is in the tray again.
    SQLite::Statement insert{database, "INSERT INTO changed_rows (event_id, in_table, row_id, before, after) "
                                       "VALUES (?, 'plants', ?, ?, ?)"};
    const auto text = [](const RowJson& row) { return row.dump(-1, ' ', false, RowJson::error_handler_t::replace); };
    (Row{insert} << change << added << text(before) << text(after)).insert();
}

void keep_event_with_change(SQLite::Database& database, home::EventId change, home::EventId event)
{
    SQLite::Statement insert{database, "INSERT INTO changed_rows (event_id, in_table, row_id) VALUES (?, 'events', ?)"};
    (Row{insert} << change << event).insert();
    SQLite::Statement erase{database, "DELETE FROM entries WHERE kind = 'event' AND row_id = ?"};
    (Row{erase} << event).insert();
}

Result<void> turn_changed_rows(SQLite::Database& database, home::EventId change, HouseholdStore::Direction direction,
                               calendar::Instant now)
{
    const bool undo = direction == HouseholdStore::Direction::Undo;
    struct Turned {
        std::string table;
        int id;
        RowJson before;
        RowJson after;
    };
    std::vector<Turned> turned;
    SQLite::Statement rows{database, std::string{"SELECT in_table, row_id, before, after FROM changed_rows WHERE event_id = ? ORDER BY id"} +
                                         (undo ? " DESC" : "")};
    rows.bind(1, change);
    while (rows.executeStep()) {
        const auto json = [&](int column) {
            return rows.getColumn(column).isNull() ? RowJson{} : RowJson::parse(rows.getColumn(column).getString(), nullptr, false);
        };
        turned.push_back({rows.getColumn(0).getString(), rows.getColumn(1).getInt(), json(2), json(3)});
        if (turned.back().before.is_discarded() || turned.back().after.is_discarded()) {
            return Error{ErrorCode::Damaged,
                         said("the household is damaged (a change of its rows cannot be read); restore a backup")};
        }
    }
    std::vector<int> moves;
    for (const auto& row : turned) {
        if (row.table == "events") {
            SQLite::Statement insert{database, "INSERT INTO event_undos (event_id, undone, entered_at) VALUES (?, ?, ?)"};
            (Row{insert} << row.id << int{undo} << calendar::to_text(now)).insert();
            moves.push_back(row.id);
        }
    }
    for (const auto& row : turned) {
        if (row.table == "events") {
            continue;
        }
        const auto& json = undo ? row.before : row.after;
        if (row.table == "spots" && json.is_object() && json.value("gone", 0) == 1) {
            if (const auto why = why_spot_stays(database, row.id)) {
                return Error{ErrorCode::OutOfRange, said("the spot cannot be taken back: %1", *why)};
            }
        }
        set_row(database, table_called(row.table), row.id, json);
    }
    // A pin holds where what is now in force set it, or no longer takes it back.
    SQLite::Statement pins{database, "UPDATE pins SET taken_back_at = iif(c.holds = ?1, ?2, NULL) FROM pin_changes c "
                                     "WHERE c.event_id = ?3 AND c.pin_id = pins.id"};
    (Row{pins} << int{undo} << calendar::to_text(now) << change).insert();
    for (const int move : moves) {
        SQLite::Statement of{database, "SELECT plant_id FROM events WHERE id = ?"};
        of.bind(1, move);
        if (of.executeStep()) {
            set_spot_of(database, of.getColumn(0).getInt());
        }
    }
    return {};
}

Result<home::EventId> HouseholdStore::change(const home::HouseholdChange& change, calendar::Date since, calendar::Instant now)
{
    try {
        // The rules of the household are those of one in memory; the tables hold them where another program comes between.
        auto household = load();
        if (!household) {
            return household.error();
        }
        if (const auto right = home::make(change, *household); !right) {
            return right.error();
        }
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        const auto members = load_members(inside_->database, inside_->file);
        if (!members) {
            return members.error();
        }
        auto event = Change(inside_->database, change, *members, since, now).make();
        if (event) {
            transaction.commit();
        }
        return event;
    } catch (const SQLite::Exception& thrown) {
        if (breaks_a_rule(thrown)) {
            return Error{ErrorCode::OutOfRange, said("nothing was changed (%1); names must differ, also from those of "
                                                     "plants that are gone, and numbers lie in their ranges",
                                                     thrown.what())};
        }
        return error_of(thrown, inside_->file);
    }
}

} // namespace lathhouse::journal
