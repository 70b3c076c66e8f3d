#include "core/journal/household_store_inside.h"

#include <nlohmann/json.hpp>

namespace lathhouse::journal {
namespace {

using Details = std::map<std::string, std::string>;

/// Errors: Damaged where it is not an object of texts.
Result<Details> read_details(const std::string& text)
{
    const auto json = nlohmann::json::parse(text, nullptr, false);
    Details details;
    if (!json.is_object()) {
        return Error{ErrorCode::Damaged, said("no object: %1", text)};
    }
    for (const auto& [name, value] : json.items()) {
        if (!value.is_string()) {
            return Error{ErrorCode::Damaged, said("no text: %1", name)};
        }
        details.emplace(name, value.get<std::string>());
    }
    return details;
}

/// The event of the statement's present row. Errors: Damaged.
Result<home::Event> event_in(SQLite::Statement& rows, const std::filesystem::path& file)
{
    const auto kind = home::event_kind_of(rows.getColumn(2).getString());
    const auto happened = calendar::parse_date(rows.getColumn(4).getString());
    const auto entered = read_instant(rows.getColumn(5).getString());
    const auto details = read_details(rows.getColumn(7).getString());
    if (!kind || !happened || !entered || !details) {
        return Error{ErrorCode::Damaged, said("%1 is damaged (an event of %2 cannot be read); restore a backup",
                                              file.string(), rows.getColumn(4).getString())};
    }
    return home::Event{.plant = id_in(rows.getColumn(1)),
                       .kind = *kind,
                       .spot = id_in(rows.getColumn(3)),
                       .happened = *happened,
                       .entered = *entered,
                       .note = rows.getColumn(6).getString(),
                       .details = *details,
                       .id = rows.getColumn(0).getInt()};
}

const std::string kEventColumns = "SELECT id, plant_id, kind, spot_id, happened_on, entered_at, note, details ";

} // namespace

void set_spot_of(SQLite::Database& database, home::PlantId plant)
{
    SQLite::Statement stand{
        database, "UPDATE plants SET spot_id = (SELECT spot_id FROM events_that_count WHERE plant_id = ?1 AND "
                  "kind = 'moved' ORDER BY happened_on DESC, id DESC LIMIT 1) WHERE id = ?1"};
    stand.bind(1, plant);
    stand.exec();
}

Result<home::Event> event_of(SQLite::Database& database, const std::filesystem::path& file, int id)
{
    SQLite::Statement row{database, kEventColumns + "FROM events WHERE id = ?"};
    row.bind(1, id);
    if (!row.executeStep()) {
        return Error{ErrorCode::Damaged,
                     said("%1 is damaged (event %2 is missing); restore a backup", file.string(), id)};
    }
    return event_in(row, file);
}

void insert_events(SQLite::Database& database, std::span<const home::Event> events)
{
    SQLite::Statement statement{database, "INSERT INTO events (plant_id, kind, spot_id, happened_on, "
                                          "entered_at, note, details) VALUES (?, ?, ?, ?, ?, ?, ?)"};
    for (const auto& event : events) {
        // Text that is no UTF-8 is mended rather than refused: a note must not be lost for one byte.
        const auto details = nlohmann::json(event.details)
                                 .dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
        (Row{statement} << event.plant << std::string{home::to_string(event.kind)} << event.spot
                        << calendar::to_text(event.happened) << calendar::to_text(event.entered) << event.note
                        << (event.details.empty() ? std::string{"{}"} : details))
            .insert();
    }
}

Result<std::vector<home::Member>> load_members(SQLite::Database& database, const std::filesystem::path& file)
{
    // Notes of the household alone, by the index of kinds.
    SQLite::Statement rows{database, kEventColumns + "FROM events_that_count WHERE kind = 'noted' AND plant_id IS NULL "
                                                "ORDER BY id"};
    std::vector<home::Event> told;
    while (rows.executeStep()) {
        auto event = event_in(rows, file);
        if (!event) {
            return event.error();
        }
        if (home::tells_of_member(*event)) {
            told.push_back(std::move(*event));
        }
    }
    return home::members_of(told);
}

Result<std::vector<home::Event>> HouseholdStore::events(std::optional<home::PlantId> plant) const
{
    try {
        // The plant stands in the text of the query, so that its index is used.
        SQLite::Statement rows{inside_->database, kEventColumns + "FROM events_that_count " +
                                                      (plant ? "WHERE plant_id = ?1 " : "") +
                                                      "ORDER BY happened_on, id"};
        if (plant) {
            rows.bind(1, *plant);
        }
        std::vector<home::Event> events;
        while (rows.executeStep()) {
            auto event = event_in(rows, inside_->file);
            if (!event) {
                return event.error();
            }
            events.push_back(std::move(*event));
        }
        return events;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

Result<void> HouseholdStore::record(std::span<const home::Event> happened)
{
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        insert_events(inside_->database, happened);
        for (const auto& event : happened) {
            if (event.kind == home::EventKind::Moved && event.plant) {
                set_spot_of(inside_->database, *event.plant);
            }
        }
        transaction.commit();
        return {};
    } catch (const SQLite::Exception& thrown) {
        if (breaks_a_rule(thrown)) {
            return Error{ErrorCode::NotFound,
                         said("nothing was recorded in %1; a plant or spot of it is not in the household",
                              inside_->file.string())};
        }
        return error_of(thrown, inside_->file);
    }
}

Result<std::optional<home::Event>> HouseholdStore::turn_back(Direction direction, calendar::Instant now)
{
    // Undo takes the event that was entered last of those that count; redo the one that was undone last.
    const bool undo = direction == Direction::Undo;
    const char* which =
        undo ? "SELECT max(id) FROM events_that_count WHERE id NOT IN "
               "(SELECT row_id FROM changed_rows WHERE in_table = 'events')"
             // What was entered after an undo ends the chance to redo it.
             : "SELECT event_id FROM event_undos WHERE id = (SELECT max(id) FROM event_undos u WHERE undone = 1 "
               "AND NOT EXISTS (SELECT 1 FROM event_undos v WHERE v.event_id = u.event_id AND v.id > u.id) "
               // What belongs to a change is done again with it.
               "AND event_id NOT IN (SELECT row_id FROM changed_rows WHERE in_table = 'events')) "
               "AND event_id >= (SELECT coalesce(max(id), 0) FROM events_that_count)";
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        SQLite::Statement found{inside_->database, which};
        if (!found.executeStep() || found.getColumn(0).isNull()) {
            return std::optional<home::Event>{};
        }
        const home::EventId id = found.getColumn(0).getInt();
        const auto event = event_of(inside_->database, inside_->file, id);
        if (!event) {
            return event.error();
        }
        SQLite::Statement insert{inside_->database,
                                 "INSERT INTO event_undos (event_id, undone, entered_at) VALUES (?, ?, ?)"};
        (Row{insert} << id << int{undo} << calendar::to_text(now)).insert();
        if (const auto turned = turn_changed_rows(inside_->database, id, direction, now); !turned) {
            return turned.error();
        }
        if (event->kind == home::EventKind::Moved && event->plant) {
            set_spot_of(inside_->database, *event->plant);
        }
        transaction.commit();
        return std::optional{*event};
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

} // namespace lathhouse::journal
