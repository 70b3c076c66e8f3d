#include "app/models/year_model.h"

#include "app/models/risk_stops.h"
#include "app/models/word_form.h"
#include "app/models/year_note.h"

#include <algorithm>

namespace lathhouse::models {

YearModel::YearModel(YearData year, YearSolver solver, YearWords words, QObject* parent, YearDoor door)
    : QObject(parent), year_(std::move(year)), words_(std::move(words)), planner_(std::move(solver), nullptr),
      view_(*this, static_cast<int>(year_.days.size())), plants_(this), nights_(this), cursor_(*this), sowing_rows_({"name", "sentence"}), door_(std::move(door)), today_(year_.today), edge_(*this), begin_(*this)
{
    plants_.sort();
    reading_pool_.setMaxThreadCount(1);
    connect(&planner_, &RiskPlanner::solved, this, &YearModel::take);
    connect(&planner_, &RiskPlanner::planningChanged, this, &YearModel::planningChanged);
    cursor_.say();
    planner_.want(risk_stop_);
}

YearModel::~YearModel()
{
    reading_pool_.waitForDone(); // What was to be written is written.
}

Probability YearModel::risk() const
{
    return risk_at(risk_stop_);
}

const std::vector<YearStay>& YearModel::planned(std::size_t plant) const
{
    static const std::vector<YearStay> kNone;
    return plant < solved_.stays.size() ? solved_.stays[plant] : kNone;
}

const std::vector<YearStay>& YearModel::stays(std::size_t plant) const
{
    const std::vector<YearStay>* by_hand = edge_.stays(plant);
    return by_hand != nullptr ? *by_hand : planned(plant);
}

std::vector<RiskDate> YearModel::dates(std::size_t plant) const
{
    return dates_of(year_, plant, stays(plant), risk());
}

void YearModel::setCursorDay(int day)
{
    day = std::clamp(day, 0, dayCount() - 1);
    if (day == cursor_day_) {
        return;
    }
    cursor_day_ = day;
    view_.follow(day);
    plants_.cursor_moved();
    emit cursorChanged();
    cursor_.say();
}

void YearModel::stepMonths(int months)
{
    // Added to a date itself, months would lead from the last day of one to the last of another.
    const calendar::Date from = at_cursor().date;
    const calendar::Date first = calendar::Date{from.year(), from.month(), 1} + boost::gregorian::months(months);
    const int day = std::min(from.day().as_number(), first.end_of_month().day().as_number());
    setCursorDay(calendar::days_between(year_.today, first) + day - 1);
}

QStringList YearModel::riskStops() const
{
    return risk_stops();
}

void YearModel::setRiskStop(int stop)
{
    if (stop < 0 || stop >= static_cast<int>(std::size(kRiskStops)) || stop == risk_stop_) {
        return;
    }
    risk_stop_ = stop;
    emit riskChanged();
    emit datesChanged();
    emit riskSpokenChanged();
    planner_.want(risk_stop_);
}

void YearModel::setCurrentRow(int row)
{
    row = std::clamp(row, 0, std::max(0, static_cast<int>(order().size()) - 1));
    if (row == current_row_) {
        return;
    }
    current_row_ = row;
    emit currentRowChanged();
    emit cursor_.whyChanged();
    emit riskSpokenChanged();
}

QString YearModel::riskSpoken() const
{
    QString spoken = tr("Risk you accept, %1").arg(riskStops()[risk_stop_]);
    if (current_row_ >= static_cast<int>(order().size())) {
        return spoken;
    }
    const std::size_t plant = order()[static_cast<std::size_t>(current_row_)];
    QStringList ends;
    for (const RiskDate& date : dates(plant)) {
        ends.append((date.going_out ? tr("out %1") : tr("in %1"))
                        .arg(words_.day_and_long_month(year_.days[date.chosen].date)));
    }
    if (!ends.isEmpty()) {
        spoken += tr(". %1 %2").arg(text(year_.plants[plant].name), ends.join(tr(", ")));
    }
    return spoken;
}

QString YearModel::footnote() const
{
    return year_note(year_, solved_, words_);
}

QString YearModel::credits() const
{
    QStringList sentences;
    for (const std::string& credit : year_.credits) {
        sentences.append(text(credit));
    }
    return sentences.join(QLatin1Char(' '));
}

QString YearModel::night_sentence(std::size_t place) const
{
    const YearDay& day = year_.days[place];
    QString strip;
    if (year_.strip.kind != YearStrip::Kind::FrostNights) {
        strip = tr(" %1: %2.").arg(stripLabel(), strip_value(year_, words_, place));
    }
    return tr("%1. Night low %2, 9 in 10: %3 to %4.%5 Frost this night %6, frost after this night %7. Day %8.")
        .arg(words_.long_date(day.date), words_.temperature(day.low_middle), words_.bare(day.low_cold),
             words_.bare(day.low_warm), strip, YearWords::chance(day.frost), YearWords::chance(day.frost_after),
             words_.day_length(day.day_length_minutes));
}

QString YearModel::plant_sentence(std::size_t plant) const
{
    QStringList sentences{text(year_.plants[plant].name)};
    if (!year_.plants[plant].hazard.empty()) {
        sentences.last() += tr(", %1").arg(text(year_.plants[plant].hazard));
    }
    if (!year_.plants[plant].pinned.empty()) {
        sentences.last() += tr(", %1").arg(text(year_.plants[plant].pinned));
    }
    const auto date = [this](int day) {
        return words_.day_and_long_month(
            year_.days[static_cast<std::size_t>(std::clamp(day, 0, dayCount() - 1))].date);
    };
    for (const YearStay& stay : stays(plant)) {
        const YearSpot& spot = year_.spots[stay.spot];
        if (spot.outdoors && stay.ladder_days > 0) {
            sentences.append(tr("Hardening %1 to %2, %3 steps")
                                 .arg(date(stay.first - stay.ladder_days), date(stay.first - 1))
                                 .arg(kStepsOut));
        }
        const bool all_year = stay.first <= 0 && stay.last >= dayCount() - 1; // From 14 March to 13 March says less.
        QString sentence = all_year ? tr("%1 all year").arg(text(spot.name))
                                    : tr("%1 %2 to %3").arg(text(spot.name), date(stay.first), date(stay.last));
        if (stay.risk_out && stay.risk_in) {
            sentence += tr(", risk %1 out, %2 in")
                            .arg(YearWords::chance(*stay.risk_out), YearWords::chance(*stay.risk_in));
        }
        sentences.append(sentence);
        if (!stay.stays_in.empty()) {
            sentences.append(upper_first(text(stay.stays_in)));
        }
    }
    return sentences.join(QStringLiteral(". ")) + QLatin1Char('.');
}

void YearModel::say_again()
{
    planner_.forget();
    nights_.begin_year();
    nights_.end_year();
    plants_.cursor_moved();
    plants_.dates_moved();
    emit unitsChanged();
    cursor_.say();
    planner_.want(risk_stop_);
}

} // namespace lathhouse::models
