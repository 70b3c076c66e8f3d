#include "core/journal/plant_rows.h"

#include "core/home/history.h"
#include "core/home/lineage.h"
#include "core/journal/household_store_inside.h"

#include <algorithm>

namespace lathhouse::journal {
namespace {

home::GoneHow how_of(const std::string& word)
{
    using home::GoneHow;
    return word == "died" ? GoneHow::Died
           : word == "given_away" ? GoneHow::GivenAway
           : word == "removed"    ? GoneHow::Removed
                                  : GoneHow::Undone;
}

Error unreadable(const std::filesystem::path& file, const Said& what)
{
    return {ErrorCode::Damaged, said("%1 is damaged (%2 cannot be read); restore a backup", file.string(), what)};
}

} // namespace

std::vector<home::Plant> load_plants(SQLite::Database& database, const std::string& condition)
{
    SQLite::Statement rows{database,
                           "SELECT id, name, kind, safe_night_celsius, damage_celsius, "
                           "lethal_celsius, heat_limit_celsius, light_to_survive_moles, "
                           "light_to_thrive_moles, must_dry, hazardous, sulks, pot_kilograms, spot_id, "
                           "pinned_spot_id, wants_open_air, pot_litres, pot_shade FROM plants " +
                               condition + " ORDER BY id"};
    std::vector<home::Plant> plants;
    while (rows.executeStep()) {
        const auto degrees = [&](int column) {
            return Celsius::from_degrees(rows.getColumn(column).getDouble());
        };
        plants.push_back(
            {.id = rows.getColumn(0).getInt(),
             .name = rows.getColumn(1).getString(),
             .kind = rows.getColumn(2).getString(),
             .lines = {.safe_night = degrees(3), .damage_begins = degrees(4), .lethal = degrees(5)},
             .heat_limit = degrees(6),
             .light_to_survive = DailyLight::from_moles(rows.getColumn(7).getDouble()),
             .light_to_thrive = DailyLight::from_moles(rows.getColumn(8).getDouble()),
             .must_dry = rows.getColumn(9).getInt() != 0,
             .hazardous = rows.getColumn(10).getInt() != 0,
             .sulks = rows.getColumn(11).getInt() != 0,
             .wants_open_air = rows.getColumn(15).getInt() != 0,
             .pot_kilograms = rows.getColumn(12).getDouble(),
             .spot = id_in(rows.getColumn(13)),
             .pinned_spot = id_in(rows.getColumn(14)),
             .pot_volume = rows.getColumn(16).isNull()
                               ? std::nullopt
                               : std::optional{Litres::from_litres(rows.getColumn(16).getDouble())},
             .pot_shade =
                 home::pot_shade_of(rows.getColumn(17).getString()).value_or(home::PotShade::Unknown)});
    }
    return plants;
}

Result<std::vector<home::GonePlant>> HouseholdStore::gone_plants() const
{
    try {
        SQLite::Transaction transaction{inside_->database}; // Both tables as they were at one moment.
        const auto plants = load_plants(inside_->database, "WHERE id IN (SELECT plant_id FROM gone_plants)");
        SQLite::Statement rows{inside_->database, "SELECT plant_id, how, gone_on FROM gone_plants ORDER BY gone_on, "
                                                  "plant_id"};
        std::vector<home::GonePlant> gone;
        while (rows.executeStep()) {
            const auto on = calendar::parse_date(rows.getColumn(2).getString());
            const auto plant = std::ranges::find(plants, rows.getColumn(0).getInt(), &home::Plant::id);
            if (!on || plant == plants.end()) {
                return unreadable(inside_->file, said("the end of a plant"));
            }
            gone.push_back({*plant, how_of(rows.getColumn(1).getString()), *on});
        }
        return gone;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

Result<std::vector<home::Descent>> HouseholdStore::descents() const
{
    try {
        SQLite::Statement rows{inside_->database,
                               "SELECT p.id, d.parent_plant_id, p.from_tray_id FROM plants p LEFT JOIN descents d ON "
                               "d.plant_id = p.id WHERE d.parent_plant_id IS NOT NULL OR p.from_tray_id IS NOT NULL "
                               "ORDER BY p.id"};
        std::vector<home::Descent> descents;
        while (rows.executeStep()) {
            descents.push_back({rows.getColumn(0).getInt(), id_in(rows.getColumn(1)), id_in(rows.getColumn(2))});
        }
        return descents;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

Result<home::Stays> HouseholdStore::stays(home::PlantId plant) const
{
    try {
        SQLite::Transaction transaction{inside_->database};
        home::Stays stays;
        SQLite::Statement actual{inside_->database, "SELECT spot_id, from_on, to_on FROM actual_stays WHERE "
                                                    "plant_id = ? ORDER BY from_on"};
        actual.bind(1, plant);
        while (actual.executeStep()) {
            const auto from = calendar::parse_date(actual.getColumn(1).getString());
            std::optional<calendar::Date> to;
            if (!actual.getColumn(2).isNull()) {
                const auto end = calendar::parse_date(actual.getColumn(2).getString());
                if (!end) {
                    return unreadable(inside_->file, said("a stay"));
                }
                to = *end;
            }
            if (!from) {
                return unreadable(inside_->file, said("a stay"));
            }
            if (!to || *to >= *from) { // Moved on before the evening: it never spent a night there.
                stays.actual.push_back({actual.getColumn(0).getInt(), *from, to});
            }
        }
        SQLite::Statement planned{inside_->database, "SELECT spot_id, from_on, to_on, planned_at FROM planned_stays "
                                                     "WHERE plant_id = ? ORDER BY id"};
        planned.bind(1, plant);
        while (planned.executeStep()) {
            const auto from = calendar::parse_date(planned.getColumn(1).getString());
            const auto to = calendar::parse_date(planned.getColumn(2).getString());
            const auto accepted = read_instant(planned.getColumn(3).getString());
            if (!from || !to || !accepted) {
                return unreadable(inside_->file, said("a planned stay"));
            }
            stays.planned.push_back({planned.getColumn(0).getInt(), *from, *to, *accepted});
        }
        return stays;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

Result<std::vector<home::PlantId>> HouseholdStore::divide(home::PlantId parent, std::span<const home::Plant> pieces,
                                                          calendar::Date on, calendar::Instant entered,
                                                          const std::string& note)
{
    try {
        auto& database = inside_->database;
        SQLite::Transaction transaction{database, SQLite::TransactionBehavior::IMMEDIATE};
        SQLite::Statement living{database, "SELECT count(*) FROM plants WHERE id = ?1 AND id NOT IN (SELECT plant_id "
                                           "FROM gone_plants)"};
        living.bind(1, parent);
        living.executeStep();
        if (living.getColumn(0).getInt() == 0) {
            return Error{
                ErrorCode::NotFound,
                said("there is no living plant %1 to divide; `lathhouse list plants` shows their ids", parent)};
        }
        if (pieces.empty()) {
            return Error{ErrorCode::OutOfRange, said("a division needs a name for each new piece")};
        }
        std::vector<home::PlantId> ids;
        std::vector<home::EventId> stood_there;
        std::string names;
        for (auto piece : pieces) {
            piece.id = database.execAndGet("SELECT coalesce(max(id), 0) + 1 FROM plants").getInt();
            insert_plants(database, std::span{&piece, 1});
            if (piece.spot) {
                const home::Event stood{piece.id, home::EventKind::Moved, piece.spot, on, entered, {}};
                insert_events(database, std::span{&stood, 1});
                stood_there.push_back(static_cast<int>(database.getLastInsertRowid()));
            }
            names += (names.empty() ? "" : ", ") + piece.name;
            ids.push_back(piece.id);
        }
        // Last, so that undoing the last entry undoes the division as a whole.
        const home::Event divided{parent, home::EventKind::Divided, {}, on, entered, note, {{"into", names}}};
        insert_events(database, std::span{&divided, 1});
        const auto event = static_cast<int>(database.getLastInsertRowid());
        SQLite::Statement row{database, "INSERT INTO descents (plant_id, parent_plant_id, event_id) VALUES (?, ?, ?)"};
        for (const auto id : ids) {
            (Row{row} << id << parent << event).insert();
            keep_with_change(database, event, id); // Undone, its name is free for another.
        }
        for (const auto stood : stood_there) {
            keep_event_with_change(database, event, stood);
        }
        transaction.commit();
        return ids;
    } catch (const SQLite::Exception& thrown) {
        if (breaks_a_rule(thrown)) {
            return Error{ErrorCode::OutOfRange, said("nothing was divided in %1; a piece's name is taken, also by "
                                                     "plants that are gone, or its spot is not in the household",
                                                     inside_->file.string())};
        }
        return error_of(thrown, inside_->file);
    }
}

} // namespace lathhouse::journal
