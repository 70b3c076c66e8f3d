#include "core/journal/household_store_inside.h"

namespace lathhouse::journal {

Result<std::vector<home::Jug>> HouseholdStore::jugs() const
{
    try {
        std::vector<home::Jug> jugs;
        SQLite::Statement rows{inside_->database, "SELECT name, volume_litres FROM jugs_that_count"};
        while (rows.executeStep()) {
            const auto jug = home::make_jug(rows.getColumn(0).getString(),
                                            Litres::from_litres(rows.getColumn(1).getDouble()));
            if (!jug) {
                return Error{ErrorCode::Damaged,
                             said("%1 is damaged (%2); restore a backup", inside_->file.string(), jug.error())};
            }
            jugs.push_back(*jug);
        }
        return jugs;
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

Result<void> HouseholdStore::keep_jug(const home::Jug& jug, calendar::Instant entered)
{
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        SQLite::Statement insert{inside_->database,
                                 "INSERT INTO jugs (name, volume_litres, entered_at) VALUES (?, ?, ?)"};
        (Row{insert} << jug.name << jug.volume.litres() << calendar::to_text(entered)).insert();
        transaction.commit();
        return {};
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

} // namespace lathhouse::journal
