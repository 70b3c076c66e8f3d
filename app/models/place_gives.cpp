#include "app/models/place_gives.h"

#include "app/models/word_form.h"
#include "app/models/place_map.h"
#include "app/words/credits.h"
#include "app/words/refusal.h"
#include "app/words/words.h"
#include "core/climate/figures.h"
#include "core/climate/place_nights.h"
#include "core/sky/sun.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace lathhouse::models {

namespace {

constexpr int kDaysOfYear = 365;
constexpr int kStep = 5; // Days between two points of the picture.

std::optional<calendar::DayOfYear> date_at(const climate::EndDates& end, double percent)
{
    const auto found = end.dates.find(percent);
    return found == end.dates.end() ? std::nullopt : found->second;
}

class Gives {
    Q_DECLARE_TR_FUNCTIONS(PlaceGives)

public:
    Gives(const climate::PlaceClimate& climate, const YearWords& words, calendar::Date today)
        : climate_(climate), words_(words), today_(today), nights_(climate::PlaceNights::of(climate)),
          frost_(nights_.dates(Celsius::from_degrees(0.0)))
    {
    }

    PlaceGives all()
    {
        const auto units = unit_system_of(words_);
        given_.map = place_map(climate_, words_).map;
        add_frost();
        add_figures();
        add_nights();
        given_.stations = stations(units);
        given_.base = text(words::stations_in_use(climate_, units)) + tr(". These are chances, not promises.");
        given_.credits = text(words::credits(climate_)) + tr("; coast lines: Natural Earth (public domain)") +
                         tr("; towns: GeoNames (CC BY 4.0).");
        for (const auto& warning : climate_.warnings) {
            given_.warning += (given_.warning.isEmpty() ? QString{} : QStringLiteral(" ")) + upper_first(text(words::refusal(warning))) + QLatin1Char('.');
        }
        return std::move(given_);
    }

private:
    void add(const QString& label, const QString& value)
    {
        given_.figures.push_back({label, value, tr("%1: %2").arg(label, value)});
    }
    QString name_of(const calendar::DayOfYear& day) const
    {
        return words_.day_and_month(day.next_on_or_after(today_));
    }

    void add_frost()
    {
        switch (frost_.state) {
        case climate::ThresholdState::Never:
            given_.nights.words = tr("no frost");
            add(tr("Frost"), tr("none in an ordinary year"));
            return;
        case climate::ThresholdState::NoWindow:
            given_.nights.words = tr("frost in any month");
            add(tr("Frost"), tr("possible in every month"));
            return;
        case climate::ThresholdState::NoSeason:
            given_.nights.words = tr("no season");
            add(tr("Frost"), frost_.nights_per_year < 0.05 ? tr("none; there is no cold season here")
                                                           : tr("chance per night, no season here"));
            return;
        case climate::ThresholdState::Ordinary:
            break;
        }
        given_.nights.words = tr("no frost, most years");
        add(tr("Last frost"), two_dates(frost_.last, tr("half the years by %1, 1 in 10 after %2")));
        add(tr("First frost"), two_dates(frost_.first, tr("half the years by %1, 1 in 10 by %2")));
    }

    /// The date of half the years and that of one in ten.
    QString two_dates(const climate::EndDates& end, const QString& both) const
    {
        constexpr double kHalf = 50.0;
        constexpr double kTenth = 10.0;
        const auto half = date_at(end, kHalf);
        const auto tenth = date_at(end, kTenth);
        if (half && tenth) {
            return both.arg(name_of(*half), name_of(*tenth));
        }
        return tenth ? tr("1 year in 10: %1; most years have none").arg(name_of(*tenth)) : tr("not in most years; %1 nights a year").arg(words_.decimal(frost_.nights_per_year, frost_.nights_per_year < 9.95 ? 1 : 0));
    }

    void add_figures()
    {
        add(tr("Hardiness zone"), tr("%1, lowest night about %2")
                                      .arg(text(climate::hardiness_zone(climate_.lowest_nights().mean)),
                                           words_.temperature(climate_.lowest_nights().mean)));
        int shortest = 24 * 60;
        int longest = 0;
        for (int month = 1; month <= 12; ++month) {
            const int minutes = day_minutes(calendar::Date(today_.year(), static_cast<unsigned short>(month), 21));
            shortest = std::min(shortest, minutes);
            longest = std::max(longest, minutes);
        }
        add(tr("Day length"), tr("%1 to %2").arg(words_.day_length(shortest), words_.day_length(longest)));
        QString error = words_.difference(climate_.expected_error);
        error.remove(QLatin1Char('+'));
        constexpr double kTenth = 10.0;
        if (!date_at(frost_.last, kTenth) && !date_at(frost_.first, kTenth)) { // No date that could be wrong.
            add(tr("Right to about"), tr("%1 in a month’s lows").arg(error));
            return;
        }
        add(tr("Right to about"), tr("%1 in a month’s lows, %2 days in a frost date")
                                      .arg(error, words_.decimal(nights_.expected_error_days(climate_, Celsius::from_degrees(0.0)), 0)));
    }

    int day_minutes(calendar::Date date) const
    {
        return static_cast<int>(std::lround(sky::sun_day(climate_.position, date).day_length_seconds / 60.0));
    }

    void add_nights()
    {
        auto& year = given_.nights;
        const calendar::Date first(2001, 1, 1); // Any common year.
        year.freezing = words_.shown(Celsius::from_degrees(0.0));
        const auto& model = nights_.model();
        for (int day = 0; day <= kDaysOfYear; day += kStep) {
            const calendar::Date date = first + calendar::Days(std::min(day, kDaysOfYear - 1));
            const auto of_year = calendar::DayOfYear::of(date);
            year.days.push_back({static_cast<double>(day) / kDaysOfYear,
                                 words_.shown(model.quantile(of_year, Probability::literal(0.05))),
                                 words_.shown(model.quantile(of_year, Probability::literal(0.5))),
                                 words_.shown(model.quantile(of_year, Probability::literal(0.95))),
                                 static_cast<double>(day_minutes(date)) / (24.0 * 60.0)});
        }
        const auto place = [&](const climate::EndDates& end, double percent) -> std::optional<double> {
            const auto day = frost_.state == climate::ThresholdState::Ordinary ? date_at(end, percent) : std::nullopt;
            return day ? std::optional{static_cast<double>(calendar::days_between(first, day->next_on_or_after(first))) /
                                       kDaysOfYear}
                       : std::nullopt;
        };
        year.last_half = place(frost_.last, 50.0);
        year.last_tenth = place(frost_.last, 10.0);
        year.first_tenth = place(frost_.first, 10.0);
        year.first_half = place(frost_.first, 50.0);
        const auto coldest = std::ranges::min_element(year.days, {}, &PlaceNightsYear::Day::middle);
        const auto warmest = std::ranges::max_element(year.days, {}, &PlaceNightsYear::Day::middle);
        given_.spoken = tr("Night lows through the year: middle %1 in the coldest week, %2 in the warmest.")
                            .arg(words_.whole(static_cast<int>(std::lround(coldest->middle))) + QChar(0x202F) + words_.unit(),
                                 words_.whole(static_cast<int>(std::lround(warmest->middle))) + QChar(0x202F) + words_.unit());
    }

    QString stations(words::UnitSystem units) const
    {
        if (climate_.stations.empty()) {
            return {};
        }
        const auto [nearest, farthest] = std::ranges::minmax(climate_.stations, {}, &climate::StationInUse::distance);
        const QString far = text(words::distance(farthest.distance, units));
        if (climate_.stations.size() == 1) {
            return tr("1 station, %1 away").arg(far);
        }
        return tr("%1 stations, %2 to %3 away")
            .arg(climate_.stations.size())
            .arg(text(words::distance(nearest.distance, units)), far);
    }

    const climate::PlaceClimate& climate_;
    const YearWords& words_;
    calendar::Date today_;
    climate::PlaceNights nights_;
    climate::ThresholdDates frost_;
    PlaceGives given_;
};

} // namespace

PlaceGives place_gives(const climate::PlaceClimate& climate, const YearWords& words, calendar::Date today)
{
    return Gives(climate, words, today).all();
}

} // namespace lathhouse::models
