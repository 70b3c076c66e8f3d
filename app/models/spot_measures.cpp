#include "app/models/spot_measures.h"

#include "app/models/ready_spots.h"
#include "app/models/typed_decimal.h"
#include "core/home/shelter.h"
#include "core/home/spot_light.h"
#include "core/sky/spot_limits.h"
#include "core/units/light_source.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace lathhouse::models {

namespace {

struct Measures {
    Q_DECLARE_TR_FUNCTIONS(SpotMeasures)
};

constexpr double kDegreesAFacing = 45.0;
constexpr double kCentimetre = 0.01;
constexpr double kInch = 0.0254;
constexpr double kFahrenheit = 5.0 / 9.0;
constexpr double kPercent = 0.01;

using enum SpotMeasure;

bool is_length(SpotMeasure measure)
{
    return measure <= Overhang;
}

/// Light through a window or the open side of a roof.
bool has_opening(const SpotDraft& draft)
{
    return draft.kind != home::SpotKind::Open && draft.kind != home::SpotKind::Glazed;
}

bool has_glass(const SpotDraft& draft)
{
    return draft.kind == home::SpotKind::Indoors || draft.kind == home::SpotKind::Glazed;
}

double figure_of(const sky::SpotFigures& figures, SpotMeasure measure)
{
    switch (measure) {
    case Width:
        return figures.width.metres();
    case Height:
        return figures.height.metres();
    case Distance:
        return figures.distance.metres();
    case Sill:
        return figures.sill.metres();
    case Sideways:
        return figures.sideways.metres();
    case Overhang:
        return figures.overhang.metres();
    case Opposite:
        return figures.opposite.degrees();
    case Behind:
        return figures.behind.degrees();
    case Panes:
        return figures.panes;
    default:
        return figures.passes;
    }
}

void put(sky::SpotFigures& figures, SpotMeasure measure, double value)
{
    switch (measure) {
    case Width:
        figures.width = Metres::from_metres(value);
        break;
    case Height:
        figures.height = Metres::from_metres(value);
        break;
    case Distance:
        figures.distance = Metres::from_metres(value);
        break;
    case Sill:
        figures.sill = Metres::from_metres(value);
        break;
    case Sideways:
        figures.sideways = Metres::from_metres(value);
        break;
    case Overhang:
        figures.overhang = Metres::from_metres(value);
        break;
    case Opposite:
        figures.opposite = Angle::from_degrees(value);
        break;
    case Behind:
        figures.behind = Angle::from_degrees(value);
        break;
    case Panes:
        figures.panes = static_cast<int>(value);
        break;
    default:
        figures.passes = value;
    }
}

sky::FigureLimits limits_of(SpotMeasure measure)
{
    switch (measure) {
    case Width:
    case Height:
    case Distance:
        return sky::kOpeningSize;
    case Sill:
    case Sideways:
        return sky::kAsideOfOpening;
    case Overhang:
        return sky::kOverhangDepth;
    case Opposite:
    case Behind:
        return sky::kHeightInDegrees;
    case Panes:
        return sky::kPanesOfGlass;
    case Passes:
        return sky::kShareLetThrough;
    case SummerLight:
    case WinterLight:
        return {0.0, kMostDailyMoles};
    case Milder:
        return home::kOffsetKelvins;
    case Spread:
        return home::kOffsetSpreadKelvins;
    }
    return {0.0, 0.0};
}

} // namespace

std::optional<Angle> side_of(const SpotDraft& draft)
{
    return draft.facing >= 0 && draft.kind != home::SpotKind::Glazed ? std::optional{Angle::from_degrees(kDegreesAFacing * draft.facing)}
                                                                     : std::nullopt;
}

bool SpotMeasures::asked(SpotMeasure measure) const
{
    switch (measure) {
    case Behind:
        return draft_.kind == home::SpotKind::Open && draft_.facing >= 0;
    case Panes:
        return has_glass(draft_);
    case Opposite:
    case Passes:
    case SummerLight:
    case WinterLight:
        return true;
    case Milder:
    case Spread:
        return draft_.kind != home::SpotKind::Indoors;
    default:
        return has_opening(draft_);
    }
}

QString SpotMeasures::label(SpotMeasure measure) const
{
    switch (measure) {
    case Width:
        return has_glass(draft_) ? Measures::tr("Glass, width") : Measures::tr("Opening, width");
    case Height:
        return has_glass(draft_) ? Measures::tr("Glass, height") : Measures::tr("Opening, height");
    case Distance:
        return Measures::tr("Pot behind it");
    case Sill:
        return Measures::tr("Its lower edge above the leaves");
    case Sideways:
        return Measures::tr("Its middle right of the pot");
    case Overhang:
        return Measures::tr("Roof or slab above it, depth");
    case Opposite:
        return Measures::tr("House opposite");
    case Behind:
        return Measures::tr("Wall behind");
    case Panes:
        return Measures::tr("Panes, one behind the other");
    case Passes:
        return Measures::tr("Light that gets through");
    case SummerLight:
        return Measures::tr("In high summer");
    case WinterLight:
        return Measures::tr("In midwinter");
    case Milder:
        return Measures::tr("Nights milder by");
    case Spread:
        return Measures::tr("Right to about");
    }
    return {};
}

QString SpotMeasures::note(SpotMeasure measure) const
{
    switch (measure) {
    case Sill:
        return Measures::tr("With a minus where it lies below them");
    case Sideways:
        return Measures::tr("Looking out; with a minus to the left");
    case Opposite:
    case Behind:
        return Measures::tr("How high it stands above the horizon");
    case Passes:
        return Measures::tr("Past frame, dirt, mesh, slats or curtain");
    case Milder:
        return Measures::tr("Than the open air; with a minus where they are colder");
    case Spread:
        return Measures::tr("Two chances in three that it lies that near");
    default:
        return {};
    }
}

QString SpotMeasures::unit(SpotMeasure measure) const
{
    switch (measure) {
    case Opposite:
    case Behind:
        return QStringLiteral("°");
    case Panes:
        return {};
    case Passes:
        return QStringLiteral("%");
    case SummerLight:
    case WinterLight:
        return Measures::tr("mol");
    case Milder:
    case Spread:
        return words_.unit();
    default:
        return words_.units() == Units::Us ? Measures::tr("in") : Measures::tr("cm");
    }
}

double SpotMeasures::step(SpotMeasure measure) const
{
    if (is_length(measure)) {
        return words_.units() == Units::Us ? kInch : kCentimetre;
    }
    if (measure == Milder || measure == Spread) {
        return words_.fahrenheit() ? kFahrenheit : 1.0;
    }
    return measure == Passes ? kPercent : 1.0;
}

QString SpotMeasures::shown(SpotMeasure measure, double value) const
{
    return decimal_to_type(words_, value / step(measure), measure >= SummerLight ? 1 : 0);
}

std::optional<SpotMeasures::Typed> SpotMeasures::typed(SpotMeasure measure) const
{
    const QString written = draft_.of(measure).trimmed();
    const auto number = typed_decimal(written, {"cm", "in", "°C", "°F", "K", "°", "%", "mol"});
    if (!number) {
        return std::nullopt;
    }
    const auto ends = [&](const char* with) { return written.endsWith(QLatin1String(with), Qt::CaseInsensitive); };
    Typed read{*number, step(measure), unit(measure)};
    if (is_length(measure) && (ends("cm") || ends("in"))) {
        read.step = ends("cm") ? kCentimetre : kInch;
        read.unit = ends("cm") ? Measures::tr("cm") : Measures::tr("in");
    }
    if ((measure == Milder || measure == Spread) && (ends("C") || ends("F") || ends("K"))) {
        read.step = ends("F") ? kFahrenheit : 1.0;
        read.unit = ends("F") ? QStringLiteral("°F") : QStringLiteral("°C");
    }
    read.value *= read.step;
    return read;
}

bool SpotMeasures::window_as_it_was() const
{
    return draft_.base && draft_.base->view && draft_.kind == draft_.base->kind && draft_.facing == draft_.base_facing;
}

std::optional<double> SpotMeasures::base(SpotMeasure measure) const
{
    if (!draft_.base) {
        return std::nullopt;
    }
    const auto& spot = *draft_.base;
    if (measure < SummerLight) {
        return window_as_it_was() ? std::optional{figure_of(spot.view->figures(), measure)} : std::nullopt;
    }
    if (draft_.kind != spot.kind) {
        return std::nullopt;
    }
    switch (measure) {
    case SummerLight:
        return spot.view ? std::nullopt : std::optional{spot.light_in_summer.moles()};
    case WinterLight:
        return spot.view ? std::nullopt : std::optional{spot.light_in_winter.moles()};
    case Milder:
        return spot.offset.mean.kelvins();
    default:
        return spot.offset.spread.kelvins();
    }
}

std::optional<double> SpotMeasures::usual(SpotMeasure measure) const
{
    if (measure == SummerLight || measure == WinterLight) {
        return std::nullopt; // What the window gives.
    }
    if (measure == Milder) {
        return home::prior_offset(draft_.kind).mean.kelvins();
    }
    if (measure == Spread) {
        return home::prior_offset(draft_.kind).spread.kelvins();
    }
    return figure_of(home::usual_view(draft_.kind, side_of(draft_)), measure);
}

QString SpotMeasures::kept(SpotMeasure measure) const
{
    const auto was = base(measure);
    return asked(measure) && was && was != usual(measure) ? shown(measure, *was) : QString{};
}

std::optional<double> SpotMeasures::value(SpotMeasure measure) const
{
    if (!asked(measure) || draft_.of(measure).trimmed().isEmpty()) {
        return std::nullopt;
    }
    // A figure that was not touched keeps what the rounding on screen does not show.
    if (const auto was = base(measure); was && draft_.of(measure) == shown(measure, *was)) {
        return was;
    }
    const auto read = typed(measure);
    return read ? std::optional{read->value} : std::nullopt;
}

QString SpotMeasures::trouble(SpotMeasure measure) const
{
    if (!asked(measure)) {
        return {};
    }
    const bool light = measure == SummerLight || measure == WinterLight;
    const QString written = draft_.of(measure).trimmed();
    if (written.isEmpty()) {
        const auto other = measure == SummerLight ? WinterLight : SummerLight;
        return light && !draft_.of(other).trimmed().isEmpty() ? Measures::tr("Write both figures of light, or none.") : QString{};
    }
    if (const auto was = base(measure); was && draft_.of(measure) == shown(measure, *was)) {
        return {};
    }
    const auto read = typed(measure);
    if (!read) {
        return light ? Measures::tr("“%1” is not a number; leave both fields blank for the light of the window.").arg(written)
                     : Measures::tr("“%1” is not a number; leave the field blank for the usual figure.").arg(written);
    }
    if (measure == Panes && read->value != std::floor(read->value)) {
        return Measures::tr("Panes are counted in whole numbers.");
    }
    const auto limits = limits_of(measure);
    constexpr double kRounding = 1e-9;
    if (read->value >= limits.least - kRounding && read->value <= limits.most + kRounding) {
        return {};
    }
    const int decimals = measure >= Milder ? 1 : 0;
    const double fine = decimals > 0 ? 10.0 : 1.0;
    const QString least = words_.decimal(std::ceil(fine * (limits.least / read->step - kRounding)) / fine, decimals);
    const QString most = words_.decimal(std::floor(fine * (limits.most / read->step + kRounding)) / fine, decimals);
    return read->unit.isEmpty() ? Measures::tr("This lies from %1 to %2.").arg(least, most)
                                : Measures::tr("This lies from %1 to %2 %3.").arg(least, most, read->unit);
}

QString SpotMeasures::first_trouble() const
{
    for (std::size_t at = 0; at < kSpotMeasures; ++at) {
        if (QString wrong = trouble(static_cast<SpotMeasure>(at)); !wrong.isEmpty()) {
            return Measures::tr("%1: %2").arg(label(static_cast<SpotMeasure>(at)), wrong);
        }
    }
    return {};
}

std::vector<SheetRows::Row> SpotMeasures::rows(MeasuresOf part) const
{
    const auto [first, last] = part == MeasuresOf::Window  ? std::pair{Width, Passes}
                               : part == MeasuresOf::Light ? std::pair{SummerLight, WinterLight}
                                                           : std::pair{Milder, Spread};
    std::vector<SheetRows::Row> rows;
    for (auto at = static_cast<int>(first); at <= static_cast<int>(last); ++at) {
        const auto measure = static_cast<SpotMeasure>(at);
        if (asked(measure)) {
            const auto usual_one = usual(measure);
            rows.push_back({at, label(measure), unit(measure), usual_one ? shown(measure, *usual_one) : QString{}, draft_.of(measure),
                            note(measure), trouble(measure)});
        }
    }
    return rows;
}

std::optional<sky::SpotFigures> SpotMeasures::figures() const
{
    auto figures = home::usual_view(draft_.kind, side_of(draft_));
    bool any = window_as_it_was();
    if (any) {
        figures.facing = draft_.base->view->figures().facing; // Finer than the eight directions.
    }
    for (std::size_t at = 0; at <= static_cast<std::size_t>(Passes); ++at) {
        const auto measure = static_cast<SpotMeasure>(at);
        if (!asked(measure) && any) { // Not shown, so not touched.
            put(figures, measure, figure_of(draft_.base->view->figures(), measure));
        }
    }
    for (std::size_t at = 0; at <= static_cast<std::size_t>(Passes); ++at) {
        const auto measure = static_cast<SpotMeasure>(at);
        if (const auto given = value(measure)) {
            const auto limits = limits_of(measure);
            put(figures, measure, std::clamp(*given, limits.least, limits.most)); // Off by the rounding of units at most.
            any = true;
        }
    }
    return any ? std::optional{figures} : std::nullopt;
}

std::optional<climate::NightOffset> SpotMeasures::offset() const
{
    const auto mean = value(Milder);
    const auto spread = value(Spread);
    if (!mean && !spread) {
        return std::nullopt;
    }
    auto offset = home::prior_offset(draft_.kind);
    offset.mean = mean ? KelvinDelta::from_kelvins(*mean) : offset.mean;
    offset.spread = spread ? KelvinDelta::from_kelvins(*spread) : offset.spread;
    return offset;
}

std::optional<DailyLight> SpotMeasures::light(SpotMeasure measure) const
{
    const auto moles = value(measure);
    return moles ? std::optional{DailyLight::from_moles(*moles)} : std::nullopt;
}

} // namespace lathhouse::models
