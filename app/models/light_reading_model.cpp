#include "app/models/light_reading_model.h"

#include "app/models/typed_decimal.h"
#include "app/words/lamp_words.h"

#include <algorithm>

namespace lathhouse::models {

namespace {

constexpr double kUsualReadingHours = 8.0;
constexpr double kLuxOfFootCandle = PhotonFlux::from_daylight_foot_candles(1.0).daylight_lux();
constexpr double kMostReading = 200'000.0; // Full sun is about 110,000 lux.

/// A number of light, its unit behind it or not.
std::optional<double> typed_light(const QString& typed)
{
    return typed_decimal(typed, {"lux", "lx", "fc", "µmol", "umol", "mol"});
}

} // namespace

LightReadingModel::LightReadingModel(TodayLook look, QObject* parent)
    : QObject(parent), look_(std::move(look)), months_({"month", "moles", "hours", "sentence"})
{
    connect(this, &LightReadingModel::changed, this, &LightReadingModel::answer);
}

void LightReadingModel::know(const QString& spot, const std::array<double, 12>& moles)
{
    spot_ = spot;
    moles_ = moles;
    answer();
}

QStringList LightReadingModel::units() const
{
    return {tr("lux"), tr("foot-candles"), tr("µmol per m² and s"), tr("moles a day")};
}

QStringList LightReadingModel::sources() const
{
    return {tr("daylight"), tr("a white LED lamp"), tr("a fluorescent tube"), tr("a high-pressure sodium lamp")};
}

QString LightReadingModel::caution() const
{
    return text(words::lamp_caution());
}

QString LightReadingModel::hours_words(double hours) const
{
    return hours <= 0.0    ? tr("none needed")
           : hours <= 24.0 ? tr("%1 h").arg(look_.words.decimal(hours, 1))
                           : tr("too weak");
}

std::optional<DailyLight> LightReadingModel::read_meter()
{
    if (reading_.trimmed().isEmpty()) {
        return std::nullopt;
    }
    const auto value = typed_light(reading_);
    const double most = unit_ == Micromoles ? kMostLampMicromoles : unit_ == Moles ? kMostDailyMoles : kMostReading;
    if (!value || !(*value >= 0.0 && *value <= most)) {
        reading_trouble_ = tr("A reading is a number from 0 to %1.").arg(look_.words.whole(static_cast<int>(most)));
        return std::nullopt;
    }
    const auto hours = hours_.trimmed().isEmpty() ? std::optional{kUsualReadingHours} : typed_decimal(hours_, {"h"});
    if (!hours || !(*hours > 0.0 && *hours <= 24.0)) {
        hours_trouble_ = tr("Hours of a day lie above 0 and up to 24.");
        return std::nullopt;
    }
    const auto source = static_cast<LightSource>(std::clamp(source_, 0, static_cast<int>(LightSource::HighPressureSodium)));
    const auto flux = unit_ == Moles         ? even_light_of(DailyLight::from_moles(*value), *hours)
                      : unit_ == Micromoles  ? PhotonFlux::from_micromoles(*value)
                      : unit_ == FootCandles ? flux_of_foot_candles(*value, source)
                                             : flux_of_lux(*value, source);
    const auto light = daily_light_of(flux, *hours);
    const double lux = flux.micromoles() * lux_per_micromole(source);
    daily_ = unit_ == Moles
                 ? tr("Spread over %1 h that is %2 µmol per m² and s: a meter reads %3 lux, or %4 foot-candles.")
                       .arg(look_.words.decimal(*hours, 1), look_.words.decimal(flux.micromoles(), 0), look_.words.decimal(lux, 0),
                            look_.words.decimal(lux / kLuxOfFootCandle, 0))
                 : tr("%1 µmol per m² and s; over %2 h they make %3 moles of light a day.")
                 .arg(look_.words.decimal(flux.micromoles(), 0), look_.words.decimal(*hours, 1), look_.words.decimal(light.moles(), 2));
    if (bySource() && source == LightSource::WhiteLed) {
        daily_ += QLatin1Char(' ') + tr("White LEDs differ by their colour: right to about 15 %.");
    }
    if (!spot_.isEmpty()) {
        against_ = tr("The plan reckons with %1 moles a day at %2 in %3.")
                       .arg(look_.words.decimal(moles_[static_cast<std::size_t>(look_.today.month()) - 1], 1), spot_,
                            look_.words.month(look_.today));
    }
    return light;
}

void LightReadingModel::tell_lamp(std::optional<DailyLight> read)
{
    std::vector<SheetRows::Row> rows;
    const bool asked = !target_.trimmed().isEmpty() || !lamp_.trimmed().isEmpty();
    const auto target = typed_light(target_);
    const auto lamp = typed_light(lamp_);
    if (asked && (!target || !(*target > 0.0 && *target <= kMostDailyMoles))) {
        target_trouble_ = target_.trimmed().isEmpty() ? tr("Write the day’s light that is wanted too.")
                                                      : tr("A day’s light lies above 0 and up to 80 moles.");
    }
    if (asked && (!lamp || !(*lamp > 0.0 && *lamp <= kMostLampMicromoles))) {
        lamp_trouble_ = lamp_.trimmed().isEmpty() ? tr("Write the lamp’s light at the leaves too.")
                                                  : tr("A lamp’s light at the leaves lies above 0 and up to 3000 µmol.");
    }
    if (asked && target_trouble_.isEmpty() && lamp_trouble_.isEmpty()) {
        const auto want = DailyLight::from_moles(*target);
        const auto flux = PhotonFlux::from_micromoles(*lamp);
        double longest = 0.0;
        if (read) {
            longest = lamp_hours(*read, want, flux);
            lamp_now_ = longest > 24.0 ? tr("On top of what was read, this lamp is too weak.")
                        : longest > 0.0 ? tr("On top of what was read, the lamp burns %1 h a day.").arg(look_.words.decimal(longest, 1))
                                        : tr("What was read is enough without a lamp.");
        }
        for (int month = 1; !spot_.isEmpty() && month <= 12; ++month) {
            const double moles = moles_[static_cast<std::size_t>(month) - 1];
            const double hours = lamp_hours(DailyLight::from_moles(moles), want, flux);
            longest = std::max(longest, hours);
            const QString name = look_.words.month(calendar::Date{look_.today.year(), static_cast<unsigned short>(month), 1});
            const QString light = look_.words.decimal(moles, 1);
            rows.push_back({name, light, hours_words(hours), tr("%1: %2 moles a day, lamp: %3").arg(name, light, hours_words(hours))});
        }
        if (longest > kLongestLampDay) {
            too_long_ = text(words::lamp_burns_too_long());
        }
    }
    months_.show(std::move(rows));
}

void LightReadingModel::answer()
{
    for (QString* words : {&daily_, &against_, &reading_trouble_, &hours_trouble_, &lamp_now_, &target_trouble_, &lamp_trouble_, &too_long_}) {
        words->clear();
    }
    tell_lamp(read_meter());
    emit answered();
}

} // namespace lathhouse::models
