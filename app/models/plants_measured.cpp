// What is logged on the page Plants as measured: its repeats, when in the day, with what and by whom.
#include "app/clock.h"
#include "app/models/days_ago.h"
#include "app/models/plants_model.h"
#include "app/models/typed_measure.h"
#include "app/models/typed_time.h"
#include "app/models/word_form.h"
#include "app/words/measurement_words.h"

namespace lathhouse::models {

bool PlantsModel::logMeasured(const QString& number, int measure, int method, const QString& time, const QString& by,
                              const QString& note, int days_ago)
{
    clear_error();
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
    made.by = by.trimmed().toStdString();
    made.note = note.trimmed().toStdString();
    if (const auto* plant = household.plant(plants.front())) {
        made.pot = plant->pot_volume;
    }
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
