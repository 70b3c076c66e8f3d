#include "core/geodesy/town_table.h"

#include "core/base/edit_distance.h"
#include "core/base/parse.h"
#include "core/geodesy/place_name.h"

#include <algorithm>
#include <array>
#include <bit>
#include <tuple>

namespace lathhouse::geodesy {
namespace {

constexpr std::size_t kLongestName = 200; // Bytes; the longest town of the table has 58.

/// How many letters may be amiss: common practice, no source.
std::size_t edits_allowed(std::size_t length)
{
    if (length < 3) {
        return 0;
    }
    return length <= 5 ? 1 : length <= 10 ? 2 : 3;
}

/// What people call countries besides their names and codes.
std::string_view code_of_nickname(std::string_view key)
{
    constexpr std::array<std::pair<std::string_view, std::string_view>, 5> kNicknames{
        {{"usa", "us"}, {"uk", "gb"}, {"great britain", "gb"}, {"uae", "ae"}, {"holland", "nl"}}};
    const auto found = std::ranges::find(kNicknames, key, [](const auto& pair) { return pair.first; });
    return found == kNicknames.end() ? key : found->second;
}

bool begins_word(std::string_view text, std::string_view key)
{
    for (auto at = text.find(key); at != std::string_view::npos; at = text.find(key, at + 1)) {
        if (at > 0 && text[at - 1] == ' ') {
            return true;
        }
    }
    return false;
}

} // namespace

std::string full_name(const Town& town)
{
    return std::string{town.name} + " (" +
           (town.region.empty() ? std::string{} : std::string{town.region} + ", ") +
           country_name(town.country) + ")";
}

Result<std::vector<char>> TownTable::wanted_towns(std::span<const std::string_view> qualifiers,
                                                  std::string_view country) const
{
    std::vector<char> wanted(towns_.size(), 1);
    const auto keep = [&](std::string_view what, const auto& fits) -> Result<void> {
        bool any = false;
        const Town* last = nullptr; // Towns of a region stand together.
        bool last_fits = false;
        for (std::size_t i = 0; i < towns_.size(); ++i) {
            const auto& town = towns_[i];
            if (last == nullptr || town.region_code.data() != last->region_code.data() ||
                town.country.data() != last->country.data()) {
                last_fits = fits(town);
                last = &town;
            }
            wanted[i] = wanted[i] != 0 && last_fits ? 1 : 0;
            any |= wanted[i] != 0;
        }
        if (!any) {
            return Error{ErrorCode::NotFound, said("no town is known in \"%1\"; name a country by its two letters or "
                                                   "its English name, or a region of it",
                                                   what)};
        }
        return {};
    };
    if (!country.empty()) {
        const auto code = lower_case(country);
        const auto kept =
            keep(country.substr(0, 40), [&](const Town& town) { return lower_case(town.country) == code; });
        if (!kept) {
            return kept.error();
        }
    }
    for (const auto qualifier : qualifiers) {
        const auto key = name_key(qualifier);
        if (key.empty()) {
            return Error{ErrorCode::Malformed,
                         said("after the comma stands no country or region; write it as Springfield, Missouri")};
        }
        const auto code = code_of_nickname(key);
        // A country is meant where its code or its whole name stands there: "Georgia" is both, so the state
        // counts too.
        const auto kept = keep(qualifier.substr(0, 40), [&](const Town& town) {
            return lower_case(town.country) == code || lower_case(town.region_code) == key ||
                   name_key(town.region).starts_with(key) ||
                   name_key(country_name(town.country)).starts_with(key);
        });
        if (!kept) {
            return kept.error();
        }
    }
    return wanted;
}

void TownTable::gather_near_misses(std::string_view key, std::span<const char> wanted,
                                   std::vector<TownFound>& found) const
{
    const auto allowed = edits_allowed(key.size());
    if (allowed == 0) {
        return;
    }
    std::uint64_t letters = 0;
    for (const char letter : key) {
        letters |= letter == ' ' ? 0 : std::uint64_t{1} << (letter >= 'a' ? letter - 'a' : 26 + letter - '0');
    }
    for (const auto& [text, town, its_letters] : keys_) {
        const auto longer = text.size() > key.size() ? text.size() - key.size() : key.size() - text.size();
        // One edit changes the set of letters by two at most.
        if (longer > allowed || wanted[town] == 0 ||
            static_cast<std::size_t>(std::popcount(letters ^ its_letters)) > 2 * allowed) {
            continue;
        }
        const auto edits = edit_distance(key, text);
        if (edits > 0 && edits <= allowed) {
            found.push_back({&towns_[town], NameMatch::NearMiss, text, edits});
        }
    }
}

Result<std::vector<TownFound>> TownTable::search(std::string_view name, std::string_view country,
                                                 std::size_t count) const
{
    if (name.size() > kLongestName) {
        return Error{ErrorCode::Malformed,
                     said("a town's name of %1 bytes is longer than any; write the town alone", name.size())};
    }
    const auto pieces = split(name, ',');
    const auto key = name_key(pieces.front());
    if (key.empty()) {
        return Error{ErrorCode::Malformed,
                     said("the name of a town needs a letter; write it as Vienna or Springfield, Missouri")};
    }
    const auto wanted = wanted_towns(std::span{pieces}.subspan(1), country);
    if (!wanted) {
        return wanted.error();
    }
    std::vector<TownFound> found;
    const auto first = std::ranges::lower_bound(keys_, std::string_view{key}, {}, &Key::text);
    for (auto at = first; at != keys_.end() && at->text.starts_with(key); ++at) {
        if ((*wanted)[at->town] != 0) {
            found.push_back({&towns_[at->town],
                             at->text.size() == key.size() ? NameMatch::Whole : NameMatch::Beginning,
                             at->text, 0});
        }
    }
    constexpr std::size_t kShortestWord = 3;
    if (found.size() < count && key.size() >= kShortestWord) {
        for (const auto& [text, town, letters] : keys_) {
            if (text.size() > key.size() && (*wanted)[town] != 0 && begins_word(text, key)) {
                found.push_back({&towns_[town], NameMatch::WordWithin, text, 0});
            }
        }
    }
    if (found.size() < count) {
        gather_near_misses(key, *wanted, found);
    }
    // Best first; a town that answers under several names is kept under the best.
    std::ranges::sort(found, {}, [](const TownFound& one) {
        return std::tuple{one.match, one.edits, ~one.town->population, one.town->id};
    });
    std::vector<TownFound> best;
    for (const auto& one : found) {
        if (best.size() == count) {
            break;
        }
        if (std::ranges::find(best, one.town, &TownFound::town) == best.end()) {
            best.push_back(one);
        }
    }
    return best;
}

Error unknown_town(std::string_view name, std::span<const TownFound> near)
{
    constexpr std::size_t kShown = 60;
    constexpr std::size_t kSuggestions = 3;
    std::string asked;
    for (const char byte : name.substr(0, kShown)) {
        asked += static_cast<unsigned char>(byte) < 0x20 || byte == 0x7F ? '?' : byte;
    }
    if (near.empty()) {
        return {ErrorCode::NotFound,
                said("no town \"%1\" is known; name a larger town nearby or write the place as LAT,LON", asked)};
    }
    std::string others;
    for (std::size_t i = 0; i < std::min(near.size(), kSuggestions); ++i) {
        others += (i == 0 ? "" : ", ") + full_name(*near[i].town);
    }
    return {ErrorCode::NotFound, said("no town \"%1\" is known; did you mean %2", asked, others)};
}

Result<const Town*> TownTable::only(std::string_view name) const
{
    constexpr std::size_t kLookedAt = 30;
    auto found = search(name, {}, kLookedAt);
    if (!found) {
        return found.error();
    }
    const auto others =
        std::ranges::find_if(*found, [](const TownFound& one) { return one.match != NameMatch::Whole; });
    if (others == found->begin()) {
        return unknown_town(name, *found);
    }
    found->erase(others, found->end());
    constexpr std::uint64_t kFarLarger = 10;
    if (found->size() > 1 && (*found)[0].town->population < kFarLarger * (*found)[1].town->population) {
        constexpr std::size_t kNamed = 4;
        std::string named;
        for (std::size_t i = 0; i < std::min(found->size(), kNamed); ++i) {
            named += (i == 0 ? "" : ", ") + full_name(*(*found)[i].town);
        }
        return Error{
            ErrorCode::WrongUsage,
            found->size() > kNamed
                ? said("several towns bear that name: %1 and others; add the region or the country after a comma",
                       named)
                : said("several towns bear that name: %1; add the region or the country after a comma", named)};
    }
    return found->front().town;
}

} // namespace lathhouse::geodesy
