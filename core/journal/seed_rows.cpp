#include "core/base/parse.h"
#include "core/home/seed_lot.h"
#include "core/journal/household_store_inside.h"

#include <algorithm>

namespace lathhouse::journal {
namespace {

Error unreadable_seeds(const std::filesystem::path& file, const Said& what)
{
    return {ErrorCode::Damaged, said("%1 is damaged (%2 cannot be read); restore a backup", file.string(), what)};
}

/// Adds the event and gives its id.
int insert_event(SQLite::Database& database, const home::Event& event)
{
    insert_events(database, std::span{&event, 1});
    return static_cast<int>(database.getLastInsertRowid());
}

std::optional<double> number_in(const SQLite::Column& column)
{
    return column.isNull() ? std::nullopt : std::optional{column.getDouble()};
}

/// All that counts, within the caller's transaction. Throws SQLite::Exception.
Result<home::SeedBook> read_book(SQLite::Database& database, const std::filesystem::path& file)
{
    home::SeedBook book;
    SQLite::Statement lots{database,
                           "SELECT l.id, l.name, l.crop, l.packed_year, l.stated_percent, l.seeds, e.note "
                           "FROM seed_lots l JOIN events_that_count e ON e.id = l.event_id ORDER BY l.id"};
    while (lots.executeStep()) {
        book.lots.push_back({.id = lots.getColumn(0).getInt(),
                             .name = lots.getColumn(1).getString(),
                             .crop = lots.getColumn(2).getString(),
                             .packed_year = id_in(lots.getColumn(3)),
                             .stated_percent = number_in(lots.getColumn(4)),
                             .seeds = id_in(lots.getColumn(5)),
                             .note = lots.getColumn(6).getString()});
    }
    SQLite::Statement trays{database,
                            "SELECT t.id, t.lot_id, e.happened_on, t.seeds, e.spot_id, t.mix_celsius, e.note "
                            "FROM trays t JOIN events_that_count e ON e.id = t.event_id "
                            "ORDER BY e.happened_on, t.id"};
    while (trays.executeStep()) {
        const auto sown = calendar::parse_date(trays.getColumn(2).getString());
        if (!sown) {
            return unreadable_seeds(file, said("a sowing"));
        }
        // A tray of a lot that is undone is undone with it.
        if (book.lot(trays.getColumn(1).getInt()) != nullptr) {
            book.trays.push_back({.id = trays.getColumn(0).getInt(),
                                  .lot = trays.getColumn(1).getInt(),
                                  .sown = *sown,
                                  .seeds = trays.getColumn(3).getInt(),
                                  .spot = id_in(trays.getColumn(4)),
                                  .mix = celsius_in(trays.getColumn(5)),
                                  .note = trays.getColumn(6).getString()});
        }
    }
    SQLite::Statement counts{database,
                             "SELECT c.tray_id, e.happened_on, c.emerged, c.last "
                             "FROM tray_counts c JOIN events_that_count e ON e.id = c.event_id "
                             "ORDER BY c.tray_id, e.happened_on, c.id"};
    while (counts.executeStep()) {
        const auto on = calendar::parse_date(counts.getColumn(1).getString());
        if (!on) {
            return unreadable_seeds(file, said("a count of seedlings"));
        }
        const home::TrayCount count{counts.getColumn(0).getInt(), *on, counts.getColumn(2).getInt(),
                                    counts.getColumn(3).getInt() != 0};
        if (book.tray(count.tray) == nullptr) {
            continue;
        }
        if (!book.counts.empty() && book.counts.back().tray == count.tray &&
            book.counts.back().on == count.on) {
            book.counts.back() = count; // Entered later.
        } else {
            book.counts.push_back(count);
        }
    }
    SQLite::Statement plants{database, "SELECT from_tray_id, id FROM plants "
                                       "WHERE from_tray_id IS NOT NULL ORDER BY from_tray_id, id"};
    while (plants.executeStep()) {
        const int tray = plants.getColumn(0).getInt();
        if (book.potted.empty() || book.potted.back().tray != tray) {
            book.potted.push_back({tray, {}});
        }
        book.potted.back().plants.push_back(plants.getColumn(1).getInt());
    }
    return book;
}

} // namespace

Result<home::SeedBook> HouseholdStore::seeds() const
{
    try {
        SQLite::Transaction together{inside_->database}; // All tables as they were at one moment.
        return read_book(inside_->database, inside_->file);
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

Result<int> HouseholdStore::add_lot(const home::SeedLot& lot, calendar::Date on, calendar::Instant entered)
{
    if (const auto sound = home::check(lot, on); !sound) {
        return sound.error();
    }
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        const auto book = read_book(inside_->database, inside_->file);
        if (!book) {
            return book.error();
        }
        const auto same = [&](const home::SeedLot& other) { return lower_case(other.name) == lower_case(lot.name); };
        if (std::ranges::any_of(book->lots, same)) {
            return Error{ErrorCode::OutOfRange,
                         said("there is a lot \"%1\" already; give this one another name", lot.name)};
        }
        const int event = insert_event(inside_->database, {.plant = {},
                                                           .kind = home::EventKind::Noted,
                                                           .spot = {},
                                                           .happened = on,
                                                           .entered = entered,
                                                           .note = lot.note,
                                                           .details = {{"lot", lot.name}, {"crop", lot.crop}}});
        SQLite::Statement row{inside_->database, "INSERT INTO seed_lots (event_id, name, crop, packed_year, "
                                                 "stated_percent, seeds) VALUES (?, ?, ?, ?, ?, ?)"};
        (Row{row} << event << lot.name << lot.crop << lot.packed_year << lot.stated_percent << lot.seeds).insert();
        const auto id = static_cast<int>(inside_->database.getLastInsertRowid());
        transaction.commit();
        return id;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

Result<int> HouseholdStore::record(const home::Tray& tray, calendar::Date today, calendar::Instant entered)
{
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        const auto book = read_book(inside_->database, inside_->file);
        if (!book) {
            return book.error();
        }
        if (const auto sound = home::check(tray, *book, today); !sound) {
            return sound.error();
        }
        const auto* lot = book->lot(tray.lot);
        const int event = insert_event(
            inside_->database,
            {.plant = {},
             .kind = home::EventKind::Sown,
             .spot = tray.spot,
             .happened = tray.sown,
             .entered = entered,
             .note = tray.note,
             .details = {{"lot", lot->name}, {"crop", lot->crop}, {"seeds", std::to_string(tray.seeds)}}});
        SQLite::Statement row{inside_->database,
                              "INSERT INTO trays (event_id, lot_id, seeds, mix_celsius) VALUES (?, ?, ?, ?)"};
        (Row{row} << event << tray.lot << tray.seeds << degrees_of(tray.mix)).insert();
        const auto id = static_cast<int>(inside_->database.getLastInsertRowid());
        transaction.commit();
        return id;
    } catch (const SQLite::Exception& thrown) {
        if (breaks_a_rule(thrown)) {
            return Error{
                ErrorCode::NotFound,
                said("the sowing was not recorded in %1; its spot is not in the household", inside_->file.string())};
        }
        return error_of(thrown, inside_->file);
    }
}

Result<int> HouseholdStore::record(const home::TrayCount& count, calendar::Date today, calendar::Instant entered)
{
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        const auto book = read_book(inside_->database, inside_->file);
        if (!book) {
            return book.error();
        }
        // The same day counted anew takes the place of what was counted before.
        auto before = *book;
        std::erase_if(before.counts, [&](const home::TrayCount& other) {
            return other.tray == count.tray && other.on == count.on;
        });
        if (const auto sound = home::check(count, before, today); !sound) {
            return sound.error();
        }
        const auto* tray = book->tray(count.tray);
        const int event = insert_event(inside_->database,
                                       {.plant = {},
                                        .kind = home::EventKind::Emerged,
                                        .spot = tray->spot,
                                        .happened = count.on,
                                        .entered = entered,
                                        .note = {},
                                        .details = {{"tray", std::to_string(count.tray)},
                                                    {"lot", book->lot(tray->lot)->name},
                                                    {"emerged", std::to_string(count.emerged)},
                                                    {"sown", std::to_string(tray->seeds)}}});
        SQLite::Statement row{inside_->database,
                              "INSERT INTO tray_counts (event_id, tray_id, emerged, last) VALUES (?, ?, ?, ?)"};
        (Row{row} << event << count.tray << count.emerged << int{count.last}).insert();
        const auto id = static_cast<int>(inside_->database.getLastInsertRowid());
        transaction.commit();
        return id;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

Result<std::vector<home::PlantId>> HouseholdStore::pot_up(home::TrayId tray_id, std::span<const home::Plant> plants,
                                                          calendar::Date on, calendar::Instant entered)
{
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        const auto book = read_book(inside_->database, inside_->file);
        if (!book) {
            return book.error();
        }
        const auto* tray = book->tray(tray_id);
        if (tray == nullptr) {
            return Error{ErrorCode::NotFound, said("there is no such tray; `lathhouse show lot` shows a lot's trays")};
        }
        const auto count = book->latest_count(tray_id);
        const auto came = static_cast<std::size_t>(count ? count->emerged : tray->seeds);
        const auto gone = std::min(came, book->potted_from(tray_id));
        if (plants.empty() || plants.size() > came - gone) {
            return Error{ErrorCode::OutOfRange,
                         said("the tray has %1 seedlings left to pot, not %2", came - gone, plants.size())};
        }
        if (on < tray->sown) {
            return Error{ErrorCode::OutOfRange,
                         said("seedlings cannot be potted before their sowing on %1", calendar::to_text(tray->sown))};
        }
        std::vector<home::PlantId> ids;
        std::vector<home::EventId> belong;
        for (auto plant : plants) {
            plant.id = inside_->database.execAndGet("SELECT coalesce(max(id), 0) + 1 FROM plants").getInt();
            insert_plants(inside_->database, std::span{&plant, 1});
            SQLite::Statement from{inside_->database, "UPDATE plants SET from_tray_id = ? WHERE id = ?"};
            (Row{from} << tray_id << plant.id).insert();
            const std::map<std::string, std::string> details{{"tray", std::to_string(tray_id)}};
            if (plant.spot) {
                belong.push_back(insert_event(
                    inside_->database, {plant.id, home::EventKind::Moved, plant.spot, on, entered, {}, details}));
            }
            belong.push_back(insert_event(inside_->database,
                                          {plant.id, home::EventKind::Repotted, {}, on, entered, {}, details}));
            ids.push_back(plant.id);
        }
        // Entered last, so that it is what an undo meets first; all of it is undone with it.
        const auto* lot = book->lot(tray->lot);
        const int change = insert_event(inside_->database, {.plant = {},
                                                            .kind = home::EventKind::Noted,
                                                            .spot = {},
                                                            .happened = on,
                                                            .entered = entered,
                                                            .note = {},
                                                            .details = {{"tray", std::to_string(tray_id)},
                                                                        {"lot", lot->name},
                                                                        {"crop", lot->crop},
                                                                        {"potted", std::to_string(plants.size())}}});
        for (const auto event : belong) {
            keep_event_with_change(inside_->database, change, event);
        }
        for (const auto id : ids) {
            keep_with_change(inside_->database, change, id);
        }
        transaction.commit();
        return ids;
    } catch (const SQLite::Exception& thrown) {
        if (breaks_a_rule(thrown)) {
            return Error{ErrorCode::OutOfRange,
                         said("nothing was potted in %1; a plant's name is taken or its spot is not in the household",
                              inside_->file.string())};
        }
        return error_of(thrown, inside_->file);
    }
}

} // namespace lathhouse::journal
