#include "core/base/straight_apostrophes.h"
#include "core/plants/near_names.h"
#include "core/plants/row_reader.h"
#include "core/plants/seed_kind.h"

#include <algorithm>
#include <cstdlib>

namespace lathhouse::plants {

// The table as the build has embedded it.
std::string_view embedded_seeds();

namespace {

template <class Value, std::size_t count>
using WordList = std::array<std::pair<std::string_view, Value>, count>;

constexpr WordList<FrostClass, 3> kFrostWords{{{"tender", FrostClass::Tender},
                                               {"half_hardy", FrostClass::HalfHardy},
                                               {"hardy", FrostClass::Hardy}}};
constexpr WordList<SeedLight, 7> kSeedLightWords{{{"indifferent", SeedLight::Indifferent},
                                              {"light_needed", SeedLight::LightNeeded},
                                              {"light_helps", SeedLight::LightHelps},
                                              {"dark", SeedLight::Dark},
                                              {"dark_or_light", SeedLight::DarkOrLight},
                                              {"cover", SeedLight::Cover},
                                              {"light_cover", SeedLight::LightCover}}};
constexpr WordList<Photoperiod, 7> kPhotoperiodWords{{{"none", Photoperiod::None},
                                                      {"day_neutral", Photoperiod::DayNeutral},
                                                      {"short_day", Photoperiod::ShortDay},
                                                      {"long_day", Photoperiod::LongDay},
                                                      {"long_day_bolts", Photoperiod::LongDayBolts},
                                                      {"vernalisation", Photoperiod::Vernalisation},
                                                      {"by_cultivar", Photoperiod::ByCultivar}}};
constexpr WordList<GerminationBasis, 4> kBasisWords{{{"FSA", GerminationBasis::FederalLaw},
                                                     {"NHSEED", GerminationBasis::StateHerbLaw},
                                                     {"VAFLOWER", GerminationBasis::StateFlowerLaw},
                                                     {"MEM", GerminationBasis::Memory}}};
constexpr WordList<ReadyFrom, 2> kFromWords{
    {{"sowing", ReadyFrom::Sowing}, {"transplant", ReadyFrom::Transplant}}};
constexpr WordList<ReadyWhat, 3> kWhatWords{{{"harvest", ReadyWhat::Harvest},
                                             {"flower", ReadyWhat::Flower},
                                             {"leaves", ReadyWhat::Leaves}}};
constexpr std::array<std::string_view, 4> kTypes{"veg", "herb", "flower", "foliage"};
constexpr std::array<std::string_view, 4> kFits{"", "use", "table_only", "moist_only"};

std::array<std::optional<double>, 9> read_rates(RowReader& row)
{
    std::array<std::optional<double>, 9> rates;
    for (std::size_t step = 0; step < rates.size(); ++step) {
        const auto column = "days_" + std::to_string(5 * step);
        const auto written = row.text(column);
        if (written == "none") {
            rates[step] = 0.0;
        } else if (!written.empty()) {
            const auto days = parse_number(written);
            if (!days || !(*days >= 1.0)) {
                row.fail_at(column + " must be a number of days, none or blank, not \"" + written + "\"");
            } else {
                rates[step] = 1.0 / *days;
            }
        }
    }
    return rates;
}

std::optional<ThermalTime> read_fit(RowReader& row)
{
    const auto fit = row.one_of("fit", kFits);
    if (fit != "use" && fit != "moist_only") {
        return std::nullopt;
    }
    const bool moist_only = fit == "moist_only";
    ThermalTime line{row.degrees("fit_base_c"), row.number("fit_degree_days"),
                     // The study of the one moist line names no end; its kind germinates best up to 21 C.
                     moist_only ? Celsius::from_degrees(row.range("germ_opt_c").high) : row.degrees("fit_up_to_c"),
                     moist_only ? 0.0 : row.number("fit_error_percent"), moist_only};
    if (!(line.degree_days > 0.0 && line.base < line.up_to)) {
        row.fail_at("the fit needs degree days above 0 and a base below its end");
    }
    return line;
}

std::optional<Range> range_or_none(RowReader& row, std::string_view column)
{
    return row.text(column).empty() ? std::nullopt : std::optional{row.range(column)};
}

std::optional<Celsius> degrees_or_none(RowReader& row, std::string_view column)
{
    return row.text(column).empty() ? std::nullopt : std::optional{row.degrees(column)};
}

SeedKind read_seed(RowReader& row)
{
    const auto best = row.range("germ_opt_c");
    SeedKind kind{
        .names = names_in(row.filled("names")),
        .botanical_name = row.filled("botanical_name"),
        .type = row.one_of("type", kTypes),
        .frost = row.word<FrostClass>("frost_class", kFrostWords),
        .depth_mm = row.number("depth_mm"),
        .germ_least = row.degrees("germ_min_c"),
        .germ_best_low = Celsius::from_degrees(best.low),
        .germ_best_high = Celsius::from_degrees(best.high),
        .germ_most = row.degrees("germ_max_c"),
        .rate_at = read_rates(row),
        .thermal_time = read_fit(row),
        .days_typical = row.range("days_typical"),
        .weeks_indoors = range_or_none(row, "weeks_indoors"),
        .soil_least = degrees_or_none(row, "soil_least_c"),
        .soil_warm = degrees_or_none(row, "soil_warm_c"),
        .light = row.word<SeedLight>("light", kSeedLightWords),
        .before_sowing = row.text("before_sowing"),
        .germination_percent = row.number("germination_percent"),
        .basis = row.word<GerminationBasis>("germination_basis", kBasisWords),
        .spacing_cm = row.range("spacing_cm"),
        .ready_days = row.range("ready_days"),
        .ready_from = row.word<ReadyFrom>("ready_from", kFromWords),
        .ready_what = row.word<ReadyWhat>("ready_what", kWhatWords),
        .photoperiod = row.word<Photoperiod>("photoperiod", kPhotoperiodWords),
        .photoperiod_note = row.text("photoperiod_note"),
        .growth_best = row.degrees("growth_best_c"),
        .growth_most = row.degrees("growth_max_c"),
        .succession_days = {},
        .keeps_years = static_cast<int>(row.number("keeps_years")),
        .safe_night = row.degrees("safe_night_c"),
        .memory = {},
        .sources = row.filled("sources"),
        .confidence = row.one_of("confidence", kConfidences),
    };
    if (const auto days = row.text("succession_days"); !days.empty()) {
        kind.succession_days = parse_integer(days);
        if (!kind.succession_days || *kind.succession_days < 1) {
            row.fail_at("succession_days must be a whole number of days, not \"" + days + "\"");
        }
    }
    const auto memory = row.text("memory");
    for (const auto column : split(memory, ' ')) {
        if (!column.empty()) {
            kind.memory.emplace_back(column);
        }
    }
    if (!(kind.germ_least <= kind.germ_best_low && kind.germ_best_low <= kind.germ_best_high &&
          kind.germ_best_high <= kind.germ_most)) {
        row.fail_at("the germination temperatures must rise from the least over the best to the most");
    }
    if (!(kind.germination_percent > 0.0 && kind.germination_percent <= 100.0)) {
        row.fail_at("germination_percent must lie above 0 and at most at 100");
    }
    if (kind.soil_least.has_value() != kind.soil_warm.has_value() ||
        (kind.soil_least && *kind.soil_warm < *kind.soil_least)) {
        row.fail_at("soil_least_c and soil_warm_c belong together, the second not the cooler one");
    }
    if (!kind.weeks_indoors && !kind.soil_warm) {
        row.fail_at("a kind must be sown indoors or outdoors");
    }
    if (!(kind.growth_base() < kind.growth_best && kind.growth_best < kind.growth_most)) {
        row.fail_at("the growth temperatures must rise from the base over the best to the most");
    }
    if (kind.depth_mm < 0.0 || !(kind.days_typical.low > 0.0) || !(kind.ready_days.low > 0.0)) {
        row.fail_at("depth and days cannot be negative, nor days 0");
    }
    return kind;
}

} // namespace

std::string_view to_string(FrostClass frost)
{
    return word_of<FrostClass>(kFrostWords, frost);
}
std::string_view to_string(SeedLight light)
{
    return word_of<SeedLight>(kSeedLightWords, light);
}
std::string_view to_string(Photoperiod photoperiod)
{
    return word_of<Photoperiod>(kPhotoperiodWords, photoperiod);
}
std::string_view to_string(GerminationBasis basis)
{
    return word_of<GerminationBasis>(kBasisWords, basis);
}
std::string_view to_string(ReadyWhat what)
{
    return word_of<ReadyWhat>(kWhatWords, what);
}

bool SeedKind::has_table() const
{
    return std::ranges::any_of(rate_at, [](const auto& rate) { return rate.has_value(); });
}

Celsius SeedKind::damaging_night() const
{
    constexpr double kFrostOnLeaves = 2.2;
    constexpr double kChilling = 5.0;
    constexpr double kChillingFloor = 12.0;
    switch (frost) {
    case FrostClass::Tender:
        return safe_night.degrees() >= kChillingFloor
                   ? Celsius::from_degrees(kChilling)
                   : std::min(safe_night, Celsius::from_degrees(kFrostOnLeaves));
    case FrostClass::HalfHardy:
        return std::min(safe_night, Celsius::from_degrees(0.0));
    case FrostClass::Hardy:
        break;
    }
    return safe_night;
}

Celsius SeedKind::growth_base() const
{
    return Celsius::from_degrees(frost == FrostClass::Tender ? 7.8 : 3.9);
}

Result<SeedReference> SeedReference::parse(std::string_view seeds_csv, const PlantReference& sources)
{
    const auto table = CsvTable::parse(seeds_csv, "seeds.csv");
    if (!table) {
        return table.error();
    }
    SeedReference reference;
    for (std::size_t index = 0; index < table->row_count(); ++index) {
        RowReader row{*table, index};
        auto kind = read_seed(row);
        for (const auto& key : names_in(kind.sources)) {
            if (sources.source(key) == nullptr) {
                row.fail_at("the source " + key + " is not in sources.csv");
            }
        }
        for (const auto& column : kind.memory) {
            if (!table->column(column)) {
                row.fail_at("memory names a column " + column + " that is not there");
            }
        }
        auto names = kind.names;
        names.push_back(kind.botanical_name);
        for (const auto& name : names) {
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

const SeedReference& SeedReference::built_in()
{
    static const SeedReference reference = [] {
        auto parsed = parse(embedded_seeds(), PlantReference::built_in());
        if (!parsed) {
            std::abort(); // A fault of the build; a test parses the same bytes.
        }
        return std::move(parsed).value();
    }();
    return reference;
}

std::vector<std::string> SeedReference::near_names(std::string_view name, std::size_t count) const
{
    std::vector<std::string_view> candidates;
    for (const auto& kind : kinds_) {
        candidates.insert(candidates.end(), kind.names.begin(), kind.names.end());
        candidates.push_back(kind.botanical_name);
    }
    return nearest_names(name, candidates, count);
}

Result<const SeedKind*> SeedReference::find(std::string_view name) const
{
    const auto wanted = lower_case(straight_apostrophes(trimmed(name)));
    // "Tomatoes" and "beans" are what people write on their packets.
    for (const std::size_t cut : {std::size_t{0}, std::size_t{1}, std::size_t{2}}) {
        if (cut >= wanted.size() || (cut > 0 && !wanted.ends_with(cut == 1 ? "s" : "es"))) {
            continue;
        }
        const auto found = by_name_.find(wanted.substr(0, wanted.size() - cut));
        if (found != by_name_.end()) {
            return &kinds_[found->second];
        }
    }
    const auto near = near_names(name, 3);
    return Error{
        ErrorCode::NotFound,
        near.empty()
            ? said("no crop named \"%1\" in the reference of seeds; `lathhouse sowing --calendar` names the crops "
                   "that can be sown now",
                   trimmed(name))
            : said("no crop named \"%1\" in the reference of seeds; did you mean %2", trimmed(name), any_of(near))};
}

} // namespace lathhouse::plants
