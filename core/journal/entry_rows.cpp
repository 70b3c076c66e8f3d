#include "core/journal/household_store_inside.h"

#include <algorithm>
#include <array>
#include <set>
#include <string>
#include <string_view>

namespace lathhouse::journal {
namespace {

struct Undos {
    std::string_view kind;
    const char* insert;
};
constexpr std::array<Undos, 8> kUndos{
    {{"event", "INSERT INTO event_undos (event_id, undone, entered_at) VALUES (?, ?, ?)"},
     {"measurement", "INSERT INTO measurement_undos (measurement_id, undone, entered_at) VALUES (?, ?, ?)"},
     {"reading", "INSERT INTO reading_undos (reading_id, undone, entered_at) VALUES (?, ?, ?)"},
     {"photo", "INSERT INTO photo_undos (photo_id, undone, entered_at) VALUES (?, ?, ?)"},
     {"photo_date", "INSERT INTO photo_date_undos (photo_date_id, undone, entered_at) VALUES (?, ?, ?)"},
     {"photo_plant", "INSERT INTO photo_plant_undos (photo_plant_id, undone, entered_at) VALUES (?, ?, ?)"},
     {"photo_withdrawal", "INSERT INTO photo_withdrawal_undos (photo_withdrawal_id, undone, entered_at) VALUES (?, ?, ?)"},
     {"plant_picture", "INSERT INTO plant_picture_undos (plant_picture_id, undone, entered_at) VALUES (?, ?, ?)"}}};

/// Photos or readings whose entries stand beside this one and are of one moment, in the order of entry: undone ones from
/// this one on, others up to it. They came together, from a folder or a file, and are one thing to people. A night of a spot
/// that was read again came by itself: no file has it twice.
std::vector<int> rows_that_came_together(SQLite::Database& database, const std::string& kind, int entry, bool undone)
{
    // Undo goes back from the last one, redo forward from the first.
    const std::string same = kind == "reading" ? "c.spot_id || ' ' || c.night_of" : "c.id";
    SQLite::Statement rows{database, "SELECT e.row_id, e.undone, c.entered_at, " + same + " FROM entry_states e LEFT JOIN " + kind +
                                         "s c ON e.kind = '" + kind + "' AND c.id = e.row_id WHERE " +
                                         (undone ? "e.id >= ? ORDER BY e.id" : "e.id <= ? ORDER BY e.id DESC")};
    rows.bind(1, entry);
    std::vector<int> found;
    std::set<std::string> seen;
    std::string moment;
    while (rows.executeStep()) {
        const auto entered = rows.getColumn(2);
        if (entered.isNull() || (rows.getColumn(1).getInt() != 0) != undone || (!found.empty() && entered.getString() != moment) ||
            !seen.insert(rows.getColumn(3).getString()).second) {
            break;
        }
        moment = entered.getString();
        found.push_back(rows.getColumn(0).getInt());
    }
    if (!undone) {
        std::ranges::reverse(found);
    }
    return found;
}

} // namespace

Result<std::optional<home::Entry>> HouseholdStore::turn_last(Direction direction, calendar::Instant now)
{
    const bool undo = direction == Direction::Undo;
    auto& database = inside_->database;
    // Redo takes what was undone last of the entries after the last one that counts: what was entered after an undo ends the
    // chance to redo it.
    const char* which = undo ? "SELECT kind, row_id, id FROM entry_states WHERE undone = 0 ORDER BY id DESC LIMIT 1"
                             : "SELECT kind, row_id, id FROM entry_states WHERE id > coalesce((SELECT id FROM entry_states "
                               "WHERE undone = 0 ORDER BY id DESC LIMIT 1), 0) ORDER BY (SELECT max(u.id) FROM undo_order u WHERE "
                               "u.kind = entry_states.kind AND u.row_id = entry_states.row_id) DESC, id LIMIT 1";
    try {
        SQLite::Transaction transaction{database, SQLite::TransactionBehavior::IMMEDIATE};
        SQLite::Statement found{database, which};
        if (!found.executeStep()) {
            return std::optional<home::Entry>{};
        }
        const auto kind = found.getColumn(0).getString();
        const int id = found.getColumn(1).getInt();
        auto rows = kind == "photo" || kind == "reading"
                        ? rows_that_came_together(database, kind, found.getColumn(2).getInt(), !undo)
                        : std::vector{id};
        if (undo) { // From the last to the first, so that a redo meets the first of them.
            std::ranges::reverse(rows);
        }
        for (const auto& undos : kUndos) {
            if (undos.kind == kind) {
                SQLite::Statement insert{database, undos.insert};
                for (const int row : rows) {
                    (Row{insert} << row << int{undo} << calendar::to_text(now)).insert();
                }
            }
        }
        if (undo) {
            std::ranges::reverse(rows);
        }
        std::optional<home::Entry> entry;
        if (kind == "event") {
            const auto event = event_of(database, inside_->file, id);
            if (!event) {
                return event.error();
            }
            if (const auto turned = turn_changed_rows(database, id, direction, now); !turned) {
                return turned.error();
            }
            if (event->kind == home::EventKind::Moved && event->plant) {
                set_spot_of(database, *event->plant);
            }
            entry = *event;
        } else if (kind == "measurement") {
            const auto measurement = measurement_of(database, inside_->file, id);
            if (!measurement) {
                return measurement.error();
            }
            entry = *measurement;
        } else if (kind == "reading") {
            home::NightsTogether nights;
            for (const int row : rows.empty() ? std::vector{id} : rows) {
                const auto reading = reading_of(database, inside_->file, row);
                if (!reading) {
                    return reading.error();
                }
                nights.readings.push_back(*reading);
            }
            if (nights.readings.size() > 1) {
                entry = std::move(nights);
            } else {
                entry = nights.readings.front();
            }
        } else {
            auto change = photo_change_of(database, inside_->file, kind, rows.empty() ? id : rows.front());
            if (!change) {
                return change.error();
            }
            if (change->kind == home::PhotoChangeKind::Added) {
                change->photos = rows;
            }
            entry = *std::move(change);
        }
        transaction.commit();
        return entry;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

} // namespace lathhouse::journal
