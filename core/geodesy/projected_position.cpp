#include "core/geodesy/projected_position.h"

#include <proj.h>

#include <cmath>
#include <memory>
#include <string>

namespace lathhouse::geodesy {
namespace {
struct DestroyContext {
    void operator()(PJ_CONTEXT* context) const { proj_context_destroy(context); }
};
struct DestroyObject {
    void operator()(PJ* object) const { proj_destroy(object); }
};
using Context = std::unique_ptr<PJ_CONTEXT, DestroyContext>;
using Object = std::unique_ptr<PJ, DestroyObject>;

bool is_on_the_map(PJ_TYPE type)
{
    switch (type) {
    case PJ_TYPE_GEOGRAPHIC_2D_CRS:
    case PJ_TYPE_GEOGRAPHIC_3D_CRS:
    case PJ_TYPE_PROJECTED_CRS:
    case PJ_TYPE_COMPOUND_CRS:
    case PJ_TYPE_BOUND_CRS:
        return true;
    default:
        return false;
    }
}

/// Whether a longitude lies between two others, going east; the area may cross the 180th meridian.
bool within_east_of(double longitude, double west, double east, double margin)
{
    const double width = std::fmod(east - west + 720.0, 360.0);
    if (east - west >= 360.0 - 2.0 * margin) {
        return true;
    }
    const double along = std::fmod(longitude - (west - margin) + 720.0, 360.0);
    return along <= width + 2.0 * margin;
}
} // namespace

Result<Position> position_in_epsg(int code, double easting, double northing)
{
    const auto name = "EPSG:" + std::to_string(code);
    const Context context{proj_context_create()};
    if (!context) {
        return Error{ErrorCode::Unavailable, said("PROJ could not be started; write the place as LAT,LON")};
    }
    proj_log_level(context.get(), PJ_LOG_NONE); // Nothing of it on standard error: the Error says it.
    proj_context_set_enable_network(context.get(), 0);
    if (proj_context_get_database_path(context.get()) == nullptr) {
        return Error{ErrorCode::Unavailable,
                     said("PROJ's list of EPSG codes (proj.db) is not installed; write the place as LAT,LON")};
    }
    const Object system{proj_create_from_database(context.get(), "EPSG", std::to_string(code).c_str(),
                                                  PJ_CATEGORY_CRS, 0, nullptr)};
    if (!system) {
        return Error{
            ErrorCode::NotFound,
            said("there is no coordinate system %1 in PROJ's list; check the code or write the place as LAT,LON",
                 name)};
    }
    if (!is_on_the_map(proj_get_type(system.get()))) {
        return Error{ErrorCode::Malformed, said("%1 is not a system of map coordinates (it measures heights or from "
                                                "the Earth's centre); take another code",
                                                name)};
    }
    const Object way{proj_create_crs_to_crs(context.get(), name.c_str(), "EPSG:4326", nullptr)};
    const Object oriented{way ? proj_normalize_for_visualization(context.get(), way.get()) : nullptr};
    if (!oriented) {
        return Error{ErrorCode::Unavailable,
                     said("PROJ knows no way from %1 to latitude and longitude; write the place as LAT,LON", name)};
    }
    const auto shown = std::to_string(easting) + "," + std::to_string(northing);
    const PJ_COORD result = proj_trans(oriented.get(), PJ_FWD, proj_coord(easting, northing, 0.0, 0.0));
    const double longitude_degrees = result.lp.lam;
    const double latitude_degrees = result.lp.phi;
    if (proj_errno(oriented.get()) != 0 || !std::isfinite(longitude_degrees) ||
        !std::isfinite(latitude_degrees)) {
        return Error{ErrorCode::OutOfRange,
                     said("%1 is no place in %2; the form is EPSG:code:easting,northing, easting first", shown, name)};
    }
    double west = 0.0;
    double south = 0.0;
    double east = 0.0;
    double north = 0.0;
    constexpr double kMargin = 1.0; // Degrees; systems of zones are used a little past their edge.
    constexpr double kUnknown = -1000.0;
    if (proj_get_area_of_use(context.get(), system.get(), &west, &south, &east, &north, nullptr) != 0 &&
        west != kUnknown && south != kUnknown && east != kUnknown && north != kUnknown &&
        (latitude_degrees < south - kMargin || latitude_degrees > north + kMargin ||
         !within_east_of(longitude_degrees, west, east, kMargin))) {
        return Error{
            ErrorCode::OutOfRange,
            said("%1 lies outside the area that %2 is made for; the form is EPSG:code:easting,northing, easting first",
                 shown, name)};
    }
    const auto latitude = Latitude::from_degrees(latitude_degrees);
    const auto longitude = Longitude::from_degrees(std::remainder(longitude_degrees, 360.0));
    if (!latitude) {
        return latitude.error();
    }
    if (!longitude) {
        return longitude.error();
    }
    return Position{*latitude, *longitude};
}

} // namespace lathhouse::geodesy
