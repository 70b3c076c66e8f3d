// What is logged on the page Plants as measured: its repeats, when in the day, with what and by whom.
#include "app/clock.h"
#include "app/models/days_ago.h"
#include "app/models/plants_model.h"
#include "app/models/typed_decimal.h"
#include "app/models/typed_measure.h"
#include "app/models/typed_time.h"
#include "app/models/word_form.h"
#include "app/words/measurement_words.h"
#include "app/words/us_units.h"
#include "core/home/measured_time.h"

#include <utility>

namespace lathhouse::models {

namespace {

constexpr double kMostPot = 1000.0; // As the form of a plant takes.

} // namespace

void PlantsModel::measuredIn(const QString& zone, const QString& pot, const QString& mix)
{
    measured_in_ = {zone.trimmed(), pot.trimmed(), mix.trimmed()};
}

QString PlantsModel::potUnit() const
{
    return look_.words.units() == Units::Us ? tr("qt") : tr("L");
}

bool PlantsModel::logMeasured(const QString& number, int measure, int method, const QString& time, const QString& by,
                              const QString& note, int days_ago)
{
    clear_error();
    const MeasuredIn in = std::exchange(measured_in_, {});
    const auto refuse = [this](const QString& why) {
        fail_with(why);
        return false;
    };
    if (dateAgo(days_ago).isEmpty()) {
        return refuse(tr("Write how many days ago it was, 0 to %1.").arg(kLongestDaysAgo));
    }
    const auto plants = targets();
    if (plants.empty()) {
        return refuse(tr("Choose a plant first: arrow keys, or a click."));
    }
    if (plants.size() > 1) {
        return refuse(tr("One plant is measured at a time; take the marks off with Escape."));
    }
    if (is_refused(plants)) {
        return false;
    }
    const auto kinds = home::every_measurement_kind();
    if (measure < 0 || measure >= static_cast<int>(kinds.size())) {
        return refuse(tr("Choose what was measured."));
    }
    const auto kind = kinds[static_cast<std::size_t>(measure)];
    home::Measurement made{.plant = plants.front(),
                           .kind = kind,
                           .measured = look_.today - calendar::Days{days_ago},
                           .repeats = {},
                           .method = method >= 0 && method <= static_cast<int>(home::MeasurementMethod::Photo)
                                         ? static_cast<home::MeasurementMethod>(method)
                                         : home::usual_method(kind),
                           .entered = now()};
    if (number.trimmed().isEmpty()) {
        return refuse(tr("Write what was read, such as 27.3; repeats with a semicolon between."));
    }
    for (const auto& typed : number.split(QLatin1Char(';'))) {
        const auto value = typed_measure(typed, kind, look_.words);
        if (!value) {
            return refuse(tr("“%1” is no number. Write it such as 27.3.").arg(typed.trimmed()));
        }
        made.repeats.push_back(*value);
    }
    const auto& household = facts_.ground->household;
    if (!time.trimmed().isEmpty()) {
        made.time = typed_time(time);
        if (!made.time) {
            return refuse(tr("“%1” is no time of day. Write it such as 14:30.").arg(time.trimmed()));
        }
        made.time_zone = household.place.time_zone;
    }
    if (!made.time && !in.zone.isEmpty()) {
        return refuse(tr("A time zone goes with a time of day; write the time too, or leave the zone blank."));
    }
    if (made.time && !in.zone.isEmpty()) {
        if (!home::set_time(made, *made.time, in.zone.toStdString(), household.place.time_zone)) {
            return refuse(tr("No time zone is called “%1”. Write it such as Europe/Rome.").arg(in.zone));
        }
        if (made.measured > look_.today) {
            return refuse(tr("%1 in %2 is after today at home. Write how many days ago it was there.").arg(time.trimmed(), in.zone));
        }
    }
    made.by = by.trimmed().toStdString();
    made.note = note.trimmed().toStdString();
    if (const auto* plant = household.plant(plants.front())) {
        made.pot = plant->pot_volume;
    }
    if (!in.pot.isEmpty()) {
        const auto volume = typed_decimal(in.pot);
        if (!volume || !(*volume > 0.0) || *volume > kMostPot) {
            return refuse(tr("The pot’s volume is a number above 0, such as 12, or is left blank."));
        }
        made.pot = Litres::from_litres(*volume * (look_.words.units() == Units::Us ? words::kLitresInAQuart : 1.0));
    }
    made.mix = in.mix.toStdString();
    if (const auto sound = home::check(made); !sound) {
        fail(sound.error());
        return false;
    }
    const QString whom = target_words(plants);
    const QString said = text(words::measured_value(made, unit_system_of(look_.words)));
    PlantEntries entries;
    entries.measurements.push_back(std::move(made));
    return write(std::move(entries),
                 days_ago == 0 ? tr("%1: %2 %3 today.").arg(whom, text(words::measured(kind)), said)
                               : tr("%1: %2 %3 on %4.").arg(whom, text(words::measured(kind)), said, dateAgo(days_ago)));
}

} // namespace lathhouse::models
