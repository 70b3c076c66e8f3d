#include "app/models/home_facts.h"

#include "app/models/forecast_rows.h"
#include "app/models/word_form.h"
#include "app/models/place_map.h"
#include "app/words/credits.h"
#include "app/words/phrase.h"
#include "app/words/place_words.h"
#include "app/words/refusal.h"
#include "app/words/season_words.h"
#include "app/words/tonight_words.h"
#include "core/climate/figures.h"
#include "core/climate/place_nights.h"
#include "core/home/learned_offset.h"
#include "core/home/light_spread.h"
#include "core/home/spot_light.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <optional>
#include <span>

namespace lathhouse::models {

namespace {

class Home {
    Q_DECLARE_TR_FUNCTIONS(HomeFacts)

public:
    Home(const plan::HouseholdFacts& facts, const TodayLook& look)
        : facts_(facts), climate_(facts.climate), look_(look), words_(look.words), units_(unit_system_of(look.words))
    {
    }

    HomeFacts all()
    {
        const auto& place = facts_.as_told.place;
        shown_.place = text(place.name);
        shown_.position = tr("%1, %2").arg(text(words::position(place.position)),
                                           text(words::height(climate_.elevation, units_)));
        if (!climate_.elevation_given) {
            shown_.position += tr(" (height of towns near; your own is not known)");
        }
        shown_.usual_lows = climate_.monthly.low;
        add_map();
        add_figures();
        for (const auto& warning : climate_.warnings) {
            shown_.warning += (shown_.warning.isEmpty() ? QString{} : QStringLiteral(" ")) + upper_first(text(words::refusal(warning))) + QLatin1Char('.');
        }
        add_light();
        add_offsets();
        return std::move(shown_);
    }

private:
    QString temperature(Celsius value) const { return words_.temperature(value); }
    void add_figure(const QString& label, const QString& value)
    {
        shown_.figures.push_back({label, value, tr("%1: %2").arg(label, value)});
    }

    void add_map()
    {
        for (const auto& use : climate_.stations) {
            const QString away = tr("%1, %2").arg(text(words::distance(use.distance, units_)),
                                                  text(words::height(use.station->elevation, units_)));
            const QString weight = tr("%1 %").arg(words_.decimal(100.0 * use.weight, 0));
            shown_.stations.push_back({text(use.station->name), away, weight,
                                       tr("%1: %2 away, weight %3").arg(text(use.station->name), away, weight)});
        }
        auto drawn = place_map(climate_, words_);
        shown_.map = std::move(drawn.map);
        shown_.map_note = std::move(drawn.note);
    }

    void add_figures()
    {
        const auto lowest = climate_.lowest_nights();
        const auto seasons = climate::seasons_of(climate_.monthly, climate_.rain);
        const bool winter = seasons.temperature == climate::TemperatureSeasons::Winter;
        // 1 in 10 has a night as cold as `tenth`; 9 in 10 one as cold as `ninetieth`.
        add_figure(winter ? tr("Lowest night of a winter") : tr("Lowest night of a year"),
                   (winter ? tr("%1; 8 winters in 10: %2 to %3") : tr("%1; 8 years in 10: %2 to %3"))
                       .arg(temperature(lowest.mean), words_.bare(lowest.tenth), words_.bare(lowest.ninetieth)));
        add_figure(tr("Hardiness zone"), text(climate::hardiness_zone(lowest.mean)));
        const auto frost = climate::PlaceNights::of(climate_).dates(Celsius::from_degrees(0.0));
        add_figure(tr("Nights with frost"), frost.nights_per_year < 0.05
                                                ? tr("none")
                                                : tr("%1 a year").arg(words_.decimal(frost.nights_per_year,
                                                                                     frost.nights_per_year < 3.0 ? 1 : 0)));
        add_figure(tr("Days above %1").arg(temperature(Celsius::from_degrees(30.0))),
                   tr("%1 a year").arg(words_.decimal(climate::heat_days(climate_.monthly), 0)));
        QString error = words_.difference(climate_.expected_error);
        error.remove(QLatin1Char('+'));
        add_figure(tr("A month’s mean low is right to"), tr("about %1").arg(error));
        add_figure(tr("A frost date is right to"),
                   tr("about %1 days").arg(words_.decimal(climate_.expected_error_days, 0)));

        shown_.base = text(words::stations_in_use(climate_, units_)) + QLatin1Char('.');
        if (climate_.trend) {
            const auto trend = KelvinDelta::from_kelvins(climate_.trend->kelvins_per_decade);
            QString size = words_.difference(trend);
            size.remove(QLatin1Char('+')).remove(QChar(0x2212));
            shown_.base += (trend.kelvins() < 0.0 ? tr(" Lows there became %1 colder a decade over these years; shown, not added.")
                                                  : tr(" Lows there became %1 warmer a decade over these years; shown, not added."))
                               .arg(size);
        }
        shown_.base += tr(" These are chances, not promises.");
        shown_.credits = text(words::credits(climate_)) + tr("; coast lines: Natural Earth (public domain)") +
                         (shown_.map.towns.empty() ? QString{} : tr("; towns: GeoNames (CC BY 4.0)")) + QLatin1Char('.');
    }

    QString months(const climate::Monthly<bool>& which) const { return text(words::months(which)); }

    void add_light()
    {
        const home::YearOfSky year(climate_);
        for (const auto& spot : facts_.as_told.spots) {
            SpotLight light{.spot = spot.id,
                            .name = text(spot.name),
                            .hand = look_.hand_of(spot.name),
                            .facts = spot.view ? tr("from its window or roof as described")
                                               : tr("from your own summer and winter figure"),
                            .usual_lows = home::usual_lows(spot, climate_.monthly.low),
                            .moles = {},
                            .days = {},
                            .needs = {},
                            .months = {},
                            .plants = {}};
            const auto level = home::spot_light(spot, year);
            for (std::size_t month = 0; month < 12; ++month) {
                light.moles[month] = level[month].moles();
            }
            if (const auto spread = home::light_spread(spot, year)) {
                light.days.emplace();
                for (std::size_t month = 0; month < 12; ++month) {
                    light.days->dark[month] = (*spread)[month].dark.moles();
                    light.days->bright[month] = (*spread)[month].bright.moles();
                }
            }
            std::vector<const home::Plant*> plants;
            for (const auto& plant : facts_.as_told.plants) {
                if (plant.spot == spot.id) {
                    plants.push_back(&plant);
                }
            }
            for (const auto* plant : plants) {
                add_need(light, *plant, level);
            }
            for (std::size_t month = 0; month < 12; ++month) {
                QStringList lacking;
                for (const auto* plant : plants) {
                    if (level[month].moles() < plant->light_to_thrive.moles()) {
                        lacking.append(text(plant->name));
                    }
                }
                const QString name = text(words::phrase(words::month_name(month)));
                const QString moles = words_.decimal(level[month].moles(), 1);
                const QString who = plants.empty()    ? QString{}
                                    : lacking.empty() ? tr("enough for all")
                                                      : tr("less than %1 would like").arg(lacking.join(QStringLiteral(", ")));
                const QString days = light.days ? tr("%1 to %2").arg(words_.decimal(light.days->dark[month], 1),
                                                                     words_.decimal(light.days->bright[month], 1))
                                                : QString{};
                const QString sentence = light.days ? tr("%1: %2 moles a day, 9 days in 10: %3. %4").arg(name, moles, days, who)
                                                    : tr("%1: %2 moles a day. %3").arg(name, moles, who);
                light.months.push_back({name, moles, days, QString{}, who, sentence});
            }
            shown_.light.push_back(std::move(light));
        }
    }

    void add_need(SpotLight& light, const home::Plant& plant, const climate::Monthly<DailyLight>& level)
    {
        climate::Monthly<bool> thrives{};
        climate::Monthly<bool> starves{};
        for (std::size_t month = 0; month < 12; ++month) {
            thrives[month] = level[month].moles() >= plant.light_to_thrive.moles();
            starves[month] = level[month].moles() < plant.light_to_survive.moles();
        }
        const auto some = [](const climate::Monthly<bool>& which) { return std::ranges::find(which, true) != which.end(); };
        const auto every = [](const climate::Monthly<bool>& which) { return std::ranges::find(which, false) == which.end(); };
        QString words = every(thrives)  ? tr("enough all year")
                        : some(thrives) ? tr("enough in %1").arg(months(thrives))
                                        : tr("never enough to thrive");
        if (some(starves)) {
            words += every(starves) ? tr("; all year too little to live on")
                                    : tr("; too little to live on in %1").arg(months(starves));
        }
        const QString wants = tr("thrives from %1").arg(words_.decimal(plant.light_to_thrive.moles(), 1));
        light.needs.push_back({text(plant.name), plant.light_to_thrive.moles()});
        light.plants.push_back({text(plant.name), wants, words, tr("%1, %2: %3.").arg(text(plant.name), wants, words)});
    }

    double shown_difference(KelvinDelta value) const
    {
        return words_.fahrenheit() ? value.fahrenheit_degrees() : value.kelvins();
    }

    void add_offsets()
    {
        const auto season = climate_.nights();
        for (const auto& spot : facts_.as_told.spots) {
            if (home::is_outdoors(spot.kind)) {
                shown_.offsets.push_back(course_of(spot, season));
            }
        }
    }

    OffsetCourse course_of(const home::Spot& spot, const climate::NightModel& season) const
    {
        const auto evidence = home::offset_evidence(spot.id, facts_.log, season);
        OffsetCourse course{.spot = spot.id,
                            .name = text(spot.name),
                            .hand = look_.hand_of(spot.name),
                            .steps = {},
                            .nights = {},
                            .now = {},
                            .range = {},
                            .kinds = {},
                            .rows = {}};
        const auto step_of = [&](climate::NightOffset offset) {
            const auto [low, high] = words::nine_in_ten(offset);
            return OffsetCourse::Step{shown_difference(offset.mean), shown_difference(low), shown_difference(high)};
        };
        home::LearnedOffset known = home::learn_offset(spot.offset, {});
        course.steps.push_back(step_of(known.usual));
        for (std::size_t count = 1; count <= evidence.size(); ++count) {
            known = home::learn_offset(spot.offset, std::span{evidence}.first(count));
            course.steps.push_back(step_of(known.usual));
            const auto& night = evidence[count - 1];
            course.nights.push_back({shown_difference(night.difference), night.kind});
            const QString sky = night.kind == climate::NightKind::ClearCalm ? tr("clear, calm")
                                : night.kind == climate::NightKind::Other   ? tr("cloud or wind")
                                                                            : tr("sky not noted");
            const auto reading = std::ranges::find_if(facts_.log.readings, [&](const home::Reading& of) {
                return of.spot == spot.id && of.night == night.night;
            });
            const QString low = reading != facts_.log.readings.end() ? temperature(reading->low) : QString{};
            const QString date = words_.short_date(night.night);
            const QString difference = words_.difference(night.difference);
            course.rows.insert(course.rows.begin(),
                               {date, low, difference, sky,
                                tr("Night to %1: %2, %3 against the open air, %4").arg(date, low, difference, sky)});
        }
        course.now = tr("%1 now").arg(words_.difference(known.usual.mean));
        const auto& last = course.steps.back();
        const auto bare = [&](double value) {
            return (value > 0.05 ? QStringLiteral("+") : QString{}) + words_.decimal(value, 1);
        };
        course.range = tr("9 in 10: %1 to %2").arg(bare(last.low), bare(last.high));
        if (!evidence.empty()) {
            course.kinds = tr("clear, calm nights: %1; cloud or wind: %2")
                               .arg(words_.difference(known.clear_calm.mean), words_.difference(known.other.mean));
        }
        return course;
    }

    const plan::HouseholdFacts& facts_;
    const climate::PlaceClimate& climate_;
    const TodayLook& look_;
    const YearWords& words_;
    words::UnitSystem units_;
    HomeFacts shown_;
};

} // namespace

HomeFacts home_facts(const plan::HouseholdFacts& facts, const TodayLook& look)
{
    HomeFacts all = Home(facts, look).all();
    all.forecasts = forecast_rows(facts, look.words);
    all.readings = facts.log.readings;
    return all;
}

} // namespace lathhouse::models
