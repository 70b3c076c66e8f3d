#pragma once

#include "core/climate/place_climate.h"
#include "core/home/household.h"
#include "core/sky/mean_day.h"
#include "core/sky/spot_view.h"

#include <array>
#include <optional>

namespace lathhouse::home {

/// The mean days of a place's year, three to a month: what every spot of the place shares.
class YearOfSky {
public:
    /// Radiation from the climate's mean lows and highs.
    explicit YearOfSky(const climate::PlaceClimate& climate);
    /// From given means of radiation on the level.
    YearOfSky(Latitude latitude, const climate::Monthly<DailyRadiation>& radiation);

    struct Month {
        std::array<sky::MeanDay, 3> days; ///< The 5th, 15th and 25th.
        double shining;                   ///< Share of the day's hours in which the Sun shines, 0..1.
    };
    const climate::Monthly<Month>& months() const { return months_; }
    Latitude latitude() const { return latitude_; }

private:
    Latitude latitude_;
    climate::Monthly<Month> months_;
};

/// Light at a spot on a month's mean day.
struct MonthAtSpot {
    DailyLight level;        ///< On a level leaf: the figure to hold against a plant's need.
    DailyLight facing;       ///< On an upright leaf turned to the window.
    double direct_sun_hours; ///< In which the Sun could shine on the leaves, were there no cloud.
    /// The same with the month's usual cloud: FAO-56 eq. 35 turned round. The rule is for days as a whole.
    double likely_sun_hours;
};
climate::Monthly<MonthAtSpot> months_at(const sky::SpotView& view, const YearOfSky& year);

/// The view of a spot of which one knows little more than its kind and the way it faces; `facing` is of no
/// meaning for an open spot away from walls, which is what nullopt stands for.
///
/// | kind | view |
/// | --- | --- |
/// | indoors | window 1.2 m by 1.4 m, two panes, leaves 0.2 m behind and above its lower edge; 0.9 for frame, dirt |
/// | open | free sky; before a wall that hides it up to 60 degrees where it faces somewhere |
/// | roofed | porch 4 m wide, open from 0.3 m below the leaves to 1.9 m above, 0.6 m behind its edge |
/// | screened | the same behind mesh that lets 0.7 through |
/// | glazed | free sky through one pane, 0.85 for frames |
///
/// Source: common practice, no source.
sky::SpotFigures usual_view(SpotKind kind, std::optional<Angle> facing);

/// Light on a level leaf at a spot, for each month: from its view where it has one, else between the grower's
/// own winter and summer figure by the season's cosine.
/// Takes about half a millisecond; once per spot is enough for a plan.
climate::Monthly<DailyLight> spot_light(const Spot& spot, const YearOfSky& year);

} // namespace lathhouse::home
