#pragma once

#include "core/base/result.h"
#include "core/geodesy/town_rows.h"
#include "core/units/length.h"
#include "core/units/position.h"

#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::geodesy {

/// A town; its texts belong to the table that it came from.
struct Town {
    std::uint32_t id; ///< Of GeoNames.
    std::string_view name;
    std::string_view country;     ///< ISO 3166, two letters.
    std::string_view region_code; ///< Of the country's first division; may be empty.
    std::string_view region;      ///< Its name; may be empty.
    Position position;            ///< Of its middle, to a thousandth of a degree.
    std::optional<Metres> elevation;
    std::uint32_t population;
    std::string_view zone; ///< IANA name of its time zone.
};

/// How a town answers to a name, the better the earlier.
enum class NameMatch { Whole, Beginning, WordWithin, NearMiss };

struct TownFound {
    const Town* town;
    NameMatch match;
    std::string_view key; ///< The name that answered, as name_key writes it.
    std::size_t edits;    ///< Letters amiss; 0 except for a near miss.
};

/// The towns of the world that the program knows, read once and shared.
class TownTable {
public:
    /// Where the packed table is: $LATHHOUSE_TOWNS, else beside the build, else the installed prefix.
    static Result<std::filesystem::path> find();
    /// Loads the packed table. Errors: NotFound, Unreadable, Damaged (not a table, cut, changed), TooNew.
    static Result<TownTable> load(const std::filesystem::path& packed_file);
    /// The table in the bytes of a packed file; `name` is for errors. Errors: Damaged, TooNew.
    static Result<TownTable> unpack(std::string bytes, std::string_view name);
    /// The shipped table, loaded once in the life of the program. Errors: as find and load.
    static Result<const TownTable*> shipped();

    std::span<const Town> towns() const { return towns_; }

    /// Towns that answer to `name`, the best first: by the kind of match, letters amiss, then population.
    /// Case, accents and script do not matter (name_key). What follows a comma is the country (its code or
    /// name) or the region ("Springfield, Missouri"). Near misses, by edit distance, are given only where
    /// fewer than `count` towns answer better.
    ///
    /// country: two letters, or empty for all. At most `count` towns, none where nothing is near.
    /// Errors: Malformed where the name holds no letter or digit or is longer than 200 bytes; NotFound where
    /// the country or the region has no town here.
    Result<std::vector<TownFound>> search(std::string_view name, std::string_view country,
                                          std::size_t count) const;

    /// The town that bears `name` (as for `search`): the only one, or the one with at least ten times the
    /// people of each other. Errors: as for `search`; NotFound for a name that no town bears, with
    /// suggestions; WrongUsage where several do, naming them.
    Result<const Town*> only(std::string_view name) const;

private:
    struct Key {
        std::string_view text;
        std::uint32_t town;
        std::uint64_t letters; ///< A bit for each letter or digit that occurs.
    };
    TownTable() = default;
    void gather_near_misses(std::string_view key, std::span<const char> wanted,
                            std::vector<TownFound>& found) const;
    Result<std::vector<char>> wanted_towns(std::span<const std::string_view> qualifiers,
                                           std::string_view country) const;

    std::unique_ptr<const std::string> bytes_; ///< The texts; where they lie does not change when moved.
    std::vector<Town> towns_;
    std::vector<Key> keys_; ///< By text.
};

/// The bytes of a packed table (base/packed_head.h, "LHTOWNS\n"): the regions, the towns and all their keys in order; all
/// numbers little-endian.
std::string pack_towns(const TownRows& rows);

/// What to say where no town bears `name`: NotFound with up to three of the towns `near` to it.
Error unknown_town(std::string_view name, std::span<const TownFound> near);

/// "Springfield (Missouri, United States)".
std::string full_name(const Town& town);

} // namespace lathhouse::geodesy
