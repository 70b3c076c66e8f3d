#include "app/models/known_lot.h"

#include "app/models/translated.h"
#include "app/models/word_form.h"
#include "app/potting.h"
#include "core/plan/tray_progress.h"

#include <algorithm>
#include <cmath>
#include <ranges>

namespace lathhouse::models {

namespace {

/// The first day of the season on which something is sown.
std::optional<plan::DateSpan> first_sowing(const std::optional<plan::SowingSeason>& season)
{
    if (!season) {
        return std::nullopt;
    }
    const auto& in = season->sow_indoors;
    const auto& out = season->sow_outdoors;
    return in && out ? (in->from <= out->from ? in : out) : in ? in : out;
}

/// The tray of the lot that is waited for; nullptr where there is none.
const home::Tray* waiting_tray(const KnownLot& lot, const home::SeedBook& book)
{
    for (const auto* tray : book.trays_of(lot.lot->id)) {
        const auto count = book.latest_count(tray->id);
        if (!count || !home::is_over(*tray, *count, *lot.kind)) {
            return tray;
        }
    }
    return nullptr;
}

/// What the seedlings of the lot that are up want next; empty where none stand, or none that go out from indoors.
QString next_of_seedlings(const KnownLot& lot, const SeedGround& ground, const TodayLook& look)
{
    constexpr int kGoneItsWay = 60; // Days after its season, as the round has it.
    const auto& seeds = ground.facts.seeds;
    if (!lot.kind->weeks_indoors || !lot.sowing.transplants_out) {
        return {};
    }
    for (const auto* tray : seeds.trays_of(lot.lot->id) | std::views::reverse) {
        const auto count = seeds.latest_count(tray->id);
        const auto old_by = [&](double weeks) { return tray->sown + calendar::Days{static_cast<int>(std::lround(7.0 * weeks))}; };
        if (!count || count->emerged == 0 || look.today > old_by(lot.kind->weeks_indoors->high) + calendar::Days{kGoneItsWay}) {
            continue;
        }
        if (seeds.potted_from(tray->id) == 0) {
            return tr("pot up %1").arg(seedlings_left(seeds, tray->id));
        }
        const auto out = std::max(old_by(lot.kind->weeks_indoors->low), lot.sowing.transplants_out->from);
        const auto harden = out - calendar::Days{plan::kHardeningDays};
        if (look.today < out) {
            return look.today < harden ? tr("harden off from %1").arg(unbroken(look.words.day_and_month(harden)))
                                       : tr("harden off now, out %1").arg(unbroken(look.words.day_and_month(out)));
        }
        if (look.today <= lot.sowing.transplants_out->to) {
            return tr("plant out now");
        }
    }
    return {};
}

QString next_words(const KnownLot& lot, const SeedGround& ground, const TodayLook& look)
{
    const auto& words = look.words;
    if (lot.kind == nullptr) {
        return tr("not in the tables");
    }
    if (const auto* tray = waiting_tray(lot, ground.facts.seeds)) {
        const auto progress = plan::progress_of(*tray, ground.facts.seeds, *lot.kind, lot.rate->rate, lot.room, look.today);
        return progress.expected_on ? tr("sown; up from %1").arg(words.day_and_month(progress.expected_on->from))
                                    : tr("sown; too cold or hot to come up");
    }
    if (const auto standing = next_of_seedlings(lot, ground, look); !standing.isEmpty()) {
        return standing;
    }
    switch (lot.judgement->state) {
    case home::LotState::Empty:
        return tr("nothing left");
    case home::LotState::PastUse:
        return tr("past use");
    case home::LotState::Doubtful:
        return tr("old: test first");
    case home::LotState::Good:
        break;
    }
    const auto sow = first_sowing(lot.sowing.season);
    if (!sow) {
        return tr("no date here");
    }
    const auto& indoors = lot.sowing.season->sow_indoors;
    const bool outdoors = !indoors || indoors->from != sow->from;
    if (sow->from <= look.today) {
        return (outdoors ? tr("sow outdoors now, until %1") : tr("sow now, until %1")).arg(unbroken(words.day_and_month(sow->to)));
    }
    return (outdoors ? tr("outdoors from %1") : tr("sow %1")).arg(unbroken(sow->from.year() == look.today.year() ? words.day_and_month(sow->from) : words.date_with_year(sow->from)));
}

using LotRow = SheetRows::Row; // Qt's lupdate takes a qualified result for the class of the function.

} // namespace

plan::SowingWishes sowing_wishes(const SeedChoice& choice)
{
    plan::SowingWishes wishes;
    wishes.plants = choice.plants;
    wishes.room = choice.room.value_or(wishes.room);
    wishes.risk = choice.risk;
    return wishes;
}

KnownLot known_lot(const home::SeedLot& lot, const SeedGround& ground, calendar::Date today, const SeedChoice& choice)
{
    auto wishes = sowing_wishes(choice);
    KnownLot known{.lot = &lot, .room = wishes.room};
    const auto kind = plants::SeedReference::built_in().find(lot.crop);
    if (!kind) {
        return known;
    }
    known.kind = *kind;
    known.rate = home::lot_rate(lot, ground.facts.seeds, **kind);
    known.judgement = home::judge(lot, ground.facts.seeds, **kind, today);
    wishes.rate = known.rate->rate;
    known.sowing = plan::plan_sowing(**kind, ground.facts.climate, ground.climate, wishes);
    return known;
}

QString seeds_percent(const YearWords& words, double share)
{
    return tr("%1 %").arg(words.decimal(100.0 * share, 0));
}

QString lot_basis(const KnownLot& lot, const YearWords& words)
{
    if (lot.rate->sown > 0) {
        return tr("%1 of %2 came up").arg(lot.rate->emerged).arg(lot.rate->sown);
    }
    return lot.lot->stated_percent ? tr("packet says %1").arg(seeds_percent(words, *lot.lot->stated_percent / 100.0))
                                   : tr("no test yet");
}

LotRow lot_row(const KnownLot& lot, const SeedGround& ground, const TodayLook& look)
{
    const auto left = ground.facts.seeds.seeds_left(lot.lot->id);
    const QString name = text(lot.lot->name);
    const QString year = lot.lot->packed_year ? QString::number(*lot.lot->packed_year) : QString{};
    const QString seeds = left ? QString::number(*left) : QString{};
    const QString next = next_words(lot, ground, look);
    if (lot.kind == nullptr) {
        return {lot.lot->id, name, text(lot.lot->crop), year, seeds, -1.0, -1.0, -1.0, false, QString{}, QString{}, next,
                tr("%1: %2").arg(name, next)};
    }
    const double mean = lot.rate->rate.mean();
    const auto& interval = lot.judgement->interval;
    const QString share = seeds_percent(look.words, mean);
    const QString basis = lot_basis(lot, look.words);
    return {lot.lot->id,
            name,
            text(lot.kind->botanical_name),
            year,
            seeds,
            mean,
            interval.low.fraction(),
            interval.high.fraction(),
            lot.rate->sown > 0,
            share,
            basis,
            next,
            tr("%1, %2. %3 come up, 9 in 10: %4 to %5, %6. %7. %8")
                .arg(name, text(lot.kind->botanical_name), share, seeds_percent(look.words, interval.low.fraction()),
                     seeds_percent(look.words, interval.high.fraction()), basis,
                     left ? tr("%1 seeds left").arg(*left) : tr("seeds not counted"), next)};
}

void sort_lots(std::vector<KnownLot>& lots, const SeedGround& ground, const SeedChoice& choice, calendar::Date today)
{
    if (choice.by_name) {
        std::ranges::stable_sort(lots, {}, [](const KnownLot& lot) { return text(lot.lot->name).toCaseFolded(); });
    } else { // What is waited for first, then by the date of sowing; lots without one at the end.
        const auto when = [&](const KnownLot& lot) {
            const auto never = today + calendar::Days{10'000};
            if (lot.kind == nullptr || lot.judgement->state == home::LotState::Empty) {
                return never;
            }
            if (waiting_tray(lot, ground.facts.seeds) != nullptr) {
                return today - calendar::Days{1};
            }
            const auto sow = first_sowing(lot.sowing.season);
            return sow ? sow->from : never;
        };
        std::ranges::stable_sort(lots, {}, when);
    }
}

} // namespace lathhouse::models
