#pragma once

#include "app/words/words.h"
#include "core/home/jug.h"
#include "core/plan/conductivity.h"
#include "core/plan/mix.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lathhouse::words {

/// "½", "1½", "less than ⅛": as spoons and cups come, of `count` of them.
std::string fraction(double count);
/// "½ teaspoon", "1½ tablespoons".
std::string spoonful(Litres volume);

/// A feed as a grower has it.
struct FeedAtHand {
    std::string name; ///< The three numbers, as the label has them.
    plan::FeedForm form = plan::FeedForm::Powder;
};

/// "2.5 g of 20-10-20, about ½ teaspoon, into 2 L of water", in US measures "about ½ teaspoon (2.5 g) of ...", without a
/// full stop. Where one of `spoons` holds it in halves or more, that one is named: "1½ × coffee spoon".
/// water: in words, "2 L" or "1.5 L (blue can)".
std::string feed_dose(const plan::Mix& mix, const FeedAtHand& feed, const std::string& water,
                      std::span<const home::Jug> spoons, UnitSystem units);
/// Oil or soap: "10 ml, about 2 teaspoons, into 2 L of water".
std::string spray_dose(const plan::Mix& mix, const std::string& water, UnitSystem units);

/// "Makes 100 ppm nitrogen, 22 ppm phosphorus, 83 ppm potassium."
std::string feed_makes(const plan::Mix& mix, double nitrogen_ppm);
/// What a meter shows of it, one sentence.
std::string feed_on_a_meter(const plan::ConductivityHint& hint);

/// What is outside of what is usual, and what is not known; sentences.
std::vector<std::string> feed_warnings(const plan::Mix& mix, plan::FeedForm form, double nitrogen_ppm,
                                       std::optional<plants::FeedClass> feeder);
std::vector<std::string> spray_warnings(double percent, plan::SprayStuff stuff);

/// The cautions that belong to a feed or a spray, label first.
std::vector<std::string> feed_cautions();
std::vector<std::string> spray_cautions(plan::SprayStuff stuff);

} // namespace lathhouse::words
