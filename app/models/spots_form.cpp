#include "app/models/spots_form.h"

#include "app/models/ready_spots.h"
#include "app/models/spot_measures.h"
#include "app/models/typed_number.h"
#include "core/base/parse.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lathhouse::models {

namespace {

constexpr double kDegreesAFacing = 45.0;

QString kind_words(home::SpotKind kind)
{
    switch (kind) {
    case home::SpotKind::Indoors:
        return SpotsForm::tr("indoors");
    case home::SpotKind::Open:
        return SpotsForm::tr("open");
    case home::SpotKind::Roofed:
        return SpotsForm::tr("roofed");
    case home::SpotKind::Screened:
        return SpotsForm::tr("screened");
    case home::SpotKind::Glazed:
        return SpotsForm::tr("glazed");
    }
    return {};
}

std::vector<QByteArray> measure_roles()
{
    return {"measure", "label", "unit", "usual", "value", "note", "trouble"};
}

QString facing_spoken(int facing)
{
    const std::array<QString, kFacings> words{SpotsForm::tr("north"), SpotsForm::tr("north-east"), SpotsForm::tr("east"), SpotsForm::tr("south-east"),
                                              SpotsForm::tr("south"), SpotsForm::tr("south-west"), SpotsForm::tr("west"), SpotsForm::tr("north-west")};
    return facing >= 0 && facing < kFacings ? words[static_cast<std::size_t>(facing)] : QString{};
}

} // namespace

SpotsForm::SpotsForm(YearWords words, QObject* parent)
    : QObject(parent), words_(std::move(words)), ready_({"text", "reason"}),
      spots_({"words", "detail", "trouble", "sentence"}), kinds_({"text", "reason"}), facings_({"text", "spoken"}),
      window_measures_(measure_roles()), light_measures_(measure_roles()), night_measures_(measure_roles())
{
    std::vector<SheetRows::Row> ready;
    for (const auto& one : kReadySpots) {
        ready.push_back({tr(one.name), tr(one.reason)});
    }
    ready_.show(std::move(ready));
    kinds_.show({{tr("Indoors"), tr("A room with a window")},
                 {tr("Open"), tr("Outdoors under the open sky")},
                 {tr("Roofed"), tr("Outdoors under a roof")},
                 {tr("Screened"), tr("Outdoors behind mesh")},
                 {tr("Glazed"), tr("Under glass, not heated")}});
    const std::array<QString, kFacings> letters{tr("N"), tr("NE"), tr("E"), tr("SE"), tr("S"), tr("SW"), tr("W"), tr("NW")};
    std::vector<SheetRows::Row> facings;
    for (int facing = 0; facing < kFacings; ++facing) {
        facings.push_back({letters[static_cast<std::size_t>(facing)], facing_spoken(facing)});
    }
    facings_.show(std::move(facings));
}

const SpotDraft* SpotsForm::draft() const
{
    return current_ >= 0 && current_ < static_cast<int>(drafts_.size()) ? &drafts_[static_cast<std::size_t>(current_)] : nullptr;
}

SpotDraft* SpotsForm::draft()
{
    return const_cast<SpotDraft*>(std::as_const(*this).draft());
}

void SpotsForm::setCurrent(int current)
{
    if (current >= 0 && current < static_cast<int>(drafts_.size()) && current != current_) {
        current_ = current;
        show_measures();
        emit currentChanged();
        emit draftChanged();
    }
}

void SpotsForm::changed()
{
    show();
    show_measures();
    emit draftChanged();
    emit spotsChanged();
}

template <class Value>
void SpotsForm::set(Value SpotDraft::*member, const Value& value)
{
    if (draft() != nullptr && draft()->*member != value) {
        draft()->*member = value;
        changed();
    }
}

void SpotsForm::setName(const QString& name)
{
    set(&SpotDraft::name, name);
}
void SpotsForm::setPots(const QString& pots)
{
    set(&SpotDraft::pots, pots);
}
void SpotsForm::setWinter(const QString& winter)
{
    set(&SpotDraft::winter, winter);
}
void SpotsForm::setSummer(const QString& summer)
{
    set(&SpotDraft::summer, summer);
}
void SpotsForm::setInReach(bool in_reach)
{
    set(&SpotDraft::in_reach, in_reach);
}
void SpotsForm::setApart(bool apart)
{
    set(&SpotDraft::apart, apart);
}
void SpotsForm::setWindy(bool windy)
{
    set(&SpotDraft::windy, windy);
}

void SpotsForm::setMeasure(int measure, const QString& typed)
{
    if (draft() != nullptr && measure >= 0 && measure < static_cast<int>(kSpotMeasures) &&
        draft()->of(static_cast<SpotMeasure>(measure)) != typed) {
        draft()->of(static_cast<SpotMeasure>(measure)) = typed;
        changed();
    }
}

void SpotsForm::setKind(int kind)
{
    if (draft() == nullptr || kind < 0 || kind >= kinds_.count() || kind == this->kind()) {
        return;
    }
    // What was known of the light and the nights of another kind does not hold; back again, it does.
    constexpr std::array kOfTheKind{SpotMeasure::SummerLight, SpotMeasure::WinterLight, SpotMeasure::Milder, SpotMeasure::Spread};
    for (const auto measure : kOfTheKind) {
        const QString kept = SpotMeasures(*draft(), words_).kept(measure);
        if (!kept.isEmpty() && draft()->of(measure) == kept) {
            draft()->of(measure).clear();
        }
    }
    draft()->kind = static_cast<home::SpotKind>(kind);
    for (const auto measure : kOfTheKind) {
        if (draft()->of(measure).isEmpty()) {
            draft()->of(measure) = SpotMeasures(*draft(), words_).kept(measure);
        }
    }
    // Behind a window or under a roof the side always counts.
    if (draft()->facing < 0 && draft()->kind != home::SpotKind::Open && draft()->kind != home::SpotKind::Glazed) {
        draft()->facing = noon_side();
    }
    changed();
}

void SpotsForm::setFacing(int facing)
{
    if (draft() == nullptr || facing < 0 || facing >= kFacings) {
        return;
    }
    const bool may_have_none = draft()->kind == home::SpotKind::Open;
    draft()->facing = facing == draft()->facing && may_have_none ? kNowhere : facing;
    changed();
}

QString SpotsForm::trouble_of_name(const SpotDraft& of) const
{
    const QString name = of.name.trimmed();
    if (name.isEmpty()) {
        return tr("A spot needs a name, such as %1.").arg(tr(kReadySpots.front().name));
    }
    const auto same = [&](const QString& other) { return other.trimmed().compare(name, Qt::CaseInsensitive) == 0; };
    const bool twice = std::ranges::any_of(drafts_, [&](const SpotDraft& other) { return other.number != of.number && same(other.name); }) ||
                       std::ranges::any_of(taken_, [&](const std::string& other) { return same(text(other)); });
    return twice ? tr("There is a spot “%1” already; give this one another name.").arg(name) : QString{};
}

QString SpotsForm::trouble_of_pots(const SpotDraft& of) const
{
    const auto pots = parse_integer(of.pots.toStdString());
    if (!pots) {
        return tr("How many pots fit is a whole number, such as 5.");
    }
    return *pots < 0 || *pots > home::kMostPots ? tr("From 0 to %1 pots fit at a spot; %2 do not.").arg(QString::number(home::kMostPots), of.pots.trimmed())
                                               : QString{};
}

QString SpotsForm::trouble_of_room(const SpotDraft& of) const
{
    if (of.kind != home::SpotKind::Indoors) {
        return {};
    }
    for (const QString& typed : {of.winter, of.summer}) {
        if (typed.trimmed().isEmpty()) {
            continue;
        }
        const auto value = typed_degrees(typed, words_);
        if (!value) {
            return tr("“%1” is not a number; write a night of the room as %2.").arg(typed.trimmed(), usualWinter());
        }
        constexpr double kColdest = -40.0;
        constexpr double kWarmest = 50.0;
        if (value->degrees() < kColdest || value->degrees() > kWarmest) {
            return tr("No room has nights of %1 %2.").arg(typed.trimmed(), unit());
        }
    }
    return {};
}

bool SpotsForm::hasOpening() const
{
    return draft() != nullptr && draft()->kind != home::SpotKind::Open && draft()->kind != home::SpotKind::Glazed;
}

QString SpotsForm::first_trouble_of(const SpotDraft& of) const
{
    for (const QString& trouble : {trouble_of_name(of), trouble_of_pots(of), trouble_of_room(of), SpotMeasures(of, words_).first_trouble()}) {
        if (!trouble.isEmpty()) {
            return trouble;
        }
    }
    return {};
}

QString SpotsForm::measuresTrouble() const
{
    return draft() != nullptr ? SpotMeasures(*draft(), words_).first_trouble() : QString{};
}

QString SpotsForm::nameTrouble() const
{
    return draft() != nullptr ? trouble_of_name(*draft()) : QString{};
}
QString SpotsForm::potsTrouble() const
{
    return draft() != nullptr ? trouble_of_pots(*draft()) : QString{};
}
QString SpotsForm::roomTrouble() const
{
    return draft() != nullptr ? trouble_of_room(*draft()) : QString{};
}

QString SpotsForm::light() const
{
    if (draft() == nullptr || !year_ || !first_trouble_of(*draft()).isEmpty()) {
        return {};
    }
    const auto spot = home::make_spot(1, 1, wish(*draft()), *year_);
    if (!spot) {
        return {};
    }
    return tr("Light by that: %1 moles a day in high summer, %2 in midwinter.")
        .arg(words_.decimal(spot->light_in_summer.moles(), 1), words_.decimal(spot->light_in_winter.moles(), 1));
}

home::SpotWish SpotsForm::wish(const SpotDraft& of) const
{
    const SpotMeasures measures(of, words_);
    return {.name = of.name.trimmed().toStdString(),
            .kind = of.kind,
            .facing = side_of(of),
            .capacity = parse_integer(of.pots.toStdString()).value_or(0),
            .in_reach = of.in_reach,
            .apart = of.apart,
            .windy = of.windy,
            .winter = typed_degrees(of.winter, words_),
            .summer = typed_degrees(of.summer, words_),
            .measured = measures.figures(),
            .offset = measures.offset(),
            .light_in_summer = measures.light(SpotMeasure::SummerLight),
            .light_in_winter = measures.light(SpotMeasure::WinterLight)};
}

QString SpotsForm::words_of(const SpotDraft& of) const
{
    QStringList parts{kind_words(of.kind)};
    if (of.facing >= 0 && of.kind != home::SpotKind::Glazed) {
        parts.append(tr("faces %1").arg(facing_spoken(of.facing)));
    }
    const int pots = parse_integer(of.pots.toStdString()).value_or(0);
    parts.append(pots == 1 ? tr("1 pot") : tr("%1 pots").arg(pots));
    if (of.in_reach) {
        parts.append(tr("in reach of a child or an animal"));
    }
    if (of.apart) {
        parts.append(tr("set apart"));
    }
    if (of.windy) {
        parts.append(tr("windy"));
    }
    return parts.join(QStringLiteral(", "));
}

void SpotsForm::show()
{
    std::vector<SheetRows::Row> rows;
    for (const auto& of : drafts_) {
        const QString trouble = first_trouble_of(of);
        rows.push_back({of.name, words_of(of), trouble, tr("%1: %2. %3").arg(of.name, words_of(of), trouble).trimmed()});
    }
    spots_.show(std::move(rows));
}

void SpotsForm::show_measures()
{
    const auto show_part = [this](SheetRows& rows, MeasuresOf part) {
        rows.show(draft() != nullptr ? SpotMeasures(*draft(), words_).rows(part) : std::vector<SheetRows::Row>{});
    };
    show_part(window_measures_, MeasuresOf::Window);
    show_part(light_measures_, MeasuresOf::Light);
    show_part(night_measures_, MeasuresOf::Nights);
}

QString SpotsForm::free_name(const QString& wished) const
{
    QString name = wished;
    const auto is_taken = [&] {
        return std::ranges::any_of(drafts_, [&](const SpotDraft& of) { return of.name.trimmed().compare(name, Qt::CaseInsensitive) == 0; }) ||
               std::ranges::any_of(taken_, [&](const std::string& of) { return text(of).compare(name, Qt::CaseInsensitive) == 0; });
    };
    for (int number = 2; is_taken(); ++number) {
        name = tr("%1 %2").arg(wished).arg(number);
    }
    return name;
}

int SpotsForm::noon_side() const
{
    return year_ != nullptr && year_->latitude().degrees() < 0.0 ? kNorth : kSouth;
}

void SpotsForm::addReady(int row)
{
    if (row < 0 || row >= static_cast<int>(kReadySpots.size())) {
        return;
    }
    const auto& chosen = kReadySpots[static_cast<std::size_t>(row)];
    SpotDraft added{.number = next_number_++,
                    .name = free_name(tr(chosen.name)),
                    .kind = chosen.kind,
                    .facing = chosen.facing == kToTheNoonSun ? noon_side() : chosen.facing,
                    .pots = QString::number(chosen.pots),
                    .winter = {},
                    .summer = {}};
    if (static_cast<std::size_t>(row) == kCoolLanding) {
        added.winter = words_.bare(kCoolInWinter);
    }
    drafts_.push_back(std::move(added));
    current_ = static_cast<int>(drafts_.size()) - 1;
    emit currentChanged();
    changed();
}

void SpotsForm::remove(int row)
{
    if (row < 0 || row >= static_cast<int>(drafts_.size())) {
        return;
    }
    drafts_.erase(drafts_.begin() + row);
    current_ = std::min(row < current_ ? current_ - 1 : current_, static_cast<int>(drafts_.size()) - 1);
    emit currentChanged();
    changed();
}

void SpotsForm::set_year(std::shared_ptr<const home::YearOfSky> year)
{
    year_ = std::move(year);
    emit draftChanged();
}

void SpotsForm::set_taken(std::vector<std::string> names)
{
    taken_ = std::move(names);
    changed();
}

Result<bool> SpotsForm::check()
{
    for (int row = 0; row < spots_.count(); ++row) {
        const QString trouble = spots_.at(row, QStringLiteral("trouble")).toString();
        if (!trouble.isEmpty()) {
            setCurrent(row);
            return Error{ErrorCode::WrongUsage, trouble.toStdString()};
        }
    }
    return true;
}

void SpotsForm::fill(const home::Spot& spot)
{
    const auto temperature = [this](const std::optional<Celsius>& of) { return of ? words_.bare(*of) : QString{}; };
    int facing = kNowhere;
    if (spot.view && (spot.view->figures().shelter == sky::Shelter::Opening || spot.view->figures().behind.degrees() > 0.0)) {
        facing = static_cast<int>(std::lround(spot.view->figures().facing.degrees() / kDegreesAFacing)) % kFacings;
        facing = facing < 0 ? facing + kFacings : facing;
    }
    drafts_ = {SpotDraft{.number = next_number_++,
                         .name = text(spot.name),
                         .kind = spot.kind,
                         .facing = facing,
                         .pots = QString::number(spot.capacity),
                         .winter = temperature(spot.winter),
                         .summer = temperature(spot.summer),
                         .in_reach = spot.in_reach,
                         .apart = spot.apart,
                         .windy = spot.windy,
                         .base = spot,
                         .base_facing = facing}};
    auto& draft = drafts_.front();
    for (std::size_t at = 0; at < kSpotMeasures; ++at) {
        const auto measure = static_cast<SpotMeasure>(at);
        draft.of(measure) = SpotMeasures(draft, words_).kept(measure);
    }
    current_ = 0;
    emit currentChanged();
    changed();
}

void SpotsForm::clear()
{
    drafts_.clear();
    current_ = -1;
    emit currentChanged();
    changed();
}

} // namespace lathhouse::models
