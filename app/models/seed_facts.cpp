#include "app/models/seed_facts.h"

#include "app/models/apostrophes.h"
#include "app/models/known_lot.h"
#include "app/models/translated.h"
#include "app/models/word_form.h"
#include "app/words/phrase.h"
#include "app/words/refusal.h"
#include "app/words/source_words.h"
#include "app/words/sowing_words.h"
#include "app/words/table_words.h"
#include "app/potting.h"
#include "core/plan/sowing_calendar.h"
#include "core/plan/tray_progress.h"

#include <algorithm>

namespace lathhouse::models {

namespace {

/// "28 Mar to 4 Apr", or one date.
QString span_words(const YearWords& words, const plan::DateSpan& span)
{
    return span.from == span.to ? words.day_and_month(span.from)
                                : tr("%1 to %2").arg(words.day_and_month(span.from), words.day_and_month(span.to));
}

class Sheet {
    Q_DECLARE_TR_FUNCTIONS(SeedFacts)

public:
    Sheet(const SeedGround& ground, const plan::SowingPlan& plan, const TodayLook& look)
        : ground_(ground), plan_(plan), kind_(*plan.kind), look_(look), words_(look.words), units_(unit_system_of(look.words))
    {
        sheet_.name = printed_apostrophes(text(words::table_text(kind_.name())));
        sheet_.botanical = text(kind_.botanical_name);
    }

    SowingSheet of_crop(int plants)
    {
        say_amount(plants, text(words::germination_basis(kind_)));
        add_dates();
        add_notes();
        return std::move(sheet_);
    }

    SowingSheet of_lot(const KnownLot& lot, int plants)
    {
        sheet_.name = text(lot.lot->name);
        say_amount(plants, tr("%1, %2").arg(seeds_percent(words_, plan_.seeds_rate), lot_basis(lot, words_)));
        add_dates();
        add_lot_notes(lot);
        add_notes();
        for (const auto* tray : ground_.facts.seeds.trays_of(lot.lot->id)) {
            add_tray(*tray, lot);
        }
        return std::move(sheet_);
    }

private:
    QString day(calendar::Date date) const { return words_.short_date(date); }
    /// The first date of the sheet says the year, where it is not this one.
    QString first_day(calendar::Date date) const
    {
        return date.year() == look_.today.year() ? day(date) : words_.date_with_year(date);
    }
    QString span(const plan::DateSpan& dates) const { return span_words(words_, dates); }
    void add(const QString& label, const QString& value, const QString& why)
    {
        sheet_.dates.push_back(
            {label, value, why, why.isEmpty() ? tr("%1: %2").arg(label, value) : tr("%1: %2; %3").arg(label, value, why)});
    }

    void say_amount(int plants, const QString& rate)
    {
        const QString wanted = plants == 1 ? tr("1 plant") : tr("%1 plants").arg(plants);
        sheet_.amount = plan_.seeds ? tr("Sow %1 for %2").arg(*plan_.seeds == 1 ? tr("1 seed") : tr("%1 seeds").arg(*plan_.seeds), wanted)
                                    : tr("Over 100,000 seeds would be needed for %1").arg(wanted);
        sheet_.sure = tr("enough 19 times in 20, at %1").arg(rate);
    }

    QString ready_word() const
    {
        switch (kind_.ready_what) {
        case plants::ReadyWhat::Flower:
            return tr("first flower");
        case plants::ReadyWhat::Leaves:
            return tr("full leaf");
        case plants::ReadyWhat::Harvest:
            break;
        }
        return tr("first ripe");
    }

    void add_dates()
    {
        if (!plan_.season) {
            sheet_.notes.append(text(words::no_sowing_date(plan_, units_)));
            for (const auto& way : plan_.no_date->ways) {
                sheet_.notes.append(tr("What would help: %1").arg(text(words::way_out(way))));
            }
            return;
        }
        const auto& season = *plan_.season;
        const auto until = [&](const plan::DateSpan& dates) {
            return dates.to > dates.from ? tr("until %1").arg(words_.day_and_month(dates.to)) : QString{};
        };
        const auto mix = [&](const plan::Emergence& emergence) {
            return tr("in a mix at %1").arg(words_.temperature(emergence.mix)) +
                   (emergence.warmed ? tr(", warmed")
                    : emergence.mix < kind_.germ_best_low
                        ? tr("; best at %1 to %2").arg(words_.bare(kind_.germ_best_low), words_.temperature(kind_.germ_best_high))
                        : QString{});
        };
        if (season.sow_indoors) {
            add(tr("Sow indoors"), first_day(season.sow_indoors->from), until(*season.sow_indoors));
            if (season.emerge_indoors) {
                add(tr("Comes up"), span(season.emerge_indoors->dates), mix(*season.emerge_indoors));
            }
            if (season.hardening_from) {
                add(tr("Harden off from"), day(*season.hardening_from), tr("two weeks, a little longer each day"));
            }
            if (season.plant_out) {
                add(tr("Plant out"), day(season.plant_out->from),
                    tr("%1 for a night at %2 still to come; soil %3")
                        .arg(YearWords::chance(season.damage_chance), words_.temperature(kind_.damaging_night()),
                             words_.temperature(season.soil)));
            }
        }
        if (season.sow_outdoors) {
            const auto& sow = *season.sow_outdoors;
            add(tr("Sow outdoors"),
                season.sow_indoors || sow.from.year() == look_.today.year() ? span(sow)
                                                                            : tr("%1 to %2").arg(words_.day_and_month(sow.from), words_.date_with_year(sow.to)),
                tr("soil %1").arg(words_.temperature(season.soil)));
            if (season.emerge_outdoors && !season.emerge_indoors) {
                add(tr("Comes up"), span(season.emerge_outdoors->dates), tr("sown on the first day"));
            }
        }
        const auto& ready = season.ready ? season.ready : season.ready_outdoors;
        if (ready) {
            QString label = ready_word();
            label[0] = label[0].toUpper();
            add(label, span(*ready), tr("quick to slow sorts"));
        }
        add(tr("Last useful sowing"), season.last_useful ? day(*season.last_useful) : tr("all year"),
            season.last_useful ? QString{} : tr("nothing ends the season here"));
        set_bar(season, ready);
        sheet_.notes.append(text(words::sowing_begins(plan_, units_)));
        sheet_.notes.append(text(words::sowing_ends(plan_, units_)));
    }

    void set_bar(const plan::SowingSeason& season, const std::optional<plan::DateSpan>& ready)
    {
        SowingBar bar{.from = look_.today,
                      .to = look_.today + calendar::Days{90},
                      .sow = season.sow_indoors ? season.sow_indoors : season.sow_outdoors,
                      .indoors = season.sow_indoors.has_value(),
                      .up = {},
                      .harden = season.sow_indoors ? season.hardening_from : std::nullopt,
                      .out = season.sow_indoors ? season.plant_out : std::nullopt,
                      .ready = ready,
                      .last_useful = season.last_useful,
                      .ready_word = ready_word()};
        const auto& emergence = season.emerge_indoors ? season.emerge_indoors : season.emerge_outdoors;
        if (emergence) {
            bar.up = emergence->dates;
        }
        if (!bar.sow) {
            return;
        }
        bar.from = bar.sow->from - calendar::Days{6};
        calendar::Date last = bar.sow->from;
        for (const auto& span : {bar.up, bar.out, bar.ready}) {
            if (span) {
                last = std::max(last, span->to);
            }
        }
        // What lies far behind the first harvest would squeeze the dates that matter.
        if (bar.out) {
            bar.out->to = std::min(bar.out->to, std::max(bar.out->from, bar.ready ? bar.ready->from : bar.out->to));
        }
        last = bar.ready ? bar.ready->to : last;
        bar.to = last + calendar::Days{10};
        if (bar.last_useful && (*bar.last_useful > bar.to || *bar.last_useful < bar.from)) {
            bar.last_useful.reset(); // Said in the rows below.
        }
        QStringList parts;
        for (const auto& row : sheet_.dates) {
            parts.append(row.back().toString());
        }
        sheet_.bar_words = closed(parts.join(QStringLiteral(". ")));
        sheet_.bar = bar;
    }

    void add_lot_notes(const KnownLot& lot)
    {
        switch (lot.judgement->state) {
        case home::LotState::PastUse:
            sheet_.notes.append(tr("The lot is past use: even the best it can be lies below the %1. Sow the rest thickly for "
                                   "what it gives, or buy new.")
                                    .arg(text(words::germination_basis(kind_))));
            break;
        case home::LotState::Doubtful:
            sheet_.notes.append(tr("The lot is %1 years old; such seed usually keeps %2 (common practice, no source). Count "
                                   "ten in a damp cloth first.")
                                    .arg(lot.judgement->age_years.value_or(0))
                                    .arg(kind_.keeps_years));
            break;
        case home::LotState::Empty:
            sheet_.notes.append(tr("Nothing is left of the lot."));
            break;
        case home::LotState::Good:
            break;
        }
        const auto left = ground_.facts.seeds.seeds_left(lot.lot->id);
        if (left && plan_.seeds && *left < *plan_.seeds && *left > 0) {
            sheet_.notes.append(tr("The lot has %1 seeds left, fewer than the %2 that are needed.").arg(*left).arg(*plan_.seeds));
        }
    }

    void add_notes()
    {
        sheet_.notes.append(text(words::how_to_sow(kind_, units_)));
        for (const auto& note : words::sowing_notes(plan_, units_)) {
            sheet_.notes.append(text(note));
        }
        sheet_.sources = tr("Depth, spacing and days to readiness are common practice without a source. How sure the figures of this "
                            "crop are: %1. ")
                             .arg(text(words::table_text(kind_.confidence))) +
                         text(words::sources_line(words::source_keys(kind_.sources))).trimmed();
    }

    void add_tray(const home::Tray& tray, const KnownLot& lot)
    {
        const auto progress = plan::progress_of(tray, ground_.facts.seeds, *lot.kind, lot.rate->rate, lot.room, look_.today);
        const int emerged = progress.counted ? progress.counted->emerged : 0;
        QString expected;
        if (!progress.expected_on) {
            expected = tr("Nothing comes up at %1; it wants %2 to %3.")
                           .arg(words_.temperature(progress.mix), words_.bare(kind_.germ_best_low),
                                words_.temperature(kind_.germ_best_high));
        } else if (progress.over) {
            expected = tr("The counting is over.");
        } else {
            expected = tr("Comes up %1 at %2; about %3 to be expected by today.")
                           .arg(span(*progress.expected_on), words_.temperature(progress.mix),
                                words_.decimal(progress.expected_by_now, 0));
        }
        if (progress.behind) {
            expected += tr(" That is fewer than 19 of 20 such trays would show.");
        }
        QString head = tr("Tray %1, sown %2").arg(tray.id).arg(tray.sown.year() == look_.today.year() ? words_.short_date(tray.sown) : words_.long_date_with_year(tray.sown));
        if (const auto* spot = tray.spot ? ground_.facts.as_told.spot(*tray.spot) : nullptr) {
            head = tr("%1, %2").arg(head, text(spot->name));
        }
        if (!tray.note.empty()) {
            expected += QLatin1Char(' ') + text(tray.note);
        }
        const bool last = progress.counted && progress.counted->last;
        sheet_.trays.push_back({tray.id, head, emerged, tray.seeds, expected, last,
                                tr("%1: %2 of %3 up. %4").arg(head).arg(emerged).arg(tray.seeds).arg(expected),
                                seedlings_left(ground_.facts.seeds, tray.id)});
        sheet_.counted.push_back({tray.id, look_.today, emerged, last});
    }

    const SeedGround& ground_;
    const plan::SowingPlan& plan_;
    const plants::SeedKind& kind_;
    const TodayLook& look_;
    const YearWords& words_;
    words::UnitSystem units_;
    SowingSheet sheet_;
};

} // namespace

Result<SowingSheet> sowing_sheet(const SeedGround& ground, const SeedChoice& choice, const TodayLook& look)
{
    if (choice.lot) {
        const auto* lot = ground.facts.seeds.lot(*choice.lot);
        if (lot == nullptr) {
            return Error{ErrorCode::NotFound, words::phrase("the lot is not there any more")};
        }
        const auto known = known_lot(*lot, ground, look.today, choice);
        if (known.kind == nullptr) {
            return Error{ErrorCode::NotFound, words::phrase("the tables have no crop \"%1\", so nothing is known of its sowing", lot->crop)};
        }
        return Sheet(ground, known.sowing, look).of_lot(known, choice.plants);
    }
    const auto kind = plants::SeedReference::built_in().find(words::english_text(plain_apostrophes(text(choice.crop)).toStdString()));
    if (!kind) {
        return kind.error();
    }
    const auto plan = plan::plan_sowing(**kind, ground.facts.climate, ground.climate, sowing_wishes(choice));
    return Sheet(ground, plan, look).of_crop(choice.plants);
}

std::vector<SheetRows::Row> sowing_calendar_rows(const SeedGround& ground, const SeedChoice& choice, int days,
                                                 const TodayLook& look)
{
    auto wishes = sowing_wishes(choice);
    wishes.plants = 1;
    std::vector<SheetRows::Row> rows;
    for (const auto& sowing : plan::sowing_calendar(ground.facts.climate, ground.climate, wishes, look.today, days)) {
        const QString name = printed_apostrophes(text(words::table_text(sowing.kind->name())));
        const bool indoors = sowing.method == plan::SowingMethod::Indoors;
        const QString how = indoors ? tr("indoors") : tr("outdoors");
        const QString dates = span_words(look.words, sowing.sow);
        constexpr int kNearDays = 300; // A date farther on has its year.
        const QString ready = !sowing.ready ? QString{}
                              : calendar::days_between(look.today, sowing.ready->from) < kNearDays
                                  ? look.words.day_and_month(sowing.ready->from)
                                  : look.words.date_with_year(sowing.ready->from);
        rows.push_back({text(sowing.kind->name()), name, how, dates, ready,
                        ready.isEmpty() ? tr("%1: sow %2 %3").arg(name, how, dates)
                                        : tr("%1: sow %2 %3, ready from %4").arg(name, how, dates, ready)});
    }
    std::ranges::stable_sort(rows, {}, [](const SheetRows::Row& row) { return row[1].toString().toCaseFolded(); });
    return rows;
}

SeedFacts seed_facts(std::shared_ptr<const SeedGround> ground, const SeedChoice& choice, const TodayLook& look)
{
    SeedFacts facts{.ground = ground, .lots = {}, .ids = {}, .choice = choice, .sheet = {}, .trouble = {}};
    std::vector<KnownLot> lots;
    for (const auto& lot : ground->facts.seeds.lots) {
        lots.push_back(known_lot(lot, *ground, look.today, choice));
    }
    sort_lots(lots, *ground, choice, look.today);
    for (const auto& lot : lots) {
        facts.lots.push_back(lot_row(lot, *ground, look));
        facts.ids.push_back(lot.lot->id);
    }
    const bool gone = choice.lot && ground->facts.seeds.lot(*choice.lot) == nullptr;
    if (gone || (!choice.lot && choice.crop.empty())) {
        facts.choice.lot = facts.ids.empty() ? std::nullopt : std::optional{facts.ids.front()};
    }
    if (facts.choice.lot || !facts.choice.crop.empty()) {
        auto sheet = sowing_sheet(*ground, facts.choice, look);
        if (sheet) {
            facts.sheet = std::move(*sheet);
        } else {
            facts.trouble = words::refusal(sheet.error());
        }
    }
    return facts;
}

} // namespace lathhouse::models
