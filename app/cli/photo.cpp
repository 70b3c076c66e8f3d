#include "app/clock.h"
#include "app/cli/all_commands.h"
#include "app/cli/forecast_options.h"
#include "app/cli/household_options.h"
#include "app/words/photo_words.h"
#include "app/words/place_words.h"
#include "core/base/parse.h"
#include "core/base/sha256.h"
#include "core/home/measurement.h"
#include "core/journal/household_store.h"
#include "core/photo/greenness.h"
#include "core/photo/leaf_colour.h"
#include "core/photo/photo_file.h"
#include "core/photo/photo_length.h"

#include <cmath>
#include <memory>

namespace lathhouse::cli {
namespace {

struct PhotoOptions {
    std::string file;
    std::string outline;
    std::string grey;
    std::vector<std::string> scales;
    std::vector<std::string> lengths;
    std::string plant;
    std::string length_kind = "height";
};

/// Numbers between commas. Errors: WrongUsage naming the option.
Result<std::vector<double>> numbers_of(const std::string& option, const std::string& text, const std::string& form)
{
    std::vector<double> numbers;
    for (const auto piece : split(text, ',')) {
        const auto number = parse_number(piece);
        if (!number) {
            return Error{ErrorCode::WrongUsage, option + " has \"" + std::string{trimmed(piece)} +
                                                    "\" where a number should stand; write it as " + form};
        }
        numbers.push_back(*number);
    }
    return numbers;
}

/// Errors: WrongUsage for a wrong count.
Result<std::vector<double>> exactly(const std::string& option, const std::string& text, const std::string& form,
                                    std::size_t count)
{
    auto numbers = numbers_of(option, text, form);
    if (numbers && numbers->size() != count) {
        return Error{ErrorCode::WrongUsage, option + " takes " + std::to_string(count) + " numbers, not " +
                                                std::to_string(numbers->size()) + "; write it as " + form};
    }
    return numbers;
}

Result<photo::Region> region_of(const std::string& option, const std::string& text, const photo::Picture& picture)
{
    const auto numbers = numbers_of(option, text, "x,y,x,y,x,y");
    if (!numbers) {
        return numbers.error();
    }
    if (numbers->size() % 2 != 0) {
        return Error{ErrorCode::WrongUsage, option + " takes pairs of numbers: x,y,x,y,x,y"};
    }
    std::vector<photo::Point> corners;
    for (std::size_t i = 0; i < numbers->size(); i += 2) {
        corners.push_back({(*numbers)[i], (*numbers)[i + 1]});
    }
    auto region = photo::Region::outline(corners, picture.width, picture.height);
    if (!region) {
        return Error{region.error().code, option + ": " + region.error().message};
    }
    return region;
}

Result<std::optional<photo::PhotoLength>> measured_length(const PhotoOptions& options)
{
    if (options.lengths.empty()) {
        return std::optional<photo::PhotoLength>{};
    }
    if (options.scales.empty()) {
        return Error{ErrorCode::WrongUsage,
                     "--length needs --scale x1,y1,x2,y2,CM: two points on something of known size, and its size"};
    }
    std::vector<photo::Scale> scales;
    for (const auto& text : options.scales) {
        const auto n = exactly("--scale", text, "x1,y1,x2,y2,CM", 5);
        if (!n) {
            return n.error();
        }
        scales.push_back({{{(*n)[0], (*n)[1]}, {(*n)[2], (*n)[3]}}, Metres::from_metres((*n)[4] / 100.0)});
    }
    std::vector<photo::Stretch> lengths;
    for (const auto& text : options.lengths) {
        const auto n = exactly("--length", text, "x1,y1,x2,y2", 4);
        if (!n) {
            return n.error();
        }
        lengths.push_back({{(*n)[0], (*n)[1]}, {(*n)[2], (*n)[3]}});
    }
    return photo::length_of(lengths, scales).transform([](const photo::PhotoLength& length) {
        return std::optional{length};
    });
}

struct Measured {
    photo::Photo photo;
    std::string sha256;
    photo::GreenCover green;
    photo::LeafColours colours;
    std::optional<photo::PhotoLength> length;
    std::optional<double> cast; ///< Strength of the colour cast that was taken out.
};

Result<Measured> measure(const PhotoOptions& options)
{
    const auto length = measured_length(options);
    if (!length) {
        return length.error();
    }
    const auto bytes = photo::read_bytes(options.file);
    if (!bytes) {
        return bytes.error();
    }
    auto photo = photo::read_photo(*bytes, std::filesystem::path{options.file}.filename().string());
    if (!photo) {
        return photo.error();
    }
    std::optional<double> cast;
    if (!options.grey.empty()) {
        const auto balance = region_of("--grey", options.grey, photo->picture).and_then([&](const photo::Region& grey) {
            return photo::WhiteBalance::from_grey(photo->picture, grey);
        });
        if (!balance) {
            return balance.error();
        }
        cast = balance->strength();
        photo->picture = balance->applied(std::move(photo->picture));
    }
    const auto region = options.outline.empty()
                            ? Result<photo::Region>{photo::Region::frame(photo->picture.width, photo->picture.height)}
                            : region_of("--outline", options.outline, photo->picture);
    if (!region) {
        return region.error();
    }
    const auto green = photo::green_cover(photo->picture, *region);
    const auto colours = photo::leaf_colours(photo->picture, *region);
    return Measured{*std::move(photo), sha256_of(*bytes), green, colours, *length, cast};
}

Json json_centimetres(const std::optional<Metres>& length)
{
    return length ? json_number(100.0 * length->metres()) : Json(nullptr);
}

Json json_of(const Measured& measured)
{
    const auto& exif = measured.photo.facts.exif;
    const auto of_leaf = measured.colours.yellow_of_leaf();
    const auto& length = measured.length;
    return {{"width_px", measured.photo.facts.width},
            {"height_px", measured.photo.facts.height},
            {"taken", exif.taken ? Json(photo::to_text(*exif.taken)) : Json(nullptr)},
            {"zone_offset_minutes", exif.zone_offset ? Json(exif.zone_offset->count()) : Json(nullptr)},
            {"orientation", exif.orientation},
            {"camera", exif.camera.empty() ? Json(nullptr) : Json(exif.camera)},
            {"latitude", exif.position ? json_number(exif.position->latitude.degrees()) : Json(nullptr)},
            {"longitude", exif.position ? json_number(exif.position->longitude.degrees()) : Json(nullptr)},
            {"green_px", measured.green.green},
            {"green_share", json_number(measured.green.share())},
            {"threshold", measured.green.threshold},
            {"separation", json_number(measured.green.separation)},
            {"yellow_share", json_number(measured.colours.yellow_share())},
            {"yellow_of_leaf", of_leaf ? json_number(*of_leaf) : Json(nullptr)},
            {"length_cm", json_centimetres(length ? std::optional{length->mean} : std::nullopt)},
            {"length_readings", length ? length->readings.size() : 0},
            {"length_error_cm", json_centimetres(length ? length->one_reading : std::nullopt)},
            {"real_change_cm", json_centimetres(length ? length->real_change() : std::nullopt)}};
}

std::string percent_of(double share)
{
    return words::number(100.0 * share, 1) + " %";
}

std::string centimetres(Metres length, words::UnitSystem units)
{
    return !units.us_measures() ? words::number(100.0 * length.metres(), 1) + " cm"
                                              : words::number(12.0 * length.feet(), 1) + " in";
}

std::string text_of(const Measured& measured, const PhotoOptions& options, words::UnitSystem units)
{
    const auto& facts = measured.photo.facts;
    std::string text = std::to_string(facts.width) + " x " + std::to_string(facts.height) + " pixels upright, " +
                       (facts.exif.taken ? "taken " + words::photo_time(*facts.exif.taken) : "no date in it") +
                       (facts.exif.camera.empty() ? "" : ", " + facts.exif.camera) + "\n";
    if (facts.exif.position) {
        text += "It says where it was taken (" + words::position(*facts.exif.position) +
                "); what you export leaves that out unless you ask for it.\n";
    }
    const std::string where = options.outline.empty() ? "the frame" : "the outline";
    text += "Green: " + percent_of(measured.green.share()) + " of " + where + " (" + std::to_string(measured.green.green) +
            " pixels, excess green above " + std::to_string(measured.green.threshold) + ")\n";
    text += "Yellow and brown: " + percent_of(measured.colours.yellow_share()) + " of " + where;
    if (const auto of_leaf = measured.colours.yellow_of_leaf()) {
        text += ", " + percent_of(*of_leaf) + " of what is yellow, brown or green";
    }
    text += measured.cast ? "; colours set by the grey area\n" : "; colours as the camera set them\n";
    text += "Soil, wood and clay pots count as brown: draw the outline close to the leaves.\n";
    if (measured.length) {
        text += "Length: " + centimetres(measured.length->mean, units);
        if (measured.length->one_reading) {
            text += " from " + std::to_string(measured.length->readings.size()) + " readings; one reading is right to " +
                    centimetres(*measured.length->one_reading, units) + ", a change above " +
                    centimetres(*measured.length->real_change(), units) + " is real";
        } else {
            text += "; set the points again with a second --length to see how far to trust it";
        }
        text += "\nThe scale must lie as far from the camera as what is measured: at one metre, each 10 cm that it "
                "lies nearer makes the plant come out about 10 % short.\n";
    }
    return text;
}

/// Keeps what was measured as measurements of a plant. Errors: as HouseholdStore::record.
Result<std::string> keep(const Globals& globals, const PhotoOptions& options, const Measured& measured)
{
    const auto home = household_of(globals, WithoutHousehold::IsAnError);
    if (!home) {
        return home.error();
    }
    const auto plant = plant_called(*home, options.plant);
    if (!plant) {
        return plant.error();
    }
    const auto& taken = measured.photo.facts.exif.taken;
    const auto date = taken ? calendar::utc_date(calendar::Instant{taken->time_since_epoch()}) : globals.today;
    if (date > globals.today) {
        return Error{ErrorCode::OutOfRange, options.file + " says that it was taken on " + calendar::to_text(date) +
                                                ", which is after today, so its clock was wrong; keep what was measured with "
                                                "`lathhouse log measurement`"};
    }
    std::vector<home::Measurement> rows;
    const auto row = [&](home::MeasurementKind kind, std::vector<double> values) {
        rows.push_back({.plant = (*plant)->id,
                        .kind = kind,
                        .measured = date,
                        .repeats = std::move(values),
                        .method = home::MeasurementMethod::Photo,
                        .entered = now(),
                        .pot = (*plant)->pot_volume,
                        .photo = measured.sha256});
    };
    if (measured.length) {
        std::vector<double> each;
        for (const auto reading : measured.length->readings) {
            each.push_back(100.0 * reading.metres());
        }
        row(*home::measurement_kind_of(options.length_kind), std::move(each));
    }
    if (!options.outline.empty()) {
        row(home::MeasurementKind::GreenCover, {measured.green.share()});
        if (const auto of_leaf = measured.colours.yellow_of_leaf()) {
            row(home::MeasurementKind::YellowShare, {*of_leaf});
        }
    }
    if (rows.empty()) {
        return Error{ErrorCode::WrongUsage, "--plant keeps what was measured: add --outline, or --scale and --length"};
    }
    auto store = journal::HouseholdStore::open(globals.home);
    if (!store) {
        return store.error();
    }
    if (const auto kept = store->record(std::span<const home::Measurement>{rows}); !kept) {
        return kept.error();
    }
    return "Kept " + std::to_string(rows.size()) + (rows.size() == 1 ? " measurement" : " measurements") + " of " +
           (*plant)->name + " on " + words::full_day(date) + ".\n";
}

Result<Answer> photo_answer(const Globals& globals, const PhotoOptions& options)
{
    const auto measured = measure(options);
    if (!measured) {
        return measured.error();
    }
    Answer answer{json_of(*measured), text_of(*measured, options, globals.units), {}};
    if (measured->photo.facts.exif.damaged) {
        answer.warnings.push_back(options.file + ": part of its EXIF is damaged and was left out");
    }
    if (!(measured->green.separation >= photo::kPoorSeparation)) {
        answer.warnings.push_back("green and the rest hardly part in this picture, so its green share means little; "
                                  "take the plant before a plain background, or draw an outline with some of it");
    }
    if (!options.plant.empty()) {
        const auto kept = keep(globals, options, *measured);
        if (!kept) {
            return kept.error();
        }
        answer.text += *kept;
    }
    return answer;
}

} // namespace

void add_photo(Commands& commands)
{
    auto options = std::make_shared<PhotoOptions>();
    CLI::App& command = commands.add("photo", "Measures in a photo: green cover, yellow leaves, a length",
                                     "lathhouse photo lemon.jpg --outline 900,400,2100,400,2100,2300,900,2300 "
                                     "--scale 1200,2500,1900,2500,14 --length 1500,2400,1480,620");
    command.add_option("file", options->file, "A JPEG, PNG, WebP or HEIC file")->required()->type_name("FILE");
    command.add_option("--outline", options->outline,
                       "Corners of the area to look at, pixels of the upright picture (default: all of it)")
        ->type_name("X,Y,...");
    command.add_option("--grey", options->grey,
                       "Corners of an area that is grey in truth, such as the patch of the printed card: colours are "
                       "set by it")
        ->type_name("X,Y,...");
    command.add_option("--scale", options->scales,
                       "Two points on something of known size and its size in cm; may be given again")
        ->type_name("X1,Y1,X2,Y2,CM")
        ->allow_extra_args(false);
    command.add_option("--length", options->lengths,
                       "Two points whose distance is asked for; set them again for the error of measuring")
        ->type_name("X1,Y1,X2,Y2")
        ->allow_extra_args(false);
    command.add_option("--plant", options->plant, "Keep what was measured for this plant, by id or name")
        ->type_name("PLANT");
    command.add_option("--kind", options->length_kind, "What the length is of the plant (default height)")
        ->check(CLI::IsMember({"height", "width", "longest_leaf", "stem"}));
    commands.on_run(command, [options](const Globals& globals) { return photo_answer(globals, *options); });
}

} // namespace lathhouse::cli
