#include "core/climate/frost_dates.h"

namespace lathhouse::climate {

std::vector<double> standard_percents()
{
    return {10.0, 20.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0};
}

} // namespace lathhouse::climate
