#include "app/models/seeds_model.h"

#include "app/clock.h"
#include "app/models/days_ago.h"
#include "app/models/typed_number.h"
#include "app/words/phrase.h"
#include "app/words/refusal.h"
#include "core/base/parse.h"

#include <algorithm>

namespace lathhouse::models {

namespace {

constexpr double kWarmest = 45.0;

/// How warm it is where seeds may lie, as it is typed: 0 to kWarmest degrees; else nullopt.
std::optional<Celsius> typed_warmth(const QString& typed, const YearWords& words)
{
    const auto warmth = typed_degrees(typed, words);
    return warmth && warmth->degrees() >= 0.0 && warmth->degrees() <= kWarmest ? warmth : std::nullopt;
}

} // namespace

SeedsModel::SeedsModel(HouseholdDoor door, TodayLook look, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), look_(std::move(look)),
      lots_({"lot", "name", "botanical", "year", "seedsLeft", "mean", "low", "high", "counted", "share", "basis", "next",
             "sentence"}),
      dates_({"label", "value", "why", "sentence"}),
      trays_({"tray", "head", "emerged", "seeds", "expected", "last", "sentence", "toPot"}),
      sowings_({"crop", "name", "how", "dates", "ready", "sentence"}), spots_({"name", "hand"})
{
}

int SeedsModel::currentRow() const
{
    const auto there = std::ranges::find(facts_.ids, facts_.choice.lot.value_or(-1));
    return there == facts_.ids.end() ? -1 : static_cast<int>(there - facts_.ids.begin());
}

void SeedsModel::setCurrentRow(int row)
{
    setSowingDays(0); // Its sheet stands where the list did.
    if (facts_.ids.empty()) {
        return;
    }
    const auto place = static_cast<std::size_t>(std::clamp(row, 0, static_cast<int>(facts_.ids.size()) - 1));
    if (facts_.choice.lot != facts_.ids[place]) {
        facts_.choice.lot = facts_.ids[place];
        facts_.choice.crop.clear();
        emit seedsChanged();
        choose();
    }
}

void SeedsModel::setByName(bool by_name)
{
    if (by_name != facts_.choice.by_name) {
        facts_.choice.by_name = by_name;
        emit seedsChanged();
        read();
    }
}

void SeedsModel::setPlants(int plants)
{
    const int held = std::clamp(plants, 1, kMostPlants);
    if (held != facts_.choice.plants) {
        facts_.choice.plants = held;
        emit plantsChanged();
        choose();
    }
}

QString SeedsModel::room() const
{
    return facts_.choice.room ? look_.words.bare(*facts_.choice.room) : QString{};
}

bool SeedsModel::standAt(const QString& typed)
{
    clear_error();
    std::optional<Celsius> room;
    if (!typed.trimmed().isEmpty()) {
        room = typed_warmth(typed, look_.words);
        if (!room) {
            fail_with(tr("Write how warm it is where the trays stand, %1 to %2.")
                          .arg(look_.words.bare(Celsius::from_degrees(0.0)), look_.words.temperature(Celsius::from_degrees(kWarmest))));
            return false;
        }
    }
    facts_.choice.room = room;
    emit roomChanged();
    read();
    show_sowings();
    return true;
}

void SeedsModel::setRiskStop(int stop)
{
    if (stop < 0 || stop >= static_cast<int>(std::size(kRiskStops)) || stop == risk_stop_) {
        return;
    }
    risk_stop_ = stop;
    facts_.choice.risk = risk_at(stop);
    emit riskChanged();
    follow();
    show_sowings();
}

void SeedsModel::setSowingDays(int days)
{
    constexpr int kMost = 366;
    const int held = std::clamp(days, 0, kMost);
    if (held != sowing_days_) {
        sowing_days_ = held;
        emit sowingDaysChanged();
        show_sowings();
    }
}

void SeedsModel::show_sowings()
{
    if (!facts_.ground || sowing_days_ == 0) {
        sowings_.show({});
        return;
    }
    using Rows = std::vector<SheetRows::Row>;
    work<Rows>(
        [ground = facts_.ground, choice = facts_.choice, days = sowing_days_, look = look_]() -> Result<Rows> {
            return sowing_calendar_rows(*ground, choice, days, look);
        },
        [this, days = sowing_days_](Result<Rows> rows) {
            if (days == sowing_days_ && rows) {
                sowings_.show(std::move(*rows));
            }
        });
}

QString SeedsModel::crop() const
{
    return facts_.sheet && !facts_.choice.lot ? facts_.sheet->name : QString{};
}

void SeedsModel::chooseLot(const QString& name)
{
    wanted_lot_ = name;
    choose_wanted();
}

void SeedsModel::choose_wanted()
{
    if (wanted_lot_.isEmpty() || !facts_.ground) {
        return;
    }
    const auto& lots = facts_.ground->facts.seeds.lots;
    const auto lot = std::ranges::find(lots, wanted_lot_.toStdString(), &home::SeedLot::name);
    const auto row = lot == lots.end() ? facts_.ids.end() : std::ranges::find(facts_.ids, lot->id);
    if (row != facts_.ids.end()) {
        wanted_lot_.clear();
        setCurrentRow(static_cast<int>(row - facts_.ids.begin()));
    }
}

void SeedsModel::chooseCrop(const QString& name)
{
    clear_error();
    if (name.trimmed().isEmpty()) {
        fail_with(tr("Write the name of a crop, such as tomato or zinnia."));
        return;
    }
    if (!facts_.ground) {
        return;
    }
    setSowingDays(0);
    SeedChoice wanted = facts_.choice;
    wanted.lot.reset();
    wanted.crop = name.trimmed().toStdString();
    const int number = ++choices_;
    work<SowingSheet>([ground = facts_.ground, wanted, look = look_] { return sowing_sheet(*ground, wanted, look); },
                      [this, wanted, number](Result<SowingSheet> made) {
                          if (number != choices_) {
                              return;
                          }
                          if (!made) { // What was shown stays.
                              fail(made.error());
                              return;
                          }
                          facts_.choice = wanted;
                          facts_.sheet = std::move(*made);
                          emit seedsChanged();
                          show_sheet();
                      });
}

void SeedsModel::choose()
{
    if (!facts_.ground || (!facts_.choice.lot && facts_.choice.crop.empty())) {
        return;
    }
    clear_error();
    const int number = ++choices_;
    work<SowingSheet>(
        [ground = facts_.ground, choice = facts_.choice, look = look_] { return sowing_sheet(*ground, choice, look); },
        [this, number](Result<SowingSheet> made) {
            if (number != choices_) {
                return;
            }
            if (made) {
                facts_.sheet = std::move(*made);
            } else {
                facts_.sheet.reset();
                fail(made.error());
            }
            show_sheet();
        });
}

void SeedsModel::show_sheet()
{
    dates_.show(facts_.sheet ? facts_.sheet->dates : std::vector<SheetRows::Row>{});
    trays_.show(facts_.sheet ? facts_.sheet->trays : std::vector<SheetRows::Row>{});
    emit sheetChanged();
}

void SeedsModel::take(SeedFacts facts)
{
    facts_ = std::move(facts);
    lots_.show(facts_.lots);
    std::vector<SheetRows::Row> spots;
    if (facts_.ground) {
        for (const auto& spot : facts_.ground->facts.as_told.spots) {
            spots.push_back({text(spot.name), look_.hand_of(spot.name)});
        }
    }
    spots_.show(std::move(spots));
    if (!facts_.trouble.empty()) {
        fail(facts_.trouble);
    }
    set_known();
    emit seedsChanged();
    emit plantsChanged();
    show_sheet();
    choose_wanted();
}

void SeedsModel::read()
{
    const int number = ++choices_;
    const int writes = writes_;
    work<SeedFacts>(
        [load = door_.load, choice = facts_.choice, look = look_] {
            return load().transform([&](const plan::HouseholdFacts& facts) {
                return seed_facts(std::make_shared<const SeedGround>(facts, look.today), choice, look);
            });
        },
        [this, number, writes](Result<SeedFacts> made) {
            if (known() && writes != writes_) {
                return; // A count was written meanwhile, and all is read again after it: what this knows is shown no more.
            }
            awaiting_.clear();
            if (!made) {
                fail(made.error());
            } else if (number == choices_) {
                take(std::move(*made));
            } else { // Something else was chosen meanwhile; the list is new all the same.
                const SeedChoice choice = facts_.choice;
                auto facts = std::move(*made);
                facts.choice = choice;
                facts.sheet = facts_.sheet;
                facts.trouble.clear();
                take(std::move(facts));
                choose();
            }
        });
}

void SeedsModel::setDaysAgo(int days)
{
    if (days != days_ago_) {
        days_ago_ = days;
        emit daysAgoChanged();
    }
}

QString SeedsModel::dayAgo() const
{
    return days_ago_ < 1 || days_ago_ > kLongestDaysAgo ? QString{}
                                                    : past_date(look_.today - calendar::Days{days_ago_}, look_.today, look_.words);
}

std::optional<calendar::Date> SeedsModel::day_meant()
{
    if (days_ago_ < 0 || days_ago_ > kLongestDaysAgo) {
        fail_with(tr("Write how many days ago it was, 0 to %1.").arg(kLongestDaysAgo));
        return std::nullopt;
    }
    return look_.today - calendar::Days{days_ago_};
}

home::TrayCount SeedsModel::counted_by(int tray_row, calendar::Date on) const
{
    home::TrayCount latest = facts_.sheet->counted[static_cast<std::size_t>(tray_row)];
    if (latest.on == on || !facts_.ground) {
        return latest;
    }
    home::TrayCount then{latest.tray, on, 0, false};
    for (const auto& count : facts_.ground->facts.seeds.counts_of(latest.tray)) {
        if (count.on <= on) {
            then.emerged = count.emerged;
            then.last = count.last;
        }
    }
    for (const auto& count : awaiting_) {
        if (count.tray == latest.tray && count.on == on) {
            then = count;
        }
    }
    return then;
}

QString SeedsModel::count_words(const home::TrayCount& count) const
{
    QString words = tr("%1 up in tray %2").arg(count.emerged).arg(count.tray);
    if (count.on != look_.today) {
        words = tr("%1 on %2").arg(words, past_date(count.on, look_.today, look_.words));
    }
    return count.last ? tr("%1, no more to come").arg(words) : words;
}

void SeedsModel::count(int tray_row, int more)
{
    if (!facts_.sheet || tray_row < 0 || tray_row >= trays_.rowCount()) {
        return;
    }
    const auto on = day_meant();
    if (!on) {
        return;
    }
    home::TrayCount next = counted_by(tray_row, *on);
    next.emerged += more;
    const int seeds = trays_.at(tray_row, QStringLiteral("seeds")).toInt();
    if (next.emerged < 0 || next.emerged > seeds) {
        fail_with(next.emerged < 0 ? tr("Fewer than none cannot have come up.")
                                   : tr("Only %1 seeds were sown in this tray.").arg(seeds));
        return;
    }
    write(next, tray_row);
}

void SeedsModel::setLast(int tray_row, bool last)
{
    if (!facts_.sheet || tray_row < 0 || tray_row >= trays_.rowCount()) {
        return;
    }
    const auto on = day_meant();
    if (!on) {
        return;
    }
    home::TrayCount next = counted_by(tray_row, *on);
    if (next.last != last) {
        next.last = last;
        write(next, tray_row);
    }
}

std::optional<home::SpotId> SeedsModel::spot_at(int place) const
{
    const auto& known = facts_.ground->facts.as_told.spots;
    return place >= 0 && place < static_cast<int>(known.size()) ? std::optional{known[static_cast<std::size_t>(place)].id}
                                                                : std::nullopt;
}

bool SeedsModel::sow(const QString& seeds, int spot, const QString& mix, const QString& note)
{
    clear_error();
    if (!facts_.ground || !facts_.choice.lot) {
        return false;
    }
    const auto number = parse_integer(seeds.trimmed().toStdString());
    if (!number || *number < 1) {
        fail_with(tr("Write how many seeds went into the tray, such as 12."));
        return false;
    }
    const auto left = facts_.ground->facts.seeds.seeds_left(*facts_.choice.lot);
    if (left && *number > *left) {
        fail_with(tr("Of this lot %1 seeds are left. Sow fewer, or add the packet that they came from.").arg(*left));
        return false;
    }
    const auto on = day_meant();
    if (!on) {
        return false;
    }
    std::optional<Celsius> warmth;
    if (!mix.trimmed().isEmpty()) {
        warmth = typed_warmth(mix, look_.words);
        if (!warmth) {
            fail_with(tr("Write how warm the mix is, %1 to %2, or leave it blank.")
                          .arg(look_.words.bare(Celsius::from_degrees(0.0)), look_.words.temperature(Celsius::from_degrees(kWarmest))));
            return false;
        }
    }
    const home::Tray tray{.id = 0,
                          .lot = *facts_.choice.lot,
                          .sown = *on,
                          .seeds = *number,
                          .spot = spot_at(spot),
                          .mix = warmth,
                          .note = note.trimmed().toStdString()};
    here_.forget(); // What was counted before is no longer what came last.
    say(*on != look_.today
            ? (*number == 1 ? tr("%1: 1 seed was sown on %2. Undo above the pages takes it back.").arg(name(), dayAgo())
                            : tr("%1: %2 seeds were sown on %3. Undo above the pages takes it back.")
                                  .arg(name()).arg(*number).arg(dayAgo()))
        : *number == 1 ? tr("%1: 1 seed was sown today. Undo above the pages takes it back.").arg(name())
                       : tr("%1: %2 seeds were sown today. Undo above the pages takes it back.").arg(name()).arg(*number));
    write_and_read([sow = door_.sow, tray, today = look_.today, at = now()] { return sow(tray, today, at); },
                   [this](const Error& error) {
                       say({});
                       fail(words::phrase("this was not kept: %1", words::refusal(error)));
                   });
    return true;
}

void SeedsModel::write(const home::TrayCount& count, int tray_row)
{
    clear_error();
    const auto place = static_cast<std::size_t>(tray_row);
    // Shown at once; the next click counts on.
    facts_.sheet->counted[place] = count;
    auto& row = facts_.sheet->trays[place];
    row[2] = count.emerged;
    row[5] = count.last;
    trays_.show(facts_.sheet->trays);
    ++writes_;
    awaiting_.push_back(count);
    here_.add(count);
    say(tr("Counted: %1.").arg(count_words(count)));
    write_and_read([keep = door_.count, count, today = look_.today, at = now()] { return keep(count, today, at); },
                   [this, count](const Error& error) {
                       here_.drop_written([&](const home::TrayCount& of) {
                           return of.tray == count.tray && of.emerged == count.emerged && of.last == count.last;
                       });
                       say({});
                       fail(words::phrase("the count was not kept: %1", words::refusal(error)));
                   });
}

void SeedsModel::undo()
{
    clear_error();
    const auto last = here_.undo();
    if (!last) {
        fail_with(tr("Nothing was counted in this window yet that could be taken back; Undo above the pages takes back what the journal had before."));
        return;
    }
    say(tr("Taken back: %1.").arg(count_words(*last)));
    write_and_read([back = door_.take_back, last = *last, at = now()] { return back(last, at); },
                   [this](const Error& error) {
                       here_.forget_undone();
                       say({});
                       fail(error);
                   });
}

void SeedsModel::forget()
{
    here_.forget();
    say({});
}

void SeedsModel::redo()
{
    clear_error();
    const auto last = here_.redo();
    if (!last) {
        fail_with(tr("Nothing was taken back last in this window that could be done again."));
        return;
    }
    say(tr("Counted again: %1.").arg(count_words(*last)));
    write_and_read([again = door_.bring_back, last = *last, at = now()] { return again(last, at); },
                   [this](const Error& error) {
                       here_.forget_written();
                       say({});
                       fail(error);
                   });
}

} // namespace lathhouse::models
