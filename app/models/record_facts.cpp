#include "app/models/record_facts.h"

#include "app/models/translated.h"
#include "app/models/word_form.h"
#include "app/words/refusal.h"
#include "app/words/words.h"
#include "core/climate/record_check.h"
#include "core/geodesy/geodesic.h"

#include <QLocale>

#include <algorithm>

namespace lathhouse::models {

namespace {

using climate::DoubtKind;

QString doubt_in_words(DoubtKind kind, const YearWords& words)
{
    switch (kind) {
    case DoubtKind::Impossible:
        return tr("with a value never read on land (taken as gaps)");
    case DoubtKind::LowAboveHigh:
        return tr("with the low above the high (taken as gaps)");
    case DoubtKind::Nought:
        return tr("with low and high both %1 (taken as gaps)").arg(words.temperature(Celsius::from_degrees(0.0)));
    case DoubtKind::Stuck:
        return tr("in a run of twenty or more equal lows (kept)");
    case DoubtKind::FarOff:
        return tr("six standard deviations from the month’s mean (kept)");
    }
    return {};
}

class Record {
    Q_DECLARE_TR_FUNCTIONS(RecordFacts)

public:
    Record(const home::Household& household, const ShippedClimate& shipped, const YearWords& words)
        : household_(household), record_(*household.own_record), shipped_(shipped), words_(words),
          units_(unit_system_of(words))
    {
    }

    RecordFacts all()
    {
        facts_.is_there = true;
        const auto checked = climate::check_record(record_.days);
        const auto summary = climate::summary_of(checked.record);
        facts_.title = summary ? tr("%1, %2 to %3")
                                     .arg(text(record_.name))
                                     .arg(static_cast<int>(summary->first.year()))
                                     .arg(static_cast<int>(summary->last.year()))
                               : text(record_.name);
        const auto away = geodesy::distance(household_.place.position, record_.position);
        facts_.origin = tr("From %1, taken in on %2. Kept %3 from the household’s place, at %4.")
                            .arg(text(record_.file), words_.date_with_year(record_.imported),
                                 text(words::distance(away, units_)), text(words::height(record_.elevation, units_)));
        if (summary) {
            add_summary(*summary);
        }
        add_doubts(checked.doubts);
        compare();
        say_use();
        return std::move(facts_);
    }

private:
    void figure(const QString& label, const QString& value)
    {
        facts_.figures.push_back({label, value, tr("%1: %2").arg(label, value)});
    }

    void add_summary(const climate::RecordSummary& summary)
    {
        figure(tr("First and last night"),
               tr("%1 to %2").arg(words_.date_with_year(summary.first), words_.date_with_year(summary.last)));
        figure(tr("Nights with a low"), tr("%1 of %2, %3 %")
                                            .arg(words_.whole(summary.days_with_low), words_.whole(summary.days),
                                                 words_.decimal(summary.completeness().percent(), 0)));
        figure(tr("Cold seasons complete enough"), tr("%1 of %2").arg(summary.counted_seasons).arg(summary.seasons));
        if (summary.gaps.empty()) {
            figure(tr("Gaps of five days and more"), tr("none"));
        } else {
            const auto& longest = std::ranges::max(summary.gaps, {}, &climate::Gap::days);
            figure(tr("Gaps of five days and more"), tr("%1; the longest %2 days from %3")
                                                         .arg(summary.gaps.size())
                                                         .arg(longest.days())
                                                         .arg(words_.date_with_year(longest.from)));
        }
        if (!summary.years_without.empty()) {
            QStringList years;
            for (const int year : summary.years_without) {
                years.append(QString::number(year));
            }
            figure(tr("Years without any low"), years.join(tr(", ")));
        }
    }

    void add_doubts(const std::vector<climate::Doubt>& doubts)
    {
        for (const auto kind : {DoubtKind::Impossible, DoubtKind::LowAboveHigh, DoubtKind::Nought, DoubtKind::Stuck,
                                DoubtKind::FarOff}) {
            int days = 0;
            QString first;
            for (const auto& doubt : doubts) {
                if (doubt.kind == kind) {
                    days += calendar::days_between(doubt.from, doubt.to) + 1;
                    first = first.isEmpty() ? words_.date_with_year(doubt.from) : first;
                }
            }
            if (days > 0) {
                figure(tr("Doubtful days"), days == 1
                                                ? tr("one %1: %2").arg(doubt_in_words(kind, words_), first)
                                                : tr("%1 %2, the first %3").arg(days).arg(doubt_in_words(kind, words_), first));
            }
        }
        if (doubts.empty()) {
            figure(tr("Doubtful days"), tr("none"));
        }
    }

    void compare()
    {
        const auto table = shipped_(record_.position, record_.elevation);
        if (!table) {
            facts_.verdict = tr("No shipped station is near enough to compare it with.");
            return;
        }
        const auto comparison = climate::compare_with_table(record_.days, *table);
        const auto said = [this](const std::optional<Celsius>& value) {
            return value ? words_.bare(*value) : QStringLiteral("–");
        };
        const auto apart = [this](const std::optional<KelvinDelta>& value) {
            return value ? words_.difference(*value) : QStringLiteral("–");
        };
        for (std::size_t m = 0; m < comparison.months.size(); ++m) {
            const auto& month = comparison.months[m];
            const QString name = QLocale().standaloneMonthName(static_cast<int>(m) + 1);
            const QString low = said(month.low);
            const QString low_apart = apart(month.low_difference);
            const QString high = said(month.high);
            const QString high_apart = apart(month.high_difference);
            const QString table_low = words_.bare(table->monthly.low[m]);
            const QString table_high = words_.bare(table->monthly.high[m]);
            facts_.months.push_back({name, low, table_low, low_apart, high, table_high, high_apart,
                                     tr("%1: mean low %2 here, %3 by the table, apart %4; mean high %5 here, %6 by the "
                                        "table, apart %7")
                                         .arg(name, low, table_low, low_apart, high, table_high, high_apart)});
        }
        QString reasons;
        for (const auto& reason : comparison.reasons) {
            QString sentence = text(words::refusal(reason));
            sentence[0] = sentence[0].toUpper();
            reasons += QLatin1Char(' ') + sentence + QLatin1Char('.');
        }
        switch (comparison.verdict) {
        case climate::Verdict::Plausible:
            facts_.verdict = tr("Plausible: every month lies as near to the shipped table as one may expect.") + reasons;
            break;
        case climate::Verdict::Doubtful:
            facts_.verdict = tr("Doubtful.") + reasons;
            facts_.doubtful = true;
            break;
        case climate::Verdict::Implausible:
            facts_.verdict = tr("Implausible.") + reasons;
            facts_.doubtful = true;
            facts_.implausible = text(words::refusal(comparison.reasons.front()));
            break;
        }
    }

    void say_use()
    {
        const auto own =
            climate::climate_from_own(household_.own_record, household_.place.position, household_.place.elevation);
        if (own) {
            const auto& base = own->own->station.base;
            facts_.use = tr("It answers here before the shipped table, with its years %1 to %2.")
                             .arg(base.first_year)
                             .arg(base.last_year);
        } else {
            facts_.use = tr("It is not used: %1. The shipped table answers.").arg(text(words::refusal(own.error())));
        }
    }

    const home::Household& household_;
    const climate::OwnRecord& record_;
    const ShippedClimate& shipped_;
    const YearWords& words_;
    words::UnitSystem units_;
    RecordFacts facts_;
};

} // namespace

RecordFacts record_facts(const home::Household& household, const ShippedClimate& shipped, const YearWords& words)
{
    return household.own_record ? Record(household, shipped, words).all() : RecordFacts{};
}

} // namespace lathhouse::models
