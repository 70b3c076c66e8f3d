#include "core/plants/plant_kind.h"

#include "core/base/csv.h"
#include "core/base/edit_distance.h"
#include "core/base/parse.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <utility>

namespace lathhouse::plants {

// The two tables as the build has embedded them.
std::string_view embedded_plants();
std::string_view embedded_sources();

namespace {

template <class Value>
using Words = std::span<const std::pair<std::string_view, Value>>;

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
constexpr std::array<std::string_view, 3> kConfidences{"high", "medium", "low"};

template <class Value>
std::string_view word_of(Words<Value> words, Value value)
{
    const auto found = std::ranges::find(words, value, &std::pair<std::string_view, Value>::second);
    return found == words.end() ? std::string_view{} : found->first;
}

/// Reads the cells of one row and keeps the first thing that was wrong, so that a row is read in one go and
/// asked once whether it was well formed.
class RowReader {
public:
    RowReader(const CsvTable& table, std::size_t row) : table_(&table), row_(row) {}

    std::string text(std::string_view column)
    {
        const auto index = table_->require_column(column);
        if (!index) {
            fail(index.error());
            return {};
        }
        return std::string{trimmed(table_->at(row_, *index))};
    }
    std::string filled(std::string_view column)
    {
        auto found = text(column);
        if (found.empty()) {
            fail_at(std::string{column} + " is blank");
        }
        return found;
    }
    double number(std::string_view column)
    {
        const auto written = filled(column);
        const auto value = parse_number(written);
        if (!value) {
            fail_at(std::string{column} + " must be a number, not \"" + written + "\"");
        }
        return value.value_or(0.0);
    }
    Celsius degrees(std::string_view column) { return Celsius::from_degrees(number(column)); }
    DailyLight light(std::string_view column) { return DailyLight::from_moles(number(column)); }
    /// "2" or "1-2".
    Range range(std::string_view column)
    {
        const auto written = filled(column);
        const auto ends = split(written, '-');
        const auto low = parse_number(ends.front());
        const auto high = parse_number(ends.back());
        if (ends.size() > 2 || !low || !high || *low < 0.0 || *high < *low) {
            fail_at(std::string{column} + " must be a number or two with a hyphen, not \"" + written + "\"");
            return {0.0, 0.0};
        }
        return {*low, *high};
    }
    template <class Value>
    Value word(std::string_view column, Words<Value> words)
    {
        const auto written = text(column);
        for (const auto& [name, value] : words) {
            if (name == written) {
                return value;
            }
        }
        fail_at("the word \"" + written + "\" is not known in " + std::string{column});
        return words.front().second;
    }
    std::string one_of(std::string_view column, std::span<const std::string_view> known)
    {
        auto written = text(column);
        if (std::ranges::find(known, written) == known.end()) {
            fail_at("the word \"" + written + "\" is not known in " + std::string{column});
        }
        return written;
    }
    void fail_at(std::string_view what) { fail(table_->error_at(row_, what)); }
    const std::optional<Error>& error() const { return error_; }

private:
    void fail(Error error)
    {
        if (!error_) {
            error_ = std::move(error);
        }
    }
    const CsvTable* table_;
    std::size_t row_;
    std::optional<Error> error_;
};

std::vector<std::string> names_in(std::string_view text)
{
    std::vector<std::string> names;
    for (const auto piece : split(text, ';')) {
        if (const auto name = trimmed(piece); !name.empty()) {
            names.emplace_back(name);
        }
    }
    return names;
}

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
        if (row.error()) {
            return *row.error();
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
        if (row.error()) {
            return *row.error();
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
    struct Near {
        std::size_t changes;
        std::string_view shown;
    };
    const auto wanted = lower_case(trimmed(name));
    std::vector<Near> near;
    const auto consider = [&](std::string_view candidate) {
        const auto changes = edit_distance(wanted, lower_case(candidate));
        if (changes * 3 <= std::max(wanted.size(), candidate.size())) {
            near.push_back({changes, candidate});
        }
    };
    for (const auto& kind : kinds_) {
        consider(kind.botanical_name);
        for (const auto& common : kind.common_names) {
            consider(common);
        }
    }
    std::ranges::sort(near, [](const Near& a, const Near& b) {
        return a.changes != b.changes ? a.changes < b.changes : a.shown < b.shown;
    });
    std::vector<std::string> names;
    for (const auto& candidate : near) {
        if (names.size() == count) {
            break;
        }
        names.emplace_back(candidate.shown);
    }
    return names;
}

Result<const PlantKind*> PlantReference::find(std::string_view name) const
{
    const auto found = by_name_.find(lower_case(trimmed(name)));
    if (found != by_name_.end()) {
        return &kinds_[found->second];
    }
    std::string message = "no plant named \"" + std::string{trimmed(name)} + "\" in the reference";
    const auto near = near_names(name, 3);
    if (near.empty()) {
        message += "; give a common or botanical name";
    } else {
        message += "; did you mean ";
        for (std::size_t index = 0; index < near.size(); ++index) {
            message += (index == 0 ? "" : index + 1 == near.size() ? " or " : ", ") + near[index];
        }
    }
    return Error{ErrorCode::NotFound, std::move(message)};
}

} // namespace lathhouse::plants
