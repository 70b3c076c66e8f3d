#include "core/journal/household_store.h"

#include "core/base/temporary_folder.h"
#include "core/journal/household_store_inside.h"
#include "core/journal/migrations.h"
#include "core/journal/own_record_rows.h"
#include "core/journal/plant_rows.h"
#include "core/journal/reading.h"
#include "core/journal/sound_memo.h"

#include <cstdint>
#include <map>
#include <mutex>
#include <optional>
#include <string>
#include <utility>

#include <unistd.h>

namespace lathhouse::journal {

namespace fs = std::filesystem;

namespace {

constexpr int kShortWaitMilliseconds = 50;

/// Files that this program has found sound, as they were then: a page of many photos opens the store once for each, and
/// the check reads the whole file. What changes a file, here or elsewhere, has it checked anew.
class SoundFiles {
public:
    struct State {
        std::uintmax_t size = 0;
        fs::file_time_type written;
        friend bool operator==(const State&, const State&) = default;
    };
    /// nullopt where the file cannot be asked, which is then never known.
    static std::optional<State> state_of(const fs::path& file)
    {
        std::error_code failure;
        const State state{fs::file_size(file, failure), fs::last_write_time(file, failure)};
        return failure ? std::nullopt : std::optional{state};
    }
    bool knows(const fs::path& file, const State& state) const
    {
        const std::lock_guard lock(guard_);
        const auto known = files_.find(file.string());
        return known != files_.end() && known->second == state;
    }
    void add(const fs::path& file, const State& state)
    {
        const std::lock_guard lock(guard_);
        files_[file.string()] = state;
    }

private:
    mutable std::mutex guard_;
    std::map<std::string, State> files_;
};

SoundFiles& sound_files()
{
    static SoundFiles files;
    return files;
}

void insert_household(SQLite::Database& database, const home::Household& household)
{
    SQLite::Statement place{database, "INSERT INTO household VALUES (1, ?, ?, ?, ?, ?, ?, ?)"};
    std::optional<double> elevation;
    if (household.place.elevation) {
        elevation = household.place.elevation->metres();
    }
    (Row{place} << household.name << int{household.demonstration} << household.place.name
                << household.place.position.latitude.degrees() << household.place.position.longitude.degrees()
                << elevation << household.place.time_zone)
        .insert();

    insert_spots(database, household.spots);
    insert_plants(database, household.plants);
}

/// The measured views, by spot. A row that the table's CHECKs let through and SpotView does not is left out.
std::map<home::SpotId, sky::SpotView> load_views(SQLite::Database& database)
{
    SQLite::Statement rows{database, "SELECT spot_id, shelter, facing_degrees, width_metres, height_metres, "
                                     "sill_metres, distance_metres, sideways_metres, overhang_metres, "
                                     "opposite_degrees, behind_degrees, panes, passes_share FROM spot_views"};
    std::map<home::SpotId, sky::SpotView> views;
    while (rows.executeStep()) {
        const auto metres = [&](int column) {
            return Metres::from_metres(rows.getColumn(column).getDouble());
        };
        const auto angle = [&](int column) {
            return Angle::from_degrees(rows.getColumn(column).getDouble());
        };
        const auto view = sky::SpotView::of(
            {.shelter = sky::shelter_of(rows.getColumn(1).getString()).value_or(sky::Shelter::Opening),
             .facing = angle(2),
             .width = metres(3),
             .height = metres(4),
             .sill = metres(5),
             .distance = metres(6),
             .sideways = metres(7),
             .overhang = metres(8),
             .opposite = angle(9),
             .behind = angle(10),
             .panes = rows.getColumn(11).getInt(),
             .passes = rows.getColumn(12).getDouble()});
        if (view) {
            views.emplace(rows.getColumn(0).getInt(), *view);
        }
    }
    return views;
}

std::vector<home::Spot> load_spots(SQLite::Database& database)
{
    const auto views = load_views(database);
    const auto view_of = [&](home::SpotId id) {
        const auto found = views.find(id);
        return found == views.end() ? std::nullopt : std::optional{found->second};
    };
    SQLite::Statement rows{database,
                           "SELECT id, name, short_name, kind, offset_kelvin, offset_spread_kelvin, "
                           "winter_celsius, summer_celsius, light_in_summer_moles, "
                           "light_in_winter_moles, capacity_pots, in_reach, walking_order, apart, windy "
                           "FROM spots WHERE gone = 0 ORDER BY id"};
    std::vector<home::Spot> spots;
    while (rows.executeStep()) {
        spots.push_back(
            {.id = rows.getColumn(0).getInt(),
             .name = rows.getColumn(1).getString(),
             .short_name = rows.getColumn(2).getString(),
             // The table's own CHECK admits no other word.
             .kind = home::spot_kind_of(rows.getColumn(3).getString()).value_or(home::SpotKind::Open),
             .offset = {KelvinDelta::from_kelvins(rows.getColumn(4).getDouble()),
                        KelvinDelta::from_kelvins(rows.getColumn(5).getDouble())},
             .winter = celsius_in(rows.getColumn(6)),
             .summer = celsius_in(rows.getColumn(7)),
             .light_in_summer = DailyLight::from_moles(rows.getColumn(8).getDouble()),
             .light_in_winter = DailyLight::from_moles(rows.getColumn(9).getDouble()),
             .capacity = rows.getColumn(10).getInt(),
             .in_reach = rows.getColumn(11).getInt() != 0,
             .walking_order = rows.getColumn(12).getInt(),
             .view = view_of(rows.getColumn(0).getInt()),
             .apart = rows.getColumn(13).getInt() != 0,
             .windy = rows.getColumn(14).getInt() != 0});
    }
    return spots;
}

/// Those that were not taken back. The tables' CHECKs have made sure of the dates.
std::vector<home::Pin> load_pins(SQLite::Database& database)
{
    SQLite::Statement rows{database, "SELECT plant_id, spot_id, from_on, to_on FROM pins "
                                     "WHERE taken_back_at IS NULL ORDER BY id"};
    std::vector<home::Pin> pins;
    while (rows.executeStep()) {
        const auto from = calendar::parse_date(rows.getColumn(2).getString());
        const auto to = calendar::parse_date(rows.getColumn(3).getString());
        if (from && to) {
            pins.push_back({rows.getColumn(0).getInt(), rows.getColumn(1).getInt(), *from, *to});
        }
    }
    return pins;
}

Error cannot_make(const fs::path& folder, const std::string& reason)
{
    return {ErrorCode::Unwritable,
            said("the household %1 cannot be made (%2); choose a folder where you may write", folder.string(), reason)};
}

} // namespace

HouseholdStore::HouseholdStore(std::unique_ptr<Inside> inside) : inside_(std::move(inside)) {}
HouseholdStore::HouseholdStore(HouseholdStore&&) noexcept = default;
HouseholdStore& HouseholdStore::operator=(HouseholdStore&&) noexcept = default;
HouseholdStore::~HouseholdStore() = default;

const fs::path& HouseholdStore::folder() const
{
    return inside_->folder;
}

Result<HouseholdStore> HouseholdStore::create(const fs::path& folder, const home::Household& household,
                                              std::span<const home::Event> history)
{
    const auto target = with_name(folder);
    if (auto free = must_be_new_or_empty(target); !free) {
        return free.error();
    }
    auto temporary = TemporaryFolder::beside(target);
    if (!temporary) {
        return temporary.error();
    }
    std::error_code failure;
    fs::permissions(temporary->path(), fs::perms::owner_all, failure); // A home is nobody else's business.
    fs::create_directory(temporary->path() / "photos", failure);
    if (failure) {
        return cannot_make(target, failure.message());
    }
    try {
        SQLite::Database database{(temporary->path() / kDatabaseName).string(),
                                  SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE};
        database.exec("PRAGMA foreign_keys = ON");
        database.exec("PRAGMA application_id = " + std::to_string(kApplicationId));
        const auto made = bring_up_to_date(database, target / kDatabaseName, known_migrations());
        if (!made) {
            return made.error();
        }
        SQLite::Transaction transaction{database};
        insert_household(database, household);
        if (household.own_record) {
            write_own_record(database, *household.own_record);
        }
        insert_events(database, history);
        transaction.commit();
        database.exec("PRAGMA journal_mode = WAL");
    } catch (const SQLite::Exception& thrown) {
        if (breaks_a_rule(thrown)) {
            return Error{ErrorCode::OutOfRange,
                         said("the household %1 cannot be made (%2); names must differ and numbers lie in their ranges",
                              target.string(), thrown.what())};
        }
        return error_of(thrown, target / kDatabaseName);
    }
    fs::rename(temporary->path(), target, failure);
    if (failure) {
        return cannot_make(target, failure.message());
    }
    temporary->keep();
    return open(target);
}

Result<HouseholdStore> HouseholdStore::open(const fs::path& folder)
{
    const auto target = with_name(folder);
    const auto file = target / kDatabaseName;
    std::error_code failure;
    const auto status = fs::status(target, failure);
    if (status.type() == fs::file_type::not_found) {
        return Error{
            ErrorCode::NotFound,
            said("there is no folder %1; name a household's folder with --home, or make one with `lathhouse demo`",
                 target.string())};
    }
    if (!fs::is_directory(status)) {
        return Error{ErrorCode::NotAHousehold, said("%1 is not a folder; name a household's folder", target.string())};
    }
    if (!fs::is_regular_file(file, failure)) {
        return Error{ErrorCode::NotAHousehold,
                     said("%1 is not a household; it has no file %2 in it", target.string(), kDatabaseName)};
    }
    const auto newest = known_migrations().back().version;
    if (const auto header = check_header(file, newest); !header) {
        return header.error();
    }
    if (access(target.c_str(), W_OK) != 0 || access(file.c_str(), W_OK) != 0) {
        return Error{ErrorCode::Unwritable,
                     said("%1 is read-only; copy the household to a folder where you may write", target.string())};
    }
    auto database = open_database(file);
    if (!database) {
        return database.error();
    }
    const auto state = SoundFiles::state_of(file);
    if (!state || !sound_files().knows(file, *state)) {
        if (!was_found_sound(file)) {
            if (const auto sound = quick_check(*database, file); !sound) {
                return sound.error();
            }
            remember_sound(file);
        }
        if (state) {
            sound_files().add(file, *state);
        }
    }
    if (const auto current = bring_up_to_date(*database, file, known_migrations()); !current) {
        return current.error();
    }
    return HouseholdStore{std::make_unique<Inside>(Inside{target, file, std::move(*database)})};
}

std::optional<std::string> HouseholdStore::time_zone_in(const fs::path& folder)
{
    const auto file = with_name(folder) / kDatabaseName;
    if (!check_header(file, known_migrations().back().version)) {
        return std::nullopt;
    }
    try {
        SQLite::Database database{file.string(), SQLite::OPEN_READONLY, kShortWaitMilliseconds};
        return database.execAndGet("SELECT time_zone FROM household").getString();
    } catch (const SQLite::Exception&) {
        return std::nullopt; // Whoever opens it in earnest is told what is wrong.
    }
}

Result<home::Household> HouseholdStore::load() const
{
    try {
        SQLite::Transaction transaction{inside_->database}; // All tables as they were at one moment.
        SQLite::Statement row{inside_->database,
                              "SELECT name, demonstration, place_name, latitude_degrees, longitude_degrees, "
                              "elevation_metres, time_zone FROM household"};
        if (!row.executeStep()) {
            return Error{ErrorCode::Damaged, said("%1 is damaged (it says nothing of its place); restore a backup",
                                                  inside_->file.string())};
        }
        const auto latitude = Latitude::from_degrees(row.getColumn(3).getDouble());
        const auto longitude = Longitude::from_degrees(row.getColumn(4).getDouble());
        if (!latitude || !longitude) {
            return Error{ErrorCode::Damaged, said("%1 is damaged (its place is not on the globe); restore a backup",
                                                  inside_->file.string())};
        }
        std::optional<Metres> elevation;
        if (!row.getColumn(5).isNull()) {
            elevation = Metres::from_metres(row.getColumn(5).getDouble());
        }
        const auto own_record = load_own_record(inside_->database);
        if (!own_record) {
            return own_record.error();
        }
        auto spots = load_spots(inside_->database);
        const auto members = load_members(inside_->database, inside_->file);
        if (!members) {
            return members.error();
        }
        home::put_in_reach(spots, *members);
        return home::Household{
            .name = row.getColumn(0).getString(),
            .demonstration = row.getColumn(1).getInt() != 0,
            .place = {row.getColumn(2).getString(),
                      {*latitude, *longitude},
                      elevation,
                      row.getColumn(6).getString()},
            .spots = std::move(spots),
            .plants = load_plants(inside_->database, "WHERE id NOT IN (SELECT plant_id FROM gone_plants)"),
            .own_record = *own_record,
            .pins = load_pins(inside_->database),
        };
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

Result<void> HouseholdStore::keep_own_record(const climate::OwnRecord& record)
{
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        write_own_record(inside_->database, record);
        transaction.commit();
        return {};
    } catch (const SQLite::Exception& thrown) {
        if (breaks_a_rule(thrown)) {
            return Error{ErrorCode::OutOfRange, said("the record was not kept in %1 (%2); it needs a name, a height "
                                                     "within -500 and 9000 m and possible values",
                                                     inside_->file.string(), thrown.what())};
        }
        return error_of(thrown, inside_->file);
    }
}

Result<void> HouseholdStore::remove_own_record()
{
    try {
        SQLite::Transaction transaction{inside_->database, SQLite::TransactionBehavior::IMMEDIATE};
        if (!journal::remove_own_record(inside_->database)) {
            return Error{ErrorCode::NotFound, said("%1 has no record of its own to remove", inside_->folder.string())};
        }
        transaction.commit();
        return {};
    } catch (const SQLite::Exception& thrown) {
        return error_of(thrown, inside_->file);
    }
}

Result<void> HouseholdStore::copy_to(const fs::path& file) const
{
    return copy_verified(inside_->database, file);
}

} // namespace lathhouse::journal
