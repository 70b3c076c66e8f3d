#include "app/models/lot_form.h"

#include "app/models/apostrophes.h"
#include "app/models/typed_decimal.h"
#include "app/words/refusal.h"
#include "app/words/table_words.h"
#include "core/base/parse.h"
#include "core/geodesy/place_name.h"
#include "core/plants/seed_kind.h"

#include <QStringList>

#include <algorithm>

namespace lathhouse::models {

LotForm::LotForm(calendar::Date today, QObject* parent)
    : QObject(parent), today_(today), crops_({"words", "detail", "sentence"})
{
    connect(this, &LotForm::changed, this, [this] {
        if (!trouble_.isEmpty()) {
            fail(-1, {});
        }
    });
}

std::optional<home::SeedLot> LotForm::fail(int field, const QString& words)
{
    trouble_field_ = field;
    trouble_ = words;
    emit troubleChanged();
    return std::nullopt;
}

void LotForm::setCrop(const QString& crop)
{
    if (crop == crop_) {
        return;
    }
    crop_ = crop;
    constexpr std::size_t kShown = 6;
    const auto wanted = geodesy::name_key(crop.toStdString());
    std::vector<SheetRows::Row> rows;
    found_.clear();
    for (const auto& kind : plants::SeedReference::built_in().kinds()) {
        const auto answers = [&](const std::string& name) { return geodesy::name_key(name).find(wanted) != std::string::npos; };
        if (!wanted.empty() && rows.size() < kShown && (answers(kind.botanical_name) || std::ranges::any_of(kind.names, answers) ||
                                                      std::ranges::any_of(words::foreign_texts(kind.name()), answers))) {
            const QString name = printed_apostrophes(text(words::table_text(kind.name())));
            rows.push_back({name, text(kind.botanical_name), tr("%1, %2").arg(name, text(kind.botanical_name))});
            found_.push_back(kind.botanical_name);
        }
    }
    crops_.show(std::move(rows));
    emit changed();
}

QString LotForm::usual_name(const QString& crop) const
{
    return tr("%1 %2").arg(plain_apostrophes(crop)).arg(today_.year()); // So that it is found at the command line too.
}

void LotForm::choose(int row)
{
    if (row < 0 || row >= static_cast<int>(found_.size())) {
        return;
    }
    crop_ = crops_.at(row, QStringLiteral("words")).toString();
    if (name_.trimmed().isEmpty()) {
        name_ = usual_name(crop_);
    }
    found_.clear();
    crops_.show({});
    emit changed();
}

void LotForm::clear(std::vector<std::string> taken, const QString& crop)
{
    taken_ = std::move(taken);
    for (QString* field : {&crop_, &name_, &year_, &percent_, &seeds_, &note_}) {
        field->clear();
    }
    crop_ = crop;
    found_.clear();
    crops_.show({});
    emit changed();
}

std::optional<home::SeedLot> LotForm::lot()
{
    fail(-1, {});
    const auto& reference = plants::SeedReference::built_in();
    const auto typed = plain_apostrophes(crop_.trimmed()).toStdString();
    const auto kind = reference.find(words::english_text(typed));
    if (!kind) {
        QStringList near;
        for (const auto& name : reference.near_names(typed, 3)) {
            near.append(printed_apostrophes(text(words::table_text(name))));
        }
        return fail(0, crop_.trimmed().isEmpty() ? tr("Which crop it is is missing, such as tomato.")
                       : near.isEmpty()          ? tr("No crop here is called “%1”, nor nearly so. Write another name of it, or its botanical name.").arg(crop_.trimmed())
                                                 : tr("No crop here is called “%1”; did you mean %2?").arg(crop_.trimmed(), near.join(QStringLiteral(", "))));
    }
    home::SeedLot lot{.id = 0,
                      .name = name_.trimmed().toStdString(),
                      .crop = (*kind)->botanical_name,
                      .packed_year = std::nullopt,
                      .stated_percent = std::nullopt,
                      .seeds = std::nullopt,
                      .note = note_.trimmed().toStdString()};
    if (lot.name.empty()) { // Then it is called after its crop and year.
        name_ = usual_name(text(words::table_text((*kind)->name())));
        lot.name = name_.toStdString();
        emit changed();
    }
    if (std::ranges::any_of(taken_, [&](const std::string& other) { return lower_case(other) == lower_case(lot.name); })) {
        return fail(1, tr("There is a lot “%1” already; give this one another name.").arg(name_.trimmed()));
    }
    if (!year_.trimmed().isEmpty()) {
        lot.packed_year = parse_integer(year_.toStdString());
        if (!lot.packed_year || *lot.packed_year < 1950 || *lot.packed_year > today_.year() + 1) {
            return fail(2, tr("The year on the packet lies from 1950 to %1, or is left blank.").arg(today_.year() + 1));
        }
    }
    if (!percent_.trimmed().isEmpty()) {
        lot.stated_percent = typed_decimal(percent_);
        if (!lot.stated_percent || !(*lot.stated_percent > 0.0 && *lot.stated_percent <= 100.0)) {
            return fail(3, tr("Give a percentage above 0, up to 100, or leave it blank."));
        }
    }
    if (!seeds_.trimmed().isEmpty()) {
        lot.seeds = parse_integer(seeds_.toStdString());
        if (!lot.seeds || *lot.seeds < 1 || *lot.seeds > 10'000'000) {
            return fail(4, tr("The seeds of the packet are a whole number from 1, or are left blank."));
        }
    }
    if (const auto sound = home::check(lot, today_); !sound) {
        return fail(1, text(words::refusal(sound.error())));
    }
    return lot;
}

} // namespace lathhouse::models
