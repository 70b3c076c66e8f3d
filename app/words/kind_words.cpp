#include "app/words/kind_words.h"

#include "app/words/phrase.h"
#include "core/base/parse.h"

#include <algorithm>
#include <array>

namespace lathhouse::words {
namespace {

std::string no_source()
{
    return phrase("common practice, no source");
}

/// Keys of the sources that are lists of poisonous or of harmless plants.
constexpr std::array<std::string_view, 13> kToxicityLists{"ASPCA",   "ASPCAL",  "TXTOX",  "PENNTOX", "ORTOX",
                                                          "AERTOX",  "UNLTOX",  "TTSAFE", "MBGSAFE", "NDSAFE",
                                                          "EMSATOX", "PASSTOX", "ANPATH"};

std::vector<std::string_view> keys_of(const plants::PlantKind& kind)
{
    std::vector<std::string_view> keys;
    for (const auto piece : split(kind.sources, ';')) {
        keys.push_back(trimmed(piece));
    }
    return keys;
}

} // namespace

bool is_common_practice(const plants::PlantKind& kind)
{
    return std::ranges::all_of(keys_of(kind),
                               [](std::string_view key) { return key == plants::kCommonPractice; });
}

std::string rests_on(plants::Evidence evidence)
{
    switch (evidence) {
    case plants::Evidence::PublishedNumber:
        return phrase("a figure published for this plant; the other lines may be common practice");
    case plants::Evidence::PublishedTest:
        return phrase("a published cold-store test; the lines are read from it");
    case plants::Evidence::PublishedGroupFigure:
        return phrase("a figure or a list published for its group or genus, not for the plant itself");
    case plants::Evidence::PublishedRating:
        return phrase("a published hardiness class or growth floor; damage and lethal line are common practice");
    case plants::Evidence::Memory:
        break;
    }
    return no_source();
}

std::string rests_on_row(const plants::PlantKind& kind)
{
    return is_common_practice(kind) ? no_source() : phrase("its sources or common practice; not recorded which");
}

std::string toxicity(plants::Toxicity toxicity)
{
    switch (toxicity) {
    case plants::Toxicity::NotKnownToBe:
        return "not known to be poisonous, which is no proof";
    case plants::Toxicity::Irritant:
        return "irritates";
    case plants::Toxicity::Low:
        return "slightly poisonous";
    case plants::Toxicity::Toxic:
        return "poisonous";
    case plants::Toxicity::Deadly:
        break;
    }
    return "deadly";
}

std::string toxicity_rests_on(const plants::PlantKind& kind)
{
    const bool listed = std::ranges::any_of(keys_of(kind), [](std::string_view key) {
        return std::ranges::find(kToxicityLists, key) != kToxicityLists.end();
    });
    return listed ? phrase("a list of plants among its sources, and common practice") : no_source();
}

std::string light_class(plants::LightClass light)
{
    switch (light) {
    case plants::LightClass::Low:
        return phrase("dim");
    case plants::LightClass::Medium:
        return phrase("medium");
    case plants::LightClass::High:
        return phrase("bright, without direct sun");
    case plants::LightClass::VeryHigh:
        break;
    }
    return phrase("four hours of direct sun or more");
}

std::string drying_class(std::string_view word)
{
    if (word == "keep_moist") {
        return phrase("keep moist");
    }
    return word == "top_inch" ? phrase("let the top 2 to 3 cm, about an inch, dry") : phrase("let it dry right out");
}

std::string source_line(const plants::Source& source)
{
    if (source.key == plants::kCommonPractice) {
        return no_source();
    }
    return source.title + (source.publisher.empty() ? "" : ", " + source.publisher) +
           (source.year ? ", " + std::to_string(*source.year) : "");
}

} // namespace lathhouse::words
