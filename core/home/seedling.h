#pragma once

#include "core/home/household.h"
#include "core/home/seed_lot.h"
#include "core/plants/seed_kind.h"

#include <string>
#include <vector>

namespace lathhouse::home {

/// A young plant of a kind that was raised from seed; it stands nowhere yet.
///
/// Where the reference of plants knows the kind, its figures are taken and the lines raised to those of the row of
/// seeds where these are the warmer ones, since young plants are the more tender. Else: the row's safe and damaging
/// night; deadly 2 K below (tender, half-hardy) or 4 K (hardy); heat 8 K above the best monthly means; light 6 to
/// survive and 18 mol a day to thrive; a pot of 1 kg (common practice, no source). To the safe side it counts as
/// hazardous unless it is a vegetable or herb other than of the nightshade family.
Plant make_seedling(const plants::SeedKind& kind, std::string name);

/// First day on which plants of a tray are old enough to be planted out: the middle of the crop's weeks indoors after the
/// sowing, by which sowing dates are reckoned too. nullopt for crops that are sown where they are to stand.
std::optional<calendar::Date> old_enough(const Tray& tray, const plants::SeedKind& kind);
/// Whether a plant from a tray is to be treated as young on a date: until it is old enough, and indoors 60 days longer, since
/// hardening and planting out are still to come (common practice, no source; so long the round remembers a tray, too).
bool is_young(const Plant& plant, calendar::Date date, bool outdoors);
/// The household with `young_until` of the plants that came of its trays.
Household with_young_plants(Household household, const SeedBook& book);

/// Plants that the next so many seedlings of a tray become, at the tray's spot: called by `stem`, or where that is empty
/// after the crop and the tray ("Tomato 3-1"), and numbered on from those that were potted before.
/// Errors: NotFound for an unknown tray or a crop that the reference does not know.
Result<std::vector<Plant>> seedlings_of(const SeedBook& book, TrayId tray, int count, const std::string& stem = {});

} // namespace lathhouse::home
