#include "core/journal/household_store.h"

#include "core/home/household_change.h"
#include "core/journal/household_store_inside.h"

namespace lathhouse::journal {
namespace {

int next_id(SQLite::Database& database, const char* table)
{
    return database.execAndGet(std::string{"SELECT coalesce(max(id), 0) + 1 FROM "} + table).getInt();
}

/// The rules of the household are those of one in memory; the tables hold them where another program comes between.
Result<void> may_come(const HouseholdStore& store, const home::HouseholdChange& change)
{
    auto household = store.load();
    return household ? home::make(change, *household) : Result<void>{household.error()};
}

Error broke_a_rule(const SQLite::Exception& thrown, const Said& what)
{
    return {ErrorCode::OutOfRange,
            said("%1 was not added (%2); its name must be new and its numbers in their ranges", what, thrown.what())};
}

} // namespace

Result<home::SpotId> HouseholdStore::add(home::Spot spot)
{
    spot.id = 0;
    if (const auto right = may_come(*this, {.words = {}, .spots = {spot}}); !right) {
        return right.error();
    }
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        spot.id = next_id(inside_->database, "spots");
        insert_spots(inside_->database, std::span{&spot, 1});
        transaction.commit();
        return spot.id;
    } catch (const SQLite::Exception& thrown) {
        return breaks_a_rule(thrown) ? broke_a_rule(thrown, said("the spot \"%1\"", spot.name))
                                     : error_of(thrown, inside_->file);
    }
}

Result<home::PlantId> HouseholdStore::add(home::Plant plant, calendar::Date since, calendar::Instant now)
{
    plant.id = 0;
    if (const auto right = may_come(*this, {.words = {}, .plants = {plant}}); !right) {
        return right.error();
    }
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        plant.id = next_id(inside_->database, "plants");
        insert_plants(inside_->database, std::span{&plant, 1});
        if (plant.spot) {
            const home::Event event{plant.id, home::EventKind::Moved, plant.spot, since, now, "added"};
            insert_events(inside_->database, std::span{&event, 1});
        }
        transaction.commit();
        return plant.id;
    } catch (const SQLite::Exception& thrown) {
        return breaks_a_rule(thrown) ? broke_a_rule(thrown, said("the plant \"%1\"", plant.name))
                                     : error_of(thrown, inside_->file);
    }
}

Result<void> HouseholdStore::accept(const home::AcceptedPlan& plan)
{
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        // A plan is told by its moment, so that no two may share one, even where the clock was set back.
        auto accepted = plan.accepted;
        SQLite::Statement taken{inside_->database, "SELECT count(*) FROM planned_stays WHERE planned_at = ?"};
        const auto is_taken = [&] {
            taken.reset();
            taken.bind(1, calendar::to_text(accepted));
            return taken.executeStep() && taken.getColumn(0).getInt() > 0;
        };
        while (is_taken()) {
            accepted += std::chrono::seconds{1};
        }
        SQLite::Statement insert{inside_->database,
                                 "INSERT INTO planned_stays (plant_id, spot_id, from_on, to_on, why, "
                                 "planned_at) VALUES (?, ?, ?, ?, '', ?)"};
        for (const auto& stay : plan.stays) {
            (Row{insert} << stay.plant << stay.spot << calendar::to_text(stay.from)
                         << calendar::to_text(stay.to) << calendar::to_text(accepted))
                .insert();
        }
        transaction.commit();
        return {};
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

Result<std::optional<home::AcceptedPlan>> HouseholdStore::accepted_plan() const
{
    try {
        SQLite::Statement rows{inside_->database,
                               "SELECT plant_id, spot_id, from_on, to_on, planned_at FROM planned_stays "
                               // The latest by the order of entry: the clock may have been set back since.
                               "WHERE planned_at = (SELECT planned_at FROM planned_stays ORDER BY id DESC LIMIT 1) "
                               "ORDER BY plant_id, from_on"};
        std::optional<home::AcceptedPlan> plan;
        while (rows.executeStep()) {
            const auto from = calendar::parse_date(rows.getColumn(2).getString());
            const auto to = calendar::parse_date(rows.getColumn(3).getString());
            const auto accepted = read_instant(rows.getColumn(4).getString());
            if (!from || !to || !accepted) {
                return Error{ErrorCode::Damaged,
                             said("%1 is damaged (a stay of the accepted plan cannot be read); restore a backup",
                                  inside_->file.string())};
            }
            if (!plan) {
                plan = home::AcceptedPlan{*accepted, {}};
            }
            plan->stays.push_back({rows.getColumn(0).getInt(), rows.getColumn(1).getInt(), *from, *to});
        }
        return plan;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

} // namespace lathhouse::journal
