#include "app/models/dose_model.h"

#include "app/clock.h"
#include "app/models/typed_decimal.h"
#include "app/models/word_form.h"
#include "app/words/growing_words.h"
#include "app/words/phrase.h"
#include "app/words/refusal.h"
#include "core/plan/kitchen_measures.h"

#include <algorithm>
#include <array>
#include <utility>

namespace lathhouse::models {

namespace {

constexpr double kMillilitresOfATeaspoon = 4.92892159375; // NIST Handbook 44, appendix C.
constexpr double kLeastDensity = 0.2;                     // As feed_mix takes them.
constexpr double kMostDensity = 3.0;
constexpr double kLeastPpm = 1.0;
constexpr double kMostPpmMixed = 2000.0;
constexpr double kMostPercent = 20.0;

constexpr char kFeedKey[] = "feed/label";
constexpr char kLiquidKey[] = "feed/liquid";
constexpr char kWeightKey[] = "feed/weight";
constexpr char kWaterKey[] = "feed/water";

/// An amount of water as people write it in the window's languages, in the form that the core reads.
std::string plain_amount(const QString& typed, Units measures)
{
    QString amount = typed.trimmed();
    amount.replace(QLatin1Char(','), QLatin1Char('.'));
    for (const auto& [sign, plain] : {std::pair{u'½', "1/2"}, std::pair{u'¼', "1/4"}, std::pair{u'¾', "3/4"}}) {
        const auto at = amount.indexOf(QChar(sign));
        if (at >= 0) {
            amount.replace(QChar(sign), QLatin1String(at > 0 ? " " : "") + QLatin1String(plain));
        }
    }
    constexpr std::array<std::pair<const char*, const char*>, 14> kSaid{{{"gallons", "gal-us"},
                                                                         {"gallon", "gal-us"},
                                                                         {"gal", "gal-us"},
                                                                         {"quarts", "quart-us"},
                                                                         {"quart", "quart-us"},
                                                                         {"pints", "pint-us"},
                                                                         {"pint", "pint-us"},
                                                                         {"litres", "l"},
                                                                         {"litre", "l"},
                                                                         {"liters", "l"},
                                                                         {"liter", "l"},
                                                                         {"litros", "l"},
                                                                         {"litro", "l"},
                                                                         {"lt", "l"}}};
    for (const auto& [word, measure] : kSaid) {
        if (amount.endsWith(QLatin1String(word), Qt::CaseInsensitive)) {
            amount.chop(static_cast<qsizetype>(qstrlen(word)));
            amount += QLatin1String(measure);
            break;
        }
    }
    const bool bare = !amount.isEmpty() && amount.back().isDigit();
    return (bare && measures == Units::Metric ? amount + QStringLiteral(" l") : amount).toStdString();
}

Result<Litres> typed_water(const QString& typed, const std::vector<home::Jug>& jugs, Units measures)
{
    if (auto amount = plan::read_amount(typed.trimmed().toStdString(), jugs)) { // A can's own name goes first.
        return amount;
    }
    return plan::read_amount(plain_amount(typed, measures), jugs);
}

/// "20 - 10 - 20", "8+8+6" and "4,5/3/5" are labels too.
std::string plain_label(const QString& typed)
{
    QString label = typed.simplified();
    label.replace(QLatin1Char(','), QLatin1Char('.'));
    for (const QChar mark : {QChar(u'–'), QChar(u'−'), QChar(u'+'), QChar(u'/')}) {
        label.replace(mark, QLatin1Char('-'));
    }
    label.replace(QStringLiteral(" - "), QStringLiteral("-")).replace(QLatin1Char(' '), QLatin1Char('-'));
    return label.toStdString();
}

std::vector<QVariant> can_row(const QString& words, const QString& value, const QString& sentence)
{
    return {words, value, sentence};
}

} // namespace

DoseModel::DoseModel(JugDoor door, std::shared_ptr<KeptSettings> kept, YearWords words, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), kept_(std::move(kept)), words_(std::move(words)),
      cans_({"words", "value", "sentence"})
{
    recall();
    tell_cans();
    revision_ = feed_.isEmpty() ? 0 : 1;
}

void DoseModel::recall()
{
    feed_ = kept_->value(QLatin1String(kFeedKey)).toString();
    liquid_ = kept_->is(QLatin1String(kLiquidKey));
    weight_ = kept_->value(QLatin1String(kWeightKey)).toString();
    water_ = kept_->value(QLatin1String(kWaterKey)).toString();
}

void DoseModel::read()
{
    if (!door_.load) {
        return;
    }
    work<std::vector<home::Jug>>([load = door_.load] { return load(); },
                                 [this](Result<std::vector<home::Jug>> jugs) {
                                     if (!jugs) {
                                         fail(jugs.error());
                                         return;
                                     }
                                     jugs_ = std::move(*jugs);
                                     tell_cans();
                                     set_known();
                                     say_again();
                                 });
}

QString DoseModel::title() const
{
    if (spray_) {
        return wish_.plant.isEmpty() ? tr("How much oil or soap") : tr("How much oil or soap for %1").arg(wish_.plant);
    }
    return wish_.plant.isEmpty() ? tr("How much feed") : tr("How much feed for %1").arg(wish_.plant);
}

QStringList DoseModel::cautions() const
{
    QStringList all;
    for (const auto& caution : spray_ ? words::spray_cautions(soap_ ? plan::SprayStuff::Soap : plan::SprayStuff::Oil)
                                      : words::feed_cautions()) {
        all.append(text(caution));
    }
    return all;
}

void DoseModel::tell_cans()
{
    const bool us = words_.units() == Units::Us;
    std::vector<SheetRows::Row> rows;
    for (const auto& jug : jugs_) {
        const QString holds = text(words::volume(jug.volume, unit_system_of(words_)));
        rows.push_back(can_row(text(jug.name), text(jug.name), tr("%1 holds %2").arg(text(jug.name), holds)));
    }
    if (us) {
        rows.push_back(can_row(tr("1 quart"), QStringLiteral("1 quart"), tr("1 quart of water")));
        rows.push_back(can_row(tr("½ gallon"), QStringLiteral("1/2 gallon"), tr("½ gallon of water")));
        rows.push_back(can_row(tr("1 gallon"), QStringLiteral("1 gallon"), tr("1 gallon of water")));
    } else {
        for (const char* litres : {"1 L", "2 L", "5 L", "10 L"}) {
            rows.push_back(can_row(QString::fromLatin1(litres), QString::fromLatin1(litres),
                                   tr("%1 of water").arg(QString::fromLatin1(litres))));
        }
    }
    cans_.show(std::move(rows));
}

void DoseModel::begin()
{
    can_name_.clear();
    can_holds_.clear();
    take_off_trouble();
    clear_error();
    open_ = true;
    start();
    if (water_.isEmpty()) {
        water_ = words_.units() == Units::Us ? QStringLiteral("1 gallon") : QStringLiteral("2 L");
    }
    work_out();
    emit openChanged();
}

void DoseModel::ask(DoseWish wish)
{
    wish_ = std::move(wish);
    spray_ = false;
    recall();
    strength_ = wish_.ppm > 0.0 ? decimal_to_type(words_, wish_.ppm, 0) : QString{};
    begin();
}

void DoseModel::ask_spray(QString plant)
{
    wish_ = {.plant = std::move(plant), .ppm = 0.0, .feeder = {}};
    spray_ = true;
    percent_ = words_.decimal(0.5, 1); // The weakest that is usual.
    recall();
    begin();
}

void DoseModel::type(QString& field, const QString& words)
{
    if (field != words) {
        field = words;
        take_off_trouble();
        work_out();
    }
}

void DoseModel::setLiquid(bool liquid)
{
    if (liquid_ != liquid) {
        liquid_ = liquid;
        weight_.clear(); // It was that of the other.
        take_off_trouble();
        work_out();
    }
}

void DoseModel::setSoap(bool soap)
{
    if (soap_ != soap) {
        soap_ = soap;
        work_out();
    }
}

DoseModel::Asked DoseModel::asked() const
{
    Asked read;
    const auto refuse = [&](Field field, const QString& words) {
        if (read.wrong == None) {
            read.wrong = field;
            read.trouble = words;
        }
        const QString& typed = field == Feed ? feed_ : field == Weight ? weight_ : field == Strength ? strength_ : field == Percent ? percent_ : water_;
        if (read.typed_trouble.isEmpty() && !typed.trimmed().isEmpty()) {
            read.typed_trouble = words;
        }
    };
    if (spray_) {
        const auto percent = typed_decimal(percent_, {"%"});
        if (!percent || !(*percent > 0.0 && *percent <= kMostPercent)) {
            refuse(Percent, tr("Write percent of the water above 0 and at most 20, as the label has it; leaves are sprayed at 0.5 to 2."));
        } else {
            read.percent = *percent;
        }
    } else {
        const std::string label = plain_label(feed_);
        read.feed = {.name = label, .form = liquid_ ? plan::FeedForm::Liquid : plan::FeedForm::Powder};
        if (const auto parts = plan::read_feed_label(label)) {
            read.label = *parts;
        } else if (parts.error().code == ErrorCode::Malformed) {
            refuse(Feed, tr("Write the three numbers of the feed's label, such as 20-10-20: nitrogen, phosphate, potash."));
        } else {
            refuse(Feed, tr("The first number, nitrogen, is above 0 and the three are at most 100 together. A feed without nitrogen is measured by its label alone."));
        }
        if (!weight_.trimmed().isEmpty()) {
            const auto grams = typed_decimal(weight_, {"g"});
            const double density = grams.value_or(0.0) / (liquid_ ? 1.0 : kMillilitresOfATeaspoon);
            if (!(density >= kLeastDensity && density <= kMostDensity)) {
                refuse(Weight, liquid_ ? tr("A millilitre of feed weighs 0.2 to 3 g. Leave it blank where the label does not say.")
                                       : tr("A level teaspoon of powder weighs 1 to 14 g. Leave it blank where you do not know."));
            } else {
                read.density = density;
            }
        }
        const auto ppm = typed_decimal(strength_, {"ppm"});
        if (!ppm && strength_.trimmed().isEmpty()) {
            refuse(Strength, tr("Its kind is not in the tables, so no strength is known. Write one: half of what the label says at first."));
        } else if (!ppm || !(*ppm >= kLeastPpm && *ppm <= kMostPpmMixed)) {
            refuse(Strength, tr("Nitrogen lies within 1 and 2000 ppm; pots at home get 50 to 250."));
        } else {
            read.ppm = *ppm;
        }
    }
    if (const auto water = typed_water(water_, jugs_, words_.units())) {
        read.water = *water;
    } else {
        refuse(Water, words_.units() == Units::Us
                          ? tr("Write how much water, such as 1 gallon, 6 cups or 2 quarts, or take one of the cans.")
                          : tr("Write how much water, such as 2 L or 500 ml, or take one of the cans."));
    }
    return read;
}

QString DoseModel::water_words(const QString& typed, Litres water) const
{
    const QString holds = text(words::volume(water, unit_system_of(words_)));
    const bool of_own = std::ranges::any_of(jugs_, [&](const home::Jug& jug) {
        return typed.trimmed().endsWith(text(jug.name), Qt::CaseInsensitive);
    });
    return of_own ? tr("%1 (%2)").arg(holds, typed.trimmed()) : holds;
}

void DoseModel::work_out()
{
    const Asked read = asked();
    dose_.clear();
    why_ = read.typed_trouble;
    remarks_.clear();
    if (read.wrong == None) {
        const auto units = unit_system_of(words_);
        const std::string water = water_words(water_, *read.water).toStdString();
        const auto stuff = soap_ ? plan::SprayStuff::Soap : plan::SprayStuff::Oil;
        const auto mix = spray_ ? plan::percent_mix(read.percent, *read.water, stuff)
                                : plan::feed_mix(*read.label, read.ppm, *read.water, read.feed.form, read.density);
        if (mix) {
            dose_ = upper_first(text(spray_ ? words::spray_dose(*mix, water, units)
                                            : words::feed_dose(*mix, read.feed, water, jugs_, units))) +
                    QLatin1Char('.');
            for (const auto& warning : spray_ ? words::spray_warnings(read.percent, stuff)
                                              : words::feed_warnings(*mix, read.feed.form, read.ppm, wish_.feeder)) {
                remarks_.append(text(warning));
            }
            if (!spray_) {
                remarks_.append(text(words::feed_makes(*mix, read.ppm)));
                remarks_.append(text(words::feed_on_a_meter(plan::conductivity_of(*read.label, read.ppm))));
            }
        }
    }
    emit typed();
}

QString DoseModel::line(double ppm) const
{
    const std::string label = plain_label(kept_->value(QLatin1String(kFeedKey)).toString());
    const auto parts = plan::read_feed_label(label);
    const QString can = kept_->value(QLatin1String(kWaterKey)).toString();
    const auto water = typed_water(can, jugs_, words_.units());
    if (!parts || !water || !(ppm >= kLeastPpm && ppm <= kMostPpmMixed)) {
        return {};
    }
    const bool liquid = kept_->is(QLatin1String(kLiquidKey));
    const auto grams = typed_decimal(kept_->value(QLatin1String(kWeightKey)).toString(), {"g"});
    const words::FeedAtHand feed{.name = label, .form = liquid ? plan::FeedForm::Liquid : plan::FeedForm::Powder};
    const auto mix = plan::feed_mix(*parts, ppm, *water, feed.form,
                                    grams ? std::optional{*grams / (liquid ? 1.0 : kMillilitresOfATeaspoon)} : std::nullopt);
    if (!mix) {
        return {};
    }
    const auto units = unit_system_of(words_);
    const std::string into = water_words(can, *water).toStdString();
    return upper_first(text(words::feed_dose(*mix, feed, into, jugs_, units))) + QLatin1Char('.');
}

void DoseModel::keep()
{
    const Asked read = asked();
    if (read.wrong != None) {
        set_trouble(read.wrong, read.trouble);
        emit wrong();
        return;
    }
    if (!spray_) {
        kept_->keep(QLatin1String(kFeedKey), text(read.feed.name));
        kept_->keep(QLatin1String(kLiquidKey), liquid_ ? QStringLiteral("true") : QStringLiteral("false"));
        kept_->keep(QLatin1String(kWeightKey), weight_.trimmed());
        kept_->keep(QLatin1String(kWaterKey), water_.trimmed());
        ++revision_;
        emit revisionChanged();
    }
    leave();
}

void DoseModel::keepCan()
{
    const std::string name = can_name_.trimmed().toStdString();
    const auto holds = typed_water(can_holds_, {}, words_.units());
    const auto jug = home::make_jug(name, holds ? *holds : Litres::from_litres(1.0));
    if (!jug || plan::is_measure(name)) {
        set_trouble(CanName, tr("A can or a spoon is called by 1 to 40 letters without digits, and not as a measure is (cup, L): such as blue can."));
        emit wrong();
        return;
    }
    if (!holds) {
        set_trouble(CanHolds, words_.units() == Units::Us ? tr("Write what it holds, such as 6 cups or 1/2 gallon; a spoon such as 2 tsp.")
                                                          : tr("Write what it holds, such as 1.5 L; a spoon such as 7 ml."));
        emit wrong();
        return;
    }
    constexpr double kCanMillilitres = 50.0; // Below that it is a spoon, which is not filled with water.
    if (jug->volume.millilitres() > kCanMillilitres) {
        water_ = text(jug->name);
    }
    can_name_.clear();
    can_holds_.clear();
    std::erase_if(jugs_, [&](const home::Jug& of) { return text(of.name).compare(text(jug->name), Qt::CaseInsensitive) == 0; });
    jugs_.push_back(*jug); // Counts at once.
    tell_cans();
    work_out();
    write_and_read([keep = door_.keep, jug = *jug, at = now()] { return keep(jug, at); },
                   [this](const Error& error) { fail(words::phrase("this was not kept: %1", words::refusal(error))); });
}

void DoseModel::leave()
{
    if (open_) {
        open_ = false;
        recall();
        take_off_trouble();
        emit openChanged();
    }
}

void DoseModel::say_again()
{
    tell_cans();
    work_out();
    if (revision_ > 0) {
        ++revision_;
        emit revisionChanged();
    }
}

void DoseModel::set_trouble(Field field, QString words)
{
    trouble_field_ = field;
    trouble_ = std::move(words);
    emit troubleChanged();
}

void DoseModel::take_off_trouble()
{
    if (trouble_field_ != None) {
        set_trouble(None, {});
    }
}

} // namespace lathhouse::models
