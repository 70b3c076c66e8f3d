#include "app/cli/light_conversion.h"

#include "core/units/light_meter.h"

namespace lathhouse::cli {

void add_conversion_options(CLI::App& command, ConversionOptions& options)
{
    command.add_option("--foot-candles", options.foot_candles, "Reading of a meter in daylight, to convert")
        ->type_name("FC");
    command.add_option("--mol", options.moles, "A day's light, to convert")->type_name("MOL");
    command.add_option("--hours", options.hours, "Hours of the reading (default: 8)")->type_name("H");
}

bool asks_for_conversion(const ConversionOptions& options)
{
    return options.foot_candles || options.moles;
}

Result<Answer> converted(const ConversionOptions& options)
{
    if (options.foot_candles && options.moles) {
        return Error{ErrorCode::WrongUsage,
                     "give either --foot-candles or --mol; each is turned into the other"};
    }
    if (!(options.hours > 0.0 && options.hours <= 24.0)) {
        return Error{ErrorCode::OutOfRange, "--hours must be above 0 and at most 24"};
    }
    const double given = options.foot_candles.value_or(options.moles.value_or(0.0));
    if (!(given >= 0.0 && given <= 100000.0)) {
        return Error{ErrorCode::OutOfRange, "light to convert must lie within 0 and 100000"};
    }
    const auto flux = options.foot_candles ? PhotonFlux::from_daylight_foot_candles(given)
                                           : even_light_of(DailyLight::from_moles(given), options.hours);
    const auto moles = daily_light_of(flux, options.hours);
    return Answer{{{"foot_candles", json_number(flux.daylight_foot_candles())},
                   {"lux", json_number(flux.daylight_lux())},
                   {"micromoles", json_number(flux.micromoles())},
                   {"hours", json_number(options.hours)},
                   {"daily_light_mol", json_number(moles.moles())}},
                  words::number(flux.daylight_foot_candles(), 0) + " foot-candles (" +
                      words::number(flux.daylight_lux(), 0) + " lux) of daylight are " +
                      words::number(flux.micromoles(), 0) + " µmol per m² and s; over " +
                      words::number(options.hours, 1) + " h they make " + words::number(moles.moles(), 2) +
                      " mol per m² and day.\nIn daylight 54 lux are 1 µmol per m² and s; under lamps it is "
                      "another figure.\n",
                  {}};
}

} // namespace lathhouse::cli
