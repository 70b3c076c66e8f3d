#pragma once

#include "app/models/seed_facts.h"
#include "core/home/seed_lot.h"
#include "core/plants/seed_kind.h"

namespace lathhouse::models {

/// A lot with what is known of it; nothing where its crop is in no table.
struct KnownLot {
    const home::SeedLot* lot;
    const plants::SeedKind* kind = nullptr;
    std::optional<home::LotRate> rate{};
    std::optional<home::LotJudgement> judgement{};
    plan::SowingPlan sowing{};
    Celsius room; ///< Where its trays stand.
};

plan::SowingWishes sowing_wishes(const SeedChoice& choice);
KnownLot known_lot(const home::SeedLot& lot, const SeedGround& ground, calendar::Date today, const SeedChoice& choice);

/// Of the lots' list; as SeedsModel's `lots`.
SheetRows::Row lot_row(const KnownLot& lot, const SeedGround& ground, const TodayLook& look);
/// By what is waited for first, then by the date of sowing, and lots without one at the end; or by name.
void sort_lots(std::vector<KnownLot>& lots, const SeedGround& ground, const SeedChoice& choice, calendar::Date today);

/// What the share that comes up rests on: "6 of 8 came up".
QString lot_basis(const KnownLot& lot, const YearWords& words);
/// "86 %".
QString seeds_percent(const YearWords& words, double share);

} // namespace lathhouse::models
