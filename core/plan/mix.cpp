#include "core/plan/mix.h"

#include "core/base/parse.h"
#include "core/plan/growing_rules.h"

#include <array>

namespace lathhouse::plan {
namespace {

constexpr double kMillilitresOfADrop = 0.05; // 20 drops a millilitre: common practice, no source.

/// "0.5", "1", "150".
std::string plain(double value)
{
    auto text = std::to_string(value);
    text.erase(text.find_last_not_of('0') + 1);
    return text.ends_with('.') ? text.substr(0, text.size() - 1) : text;
}

} // namespace

Result<FeedLabel> read_feed_label(std::string_view text)
{
    const auto parts = split(text, '-');
    std::array<double, 3> shares{};
    bool numbers = parts.size() == shares.size();
    for (std::size_t at = 0; numbers && at < shares.size(); ++at) {
        const auto number = parse_number(parts[at]);
        numbers = number.has_value();
        shares[at] = number.value_or(0.0);
    }
    if (!numbers) {
        return Error{
            ErrorCode::Malformed,
            said("\"%1\" is no feed; write the three numbers of its label, such as 20-10-20", text.substr(0, 40))};
    }
    const FeedLabel label{shares[0], shares[1], shares[2]};
    if (!(shares[0] > 0.0)) {
        return Error{ErrorCode::OutOfRange,
                     said("the feed %1 holds no nitrogen, so it cannot be measured by it; follow its label", text)};
    }
    if (shares[1] < 0.0 || shares[2] < 0.0 || shares[0] + shares[1] + shares[2] > 100.0) {
        return Error{ErrorCode::OutOfRange,
                     said("the shares of the feed %1 must be 0 or more and at most 100 together", text)};
    }
    return label;
}

Result<Mix> feed_mix(const FeedLabel& label, double nitrogen_ppm, Litres water, FeedForm form,
                     std::optional<double> density)
{
    if (!(nitrogen_ppm >= 1.0 && nitrogen_ppm <= 2000.0)) {
        return Error{ErrorCode::OutOfRange,
                     said("the nitrogen must lie within 1 and 2000 ppm; pots at home get 50 to 250")};
    }
    if (density && !(*density >= 0.2 && *density <= 3.0)) {
        return Error{ErrorCode::OutOfRange, said("the density must lie within 0.2 and 3 grams a millilitre")};
    }
    Mix mix;
    const double grams_a_litre = nitrogen_ppm / (10.0 * label.nitrogen_percent);
    mix.grams = grams_a_litre * water.litres();
    mix.phosphorus_ppm = 10.0 * grams_a_litre * label.phosphorus_percent();
    mix.potassium_ppm = 10.0 * grams_a_litre * label.potassium_percent();
    if (density) {
        mix.volume = Litres::from_millilitres(*mix.grams / *density);
        if (form == FeedForm::Liquid) {
            mix.drops_about = mix.volume->millilitres() / kMillilitresOfADrop;
        }
    } else {
        // LSU AgCenter, ounces per pint of material: 0.78 to 1.38 g/ml among common dry fertilisers.
        mix.warnings.emplace_back(
            form == FeedForm::Liquid
                ? "without the liquid's density (on its label, g/ml) only its weight is known"
                : "spoons of powder weigh 3.8 to 6.8 g by kind: weigh it, or give its density");
    }
    if (nitrogen_ppm > growing_figure("feed_greenhouse_ppm")) {
        mix.warnings.emplace_back(
            "more than 250 ppm of nitrogen is above what greenhouses give at every watering; "
            "pots at home get half of 150 to 250 or less");
    }
    return mix;
}

std::optional<plants::Range> usual_nitrogen(plants::FeedClass feed)
{
    for (const auto& kind : plants::PlantReference::built_in().kinds()) {
        if (kind.feed == feed && kind.feed_nitrogen_ppm.high > 0.0) {
            return kind.feed_nitrogen_ppm; // A test makes sure that the kinds of a class agree.
        }
    }
    return std::nullopt;
}

std::optional<std::string> nitrogen_warning(plants::FeedClass feed, double nitrogen_ppm)
{
    const auto usual = usual_nitrogen(feed);
    if (!usual) {
        return "a plant of a kind that takes no feed needs none of it";
    }
    const auto range = plain(usual->low) + " to " + plain(usual->high) + " ppm";
    const std::string of_class{to_string(feed)};
    if (nitrogen_ppm > usual->high) {
        return plain(nitrogen_ppm) + " ppm is too strong for a " + of_class + " feeder, which gets " + range;
    }
    if (nitrogen_ppm < usual->low * growing_figure("feed_home_share")) {
        return plain(nitrogen_ppm) + " ppm is weak for a " + of_class + " feeder, which gets " + range +
               "; in a dim room half of that is right";
    }
    return std::nullopt;
}

Result<Mix> percent_mix(double percent, Litres water, SprayStuff stuff)
{
    if (!(percent > 0.0 && percent <= 20.0)) {
        return Error{ErrorCode::OutOfRange, said("the mix must be above 0 and at most 20 percent of the water; oils "
                                                 "and soaps for leaves are mixed at 0.5 to 2")};
    }
    Mix mix;
    mix.volume = water * (percent / 100.0);
    mix.drops_about = mix.volume->millilitres() / kMillilitresOfADrop;
    const auto* usual =
        GrowingRules::built_in().find(stuff == SprayStuff::Soap ? "soap_percent" : "neem_percent");
    const auto range = plain(*usual->low) + " to " + plain(*usual->high) + " percent";
    if (percent > growing_figure("oil_percent_most")) {
        mix.warnings.emplace_back(
            "more than 2 percent burns leaves of many plants; the label's strength counts");
    } else if (stuff != SprayStuff::Other && percent > *usual->high) {
        mix.warnings.push_back("stronger than usual, which is " + range + "; the label's strength counts");
    } else if (stuff != SprayStuff::Other && percent < *usual->low) {
        mix.warnings.push_back("weaker than usual, which is " + range +
                               ", so it may do nothing; the label's strength counts");
    }
    return mix;
}

} // namespace lathhouse::plan
