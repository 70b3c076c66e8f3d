#pragma once

#include "core/climate/forecast_errors.h"
#include "core/climate/night_model.h"

#include <functional>
#include <optional>

namespace lathhouse::climate {

/// A forecast of one night's low.
struct ForecastLow {
    Celsius low;
    LeadDays lead;
};

/// What to expect of one coming night's low in the open air: the season, or the season and a forecast.
///
/// Low and forecast have the season's mean mu and spread s, and a correlation rho that falls with lead, so
/// given a forecast f the low has mean m = mu + rho (f - mu) and spread tau = s sqrt(1 - rho^2), the
/// forecast's error. Its shape is a mixture: with weight rho^2 Student's t with five degrees of freedom, with
/// weight 1 - rho^2 the season's own, narrowed to tau. At short lead that is the forecast with its heavy
/// tail; where the forecast says nothing (rho 0) it is the season to the letter. Source: the regression is
/// that of two jointly normal values (any handbook of statistics); five degrees of freedom fit a published
/// pair of shares (trade rule R138: within 3 F in 68 %, beyond 10 F in 3 %); that the forecast varies as the
/// season does, and the mixture, are our choice. A forecast that was already drawn toward the season is drawn
/// a second time here, at most a quarter of the season's spread too far.
class NightOutlook {
public:
    /// Precondition: the model outlives the outlook.
    NightOutlook(const NightModel& season, calendar::DayOfYear night,
                 std::optional<ForecastLow> forecast = {}, const ForecastErrors& errors = {});

    Celsius mean() const { return mean_; }
    KelvinDelta spread() const { return spread_; }
    bool has_forecast() const { return correlation_ > 0.0; }

    /// Chance of a low at or below the line at a spot; half a reading step belongs to the line.
    Probability chance_at_or_below(Celsius line, NightOffset offset = {}) const;
    /// The low at a spot that is fallen to with that chance (0 < chance < 1).
    Celsius quantile(Probability chance, NightOffset offset = {}) const;
    /// Score of what was expected at a spot against the low that came: see `crps`.
    KelvinDelta score(Celsius observed, NightOffset offset = {}) const;

private:
    double below(double degrees, NightOffset offset) const;

    const NightModel* season_;
    calendar::DayOfYear night_;
    Celsius mean_;
    KelvinDelta spread_;
    double correlation_;
};

/// Continuous ranked probability score: the integral of (F(x) - [x >= observed])^2, in the unit of x; 0 is
/// perfect, and for a plain figure without a spread it is the absolute error.
///
/// below: the distribution F. reach: a distance from `observed` beyond which F is all but 0 and all but 1.
/// Accuracy: Simpson's rule with 160 steps a side; about 1e-6 of the reach for smooth F.
/// Source: Gneiting & Raftery, J. Amer. Statist. Assoc. 102 (2007), 359-378, eq. 20.
double crps(const std::function<double(double)>& below, double observed, double reach);

} // namespace lathhouse::climate
