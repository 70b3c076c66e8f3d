#include "app/models/home_credits.h"

#include "app/models/home_data_model.h"
#include "app/words/credits.h"
#include "core/plants/plant_kind.h"

#include <cctype>
#include <string>

namespace lathhouse::models {

std::vector<SheetRows::Row> credit_rows(const climate::PlaceClimate& of_place)
{
    auto climate = words::credits(of_place);
    if (const auto colon = climate.find(": "); colon != std::string::npos) {
        climate.erase(0, colon + 2);
    }
    if (!climate.empty()) {
        climate.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(climate.front())));
    }
    std::vector<SheetRows::Row> rows;
    const auto credit = [&](const QString& what, const QString& who) {
        rows.push_back({what, who, HomeDataModel::tr("%1: %2").arg(what, who)});
    };
    credit(HomeDataModel::tr("Nights, frost, warmth, rain"), text(climate) + QLatin1Char('.'));
    credit(HomeDataModel::tr("Coast lines of the map"), HomeDataModel::tr("Natural Earth, public domain."));
    credit(HomeDataModel::tr("Towns, search by name"),
           HomeDataModel::tr("GeoNames, geonames.org, CC BY 4.0; a selection of its towns."));
    credit(HomeDataModel::tr("What plants, seeds and pests need"),
           HomeDataModel::tr("%1 publications, listed below; a figure without one is marked as common practice where it stands.")
               .arg(source_rows().size()));
    credit(HomeDataModel::tr("Sun, light, water, nights, dates"),
           HomeDataModel::tr("Worked out by this program; formulas with their sources and measured errors come with it (docs/methods)."));
    return rows;
}

std::vector<SheetRows::Row> source_rows()
{
    std::vector<SheetRows::Row> rows;
    for (const auto& source : plants::PlantReference::built_in().sources()) {
        if (source.key == plants::kCommonPractice) {
            continue;
        }
        const QString title = text(source.title);
        const QString who = source.year ? HomeDataModel::tr("%1, %2").arg(text(source.publisher)).arg(*source.year)
                                        : text(source.publisher);
        rows.push_back({title, who, HomeDataModel::tr("%1: %2").arg(who, title)});
    }
    return rows;
}

} // namespace lathhouse::models
