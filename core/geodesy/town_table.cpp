#include "core/geodesy/town_table.h"

#include "core/base/csv.h"
#include "core/base/packed.h"
#include "core/base/packed_head.h"
#include "core/base/shipped_file.h"
#include "core/geodesy/place_name.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace lathhouse::geodesy {
namespace {

constexpr PackedKind kPackedTowns{"LHTOWNS\n", 1};
constexpr std::int16_t kNoHeight = std::numeric_limits<std::int16_t>::min();
constexpr double kThousandths = 1000.0;

Error damaged(std::string_view name)
{
    return Error{ErrorCode::Damaged,
                 said("%1 is damaged or no packed table of towns; build or install it again", name)};
}

/// Each text once, by a number.
class Names {
public:
    std::uint16_t number_of(const std::string& name)
    {
        const auto [place, is_new] = numbers_.try_emplace(name, static_cast<std::uint16_t>(names_.size()));
        if (is_new) {
            names_.push_back(name);
        }
        return place->second;
    }
    void pack(Packer& packer) const
    {
        packer.integer(static_cast<std::uint16_t>(names_.size()));
        for (const auto& name : names_) {
            packer.text(name);
        }
    }

private:
    std::map<std::string, std::uint16_t> numbers_;
    std::vector<std::string> names_;
};

std::uint64_t letters_of(std::string_view key)
{
    std::uint64_t letters = 0;
    for (const char letter : key) {
        if (letter >= 'a' && letter <= 'z') {
            letters |= std::uint64_t{1} << (letter - 'a');
        } else if (letter >= '0' && letter <= '9') {
            letters |= std::uint64_t{1} << (26 + letter - '0');
        }
    }
    return letters;
}

} // namespace

std::string pack_towns(const TownRows& rows)
{
    Packer body;
    Names zones;
    std::map<std::pair<std::string, std::string>, std::uint16_t> regions;
    for (const auto& town : rows.towns) {
        zones.number_of(town.zone);
    }
    zones.pack(body);
    body.integer(static_cast<std::uint16_t>(rows.regions.size()));
    for (std::size_t k = 0; k < rows.regions.size(); ++k) {
        const auto& region = rows.regions[k];
        regions.emplace(std::pair{region.country, region.code}, static_cast<std::uint16_t>(k));
        body.text(region.country);
        body.text(region.code);
        body.text(region.name);
    }
    body.integer(static_cast<std::uint32_t>(rows.towns.size()));
    std::vector<std::pair<std::string, std::uint32_t>> keys;
    for (std::uint32_t i = 0; i < rows.towns.size(); ++i) {
        const auto& town = rows.towns[i];
        body.integer(town.id);
        body.text(town.name);
        body.integer(regions.at({town.country, town.region}));
        body.integer(zones.number_of(town.zone));
        body.integer(static_cast<std::int32_t>(std::lround(town.position.latitude.degrees() * kThousandths)));
        body.integer(static_cast<std::int32_t>(std::lround(town.position.longitude.degrees() * kThousandths)));
        body.integer(town.elevation ? static_cast<std::int16_t>(std::lround(town.elevation->metres()))
                                    : kNoHeight);
        body.integer(town.population);
        keys.emplace_back(name_key(town.name), i);
        for (const auto& key : town.other_keys) {
            keys.emplace_back(key, i);
        }
    }
    std::erase_if(keys, [](const auto& key) { return key.first.empty(); });
    std::ranges::sort(keys);
    keys.erase(std::ranges::unique(keys).begin(), keys.end());
    body.integer(static_cast<std::uint32_t>(keys.size()));
    for (const auto& [key, town] : keys) {
        body.text(key);
        body.integer(town);
    }
    return with_packed_head(kPackedTowns, body.bytes());
}

Result<std::filesystem::path> TownTable::find()
{
    return find_shipped_file("towns.bin", "LATHHOUSE_TOWNS", "the table of towns");
}

Result<const TownTable*> TownTable::shipped()
{
    static const auto kTable = find().and_then(load);
    return kTable ? Result<const TownTable*>{&*kTable} : kTable.error();
}

Result<TownTable> TownTable::load(const std::filesystem::path& packed_file)
{
    auto bytes = read_text_file(packed_file);
    if (!bytes) {
        return bytes.error();
    }
    return unpack(*std::move(bytes), packed_file.string());
}

Result<TownTable> TownTable::unpack(std::string bytes, std::string_view name)
{
    TownTable table;
    table.bytes_ = std::make_unique<const std::string>(std::move(bytes));
    const auto body = packed_body(kPackedTowns, *table.bytes_, name, damaged(name));
    if (!body) {
        return body.error();
    }
    Unpacker unpacker{*body};
    std::vector<std::string_view> zones(unpacker.integer<std::uint16_t>());
    std::ranges::generate(zones, [&] { return unpacker.text(); });
    struct Region {
        std::string_view country, code, name;
    };
    std::vector<Region> regions(unpacker.integer<std::uint16_t>());
    std::ranges::generate(regions, [&] {
        const auto country = unpacker.text();
        const auto code = unpacker.text();
        return Region{country, code, unpacker.text()};
    });
    const auto count = unpacker.integer<std::uint32_t>();
    table.towns_.reserve(std::min<std::size_t>(count, body->size()));
    for (std::uint32_t i = 0; i < count && unpacker.good(); ++i) {
        const auto id = unpacker.integer<std::uint32_t>();
        const auto town_name = unpacker.text();
        const auto region = unpacker.integer<std::uint16_t>();
        const auto zone = unpacker.integer<std::uint16_t>();
        const auto latitude = Latitude::from_degrees(unpacker.integer<std::int32_t>() / kThousandths);
        const auto longitude = Longitude::from_degrees(unpacker.integer<std::int32_t>() / kThousandths);
        const auto height = unpacker.integer<std::int16_t>();
        const auto population = unpacker.integer<std::uint32_t>();
        if (!latitude || !longitude || region >= regions.size() || zone >= zones.size()) {
            return damaged(name);
        }
        table.towns_.push_back({id,
                                town_name,
                                regions[region].country,
                                regions[region].code,
                                regions[region].name,
                                {*latitude, *longitude},
                                height == kNoHeight
                                    ? std::nullopt
                                    : std::optional{Metres::from_metres(static_cast<double>(height))},
                                population,
                                zones[zone]});
    }
    const auto key_count = unpacker.integer<std::uint32_t>();
    table.keys_.reserve(std::min<std::size_t>(key_count, body->size()));
    for (std::uint32_t i = 0; i < key_count && unpacker.good(); ++i) {
        const auto key = unpacker.text();
        const auto town = unpacker.integer<std::uint32_t>();
        if (town >= table.towns_.size()) {
            return damaged(name);
        }
        table.keys_.push_back({key, town, letters_of(key)});
    }
    if (!unpacker.good() || !unpacker.at_end() || table.towns_.empty() ||
        !std::ranges::is_sorted(table.keys_, {}, &Key::text)) {
        return damaged(name);
    }
    return table;
}

} // namespace lathhouse::geodesy
