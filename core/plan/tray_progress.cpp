#include "core/plan/tray_progress.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lathhouse::plan {
namespace {

using calendar::Days;

// Common practice, no source: a pot tray is filled and sown in a quarter of an hour, and so on.
constexpr int kSowMinutes = 15;
constexpr int kCountMinutes = 3;
constexpr int kPotUpMinutes = 20;
constexpr int kHardenMinutes = 5;
constexpr int kPlantOutMinutes = 20;
constexpr int kCountCanWait = 4;
constexpr int kPotUpCanWait = 14;
constexpr int kSowCanWait = 10;
constexpr int kLeftBehindDays = 60;

} // namespace

TrayProgress progress_of(const home::Tray& tray, const home::SeedBook& book, const plants::SeedKind& kind,
                         const home::GerminationRate& rate, Celsius room, calendar::Date today)
{
    TrayProgress progress{&tray, tray.mix.value_or(room), {}, 0.0, book.latest_count(tray.id), {}, false, false};
    if (const auto days = emergence_days(kind, progress.mix)) {
        progress.expected_on = DateSpan{tray.sown + Days{days->from}, tray.sown + Days{days->to}};
    }
    const auto share_by = [&](calendar::Date date) {
        return share_emerged(kind, progress.mix, calendar::days_between(tray.sown, date));
    };
    progress.expected_by_now = tray.seeds * rate.mean() * share_by(today);
    if (progress.counted) {
        const auto& count = *progress.counted;
        progress.expected_by_count = tray.seeds * rate.mean() * share_by(count.on);
        progress.over = home::is_over(tray, count, kind);
        // How surely more should have come: each with the lot's share and the days' together.
        const double each = rate.mean() * share_by(count.on);
        progress.behind = home::chance_of(count.emerged + 1, tray.seeds, Probability::clamped(each)).fraction() > 0.95;
    }
    return progress;
}

std::vector<SowingTask> due_on(calendar::Date date, const home::SeedLot& lot, const home::SeedBook& book,
                               const SowingPlan& plan, Celsius room)
{
    std::vector<SowingTask> due;
    const auto& kind = *plan.kind;
    const auto rate = home::lot_rate(lot, book, kind);
    bool sown_of_late = false; // For the season that the plan speaks of, or growing towards it.
    for (const auto* tray : book.trays_of(lot.id)) {
        const int age = calendar::days_between(tray->sown, date);
        if (age < 0) {
            continue;
        }
        const int season_days = kind.weeks_indoors ? static_cast<int>(7.0 * kind.weeks_indoors->high) + kHardeningDays : 60;
        sown_of_late = sown_of_late || age <= season_days;
        const auto progress = progress_of(*tray, book, kind, rate.rate, room, date);
        const bool potted = book.potted_from(tray->id) > 0;
        if (!progress.over && !potted && progress.expected_on && date >= progress.expected_on->from &&
            (!progress.counted || progress.counted->on < date)) {
            due.push_back({SowingTaskKind::CountTray, lot.id, tray->id, progress.expected_on->from,
                           date + Days{kCountCanWait}, kCountMinutes});
        }
        // A tray long past that has gone its way, whether or not somebody wrote it down.
        if (progress.over && !potted && progress.counted->emerged > 0 && kind.weeks_indoors &&
            age <= season_days + kLeftBehindDays) {
            due.push_back({SowingTaskKind::PotUp, lot.id, tray->id, progress.counted->on,
                           progress.counted->on + Days{kPotUpCanWait}, kPotUpMinutes});
        }
    }
    if (plan.season) {
        const auto& season = *plan.season;
        const bool any_left = book.seeds_left(lot.id).value_or(1) > 0;
        const auto sow = [&](SowingTaskKind task, const std::optional<DateSpan>& span) {
            if (span && any_left && !sown_of_late && date >= span->from && date <= span->to) {
                due.push_back({task, lot.id, {}, span->from, std::min(span->to, span->from + Days{kSowCanWait}),
                               kSowMinutes, {}, date == span->to});
            }
        };
        sow(SowingTaskKind::SowIndoors, season.sow_indoors);
        if (!season.sow_indoors) {
            sow(SowingTaskKind::SowOutdoors, season.sow_outdoors);
        }
    }
    if (!plan.transplants_out || !kind.weeks_indoors) {
        return due;
    }
    // Seedlings go out once they are old enough and the place allows; a tray long past that has gone its way.
    for (const auto* tray : book.trays_of(lot.id)) {
        const auto count = book.latest_count(tray->id);
        const auto weeks = [&](double count_of) { return tray->sown + Days{static_cast<int>(std::lround(7.0 * count_of))}; };
        if (!count || count->emerged == 0 || date > weeks(kind.weeks_indoors->high) + Days{kLeftBehindDays}) {
            continue;
        }
        const auto out = std::max(weeks(kind.weeks_indoors->low), plan.transplants_out->from);
        const auto harden = out - Days{kHardeningDays};
        if (date >= harden && date < out) {
            due.push_back({SowingTaskKind::Harden, lot.id, tray->id, harden, out, kHardenMinutes});
        } else if (date >= out && date <= plan.transplants_out->to) {
            due.push_back({SowingTaskKind::PlantOut, lot.id, tray->id, out,
                           std::min(out + Days{kPotUpCanWait}, plan.transplants_out->to), kPlantOutMinutes});
        }
    }
    return due;
}

SowingOutlook::SowingOutlook(calendar::Date today, home::SeedBook book, const climate::PlaceClimate& place, Probability risk)
    : book_(std::move(book))
{
    SowingWishes wishes;
    wishes.risk = risk;
    if (book_.lots.empty()) {
        return;
    }
    const SowingClimate climate{place, today};
    for (const auto& lot : book_.lots) {
        if (const auto kind = plants::SeedReference::built_in().find(lot.crop)) {
            lots_.push_back({lot, plan_sowing(**kind, place, climate, wishes)});
        }
    }
}

std::vector<SowingTask> SowingOutlook::due(calendar::Date date) const
{
    std::vector<SowingTask> all;
    for (const auto& [lot, plan] : lots_) {
        for (auto& task : due_on(date, lot, book_, plan, room_)) {
            task.name = lot.name;
            all.push_back(std::move(task));
        }
    }
    return all;
}

} // namespace lathhouse::plan
