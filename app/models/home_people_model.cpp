#include "app/models/home_people_model.h"

#include "app/clock.h"
#include "app/models/plants_facts.h"
#include "app/models/word_form.h"
#include "app/words/table_words.h"
#include "core/plan/cautions.h"

#include <algorithm>

namespace lathhouse::models {

namespace {

constexpr int kMostLetters = 40;

QString named(const home::Member& member)
{
    const QString kind = HomePeopleModel::kindWord(static_cast<int>(member.kind));
    return member.name.empty() ? HomePeopleModel::tr("the %1").arg(kind) : text(member.name);
}

QString listed(const QStringList& words)
{
    if (words.size() < 2) {
        return words.join(QString{});
    }
    return HomePeopleModel::tr("%1 and %2").arg(words.mid(0, words.size() - 1).join(QStringLiteral(", ")), words.back());
}

bool is_person(home::MemberKind kind)
{
    return kind == home::MemberKind::Child;
}

/// Whether a plant can hurt a member. The plant's own mark counts where nothing is known of its kind.
bool can_hurt(const home::Plant& plant, const plants::PlantKind* kind, home::MemberKind member)
{
    if (kind == nullptr) {
        return plant.hazardous;
    }
    const auto toxic = is_person(member) ? kind->to_people : kind->to_pets;
    return toxic != plants::Toxicity::NotKnownToBe || (plant.hazardous && kind->to_people == plants::Toxicity::NotKnownToBe &&
                                                       kind->to_pets == plants::Toxicity::NotKnownToBe);
}

} // namespace

struct HomePeopleModel::People {
    std::vector<home::Member> members;
    std::vector<home::Spot> spots;
    int next_id = 1;
    std::vector<SheetRows::Row> member_rows;
    std::vector<SheetRows::Row> spot_rows;
    std::vector<SheetRows::Row> harm_rows;
    QString line;
    QString marked;
};

QString HomePeopleModel::kindWord(int kind)
{
    switch (kind) {
    case 0:
        return tr("child");
    case 1:
        return tr("cat");
    case 2:
        return tr("dog");
    default:
        return tr("other animal");
    }
}

HomePeopleModel::HomePeopleModel(PeopleDoor door, TodayLook look, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), look_(std::move(look)),
      members_({"name", "kind", "own", "reaches", "sentence"}), spots_({"name", "hand"}),
      harms_({"plant", "spot", "hand", "who", "hazard", "words", "caution", "sentence"})
{
}

HomePeopleModel::People HomePeopleModel::people_of(const plan::HouseholdFacts& facts, const TodayLook& look)
{
    People people;
    people.members = home::members_of(facts.events);
    people.next_id = home::next_member_id(facts.events);
    people.spots = facts.as_told.spots;
    for (const auto& spot : people.spots) {
        people.spot_rows.push_back({text(spot.name), look.hand_of(spot.name)});
    }
    const auto reaches = [](const home::Member& member, home::SpotId spot) {
        return std::ranges::binary_search(member.reaches, spot);
    };
    for (const auto& member : people.members) {
        QVariantList flags;
        QStringList names;
        for (const auto& spot : people.spots) {
            flags.append(reaches(member, spot.id));
            if (reaches(member, spot.id)) {
                names.append(text(spot.name));
            }
        }
        const QString kind = kindWord(static_cast<int>(member.kind));
        const QString name = upper_first(named(member));
        people.member_rows.push_back({name, kind, text(member.name), QVariant{flags},
                                      names.isEmpty() ? tr("%1, %2: reaches no spot").arg(name, kind)
                                                      : tr("%1, %2: reaches %3").arg(name, kind, listed(names))});
    }
    QStringList marked;
    for (const auto& spot : people.spots) {
        if (spot.in_reach && std::ranges::none_of(people.members, [&](const auto& of) { return reaches(of, spot.id); })) {
            marked.append(text(spot.name));
        }
    }
    if (!marked.isEmpty()) {
        people.marked = tr("Spots marked as within reach, though nobody on the list gets at them: %1.").arg(marked.size() == 1 ? marked.front() : listed(marked));
    }
    for (const auto& plant : facts.as_told.plants) {
        const auto* spot = plant.spot ? facts.as_told.spot(*plant.spot) : nullptr;
        if (spot == nullptr || !spot->in_reach) {
            continue;
        }
        const auto* kind = kind_of(plant);
        QStringList who;
        for (const auto& member : people.members) {
            if (reaches(member, spot->id) && can_hurt(plant, kind, member.kind)) {
                who.append(named(member));
            }
        }
        // Whoever comes to a spot that a hand marked may be a child or an animal.
        const bool hurts_some = can_hurt(plant, kind, home::MemberKind::Child) || can_hurt(plant, kind, home::MemberKind::Cat);
        const bool by_hand = hurts_some && who.isEmpty() && marked.contains(text(spot->name));
        if (who.isEmpty() && !by_hand) {
            continue;
        }
        const QString hazard = upper_first(hazard_in_short(plant, kind));
        QString rest;
        QStringList cautions;
        if (kind != nullptr) {
            if (!kind->hazards.empty()) {
                rest = upper_first(text(words::table_text(kind->hazards))) + QLatin1Char('.');
            }
            for (const auto* caution : plan::cautions_for_plant(*kind)) {
                cautions.append(text(words::table_text(caution->text)));
            }
        }
        if (cautions.isEmpty()) {
            for (const auto* caution : plan::cautions_for(plan::CautionTopic::ChildOrAnimal)) {
                cautions.append(text(words::table_text(caution->text)));
            }
        }
        const QString whom = who.isEmpty() ? tr("whoever comes there") : listed(who);
        people.harm_rows.push_back({text(plant.name), text(spot->name), look.hand_of(spot->name), whom, hazard, rest,
                                    cautions.join(QLatin1Char(' ')),
                                    tr("%1 at %2, within reach of %3. %4. %5 %6")
                                        .arg(text(plant.name), text(spot->name), whom, hazard, rest, cautions.join(QLatin1Char(' ')))});
    }
    const auto count = people.harm_rows.size();
    people.line = people.members.empty() && marked.isEmpty()
                      ? tr("Nobody is listed, and no spot is marked as within reach.")
                  : count == 0 ? tr("No plant that is known to hurt stands within their reach. One that is not known to may hurt all the same.")
                  : count == 1 ? tr("One plant that can hurt stands within reach.")
                               : tr("%1 plants that can hurt stand within reach.").arg(count);
    return people;
}

void HomePeopleModel::read()
{
    work<People>(
        [load = door_.load, look = look_] {
            return load().transform([&](const plan::HouseholdFacts& facts) { return people_of(facts, look); });
        },
        [this](Result<People> made) {
            if (!made) {
                fail(made.error());
                return;
            }
            known_members_ = std::move(made->members);
            known_spots_ = std::move(made->spots);
            next_id_ = std::max(next_id_, made->next_id);
            line_ = made->line;
            marked_ = made->marked;
            spots_.show(std::move(made->spot_rows));
            members_.show(std::move(made->member_rows));
            harms_.show(std::move(made->harm_rows));
            set_known();
            emit peopleChanged();
        });
}

const home::Member* HomePeopleModel::member(int row) const
{
    return row >= 0 && row < static_cast<int>(known_members_.size()) ? &known_members_[static_cast<std::size_t>(row)] : nullptr;
}

QString HomePeopleModel::called(const home::Member& member) const
{
    return upper_first(named(member));
}

std::string HomePeopleModel::note_of(const home::Member& member) const
{
    QStringList names;
    for (const auto& spot : known_spots_) {
        if (std::ranges::binary_search(member.reaches, spot.id)) {
            names.append(text(spot.name));
        }
    }
    const QString who = tr("%1, %2").arg(called(member), kindWord(static_cast<int>(member.kind)));
    return (names.isEmpty() ? tr("%1: reaches no spot").arg(who) : tr("%1: reaches %2").arg(who, listed(names)))
        .toStdString();
}

QString HomePeopleModel::too_long()
{
    return tr("The name is longer than %1 letters; a shorter one is enough.").arg(kMostLetters);
}

bool HomePeopleModel::add(int kind, const QString& name)
{
    clear_error();
    if (!known() || kind < 0 || kind >= static_cast<int>(std::size(home::kMemberKinds))) {
        return false;
    }
    if (name.trimmed().size() > kMostLetters) {
        fail_with(too_long());
        return false;
    }
    const home::Member member{next_id_++, home::kMemberKinds[kind], name.trimmed().toStdString(), {}};
    write(home::event_of_member(member, look_.today, now(), note_of(member)),
          tr("%1 is on the list. Say which spots are within reach.").arg(called(member)));
    return true;
}

bool HomePeopleModel::rename(int row, const QString& name)
{
    clear_error();
    const auto* of = member(row);
    if (of == nullptr) {
        return false;
    }
    if (name.trimmed() == text(of->name)) {
        return true;
    }
    if (name.trimmed().size() > kMostLetters) {
        fail_with(too_long());
        return false;
    }
    home::Member renamed = *of;
    renamed.name = name.trimmed().toStdString();
    const QString before = called(*of);
    known_members_[static_cast<std::size_t>(row)] = renamed; // The next change begins from here.
    write(home::event_of_member(renamed, look_.today, now(), note_of(renamed)),
          tr("%1 is now called %2.").arg(before, named(renamed)));
    return true;
}

void HomePeopleModel::setReach(int row, int spot, bool reaches)
{
    const auto* of = member(row);
    if (of == nullptr || spot < 0 || spot >= static_cast<int>(known_spots_.size())) {
        return;
    }
    const auto& at = known_spots_[static_cast<std::size_t>(spot)];
    if (std::ranges::binary_search(of->reaches, at.id) == reaches) {
        return;
    }
    home::Member changed = *of;
    if (reaches) {
        changed.reaches.insert(std::ranges::upper_bound(changed.reaches, at.id), at.id);
    } else {
        std::erase(changed.reaches, at.id);
    }
    known_members_[static_cast<std::size_t>(row)] = changed; // The next change begins from here.
    write(home::event_of_member(changed, look_.today, now(), note_of(changed)),
          reaches ? tr("%1 reaches %2; plans made from now on heed it.").arg(called(changed), text(at.name))
                  : tr("%1 does not reach %2; plans made from now on heed it.").arg(called(changed), text(at.name)));
}

void HomePeopleModel::remove(int row)
{
    if (const auto* of = member(row)) {
        write(home::event_of_parting(*of, look_.today, now(), tr("%1: off the list").arg(called(*of)).toStdString()),
              tr("%1 is off the list.").arg(called(*of)));
    }
}

void HomePeopleModel::write(home::Event event, QString words)
{
    clear_error();
    work<void>(
        [record = door_.record, event] { return record(event); },
        [this, event, words = std::move(words)](const Result<void>& kept) {
            if (!kept) {
                fail(kept.error());
                read();
                return;
            }
            done_.push_back({event, words});
            undone_.clear();
            emit undoChanged();
            say(words);
            emit written();
            read();
        });
}

void HomePeopleModel::undo()
{
    turn(done_, undone_, true);
}

void HomePeopleModel::redo()
{
    turn(undone_, done_, false);
}

void HomePeopleModel::turn(std::vector<Done>& from, std::vector<Done>& to, bool back)
{
    if (from.empty() || working()) {
        return;
    }
    clear_error();
    const Done of = from.back();
    work<void>(
        [act = back ? door_.take_back : door_.bring_back, event = of.event] { return act(event, now()); },
        [this, of, &from, &to, back](const Result<void>& turned) {
            if (!turned) {
                from.clear();
                emit undoChanged();
                fail(turned.error());
                return;
            }
            from.pop_back();
            to.push_back(of);
            emit undoChanged();
            say(back ? tr("Taken back: %1").arg(of.words) : of.words);
            emit written();
            read();
        });
}

} // namespace lathhouse::models
