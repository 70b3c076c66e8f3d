#include "app/models/night_line_model.h"

#include "app/models/typed_decimal.h"
#include "app/models/typed_number.h"
#include "core/climate/line_dates.h"

#include <QRegularExpression>

#include <algorithm>
#include <cmath>
#include <span>
#include <utility>

namespace lathhouse::models {

namespace {

/// A spot outdoors with what is known of its nights.
struct LineSpot {
    std::string name;
    climate::NightOffset offset;
};

struct LineAnswer {
    climate::LineDates dates;
    std::optional<climate::NightsBetween> between;
    calendar::DayOfYear turn;
    bool own; ///< The place has a record of its own.
    std::optional<LineSpot> spot; ///< nullopt in the open air.
    std::optional<double> percent; ///< The further chance that was asked for.
};

/// A chance as a grower types it, in per cent: "12" and "1 in 12" (in any language), "1:12", "1/12", "2 in 5"; or "7 %". None below
/// 1 in 1000, and none that is sure.
std::optional<double> typed_chance(const QString& typed)
{
    static const QRegularExpression of_so_many(
        QStringLiteral("^(\\d{1,4})(?:\\s*[:/]\\s*|\\s+\\p{L}[\\p{L} ]*\\s+)(\\d{1,4})$"));
    const QString trimmed = typed.trimmed();
    std::optional<double> percent;
    if (const auto match = of_so_many.match(trimmed); match.hasMatch()) {
        percent = 100.0 * match.captured(1).toInt() / std::max(1, match.captured(2).toInt());
    } else if (trimmed.endsWith(QLatin1Char('%'))) {
        percent = typed_decimal(trimmed, {"%"});
    } else if (const auto number = typed_decimal(trimmed); number && *number > 1.0) {
        percent = 100.0 / *number;
    }
    constexpr double kLeast = 0.1 - 1e-9;
    return percent && *percent >= kLeast && *percent < 100.0 ? percent : std::nullopt;
}

struct TwoDates {
    calendar::Date from;
    calendar::Date to;
};

Result<LineAnswer> line_answer(const climate::PlaceClimate& place, std::optional<LineSpot> spot, Celsius line,
                               const std::optional<TwoDates>& asked, std::optional<double> percent)
{
    const auto further = percent ? std::span<const double>{&*percent, 1} : std::span<const double>{};
    const auto nights = climate::PlaceNights::of(place);
    LineAnswer answer{.dates = spot ? climate::dates_at_spot(place, line, spot->offset, further)
                                    : climate::dates_of_lines(place, std::span{&line, 1}, further),
                      .between = {},
                      .turn = nights.model().turn().last_day(),
                      .own = place.own != nullptr,
                      .spot = std::move(spot),
                      .percent = percent};
    if (asked) {
        const auto between = climate::nights_between(nights, asked->from, asked->to, line,
                                                     answer.spot ? answer.spot->offset : climate::NightOffset{});
        if (!between) {
            return between.error();
        }
        answer.between = *between;
    }
    return answer;
}

/// Dates and their words in the language of whoever reads.
class LineWords {
    Q_DECLARE_TR_FUNCTIONS(NightLine)

public:
    LineWords(const LineAnswer& answer, const TodayLook& look)
        : answer_(answer), of_(answer.dates.lines.front()), look_(look), words_(look.words)
    {
    }

    QString head() const
    {
        const QString nights = words_.decimal(of_.nights_per_year, 1);
        const QString line = words_.temperature(of_.threshold);
        switch (of_.state) {
        case climate::ThresholdState::Never:
            return tr("No night at or below %1 in any season.").arg(line);
        case climate::ThresholdState::NoWindow:
            return tr("%1 nights a year at or below %2, some in every month: no stretch of the year is free of them.").arg(nights, line);
        case climate::ThresholdState::NoSeason:
            return tr("%1 nights a year at or below %2. There is no cold season here, so there are no dates.").arg(nights, line);
        case climate::ThresholdState::Ordinary:
            break;
        }
        const auto without = of_.first.share_without;
        return without.fraction() > 0.0
                   ? tr("%1 nights a year at or below %2; seasons without any: %3.").arg(nights, line, YearWords::chance(without))
                   : tr("%1 nights a year at or below %2.").arg(nights, line);
    }

    std::vector<SheetRows::Row> rows() const
    {
        std::vector<SheetRows::Row> rows;
        if (of_.state == climate::ThresholdState::Never || of_.state == climate::ThresholdState::NoSeason) {
            return rows;
        }
        for (const auto& [percent, last] : of_.last.dates) {
            const auto share = Probability::from_percent(percent);
            if (!share) {
                continue;
            }
            const auto free = of_.free_days.find(percent);
            const QString chance = is_asked(percent) ? asked_chance(percent) : YearWords::chance(*share);
            if (!rows.empty() && rows.back().front().toString() == chance) {
                if (!is_asked(percent)) {
                    continue; // Two that are called alike say nothing more.
                }
                rows.pop_back(); // The one that was asked for stands.
            }
            const QString days = free != of_.free_days.end() && free->second ? words_.whole(*free->second) : none();
            const auto first = of_.first.dates.find(percent);
            const QString by = first != of_.first.dates.end() ? day(first->second) : none();
            rows.push_back({chance, day(last), by, days,
                            tr("%1: one more after %2, the first one by %3, more than %4 days without").arg(chance, day(last), by, days)});
        }
        return rows;
    }

    QString basis() const
    {
        const auto& dates = answer_.dates;
        const QString rests = dates.counted && answer_.own ? tr("Counted in the household’s own record.")
                              : dates.counted              ? tr("Counted at the station that stands here.")
                              : dates.moved && answer_.own ? tr("From monthly figures, moved to the dates of the household’s own record.")
                              : dates.moved                ? tr("From monthly figures and the dates counted at stations near.")
                                                           : tr("From monthly figures.");
        const bool dated = of_.state == climate::ThresholdState::Ordinary || of_.state == climate::ThresholdState::NoWindow;
        const QString open =
            answer_.spot ? tr("At %1, whose nights are %2 against the open air, as far as is known. These are chances, not promises.")
                               .arg(text(answer_.spot->name), words_.difference(answer_.spot->offset.mean))
                         : tr("In the open air at home. These are chances, not promises.");
        return dated ? tr("%1 Right to about %2 days at the middle chances. %3").arg(rests, words_.decimal(dates.error_days, 0), open)
                     : tr("%1 %2").arg(rests, open);
    }

    QString between(const TwoDates& asked) const
    {
        const auto& of = *answer_.between;
        QString said = tr("A night at or below %1 among the %2 from %3 to %4: %5; %6 such nights on average.")
                           .arg(words_.temperature(of_.threshold))
                           .arg(of.nights)
                           .arg(words_.date_with_year(asked.from), words_.date_with_year(asked.to), YearWords::chance(of.any),
                                words_.decimal(of.expected, 1));
        if (of.before && of.after) {
            said += QLatin1Char(' ') + tr("One before these, since the turn of the season on %1: %2. One after these, up to the next turn: %3.")
                                           .arg(day(answer_.turn), YearWords::chance(*of.before), YearWords::chance(*of.after));
        }
        return said;
    }

private:
    /// By its own number, "1 in 14", as it was asked for; from one in two on "9.5 in 10".
    QString asked_chance(double percent) const
    {
        const auto figure = [this](double number) { return words_.decimal(number, std::abs(number - std::round(number)) < 0.05 ? 0 : 1); };
        return percent > 50.0 ? tr("%1 in 10").arg(figure(percent / 10.0)) : tr("1 in %1").arg(figure(100.0 / percent));
    }
    bool is_asked(double percent) const { return answer_.percent && std::abs(percent - *answer_.percent) < 1e-9; }
    static QString none() { return QStringLiteral("–"); }
    QString day(const std::optional<calendar::DayOfYear>& day) const
    {
        return day ? words_.day_and_month(day->next_on_or_after(look_.today)) : none();
    }

    const LineAnswer& answer_;
    const climate::ThresholdDates& of_;
    const TodayLook& look_;
    const YearWords& words_;
};

} // namespace

NightLineModel::NightLineModel(std::function<Result<plan::HouseholdFacts>()> load, TodayLook look, QObject* parent)
    : SheetModel(parent), load_(std::move(load)), look_(std::move(look)), dates_({"chance", "last", "first", "free", "sentence"})
{
}

void NightLineModel::know(std::vector<Place> spots)
{
    if (spots == spots_) {
        return;
    }
    const auto chosen = place_ > 0 ? spots_[static_cast<std::size_t>(place_ - 1)].spot : home::SpotId{};
    spots_ = std::move(spots);
    const auto found = std::ranges::find(spots_, chosen, &Place::spot);
    place_ = found == spots_.end() ? 0 : 1 + static_cast<int>(found - spots_.begin());
    emit placesChanged();
}

QStringList NightLineModel::places() const
{
    QStringList names{tr("the open air at home")};
    for (const auto& spot : spots_) {
        names.append(spot.name);
    }
    return names;
}

void NightLineModel::setPlace(int place)
{
    if (place != place_ && place >= 0 && place <= static_cast<int>(spots_.size())) {
        place_ = place;
        emit placesChanged();
    }
}

void NightLineModel::set_chance_wrong(bool wrong)
{
    if (wrong != chance_wrong_) {
        chance_wrong_ = wrong;
        emit chanceWrongChanged();
    }
}

bool NightLineModel::ask(const QString& line, const QString& from, const QString& to, const QString& chance)
{
    clear_error();
    set_chance_wrong(false);
    const auto typed = typed_temperature(line, look_.words);
    if (!typed.value) {
        fail_with(typed.trouble, typed.instead);
        return false;
    }
    std::optional<TwoDates> asked;
    if (!from.trimmed().isEmpty() || !to.trimmed().isEmpty()) {
        const auto first = look_.words.typed_date(from);
        const auto last = look_.words.typed_date(to);
        if (!first || !last) {
            fail_with(tr("“%1” is no date. Write both, such as %2, or leave both blank.")
                          .arg((first ? to : from).trimmed(), look_.words.date_with_year(look_.today)));
            return false;
        }
        const int days = calendar::days_between(*first, *last);
        if (days < 0 || days > climate::kMostDaysBetween) {
            fail_with(tr("The last night must be the first, or up to a year later."));
            return false;
        }
        asked = TwoDates{*first, *last};
    }
    std::optional<double> further;
    if (!chance.trimmed().isEmpty()) {
        further = typed_chance(chance);
        if (!further) {
            fail_with(tr("A further chance is written such as 1 in 12 or just 12, down to 1 in 1000; or leave it blank."));
            set_chance_wrong(true);
            return false;
        }
    }
    work<LineAnswer>(
        [load = load_, value = *typed.value, asked, further,
         spot = place_ > 0 ? std::optional{spots_[static_cast<std::size_t>(place_ - 1)].spot} : std::nullopt]() -> Result<LineAnswer> {
            const auto facts = load();
            if (!facts) {
                return facts.error();
            }
            if (!spot) {
                return line_answer(facts->climate, {}, value, asked, further);
            }
            const auto household = facts->household();
            const auto* chosen = household.spot(*spot);
            if (chosen == nullptr || !home::is_outdoors(chosen->kind)) {
                return Error{ErrorCode::NotFound, "the spot is not outdoors any more; choose another"};
            }
            return line_answer(facts->climate, LineSpot{chosen->name, chosen->offset}, value, asked, further);
        },
        [this, asked](const Result<LineAnswer>& answer) {
            if (!answer) {
                fail(answer.error());
                return;
            }
            const LineWords words(*answer, look_);
            head_ = words.head();
            basis_ = words.basis();
            between_ = asked ? words.between(*asked) : QString{};
            dates_.show(words.rows());
            set_known();
            emit answered();
        });
    return true;
}

} // namespace lathhouse::models
