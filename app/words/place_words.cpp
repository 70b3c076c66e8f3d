#include "app/words/place_words.h"

#include "app/words/phrase.h"
#include "app/words/words.h"

#include <cmath>

namespace lathhouse::words {
namespace {

std::string degrees(double value, const std::string& positive, const std::string& negative)
{
    return number(std::abs(value), 3) + "\u00b0\u00a0" + (value < 0.0 ? negative : positive);
}

} // namespace

std::string position(Position position)
{
    return degrees(position.latitude.degrees(), phrase("N"), phrase("S")) + ", " +
           degrees(position.longitude.degrees(), phrase("E"), phrase("W"));
}

} // namespace lathhouse::words
