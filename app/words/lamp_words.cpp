#include "app/words/lamp_words.h"

#include "app/words/phrase.h"
#include "core/units/light_source.h"

namespace lathhouse::words {

std::string lamp_caution()
{
    return phrase("Hang lamps so that water and wet hands stay away from them and from the plug, off damp floors and on a socket with a "
                  "residual current device; a lamp that gets hot keeps its distance from leaves and curtains.");
}

std::string lamp_burns_too_long()
{
    return phrase("Beyond %1 h a day most plants lack their dark hours: hang the lamp nearer or take a stronger one.",
                  std::to_string(static_cast<int>(kLongestLampDay)));
}

} // namespace lathhouse::words
