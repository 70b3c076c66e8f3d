#include "app/models/place_form.h"

#include "app/models/typed_position.h"
#include "app/models/word_form.h"
#include "app/words/refusal.h"
#include "app/words/words.h"
#include "core/calendar/time_zone.h"

#include <algorithm>

// How a place form finds a town: by its name as it is typed, and by the computer's clock.

namespace lathhouse::models {

namespace {

constexpr std::size_t kTownsShown = 6;

TownChoice choice_of(const geodesy::Town& town)
{
    return {std::string{town.name}, geodesy::full_name(town), town.position, town.elevation, std::string{town.zone}};
}

/// The largest town whose clock is the computer's.
std::optional<TownChoice> town_by_clock(const geodesy::TownTable& towns)
{
    const auto zone = calendar::TimeZone::of_system();
    if (!zone) {
        return std::nullopt;
    }
    const geodesy::Town* largest = nullptr;
    for (const auto& town : towns.towns()) {
        if (town.zone == zone->name() && (largest == nullptr || town.population > largest->population)) {
            largest = &town;
        }
    }
    return largest != nullptr ? std::optional{choice_of(*largest)} : std::nullopt;
}

} // namespace

void PlaceForm::read()
{
    work<std::optional<TownChoice>>(
        [door = door_]() -> Result<std::optional<TownChoice>> {
            return door.towns().transform([](const geodesy::TownTable* towns) { return town_by_clock(*towns); });
        },
        [this](Result<std::optional<TownChoice>> guess) {
            if (guess) {
                guess_ = *guess;
            } else {
                find_trouble_ = tr("Towns cannot be looked for: %1. Coordinates work.").arg(text(words::refusal(guess.error())));
            }
            set_known();
            emit formChanged();
        });
}

void PlaceForm::setFind(const QString& find)
{
    if (find == find_) {
        return;
    }
    find_ = find;
    find_trouble_.clear();
    const bool has_digit = std::ranges::any_of(find, [](QChar letter) { return letter.isDigit(); });
    if (has_digit) {
        const auto position = typed_position(find);
        if (position) {
            ++*searched_; // What is still being looked for is not wanted now.
            choices_.clear();
            found_.show({});
            place_at(*position);
            return;
        }
        if (position.error().code != ErrorCode::Malformed) {
            find_trouble_ = tr("These are no coordinates: %1.").arg(text(words::refusal(position.error())));
        }
    }
    search();
    emit formChanged();
}

void PlaceForm::search()
{
    const int number = ++*searched_;
    constexpr int kFewest = 2; // Letters; of one alone there are thousands.
    if (find_.trimmed().size() < kFewest) {
        choices_.clear();
        found_.show({});
        return;
    }
    using Choices = std::pair<std::vector<TownChoice>, bool>; // Whether they are only near.
    work<Choices>(
        [door = door_, latest = searched_, number, name = find_.toStdString()]() -> Result<Choices> {
            if (*latest != number) {
                return Choices{};
            }
            const auto towns = door.towns();
            if (!towns) {
                return towns.error();
            }
            const auto answered = (*towns)->search(name, {}, kTownsShown);
            if (!answered) {
                return answered.error();
            }
            Choices choices{{}, true};
            for (const auto& one : *answered) {
                choices.first.push_back(choice_of(*one.town));
                choices.second = choices.second && one.match == geodesy::NameMatch::NearMiss;
            }
            return choices;
        },
        [this, latest = searched_, number](Result<Choices> answered) {
            if (*latest != number) {
                return;
            }
            choices_ = answered ? std::move(answered->first) : std::vector<TownChoice>{};
            if (!answered) {
                find_trouble_ = tr("%1.").arg(text(words::refusal(answered.error())));
                find_trouble_[0] = find_trouble_[0].toUpper();
            } else if (choices_.empty()) {
                find_trouble_ = tr("No town here is called that. Try a larger one near, or type coordinates.");
            } else {
                find_trouble_ = answered->second ? tr("No town is called that. Did you mean one of these?") : QString{};
            }
            std::vector<SheetRows::Row> rows;
            const auto units = unit_system_of(words_);
            for (const auto& choice : choices_) {
                const QString where = text(choice.where);
                const QString high = choice.elevation ? text(words::height(*choice.elevation, units)) : QString{};
                rows.push_back({where, high, high.isEmpty() ? where : tr("%1, %2 above the sea").arg(where, high)});
            }
            found_.show(std::move(rows));
            emit formChanged();
        });
}

void PlaceForm::choose(int row)
{
    if (row < 0 || row >= static_cast<int>(choices_.size())) {
        return;
    }
    const TownChoice choice = choices_[static_cast<std::size_t>(row)];
    ++*searched_;
    choices_.clear();
    found_.show({});
    find_ = text(choice.where);
    find_trouble_.clear();
    place_at(choice.position);
    if (!own_name_ && !as_filled()) {
        name_ = text(choice.name);
        emit formChanged();
    }
}

std::optional<home::Place> PlaceForm::guessed_place() const
{
    if (!guess_) {
        return std::nullopt;
    }
    return home::Place{tr("%1, guessed by the clock").arg(text(guess_->name)).toStdString(), guess_->position,
                       guess_->elevation, guess_->zone};
}

} // namespace lathhouse::models
