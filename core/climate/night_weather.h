#pragma once

#include <optional>

namespace lathhouse::climate {

enum class Sky { Clear, Cloudy };
enum class Wind { Calm, Windy };

/// What is known of a night's sky and wind.
struct NightWeather {
    std::optional<Sky> sky = {};
    std::optional<Wind> wind = {};
    friend constexpr bool operator==(const NightWeather&, const NightWeather&) = default;
};

/// The kinds of night that shelter treats differently: on a clear calm night the ground loses heat to the
/// sky and a roof keeps it in; on others the air is mixed or the cloud does what the roof would.
enum class NightKind { Unknown, ClearCalm, Other };

/// Clear and calm only where both are said; cloud or wind alone makes it another night.
constexpr NightKind kind_of(NightWeather weather)
{
    if (weather.sky == Sky::Cloudy || weather.wind == Wind::Windy) {
        return NightKind::Other;
    }
    return weather.sky && weather.wind ? NightKind::ClearCalm : NightKind::Unknown;
}

} // namespace lathhouse::climate
