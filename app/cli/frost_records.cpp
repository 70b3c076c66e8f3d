#include "app/cli/frost.h"

#include "app/cli/threshold_dates.h"
#include "core/base/csv.h"
#include "core/climate/frost_records.h"

#include <map>

namespace lathhouse::cli {
namespace {

/// Names by id from a table with the columns station and name.
Result<std::map<std::string, std::string>> read_names(const std::string& file)
{
    std::map<std::string, std::string> names;
    if (file.empty()) {
        return names;
    }
    const auto table = CsvTable::read(file);
    if (!table) {
        return table.error();
    }
    const auto id = table->require_column("station");
    if (!id) {
        return id.error();
    }
    const auto name = table->require_column("name");
    if (!name) {
        return name.error();
    }
    for (std::size_t row = 0; row < table->row_count(); ++row) {
        names[table->at(row, *id)] = table->at(row, *name);
    }
    return names;
}

Result<climate::FrostQuestion> question_of(const FrostOptions& options)
{
    climate::FrostQuestion question;
    const auto base = parse_base_period(options.base);
    if (!base) {
        return base.error();
    }
    question.base = *base;
    const auto lines = lines_of(options);
    if (!lines) {
        return lines.error();
    }
    question.lines = *lines;
    question.percents.insert(question.percents.end(), options.risks.begin(), options.risks.end());
    if (!options.turn.empty()) {
        const auto turn = calendar::DayOfYear::parse(options.turn);
        if (!turn) {
            return Error{turn.error().code, "--turn: " + turn.error().message};
        }
        question.turn = climate::SeasonTurn{*turn};
    }
    return question;
}

} // namespace

Result<Answer> frost_from_records(const Globals& globals, const FrostOptions& options)
{
    const auto question = question_of(options);
    if (!question) {
        return question.error();
    }
    const auto names = read_names(options.stations);
    if (!names) {
        return names.error();
    }
    Answer answer;
    Json stations = Json::array();
    for (const auto& path : options.records) {
        const auto file = climate::DailyFile::open(path);
        if (!file) {
            return file.error();
        }
        const auto records = climate::for_stations_of(*file, [&](const climate::DailyRecord& record) {
            auto dates = climate::frost_dates_of(record, *question);
            climate::add_rare_dates(dates, record, *question);
            return dates;
        });
        if (!records) {
            return records.error();
        }
        for (const auto& record : *records) {
            Json station = {{"station", record.station}, {"turn", record.turn.last_day().to_text()}};
            std::string title = record.station;
            if (const auto name = names->find(record.station); name != names->end()) {
                station["name"] = name->second;
                title += ", " + name->second;
            }
            answer.text += title + ": " + std::to_string(record.counted_seasons) + " cold seasons of " +
                           std::to_string(question->base.first_year) + "-" +
                           std::to_string(question->base.last_year) + ", each ending on " +
                           words::day(record.turn.last_day()) + "\n";
            if (!record.thresholds) {
                station["thresholds"] = nullptr;
                answer.warnings.push_back("station " + record.station + " has " +
                                          std::to_string(record.counted_seasons) +
                                          " complete cold seasons in " + options.base + "; dates need " +
                                          std::to_string(climate::kFewestSeasons));
                answer.text += "Too few for dates.\n";
            } else {
                Json thresholds = Json::array();
                for (const auto& dates : *record.thresholds) {
                    thresholds.push_back(json_of(dates));
                    answer.text += text_of(dates, globals.units);
                }
                station["thresholds"] = thresholds;
            }
            answer.text += "\n";
            stations.push_back(std::move(station));
        }
    }
    answer.json = {{"stations", std::move(stations)}};
    answer.text += "Counted in the records; frost dates are chances, not promises.\n";
    return answer;
}

} // namespace lathhouse::cli
