#pragma once

#include "core/base/result.h"
#include "core/units/volume.h"

#include <string>
#include <string_view>

namespace lathhouse::home {

/// A jug, can or bottle of the household that water is measured with.
struct Jug {
    std::string name;
    Litres volume;
    friend bool operator==(const Jug&, const Jug&) = default;
};

/// A jug with a name that can be told from an amount: 1 to 40 bytes of UTF-8, the first a letter, without digits and
/// slashes. Whether it is the name of a measure is for whoever asks (plan::is_measure). Errors: OutOfRange with what to
/// do.
Result<Jug> make_jug(std::string_view name, Litres volume);

} // namespace lathhouse::home
