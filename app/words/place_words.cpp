#include "app/words/place_words.h"

#include "app/words/words.h"

#include <cmath>

namespace lathhouse::words {
namespace {

std::string degrees(double value, const char* positive, const char* negative)
{
    return number(std::abs(value), 3) + "\u00b0\u00a0" + (value < 0.0 ? negative : positive);
}

} // namespace

std::string position(Position position)
{
    return degrees(position.latitude.degrees(), "N", "S") + ", " +
           degrees(position.longitude.degrees(), "E", "W");
}

} // namespace lathhouse::words
