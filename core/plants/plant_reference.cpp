#include "core/plants/plant_kind.h"

#include "core/base/straight_apostrophes.h"
#include "core/plants/near_names.h"
#include "core/plants/row_reader.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace lathhouse::plants {

// The two tables as the build has embedded them.
std::string_view embedded_plants();
std::string_view embedded_sources();

namespace {

constexpr std::array<std::pair<std::string_view, LightClass>, 4> kLightWords{
    {{"low", LightClass::Low},
     {"medium", LightClass::Medium},
     {"high", LightClass::High},
     {"very_high", LightClass::VeryHigh}}};
constexpr std::array<std::pair<std::string_view, FeedClass>, 4> kFeedWords{{{"none", FeedClass::None},
                                                                            {"light", FeedClass::Light},
                                                                            {"medium", FeedClass::Medium},
                                                                            {"heavy", FeedClass::Heavy}}};
constexpr std::array<std::pair<std::string_view, Toxicity>, 5> kToxicityWords{
    {{"none", Toxicity::NotKnownToBe},
     {"irritant", Toxicity::Irritant},
     {"low", Toxicity::Low},
     {"toxic", Toxicity::Toxic},
     {"deadly", Toxicity::Deadly}}};
constexpr std::array<std::pair<std::string_view, Evidence>, 5> kEvidenceWords{
    {{"published_number", Evidence::PublishedNumber},
     {"published_test", Evidence::PublishedTest},
     {"published_group_figure", Evidence::PublishedGroupFigure},
     {"published_rating", Evidence::PublishedRating},
     {"memory", Evidence::Memory}}};
constexpr std::array<std::pair<std::string_view, bool>, 2> kYesAndNo{{{"no", false}, {"yes", true}}};
constexpr std::array<std::string_view, 3> kDryingClasses{"keep_moist", "top_inch", "dry_right_out"};

PlantKind read_kind(RowReader& row)
{
    PlantKind kind{
        .botanical_name = row.filled("botanical_name"),
        .common_names = names_in(row.filled("common_names")),
        .family = row.filled("family"),
        .group = row.filled("group"),
        .lines = {.safe_night = row.degrees("safe_night_c"),
                  .damage_begins = row.degrees("damage_begins_c"),
                  .lethal = row.degrees("lethal_c")},
        .comfort_low = row.degrees("comfort_low_c"),
        .comfort_high = row.degrees("comfort_high_c"),
        .heat_limit = row.degrees("heat_limit_c"),
        .light = row.word<LightClass>("light_class", kLightWords),
        .light_to_survive = row.light("light_survive_mol"),
        .light_to_thrive = row.light("light_thrive_mol"),
        .drying_class = row.one_of("drying_class", kDryingClasses),
        .must_dry = false,
        .growth_season = row.filled("growth_season"),
        .rest = row.text("rest"),
        .photoperiod = row.text("photoperiod"),
        .feed = row.word<FeedClass>("feed_class", kFeedWords),
        .feed_nitrogen_ppm = row.range("feed_nitrogen_ppm"),
        .repot_years = row.range("repot_years"),
        .to_people = row.word<Toxicity>("toxic_to_people", kToxicityWords),
        .to_pets = row.word<Toxicity>("toxic_to_pets", kToxicityWords),
        .hazards = row.text("hazards"),
        .sulks = row.word<bool>("sulks", kYesAndNo),
        .cold_evidence = row.word<Evidence>("cold_evidence", kEvidenceWords),
        .confidence = row.one_of("confidence", kConfidences),
        .sources = row.filled("sources"),
        .note = row.text("note"),
    };
    kind.must_dry = kind.drying_class == "dry_right_out";
    if (!(kind.lines.lethal <= kind.lines.damage_begins &&
          kind.lines.damage_begins <= kind.lines.safe_night)) {
        row.fail_at("the cold lines must rise from lethal over damage to the safe night");
    }
    if (!(kind.comfort_low < kind.comfort_high && kind.comfort_high < kind.heat_limit)) {
        row.fail_at("the warm lines must rise from comfort to the heat limit");
    }
    if (!(kind.light_to_survive.moles() > 0.0 && kind.light_to_survive < kind.light_to_thrive)) {
        row.fail_at("the light to survive must be above 0 and below the light to thrive");
    }
    return kind;
}

} // namespace

std::string_view to_string(LightClass light)
{
    return word_of<LightClass>(kLightWords, light);
}
std::string_view to_string(FeedClass feed)
{
    return word_of<FeedClass>(kFeedWords, feed);
}
std::string_view to_string(Toxicity toxicity)
{
    return word_of<Toxicity>(kToxicityWords, toxicity);
}
std::string_view to_string(Evidence evidence)
{
    return word_of<Evidence>(kEvidenceWords, evidence);
}

Result<PlantReference> PlantReference::parse(std::string_view plants_csv, std::string_view sources_csv)
{
    const auto source_table = CsvTable::parse(sources_csv, "sources.csv");
    if (!source_table) {
        return source_table.error();
    }
    const auto plant_table = CsvTable::parse(plants_csv, "plants.csv");
    if (!plant_table) {
        return plant_table.error();
    }
    PlantReference reference;
    for (std::size_t index = 0; index < source_table->row_count(); ++index) {
        RowReader row{*source_table, index};
        Source source{row.filled("key"), row.filled("title"), row.text("publisher"), {}};
        if (const auto year = row.text("year"); !year.empty()) {
            source.year = parse_integer(year);
            if (!source.year) {
                row.fail_at("the year must be a whole number, not \"" + year + "\"");
            }
        }
        if (reference.source(source.key) != nullptr) {
            row.fail_at("the key " + source.key + " is given twice");
        }
        if (const auto outcome = row.outcome(); !outcome) {
            return outcome.error();
        }
        reference.sources_.push_back(std::move(source));
    }
    for (std::size_t index = 0; index < plant_table->row_count(); ++index) {
        RowReader row{*plant_table, index};
        auto kind = read_kind(row);
        for (const auto& key : names_in(kind.sources)) {
            if (reference.source(key) == nullptr) {
                row.fail_at("the source " + key + " is not in sources.csv");
            }
        }
        if (!reference.by_name_.emplace(lower_case(kind.botanical_name), index).second) {
            row.fail_at("the name " + kind.botanical_name + " is given twice");
        }
        for (const auto& name : kind.common_names) {
            if (!reference.by_name_.emplace(lower_case(name), index).second) {
                row.fail_at("the name " + name + " is given twice");
            }
        }
        if (const auto outcome = row.outcome(); !outcome) {
            return outcome.error();
        }
        reference.kinds_.push_back(std::move(kind));
    }
    return reference;
}

const PlantReference& PlantReference::built_in()
{
    static const PlantReference reference = [] {
        auto parsed = parse(embedded_plants(), embedded_sources());
        if (!parsed) {
            std::abort(); // A fault of the build; a test parses the same bytes.
        }
        return std::move(parsed).value();
    }();
    return reference;
}

const Source* PlantReference::source(std::string_view key) const
{
    const auto found = std::ranges::find(sources_, key, &Source::key);
    return found == sources_.end() ? nullptr : &*found;
}

std::vector<std::string> PlantReference::near_names(std::string_view name, std::size_t count) const
{
    std::vector<std::string_view> candidates;
    for (const auto& kind : kinds_) {
        candidates.push_back(kind.botanical_name);
        candidates.insert(candidates.end(), kind.common_names.begin(), kind.common_names.end());
    }
    return nearest_names(name, candidates, count);
}

Result<const PlantKind*> PlantReference::find(std::string_view name) const
{
    const auto found = by_name_.find(lower_case(straight_apostrophes(trimmed(name))));
    if (found != by_name_.end()) {
        return &kinds_[found->second];
    }
    const auto near = near_names(name, 3);
    return Error{ErrorCode::NotFound,
                 near.empty()
                     ? said("no plant named \"%1\" in the reference; give a common or botanical name", trimmed(name))
                     : said("no plant named \"%1\" in the reference; did you mean %2", trimmed(name), any_of(near))};
}

} // namespace lathhouse::plants
