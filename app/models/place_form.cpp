#include "app/models/place_form.h"

#include "app/models/typed_decimal.h"
#include "app/models/typed_position.h"
#include "app/models/word_form.h"
#include "app/words/place_words.h"
#include "app/words/refusal.h"
#include "app/words/us_units.h"
#include "app/words/words.h"
#include "core/calendar/time_zone.h"
#include "core/geodesy/geodesic.h"
#include "core/geodesy/nearest_towns.h"

#include <cmath>

namespace lathhouse::models {

namespace {

constexpr double kFeetPerMetre = 1.0 / words::kMetresInAFoot;
constexpr double kNearTown = 10.0;          // Kilometres within which a town's height is proposed (common practice).
constexpr double kSamePlace = 10.0;         // Kilometres within which a position is a correction, not another place.
constexpr double kLowest = -500.0;          // Metres; the tables of the journal have the same limits.
constexpr double kHighestTyped = 9000.0;

} // namespace

/// What is known of a position that was looked up.
struct PlaceForm::Looked {
    bool stale = false;
    std::optional<geodesy::ZoneProposal> zone;
    std::optional<Metres> proposed_height;
    QString height_from;
    std::optional<Error> trouble;
    std::shared_ptr<const climate::PlaceClimate> climate;
    PlaceGives given;
};

PlaceForm::PlaceForm(PlaceDoor door, YearWords words, calendar::Date today, QObject* parent)
    : SheetModel(parent), door_(std::move(door)), words_(std::move(words)), today_(today),
      found_({"words", "detail", "sentence"}), figures_({"label", "value", "sentence"})
{
}

QString PlaceForm::heightUnit() const
{
    return words_.units() == Units::Us ? tr("ft") : tr("m");
}

QString PlaceForm::heightNote() const
{
    if ((own_height_ || (as_filled() && filled_->elevation)) && !height_.trimmed().isEmpty()) {
        return tr("As you typed it.");
    }
    return height_from_.isEmpty() || height_.isEmpty()
               ? tr("Unsure? Leave it empty; the stations’ height is taken and the error grows.")
               : height_from_;
}

QString PlaceForm::coordinate(double degrees) const
{
    constexpr int kDecimals = 4; // Some ten metres.
    QString number = words_.decimal(degrees, kDecimals);
    while (number.back() == QLatin1Char('0')) {
        number.chop(1);
    }
    if (!number.back().isDigit()) {
        number.chop(1);
    }
    return number;
}

void PlaceForm::setName(const QString& name)
{
    if (name != name_) {
        name_ = name;
        own_name_ = !name.trimmed().isEmpty();
        emit formChanged();
    }
}

/// A new position takes proposals along that belonged to the old one.
void PlaceForm::place_at(Position position)
{
    latitude_ = coordinate(position.latitude.degrees());
    longitude_ = coordinate(position.longitude.degrees());
    position_trouble_.clear();
    position_ = position;
    follow_filled();
    look_up();
    emit formChanged();
}

void PlaceForm::setLatitude(const QString& latitude)
{
    if (latitude == latitude_) {
        return;
    }
    if (!typed_coordinate(latitude, Side::Latitude)) {
        if (const auto both = typed_position(latitude)) {
            place_at(*both);
            return;
        }
    }
    latitude_ = latitude;
    reread_position();
}

void PlaceForm::setLongitude(const QString& longitude)
{
    if (longitude == longitude_) {
        return;
    }
    if (!typed_coordinate(longitude, Side::Longitude)) {
        if (const auto both = typed_position(longitude)) {
            place_at(*both);
            return;
        }
    }
    longitude_ = longitude;
    reread_position();
}

void PlaceForm::reread_position()
{
    position_trouble_.clear();
    position_.reset();
    const auto north = typed_coordinate(latitude_, Side::Latitude);
    const auto east = typed_coordinate(longitude_, Side::Longitude);
    if (!latitude_.trimmed().isEmpty() && !north) {
        position_trouble_ = tr("“%1” is no latitude; write it as 48.2 or 48°12′N.").arg(latitude_.trimmed());
    } else if (!longitude_.trimmed().isEmpty() && !east) {
        position_trouble_ = tr("“%1” is no longitude; write it as 16.4 or 16°24′E.").arg(longitude_.trimmed());
    } else if (north && east) {
        const auto latitude = Latitude::from_degrees(*north);
        const auto longitude = Longitude::from_degrees(*east);
        if (!latitude) {
            position_trouble_ = tr("A latitude lies within −90 and 90 degrees; %1 does not. Are the two exchanged?").arg(latitude_.trimmed());
        } else if (!longitude) {
            position_trouble_ = tr("A longitude lies within −180 and 180 degrees; %1 does not.").arg(longitude_.trimmed());
        } else {
            position_ = Position{*latitude, *longitude};
            follow_filled();
        }
    }
    look_up();
    emit formChanged();
}

bool PlaceForm::as_filled() const
{
    return filled_ && position_ && geodesy::distance(filled_->position, *position_) <= Metres::from_kilometres(kSamePlace);
}

void PlaceForm::follow_filled()
{
    if (!filled_) {
        return;
    }
    const bool same = as_filled();
    if (!own_name_ && (same || name_ == text(filled_->name))) {
        name_ = same ? text(filled_->name) : QString{};
    }
    if (!own_zone_ && same && !filled_->time_zone.empty()) {
        zone_ = text(filled_->time_zone);
        zone_note_.clear();
    }
    if (!own_height_ && same && filled_->elevation) {
        height_ = height_to_type(*filled_->elevation);
    }
}

QString PlaceForm::height_to_type(Metres height) const
{
    return decimal_to_type(words_, words_.units() == Units::Us ? height.metres() * kFeetPerMetre : height.metres(), 0);
}

std::optional<Metres> PlaceForm::typed_height() const
{
    // Not touched, it keeps what the rounding on screen does not show.
    if (as_filled() && filled_->elevation && height_ == height_to_type(*filled_->elevation)) {
        return filled_->elevation;
    }
    const auto number = typed_decimal(height_);
    if (!number) {
        return std::nullopt;
    }
    return Metres::from_metres(words_.units() == Units::Us ? *number / kFeetPerMetre : *number);
}

void PlaceForm::setHeight(const QString& height)
{
    if (height == height_) {
        return;
    }
    height_ = height;
    own_height_ = true;
    height_trouble_.clear();
    if (!height.trimmed().isEmpty()) {
        const auto metres = typed_height();
        if (!metres) {
            height_trouble_ = tr("“%1” is not a number; write the height as 170, or leave it empty.").arg(height.trimmed());
        } else if (!(metres->metres() >= kLowest && metres->metres() <= kHighestTyped)) {
            height_trouble_ = tr("No place on land is %1 %2 high; heights lie within −500 and 9000 m.").arg(height.trimmed(), heightUnit());
        }
    }
    if (height_trouble_.isEmpty()) {
        look_up();
    }
    emit formChanged();
}

void PlaceForm::setZone(const QString& zone)
{
    if (zone == zone_) {
        return;
    }
    if (filled_) { // Cleared, it is proposed anew.
        filled_->time_zone.clear();
    }
    zone_ = zone;
    own_zone_ = !zone.trimmed().isEmpty();
    zone_trouble_.clear();
    zone_note_ = own_zone_ ? tr("As you typed it.") : QString{};
    if (own_zone_ && !calendar::TimeZone::named(zone.trimmed().toStdString())) {
        zone_trouble_ = tr("There is no time zone “%1”; names are like Europe/Vienna.").arg(zone.trimmed());
    }
    if (!own_zone_) {
        look_up(); // Proposed anew.
    }
    emit formChanged();
}

void PlaceForm::forget_given()
{
    climate_.reset();
    given_ = {};
    figures_.show({});
    emit givenChanged();
}

void PlaceForm::look_up()
{
    const int number = ++*looked_;
    given_trouble_.clear();
    if (!position_) {
        forget_given();
        return;
    }
    const bool filled_height = !own_height_ && as_filled() && filled_->elevation;
    const auto height = own_height_ || filled_height ? typed_height() : std::nullopt;
    work<Looked>(
        [door = door_, words = words_, today = today_, position = *position_, height, propose = !own_height_ && !filled_height,
         latest = looked_, number]() -> Result<Looked> {
            Looked looked;
            if (*latest != number) {
                looked.stale = true;
                return looked;
            }
            if (const auto towns = door.towns()) {
                looked.zone = geodesy::propose_zone((*towns)->towns(), position);
                const auto near = geodesy::nearest_towns((*towns)->towns(), position, 1);
                if (propose && !near.empty() && near.front().town->elevation &&
                    near.front().distance <= Metres::from_kilometres(kNearTown)) {
                    looked.proposed_height = near.front().town->elevation;
                    looked.height_from = PlaceForm::tr("Proposed: the height of %1. Correct it where you know better.")
                                             .arg(text(std::string{near.front().town->name}));
                }
            }
            const auto climate = door.climate(position, height ? height : looked.proposed_height);
            if (!climate) {
                looked.trouble = climate.error();
                return looked;
            }
            looked.climate = std::make_shared<const climate::PlaceClimate>(*climate);
            if (*latest == number) {
                looked.given = place_gives(*looked.climate, words, today);
            }
            return looked;
        },
        [this, latest = looked_, number](Result<Looked> looked) {
            if (*latest == number && looked && !looked->stale) {
                take(std::move(*looked));
            }
        });
}

void PlaceForm::take(Looked looked)
{
    if (!own_zone_ && !(as_filled() && !filled_->time_zone.empty())) {
        zone_ = looked.zone ? text(looked.zone->zone) : QString{};
        zone_trouble_.clear();
        if (!looked.zone) {
            zone_note_ = tr("No town is near enough to propose one; names are like Europe/Vienna.");
        } else {
            zone_note_ = tr("Proposed: that of %1.").arg(text(std::string{looked.zone->from.town->name}));
            if (!looked.zone->is_plain()) {
                QStringList others;
                for (const auto& other : looked.zone->others) {
                    others.append(text(other));
                }
                zone_note_ += others.isEmpty() ? tr(" Please check it.")
                                               : tr(" Towns with %1 are near too; please check it.").arg(others.join(QStringLiteral(", ")));
            }
        }
    }
    if (!own_height_ && !(as_filled() && filled_->elevation)) {
        height_from_ = looked.height_from;
        height_ = looked.proposed_height ? height_to_type(*looked.proposed_height) : QString{};
    }
    if (looked.trouble) {
        given_trouble_ = tr("%1.").arg(text(words::refusal(*looked.trouble)));
        given_trouble_[0] = given_trouble_[0].toUpper();
        climate_.reset();
        given_ = {};
        figures_.show({});
    } else {
        climate_ = std::move(looked.climate);
        given_ = std::move(looked.given);
        figures_.show(given_.figures);
    }
    emit formChanged();
    emit givenChanged();
}

Result<home::Place> PlaceForm::place() const
{
    const auto wrong = [](const QString& words) { return Error{ErrorCode::WrongUsage, words.toStdString()}; };
    if (!position_) {
        return wrong(position_trouble_.isEmpty() ? tr("A place is missing: the nearest town, or latitude and longitude.")
                                                 : position_trouble_);
    }
    if (!height_trouble_.isEmpty()) {
        return wrong(height_trouble_);
    }
    if (!zone_trouble_.isEmpty()) {
        return wrong(zone_trouble_);
    }
    if (zone_.trimmed().isEmpty()) {
        return wrong(tr("A time zone is missing; names are like Europe/Vienna."));
    }
    const QString name = name_.trimmed();
    return home::Place{name.isEmpty() ? words::position(*position_) : name.toStdString(), *position_, typed_height(),
                       zone_.trimmed().toStdString()};
}

bool PlaceForm::check()
{
    const auto placed = place();
    if (placed) {
        return true;
    }
    if (!position_ && position_trouble_.isEmpty()) {
        position_trouble_ = text(words::refusal(placed.error()));
    } else if (zone_.trimmed().isEmpty()) {
        zone_trouble_ = text(words::refusal(placed.error()));
    }
    emit formChanged();
    return false;
}

void PlaceForm::fill(const home::Place& place)
{
    filled_ = place;
    name_ = text(place.name);
    zone_ = text(place.time_zone);
    height_ = place.elevation ? height_to_type(*place.elevation) : QString{};
    own_name_ = own_zone_ = own_height_ = false;
    find_.clear();
    find_trouble_.clear();
    height_trouble_.clear();
    zone_trouble_.clear();
    zone_note_.clear();
    place_at(place.position);
}

} // namespace lathhouse::models
