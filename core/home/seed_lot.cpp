#include "core/home/seed_lot.h"

#include "core/base/parse.h"

#include <algorithm>
#include <cmath>

namespace lathhouse::home {
namespace {

constexpr double kLabelWeight = 20.0;
constexpr double kMinimumWeight = 8.0;
constexpr Probability kLevel = Probability::literal(0.9);
constexpr int kMostSeedsAtOnce = 10'000'000; // Of a lot and of a tray; the tables of the journal have the same limit.

Error out_of_range(Said why)
{
    return {ErrorCode::OutOfRange, std::move(why)};
}

} // namespace

const SeedLot* SeedBook::lot(LotId id) const
{
    const auto found = std::ranges::find(lots, id, &SeedLot::id);
    return found == lots.end() ? nullptr : &*found;
}

const SeedLot* SeedBook::lot_called(std::string_view id_or_name) const
{
    if (const auto id = parse_integer(id_or_name)) {
        if (const auto* found = lot(*id)) {
            return found;
        }
    }
    const auto wanted = lower_case(trimmed(id_or_name));
    const auto found =
        std::ranges::find_if(lots, [&](const SeedLot& lot) { return lower_case(lot.name) == wanted; });
    return found == lots.end() ? nullptr : &*found;
}

const Tray* SeedBook::tray(TrayId id) const
{
    const auto found = std::ranges::find(trays, id, &Tray::id);
    return found == trays.end() ? nullptr : &*found;
}

std::vector<const Tray*> SeedBook::trays_of(LotId lot) const
{
    std::vector<const Tray*> found;
    for (const auto& tray : trays) {
        if (tray.lot == lot) {
            found.push_back(&tray);
        }
    }
    return found;
}

std::vector<TrayCount> SeedBook::counts_of(TrayId tray) const
{
    std::vector<TrayCount> found;
    std::ranges::copy_if(counts, std::back_inserter(found),
                         [&](const TrayCount& count) { return count.tray == tray; });
    return found;
}

std::optional<TrayCount> SeedBook::latest_count(TrayId tray) const
{
    const auto all = counts_of(tray);
    return all.empty() ? std::nullopt : std::optional{all.back()};
}

std::size_t SeedBook::potted_from(TrayId tray) const
{
    const auto found = std::ranges::find(potted, tray, &TrayPlants::tray);
    return found == potted.end() ? 0 : found->plants.size();
}

std::optional<int> SeedBook::seeds_left(LotId id) const
{
    const auto* of = lot(id);
    if (of == nullptr || !of->seeds) {
        return std::nullopt;
    }
    int left = *of->seeds;
    for (const auto* tray : trays_of(id)) {
        left -= tray->seeds;
    }
    return std::max(left, 0);
}

Result<void> check(const SeedLot& lot, calendar::Date today)
{
    if (trimmed(lot.name).empty() || trimmed(lot.crop).empty()) {
        return out_of_range(said("a lot needs a name and a crop"));
    }
    if (lot.stated_percent && !(*lot.stated_percent > 0.0 && *lot.stated_percent <= 100.0)) {
        return out_of_range(said("the stated germination must lie above 0 and at most at 100 percent"));
    }
    if (lot.seeds && (*lot.seeds < 1 || *lot.seeds > kMostSeedsAtOnce)) {
        return out_of_range(
            said("a lot of %1 seeds cannot be sown; give the number in the packet, or leave it out", *lot.seeds));
    }
    if (lot.packed_year && (*lot.packed_year < 1950 || *lot.packed_year > today.year() + 1)) {
        return out_of_range(said("the packed year must lie within 1950 and %1", int{today.year()} + 1));
    }
    return {};
}

Result<void> check(const Tray& tray, const SeedBook& book, calendar::Date today)
{
    const auto* lot = book.lot(tray.lot);
    if (lot == nullptr) {
        return Error{ErrorCode::NotFound, said("there is no such lot; `lathhouse list lots` shows their ids")};
    }
    if (tray.seeds < 1) {
        return out_of_range(said("a sowing needs at least one seed"));
    }
    if (tray.seeds > kMostSeedsAtOnce) {
        return out_of_range(said("%1 seeds cannot be sown at once; log up to %2 in a tray", tray.seeds, kMostSeedsAtOnce));
    }
    if (const auto left = book.seeds_left(tray.lot); left && tray.seeds > *left) {
        return out_of_range(said("%1 has %2 seeds left, not %3; sow fewer, or add the packet they came from", lot->name,
                                 *left, tray.seeds));
    }
    if (tray.sown > today) {
        return out_of_range(
            said("a sowing is logged when it is done; %1 is after today", calendar::to_text(tray.sown)));
    }
    if (tray.mix && !(tray.mix->degrees() >= -10.0 && tray.mix->degrees() <= 60.0)) {
        return out_of_range(said("the mix's temperature must lie within -10 and 60 degrees Celsius"));
    }
    return {};
}

Result<void> check(const TrayCount& count, const SeedBook& book, calendar::Date today)
{
    const auto* tray = book.tray(count.tray);
    if (tray == nullptr) {
        return Error{ErrorCode::NotFound, said("there is no such tray; `lathhouse show lot` shows a lot's trays")};
    }
    if (count.emerged < 0 || count.emerged > tray->seeds) {
        return out_of_range(said("of %1 seeds %2 cannot have come up", tray->seeds, count.emerged));
    }
    if (count.on < tray->sown || count.on > today) {
        return out_of_range(said("a count lies between the sowing on %1 and today", calendar::to_text(tray->sown)));
    }
    for (const auto& other : book.counts_of(count.tray)) {
        if ((other.on < count.on && other.emerged > count.emerged) ||
            (other.on > count.on && other.emerged < count.emerged)) {
            return out_of_range(said("on %1 %2 were counted; count all that have come up so far, those lost since too, "
                                     "or log that day's count anew",
                                     calendar::to_text(other.on), other.emerged));
        }
    }
    return {};
}

bool is_over(const Tray& tray, const TrayCount& count, const plants::SeedKind& kind)
{
    return count.last || calendar::days_between(tray.sown, count.on) >= 2.0 * kind.days_typical.high;
}

LotRate lot_rate(const SeedLot& lot, const SeedBook& book, const plants::SeedKind& kind)
{
    const auto start = lot.stated_percent ? RateStart::Label : RateStart::Minimum;
    const double percent = lot.stated_percent.value_or(kind.germination_percent);
    LotRate known{GerminationRate::before_counting(Probability::clamped(percent / 100.0),
                                                   lot.stated_percent ? kLabelWeight : kMinimumWeight),
                  start, 0, 0, 0};
    for (const auto* tray : book.trays_of(lot.id)) {
        const auto count = book.latest_count(tray->id);
        if (count && is_over(*tray, *count, kind)) {
            known.sown += tray->seeds;
            known.emerged += std::clamp(count->emerged, 0, tray->seeds);
        } else {
            known.waiting += tray->seeds;
        }
    }
    known.rate = known.rate.after(known.sown, known.emerged);
    return known;
}

LotJudgement judge(const SeedLot& lot, const SeedBook& book, const plants::SeedKind& kind, calendar::Date today)
{
    const auto known = lot_rate(lot, book, kind);
    LotJudgement judged{LotState::Good, known.rate.interval(kLevel), std::nullopt};
    if (lot.packed_year) {
        judged.age_years = std::max(0, int{today.year()} - *lot.packed_year);
    }
    if (known.sown > 0 && judged.interval.high.percent() < kind.germination_percent) {
        judged.state = LotState::PastUse;
    } else if (judged.age_years && *judged.age_years > kind.keeps_years && known.sown == 0) {
        judged.state = LotState::Doubtful;
    }
    if (book.seeds_left(lot.id) == 0) {
        judged.state = LotState::Empty;
    }
    return judged;
}

std::string_view to_string(LotState state)
{
    switch (state) {
    case LotState::Good:
        return "good";
    case LotState::Doubtful:
        return "doubtful";
    case LotState::PastUse:
        return "past_use";
    case LotState::Empty:
        break;
    }
    return "empty";
}

} // namespace lathhouse::home
