#pragma once

#include "core/base/result.h"
#include "core/calendar/date.h"
#include "core/home/germination_rate.h"
#include "core/home/household.h"
#include "core/plants/seed_kind.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::home {

using LotId = int;
using TrayId = int;

/// A packet of seed, bought or saved. Facts of the day it was entered; what was taken from it stands in the
/// trays.
struct SeedLot {
    LotId id;         ///< Given by the journal; 0 before.
    std::string name; ///< The household's own word for it; not found twice.
    std::string crop; ///< Botanical name of the kind.
    std::optional<int> packed_year;
    std::optional<double> stated_percent; ///< Germination on the label.
    std::optional<int> seeds;             ///< At the start; nullopt where nobody counted.
    std::string note;
};

/// A sowing: so many seeds of a lot in one tray on one day.
struct Tray {
    TrayId id; ///< Given by the journal; 0 before.
    LotId lot;
    calendar::Date sown;
    int seeds;
    std::optional<SpotId> spot;
    std::optional<Celsius> mix; ///< Temperature of the mix, where it is known.
    std::string note;
};

/// Seedlings that have come up in a tray by a date, those since lost included. The latest entered of a date
/// counts.
struct TrayCount {
    TrayId tray;
    calendar::Date on;
    int emerged;
    bool last; ///< The grower waits for no more.
};

/// Plants that a tray's seedlings became.
struct TrayPlants {
    TrayId tray;
    std::vector<PlantId> plants;
};

/// All lots of a household and what came of them, each oldest first.
struct SeedBook {
    std::vector<SeedLot> lots;
    std::vector<Tray> trays;
    std::vector<TrayCount> counts;   ///< By tray and date, one for each.
    std::vector<TrayPlants> potted; ///< Only trays with plants.

    /// By id, or by name without case; nullptr where there is none.
    const SeedLot* lot_called(std::string_view id_or_name) const;
    const SeedLot* lot(LotId id) const;
    const Tray* tray(TrayId id) const;
    std::vector<const Tray*> trays_of(LotId lot) const;
    std::vector<TrayCount> counts_of(TrayId tray) const;
    /// The count of the tray's latest date, which is its highest; nullopt where nothing was counted.
    std::optional<TrayCount> latest_count(TrayId tray) const;
    std::size_t potted_from(TrayId tray) const;
    /// nullopt where nobody counted the lot at the start.
    std::optional<int> seeds_left(LotId lot) const;
};

/// Errors: OutOfRange with a sentence for a name or crop that is blank, a stated germination of 0 or outside 0..100, no
/// seeds (a lot of 0 is of no use) or over 10 million, a packed year before 1950 or after the next one.
Result<void> check(const SeedLot& lot, calendar::Date today);
/// Errors: NotFound for an unknown lot; OutOfRange for less than 1 seed or over 10 million, more seeds than the lot has
/// left, a date after today, a mix outside -10..60 C.
Result<void> check(const Tray& tray, const SeedBook& book, calendar::Date today);
/// Errors: NotFound for an unknown tray; OutOfRange where more came up than were sown, fewer than 0, before the
/// sowing or after today, or fewer than an earlier count or more than a later one (those lost since are counted
/// too).
Result<void> check(const TrayCount& count, const SeedBook& book, calendar::Date today);

/// What a rate was before anything was counted.
enum class RateStart {
    Label,   ///< The lot's stated germination, as good as 20 seeds (common practice, no source).
    Minimum, ///< The kind's least lawful or usual share, as good as 8 seeds (common practice, no source).
};

/// What is known of a lot's germination.
struct LotRate {
    GerminationRate rate;
    RateStart start;
    int sown;    ///< Seeds in trays whose counting is over.
    int emerged; ///< Of these.
    int waiting; ///< Seeds in trays that may still come.
};

/// A tray's counting is over where the grower says so, or once it was counted at least twice the kind's longest
/// usual days after sowing. Trays that may still come say nothing yet, so that an early count does not spoil a
/// lot's name.
LotRate lot_rate(const SeedLot& lot, const SeedBook& book, const plants::SeedKind& kind);
bool is_over(const Tray& tray, const TrayCount& count, const plants::SeedKind& kind);

enum class LotState {
    Good,
    Doubtful, ///< Older than such seed usually keeps, and nothing was counted that speaks for it.
    PastUse,  ///< Surely below the least share that may be sold: the upper end of the 90 % interval of its rate.
    Empty,    ///< Nothing left.
};
struct LotJudgement {
    LotState state;
    RateInterval interval; ///< 90 %.
    std::optional<int> age_years;
};
LotJudgement judge(const SeedLot& lot, const SeedBook& book, const plants::SeedKind& kind, calendar::Date today);
std::string_view to_string(LotState state); ///< "good", "doubtful", "past_use", "empty".

} // namespace lathhouse::home
