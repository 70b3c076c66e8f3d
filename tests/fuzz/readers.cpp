#include "tests/fuzz/readers.h"

#include "core/base/csv.h"
#include "core/base/named_rows.h"
#include "core/base/parse.h"
#include "core/calendar/date.h"
#include "core/calendar/day_of_year.h"
#include "core/climate/daily_records.h"
#include "core/climate/day_table.h"
#include "core/climate/monthly_form.h"
#include "core/climate/station_rows.h"
#include "core/exchange/bag.h"
#include "core/exchange/bag_tags.h"
#include "core/exchange/csv_cell.h"
#include "core/exchange/icalendar.h"
#include "core/exchange/utf8.h"
#include "core/geodesy/read_position.h"
#include "core/home/demonstration.h"
#include "core/home/night_log_file.h"
#include "core/home/seed_lot.h"
#include "core/journal/household_backup.h"
#include "core/journal/household_check.h"
#include "core/journal/household_csv.h"
#include "core/journal/household_store.h"
#include "core/photo/photo_file.h"
#include "core/photo/thumbnail.h"
#include "core/photo/without_position.h"
#include "tests/photo/sample_photos.h"

#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <memory>
#include <sstream>

namespace lathhouse::fuzz {

namespace fs = std::filesystem;

namespace {

void must(bool holds, const char* what)
{
    if (!holds) {
        std::fprintf(stderr, "fuzz: broken promise: %s\n", what);
        std::abort();
    }
}

void put(const fs::path& file, std::string_view content)
{
    std::ofstream{file, std::ios::binary | std::ios::trunc} << content;
}

std::string content_of(const fs::path& file)
{
    std::ostringstream text;
    text << std::ifstream{file, std::ios::binary}.rdbuf();
    return text.str();
}

const calendar::Date kToday = calendar::make_date(2027, 3, 1).value();
const calendar::Instant kNow = calendar::start_of_day_utc(kToday);

void read_daily_records(const fs::path& file, std::string_view input)
{
    put(file, input);
    const auto opened = climate::DailyFile::open(file);
    if (opened) {
        (void)opened->for_each_station([](const climate::DailyRecord& record) {
            if (!record.empty()) {
                must(record.first_year() <= record.last_year(), "years in their order");
            }
        });
        (void)climate::for_stations_of(*opened, [](const climate::DailyRecord& record) { return record.station().size(); });
    }
}

/// Texts in a calendar file stay in their lines.
void write_calendar(std::string_view input)
{
    const std::string text{input};
    const std::vector<exchange::CalendarEvent> events{{exchange::calendar_uid("h", text), kToday, kToday, text, text, text}};
    const auto file = exchange::icalendar({text, kNow, 6}, events);
    must(exchange::is_utf8(file), "a calendar is UTF-8");
    std::size_t begun = 0;
    for (std::size_t at = 0; at < file.size();) {
        const auto end = file.find("\r\n", at);
        must(end != std::string::npos && end - at <= 75, "lines of at most 75 octets");
        const auto line = std::string_view{file}.substr(at, end - at);
        must(line.find_first_of("\r\n") == std::string_view::npos, "no line end within a line");
        begun += line == "BEGIN:VEVENT" ? 1 : 0;
        at = end + 2;
    }
    must(begun == 1, "one event");
}

void write_cell(std::string_view input)
{
    for (const bool may_be_missing : {false, true}) {
        const exchange::Column column{"a", exchange::CellType::Text, may_be_missing};
        const auto table = CsvTable::parse("id,a\r\n1," + exchange::csv_cell(std::string{input}, column) + "\r\n", "t");
        must(table.has_value() && table->row_count() == 1, "a cell is one cell");
        const auto back = exchange::read_csv_cell(table->at(0, 1), column);
        must(back && *back == exchange::Cell{std::string{input}}, "a cell comes back the same");
    }
    (void)exchange::read_csv_cell(input, {"a", exchange::CellType::Real, true});
    (void)exchange::read_csv_cell(input, {"a", exchange::CellType::Integer, false});
    (void)exchange::read_csv_cell(input, {"a", exchange::CellType::Bytes, true});
}

/// A household that could be opened gives what it has, or an error.
void use_household(const fs::path& folder)
{
    const auto store = journal::HouseholdStore::open(folder);
    if (store) {
        (void)store->load();
        (void)store->events();
        (void)store->night_log();
        (void)store->seeds();
        (void)store->jugs();
        (void)store->accepted_plan();
    }
}

void read_database(const fs::path& scratch, std::string_view input)
{
    const auto folder = scratch / "database";
    fs::remove_all(folder);
    fs::remove_all(scratch / "saved");
    fs::create_directory(folder);
    put(folder / "household.sqlite3", input);
    const auto before = content_of(folder / "household.sqlite3");
    (void)journal::check_household(folder);
    (void)journal::export_csv(folder, scratch / "saved", journal::Unreadable::IsPassedOver);
    must(content_of(folder / "household.sqlite3") == before, "looking changes nothing");
    use_household(folder);
}

/// The first line names the table, the rest is its content.
void read_tables(const fs::path& scratch, std::string_view input)
{
    const auto end = input.find('\n');
    const auto name = std::string{input.substr(0, end)};
    const auto good = scratch / "good_tables";
    if (end == std::string_view::npos || name.find('/') != std::string::npos || !fs::is_regular_file(good / name)) {
        return;
    }
    const auto tables = scratch / "tables";
    fs::remove_all(tables);
    fs::remove_all(scratch / "imported");
    fs::copy(good, tables);
    put(tables / name, input.substr(end + 1));
    const auto made = journal::import_csv(tables, scratch / "imported");
    must(made.has_value() == fs::exists(scratch / "imported"), "whole or not there");
    if (made) {
        must(journal::check_household(scratch / "imported")->sound(), "what is imported is sound");
    }
}

void read_backup(const fs::path& scratch, std::string_view input)
{
    fs::remove_all(scratch / "restored");
    put(scratch / "backup.zip", input);
    const auto made = journal::restore(scratch / "backup.zip", scratch / "restored");
    must(made.has_value() == fs::exists(scratch / "restored"), "whole or not there");
}

photo::ByteView bytes_of(std::string_view input)
{
    return {reinterpret_cast<const std::uint8_t*>(input.data()), input.size()};
}

std::string text_of(const photo::Bytes& bytes)
{
    return {bytes.begin(), bytes.end()};
}

void read_exif(std::string_view input)
{
    if (const auto facts = photo::read_exif(bytes_of(input))) {
        const auto again = photo::read_exif(photo::make_exif(*facts));
        must(again && again->orientation == facts->orientation, "what was read can be written and read");
    }
}

void read_photo(std::string_view input)
{
    // Small limits, since most of the time would go into pixels.
    const photo::Limits limits{std::size_t{1} << 20U, 1'000'000, 10'000};
    (void)photo::read_facts(bytes_of(input), "input", limits);
    (void)photo::thumbnail_of(bytes_of(input), "input", limits);
    if (const auto stripped = photo::without_position(bytes_of(input), "input", limits)) {
        const auto facts = photo::read_facts(*stripped, "stripped", limits);
        must(!facts || !facts->exif.position, "no position is left");
    }
}

std::vector<std::string> sample_photos()
{
    const auto picture = photo::drawn_plant(48, 32);
    return {text_of(photo::jpeg_with(picture, photo::sample_exif())), text_of(photo::encode_png(picture).value()),
            text_of(photo::webp_of(picture))};
}

} // namespace

std::vector<Reader> all_readers(const fs::path& scratch)
{
    const auto demonstration = home::demonstration({.today = kToday}).value();
    const auto household = std::make_shared<home::Household>(demonstration.household);
    // Little history, so that an input takes milliseconds.
    const auto first = std::span{demonstration.history}.first(std::min<std::size_t>(demonstration.history.size(), 40));
    must(journal::HouseholdStore::create(scratch / "good", demonstration.household, first).has_value(), "a household to begin with");
    must(journal::export_csv(scratch / "good", scratch / "good_tables").has_value(), "its tables");
    must(journal::back_up(scratch / "good", scratch / "good.zip", journal::Existing::Replaced, kToday).has_value(), "its backup");
    std::vector<std::string> tables;
    for (const auto& entry : fs::directory_iterator{scratch / "good_tables"}) {
        tables.push_back(entry.path().filename().string() + "\n" + content_of(entry.path()));
    }
    must(journal::restore(scratch / "good.zip", scratch / "checkpointed").has_value(), "its copy");
    const auto file = scratch / "input";
    return {
        {"daily_records", [file](std::string_view input) { read_daily_records(file, input); }, {}},
        {"day_table",
         [](std::string_view input) { (void)climate::parse_day_table(input, "input", {}, climate::TableUnits::Us, "s"); },
         {}},
        {"monthly",
         [](std::string_view input) {
             if (const auto table = CsvTable::parse(input, "input")) {
                 (void)climate::read_monthly_form(*table);
             }
         },
         {}},
        {"station_rows", [](std::string_view input) { (void)climate::parse_station_rows(input, "input"); }, {}},
        {"forecast",
         [](std::string_view input) {
             if (const auto rows = NamedRows::parse(input, "input", home::kForecastColumns)) {
                 (void)home::forecast_from(*rows, kToday, kNow);
             }
         },
         {}},
        {"night_log",
         [household](std::string_view input) {
             if (const auto rows = NamedRows::parse(input, "input", home::kReadingColumns)) {
                 (void)home::readings_from(*rows, *household, 1, kToday, kNow);
             }
         },
         {}},
        {"bag_tags",
         [](std::string_view input) {
             if (const auto lines = exchange::read_manifest_text(input)) {
                 const auto again = exchange::read_manifest_text(exchange::manifest_text(*lines));
                 must(again && again->size() == lines->size(), "a manifest comes back the same");
             }
             (void)exchange::read_bag_info(input);
         },
         {}},
        {"position", [](std::string_view input) { (void)geodesy::read_position(input.substr(0, 200)); }, {}},
        {"dates",
         [](std::string_view input) {
             if (const auto date = calendar::parse_date(input)) {
                 must(calendar::to_text(*date) == input, "a date comes back the same");
             }
             (void)calendar::DayOfYear::parse(input);
             (void)parse_number(input);
             (void)parse_integer(input);
         },
         {}},
        {"calendar", &write_calendar, {}},
        {"csv_cell", &write_cell, {"=1+1", "'", "a,b\r\n\"c\"", " x "}},
        {"exif", &read_exif, {text_of(photo::make_exif(photo::sample_exif()))}},
        {"photo", &read_photo, sample_photos()},
        {"backup", [scratch](std::string_view input) { read_backup(scratch, input); }, {content_of(scratch / "good.zip")}},
        {"tables", [scratch](std::string_view input) { read_tables(scratch, input); }, std::move(tables)},
        {"database",
         [scratch](std::string_view input) { read_database(scratch, input); },
         {content_of(scratch / "checkpointed/household.sqlite3")}},
    };
}

} // namespace lathhouse::fuzz
