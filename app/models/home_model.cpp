#include "app/models/home_model.h"

#include "app/clock.h"
#include "app/models/days_ago.h"
#include "app/models/tonight_model.h"
#include "app/models/typed_number.h"
#include "app/models/typed_path.h"
#include "app/words/phrase.h"
#include "app/words/refusal.h"
#include "core/base/csv.h"
#include "core/home/night_log_file.h"

#include <algorithm>

namespace lathhouse::models {

namespace {

template <class Spots>
std::vector<SheetRows::Row> chips_of(const Spots& spots)
{
    std::vector<SheetRows::Row> chips;
    for (const auto& spot : spots) {
        chips.push_back({spot.name, spot.hand});
    }
    return chips;
}

} // namespace

HomeModel::HomeModel(HouseholdDoor door, TodayLook look, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), look_(std::move(look)), line_(door_.load, look_), months_(door_.load, look_), entry_(door_.log, look_), meter_(look_),
      figures_({"label", "value", "sentence"}), stations_({"name", "away", "weight", "sentence"}), spots_({"name", "hand"}),
      light_months_({"month", "moles", "days", "beside", "who", "sentence"}), light_plants_({"plant", "wants", "words", "sentence"}),
      outdoors_({"name", "hand"}), nights_({"date", "low", "difference", "sky", "sentence"}),
      forecasts_({"ahead", "nights", "error", "miss", "season", "sentence"})
{
    connect(&entry_, &SheetModel::written, this, [this] {
        emit written();
        read();
    });
}

void HomeModel::setSection(int section)
{
    if (has(section) && section != section_) {
        section_ = section;
        clear_error();
        emit sectionChanged();
    }
}

bool HomeModel::has(int section) const
{
    switch (section) {
    case Place:
    case Spots:
    case Thermometer:
        return true;
    case Record:
        return sections_.record != nullptr;
    case People:
        return sections_.people != nullptr;
    case Journal:
        return sections_.journal != nullptr;
    case Data:
        return sections_.keeping != nullptr;
    case Settings:
        return sections_.settings != nullptr;
    default:
        return false;
    }
}

void HomeModel::step(int by)
{
    for (int section = section_ + by; section >= 0 && section < kSections; section += by) {
        if (has(section)) {
            setSection(section);
            return;
        }
    }
}

void HomeModel::setSpot(int spot)
{
    if (spot >= 0 && spot < static_cast<int>(facts_.light.size()) && spot != spot_) {
        spot_ = spot;
        setBeside(beside_);
        show_spot();
    }
}

void HomeModel::setBeside(int spot)
{
    const int other = spot >= 0 && spot < static_cast<int>(facts_.light.size()) && spot != spot_ ? spot : -1;
    if (other != beside_) {
        beside_ = other;
        show_spot();
    }
}

void HomeModel::setOutdoor(int outdoor)
{
    if (outdoor >= 0 && outdoor < static_cast<int>(facts_.offsets.size()) && outdoor != outdoor_) {
        outdoor_ = outdoor;
        clear_error();
        show_outdoor();
    }
}

const SpotLight* HomeModel::light() const
{
    const auto place = static_cast<std::size_t>(spot_);
    return place < facts_.light.size() ? &facts_.light[place] : nullptr;
}

const SpotLight* HomeModel::lightBeside() const
{
    return beside_ >= 0 && static_cast<std::size_t>(beside_) < facts_.light.size() ? &facts_.light[static_cast<std::size_t>(beside_)] : nullptr;
}

QString HomeModel::besideName() const
{
    return lightBeside() != nullptr ? lightBeside()->name : QString{};
}

const OffsetCourse* HomeModel::offset() const
{
    const auto place = static_cast<std::size_t>(outdoor_);
    return place < facts_.offsets.size() ? &facts_.offsets[place] : nullptr;
}

QString HomeModel::spotFacts() const
{
    return light() != nullptr ? light()->facts : QString{};
}

QString HomeModel::lightLine() const
{
    if (light() == nullptr) {
        return {};
    }
    const auto line = [this](const SpotLight& of, const QString& form) {
        const auto [least, most] = std::ranges::minmax(of.moles);
        return form.arg(of.name, words().decimal(least, 1), words().decimal(most, 1));
    };
    QStringList all{line(*light(), tr("%1: %2 to %3 moles of light a day through the year"))};
    if (lightSpread()) {
        const auto& moles = light()->moles;
        const auto month = [&](auto of) { return static_cast<int>(of - moles.begin()); };
        const int dim = month(std::ranges::min_element(moles));
        const int bright = month(std::ranges::max_element(moles));
        const auto cell = [this](int of, std::size_t role) { return light()->months[static_cast<std::size_t>(of)][role].toString(); };
        all += tr("9 days in 10: %1 in %2, %3 in %4").arg(cell(dim, 2), cell(dim, 0), cell(bright, 2), cell(bright, 0));
    }
    if (lightBeside() != nullptr) {
        all += line(*lightBeside(), tr("Beside it %1: %2 to %3"));
    }
    return all.join(QStringLiteral(". "));
}

QString HomeModel::lightNote() const
{
    if (light() == nullptr) {
        return {};
    }
    return lightSpread()
               ? tr("The line is the mean of the month. Of ten days nine lie within the band, which is what clouds change; it is told "
                    "from the month’s mean (Bendt, Collares-Pereira and Rabl 1981). Held against nine months that were measured in one town, "
                    "its brightest days were 6 % too bright; in the tropics days differ less than it says.")
               : tr("What clouds change from day to day is not told of light that does not rise towards the summer, as under lamps.");
}

QString HomeModel::offsetTitle() const
{
    return offset() != nullptr ? tr("%1 against the open air").arg(offset()->name) : QString{};
}

QString HomeModel::offsetNow() const
{
    return offset() != nullptr ? offset()->now : QString{};
}

QString HomeModel::offsetRange() const
{
    return offset() != nullptr ? offset()->range : QString{};
}

QString HomeModel::offsetKinds() const
{
    return offset() != nullptr ? offset()->kinds : QString{};
}

void HomeModel::show_spot()
{
    auto months = light() != nullptr ? light()->months : std::vector<SheetRows::Row>{};
    if (lightBeside() != nullptr) {
        for (std::size_t month = 0; month < months.size(); ++month) {
            const QString moles = words().decimal(lightBeside()->moles[month], 1);
            months[month][3] = moles;
            months[month][5] = tr("%1; %2: %3").arg(months[month][5].toString(), besideName(), moles);
        }
    }
    light_months_.show(std::move(months));
    light_plants_.show(light() != nullptr ? light()->plants : std::vector<SheetRows::Row>{});
    meter_.know(light() != nullptr ? light()->name : QString{}, light() != nullptr ? light()->moles : std::array<double, 12>{});
    emit spotChanged();
}

void HomeModel::show_outdoor()
{
    nights_.show(offset() != nullptr ? offset()->rows : std::vector<SheetRows::Row>{});
    emit outdoorChanged();
}

void HomeModel::read()
{
    work<HomeFacts>(
        [load = door_.load, look = look_] {
            return load().transform([&](const plan::HouseholdFacts& facts) { return home_facts(facts, look); });
        },
        [this](Result<HomeFacts> made) {
            if (!made) {
                fail(made.error());
                return;
            }
            const auto other = lightBeside() != nullptr ? std::optional{lightBeside()->spot} : std::nullopt;
            facts_ = std::move(*made);
            spot_ = std::clamp(spot_, 0, std::max(0, static_cast<int>(facts_.light.size()) - 1));
            const auto found = std::ranges::find(facts_.light, other, &SpotLight::spot); // Others may have come or gone before it.
            const auto place = static_cast<int>(found - facts_.light.begin());
            beside_ = found != facts_.light.end() && place != spot_ ? place : -1;
            outdoor_ = std::clamp(outdoor_, 0, std::max(0, static_cast<int>(facts_.offsets.size()) - 1));
            figures_.show(facts_.figures);
            stations_.show(facts_.stations);
            spots_.show(chips_of(facts_.light));
            outdoors_.show(chips_of(facts_.offsets));
            forecasts_.show(facts_.forecasts);
            std::vector<NightLineModel::Place> outdoors;
            for (const auto& spot : facts_.offsets) {
                outdoors.push_back({spot.spot, spot.name});
            }
            line_.know(std::move(outdoors));
            months_.renew(); // The place may be another one.
            std::vector<NightEntryModel::Spot> all;
            for (const auto& spot : facts_.light) {
                all.push_back({spot.spot, spot.name, spot.hand, spot.usual_lows});
            }
            entry_.know(std::move(all), std::move(facts_.readings));
            show_spot();
            show_outdoor();
            set_known();
            emit homeChanged();
            if (sections_.keeping != nullptr) { // Its line on the last backup stands over every section.
                sections_.keeping->start();
            }
            if (sections_.journal != nullptr) { // What changes the household stands in it.
                sections_.journal->follow();
            }
        });
}

QString HomeModel::dateAgo(int days) const
{
    return days < 0 || days > kLongestDaysAgo ? QString{} : past_date(look_.today - calendar::Days{days}, look_.today, look_.words);
}

bool HomeModel::logNight(const QString& low, int sky, int days_ago)
{
    clear_error();
    speak_of_file(false);
    if (offset() == nullptr) {
        return false;
    }
    if (dateAgo(days_ago).isEmpty()) {
        fail_with(tr("Write how many days ago the night ended, 0 to %1.").arg(kLongestDaysAgo));
        return false;
    }
    const auto typed = typed_temperature(low, look_.words);
    if (!typed.value) {
        fail_with(typed.trouble, typed.instead);
        return false;
    }
    const auto night = look_.today - calendar::Days{days_ago};
    if (facts_.usual_lows) {
        const auto usual = home::of_night(*facts_.usual_lows, night);
        if (const Slip slip = slip_of_low(*typed.value, usual, look_.words); !slip.trouble.isEmpty()) {
            fail_with(slip.trouble, slip.instead);
            return false;
        }
    }
    const home::Reading reading{offset()->spot, night, *typed.value, {}, weather_of_chip(sky), {}, now(), {}};
    work<void>(
        [log = door_.log, reading] { return log(reading); },
        [this, reading, spot = offset()->name](const Result<void>& kept) {
            if (!kept) {
                fail(words::phrase("the night could not be kept: %1", words::refusal(kept.error())));
                return;
            }
            say(tr("Kept: %1 at %2, the night to %3. The same night logged again takes its place; Undo above the pages "
                   "takes it back.")
                    .arg(look_.words.temperature(reading.low), spot, look_.words.long_date(reading.night)));
            emit written();
            read();
        });
    return true;
}

void HomeModel::speak_of_file(bool file)
{
    if (file != about_file_) {
        about_file_ = file;
        say({});
        emit aboutFileChanged();
    }
}

bool HomeModel::logFile(const QString& path, const QString& columns)
{
    clear_error();
    speak_of_file(true);
    const QString file = whole_path(path);
    if (file.isEmpty()) {
        fail_with(tr("Say which file has the readings."));
        return false;
    }
    const auto spot = offset() != nullptr ? std::optional{offset()->spot} : std::nullopt;
    work<std::size_t>(
        [load = door_.load, log = door_.log_all, file = to_path(file), columns = columns.trimmed().toStdString(), spot,
         today = look_.today]() -> Result<std::size_t> {
            const auto names = columns.empty() ? Result<std::vector<ColumnName>>{std::vector<ColumnName>{}}
                                               : parse_column_names(columns, home::kReadingColumns);
            if (!names) {
                return names.error();
            }
            const auto facts = load();
            if (!facts) {
                return facts.error();
            }
            const auto text = read_text_file(file);
            if (!text) {
                return text.error();
            }
            const auto readings = NamedRows::parse(*text, file.filename().string(), home::kReadingColumns, *names)
                                      .and_then([&](const NamedRows& rows) {
                                          return home::readings_from(rows, facts->as_told, spot, today, now());
                                      });
            if (!readings) {
                return readings.error();
            }
            const auto kept = log(*readings);
            return kept ? Result<std::size_t>{readings->size()} : Result<std::size_t>{kept.error()};
        },
        [this](const Result<std::size_t>& count) {
            if (!count) {
                fail(words::phrase("no night of it was kept: %1", words::refusal(count.error())));
                return;
            }
            say(*count == 1 ? tr("Kept 1 night of the file. The same night logged again takes its place.")
                            : tr("Kept %1 nights of the file; one Undo above the pages takes them back. The same nights logged again take their place.").arg(*count));
            emit written();
            read();
        });
    return true;
}

} // namespace lathhouse::models
