#pragma once

#include <boost/math/policies/policy.hpp>

namespace lathhouse {

/// Has Boost compute distributions in double alone. By itself it goes over to long double, for which it sets up tables
/// whenever the program starts; where long double is no wider than double, as under valgrind, that ends the program.
/// What is lost is in the sixteenth digit.
using InDoubles = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

} // namespace lathhouse
