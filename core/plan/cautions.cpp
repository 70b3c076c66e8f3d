#include "core/plan/cautions.h"

#include "core/base/csv.h"
#include "core/base/parse.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <optional>
#include <utility>

namespace lathhouse::plan {

// The two tables as the build has embedded them.
std::string_view embedded_cautions();
std::string_view embedded_caution_sources();

namespace {

using Topic = CautionTopic;

constexpr std::array<std::pair<std::string_view, Topic>, 37> kTopicWords{{
    {"label", Topic::Label},
    {"homemade_mix", Topic::HomemadeMix},
    {"test_leaf", Topic::TestLeaf},
    {"soap", Topic::Soap},
    {"oil", Topic::Oil},
    {"neem", Topic::Neem},
    {"alcohol_wipe", Topic::AlcoholWipe},
    {"systemic_insecticide", Topic::SystemicInsecticide},
    {"spray_weather", Topic::SprayWeather},
    {"bees", Topic::Bees},
    {"ventilation", Topic::Ventilation},
    {"breathing", Topic::Breathing},
    {"child_or_animal", Topic::ChildOrAnimal},
    {"toxic_plant", Topic::ToxicPlant},
    {"true_lily", Topic::TrueLily},
    {"cycad", Topic::Cycad},
    {"oxalate", Topic::Oxalate},
    {"milky_sap", Topic::MilkySap},
    {"sap_in_sunlight", Topic::SapInSunlight},
    {"heart_and_nerve_poison", Topic::HeartAndNervePoison},
    {"spiny_plant", Topic::SpinyPlant},
    {"heavy_pot", Topic::HeavyPot},
    {"ladder_and_rail", Topic::LadderAndRail},
    {"weed_killer_drift", Topic::WeedKillerDrift},
    {"food_after_weed_killer", Topic::FoodAfterWeedKiller},
    {"leachate", Topic::Leachate},
    {"salty_water", Topic::SaltyWater},
    {"lamps_and_water", Topic::LampsAndWater},
    {"fertiliser_storage", Topic::FertiliserStorage},
    {"mix_dust", Topic::MixDust},
    {"frost_dates", Topic::FrostDates},
    {"forecast", Topic::Forecast},
    {"porch_offset", Topic::PorchOffset},
    {"late_damage", Topic::LateDamage},
    {"local_rules", Topic::LocalRules},
    {"moving_plants", Topic::MovingPlants},
    {"not_a_diagnosis", Topic::NotADiagnosis},
}};

constexpr auto kTopics = [] {
    std::array<Topic, kTopicWords.size()> topics{};
    std::ranges::transform(kTopicWords, topics.begin(), [](const auto& row) { return row.second; });
    return topics;
}();

std::optional<Topic> topic_of(std::string_view word)
{
    const auto found = std::ranges::find(kTopicWords, word, &std::pair<std::string_view, Topic>::first);
    return found == kTopicWords.end() ? std::nullopt : std::optional{found->second};
}

constexpr std::string_view kFamily = "family:";
constexpr std::string_view kGenus = "genus:";
constexpr std::string_view kHazard = "hazard:";
constexpr std::string_view kToxic = "toxic";

/// What stands after `prefix`; nullopt where `selector` does not begin with it or nothing follows.
std::optional<std::string_view> after(std::string_view selector, std::string_view prefix)
{
    return selector.starts_with(prefix) && selector.size() > prefix.size()
               ? std::optional{selector.substr(prefix.size())}
               : std::nullopt;
}

bool is_selector(std::string_view text)
{
    return text == kToxic || after(text, kFamily) || after(text, kGenus) || after(text, kHazard);
}

bool selects(std::string_view selector, const plants::PlantKind& kind)
{
    if (selector == kToxic) {
        return kind.to_people != plants::Toxicity::NotKnownToBe ||
               kind.to_pets != plants::Toxicity::NotKnownToBe;
    }
    if (const auto family = after(selector, kFamily)) {
        return kind.family == *family;
    }
    if (const auto genus = after(selector, kGenus)) {
        return split(kind.botanical_name, ' ').front() == *genus;
    }
    const auto hazard = after(selector, kHazard);
    return hazard && lower_case(kind.hazards).find(*hazard) != std::string::npos;
}

std::vector<std::string> pieces(std::string_view text)
{
    std::vector<std::string> found;
    for (const auto piece : split(text, ';')) {
        if (const auto word = trimmed(piece); !word.empty()) {
            found.emplace_back(word);
        }
    }
    return found;
}

/// The cells of one row by column name. `blank_allowed`: the columns that may be empty.
Result<std::vector<std::string>> cells_of(const CsvTable& table, std::size_t row,
                                          std::span<const std::string_view> columns,
                                          std::span<const std::string_view> blank_allowed)
{
    std::vector<std::string> cells;
    for (const auto column : columns) {
        const auto index = table.require_column(column);
        if (!index) {
            return index.error();
        }
        cells.emplace_back(trimmed(table.at(row, *index)));
        if (cells.back().empty() && std::ranges::find(blank_allowed, column) == blank_allowed.end()) {
            return table.error_at(row, Said{std::string{column} + " is blank"});
        }
    }
    return cells;
}

Result<plants::Source> read_source(const CsvTable& table, std::size_t row)
{
    constexpr std::array<std::string_view, 4> columns{"key", "title", "publisher", "year"};
    constexpr std::array<std::string_view, 2> blank_allowed{"publisher", "year"};
    const auto cells = cells_of(table, row, columns, blank_allowed);
    if (!cells) {
        return cells.error();
    }
    plants::Source source{(*cells)[0], (*cells)[1], (*cells)[2], parse_integer((*cells)[3])};
    if (!source.year && !(*cells)[3].empty()) {
        return table.error_at(row, Said{"the year must be a whole number, not \"" + (*cells)[3] + "\""});
    }
    return source;
}

Result<Caution> read_caution(const CsvTable& table, std::size_t row)
{
    constexpr std::array<std::string_view, 6> columns{"id",         "topic", "text",
                                                      "shown_when", "kinds", "sources"};
    constexpr std::array<std::string_view, 1> blank_allowed{"kinds"};
    const auto cells = cells_of(table, row, columns, blank_allowed);
    if (!cells) {
        return cells.error();
    }
    const auto topic = topic_of((*cells)[1]);
    if (!topic) {
        return table.error_at(row, Said{"the topic \"" + (*cells)[1] + "\" is not known"});
    }
    Caution caution{(*cells)[0], *topic, (*cells)[2], (*cells)[3], pieces((*cells)[4]), pieces((*cells)[5])};
    for (const auto& selector : caution.kinds) {
        if (!is_selector(selector)) {
            return table.error_at(row, Said{"\"" + selector +
                                           "\" must be toxic, family:NAME, genus:NAME or hazard:WORD"});
        }
    }
    return caution;
}

} // namespace

Result<CautionTable> CautionTable::parse(std::string_view cautions_csv, std::string_view sources_csv)
{
    const auto source_table = CsvTable::parse(sources_csv, "caution_sources.csv");
    if (!source_table) {
        return source_table.error();
    }
    const auto caution_table = CsvTable::parse(cautions_csv, "cautions.csv");
    if (!caution_table) {
        return caution_table.error();
    }
    CautionTable read;
    for (std::size_t row = 0; row < source_table->row_count(); ++row) {
        auto source = read_source(*source_table, row);
        if (!source) {
            return source.error();
        }
        if (read.source(source->key) != nullptr) {
            return source_table->error_at(row, Said{"the key " + source->key + " is given twice"});
        }
        read.sources_.push_back(std::move(source).value());
    }
    for (std::size_t row = 0; row < caution_table->row_count(); ++row) {
        auto caution = read_caution(*caution_table, row);
        if (!caution) {
            return caution.error();
        }
        for (const auto& key : caution->sources) {
            if (read.source(key) == nullptr) {
                return caution_table->error_at(row, Said{"the source " + key + " is not in caution_sources.csv"});
            }
        }
        if (std::ranges::find(read.cautions_, caution->id, &Caution::id) != read.cautions_.end()) {
            return caution_table->error_at(row, Said{"the id " + caution->id + " is given twice"});
        }
        read.cautions_.push_back(std::move(caution).value());
    }
    return read;
}

const CautionTable& CautionTable::built_in()
{
    static const CautionTable table = [] {
        auto parsed = parse(embedded_cautions(), embedded_caution_sources());
        if (!parsed) {
            std::abort(); // A fault of the build; a test parses the same bytes.
        }
        return std::move(parsed).value();
    }();
    return table;
}

const plants::Source* CautionTable::source(std::string_view key) const
{
    const auto found = std::ranges::find(sources_, key, &plants::Source::key);
    return found == sources_.end() ? nullptr : &*found;
}

std::vector<const Caution*> CautionTable::for_topic(CautionTopic topic) const
{
    std::vector<const Caution*> found;
    for (const auto& caution : cautions_) {
        if (caution.topic == topic) {
            found.push_back(&caution);
        }
    }
    return found;
}

std::vector<const Caution*> CautionTable::for_plant(const plants::PlantKind& kind) const
{
    std::vector<const Caution*> found;
    for (const auto& caution : cautions_) {
        if (std::ranges::any_of(caution.kinds,
                                [&](const std::string& selector) { return selects(selector, kind); })) {
            found.push_back(&caution);
        }
    }
    return found;
}

std::span<const Caution> cautions()
{
    return CautionTable::built_in().cautions();
}
std::vector<const Caution*> cautions_for(CautionTopic topic)
{
    return CautionTable::built_in().for_topic(topic);
}
std::vector<const Caution*> cautions_for_plant(const plants::PlantKind& kind)
{
    return CautionTable::built_in().for_plant(kind);
}
const plants::Source* caution_source(std::string_view key)
{
    return CautionTable::built_in().source(key);
}

std::string_view to_string(CautionTopic topic)
{
    const auto found = std::ranges::find(kTopicWords, topic, &std::pair<std::string_view, Topic>::second);
    return found == kTopicWords.end() ? std::string_view{} : found->first;
}
std::span<const CautionTopic> caution_topics()
{
    return kTopics;
}

} // namespace lathhouse::plan
