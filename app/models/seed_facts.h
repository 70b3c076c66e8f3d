#pragma once

#include "app/models/sheet_rows.h"
#include "app/models/tonight_facts.h"
#include "core/plan/sowing.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace lathhouse::models {

/// The year of a sowing as one bar.
struct SowingBar {
    calendar::Date from; ///< First day shown.
    calendar::Date to;   ///< Last day shown.
    std::optional<plan::DateSpan> sow; ///< Under a roof where `indoors`.
    bool indoors = false;
    std::optional<plan::DateSpan> up;
    std::optional<calendar::Date> harden;
    std::optional<plan::DateSpan> out;
    std::optional<plan::DateSpan> ready;
    std::optional<calendar::Date> last_useful;
    QString ready_word; ///< "first ripe"
};

/// When and how to sow one lot or crop, in words.
struct SowingSheet {
    QString name;
    QString botanical;
    QString amount;  ///< "Sow 8 seeds for 5 plants"
    QString sure;    ///< "enough 19 times in 20, at 86 %"
    std::optional<SowingBar> bar; ///< None where there is no date.
    QString bar_words;            ///< The bar, read aloud.
    std::vector<SheetRows::Row> dates; ///< Label, value, why, sentence.
    QStringList notes;
    QString sources;
    std::vector<SheetRows::Row> trays; ///< As SeedsModel's `trays`.
    std::vector<home::TrayCount> counted; ///< The latest of each tray; 0 seedlings where nothing was counted.
};

/// What the grower chose on the page.
struct SeedChoice {
    std::optional<home::LotId> lot;
    std::string crop; ///< Where no lot is chosen.
    int plants = 5;
    bool by_name = false;
    std::optional<Celsius> room = {}; ///< Where trays stand; else as usual.
    Probability risk = plan::kUsualRisk; ///< Of a night that damages what stands out.
};

/// What does not change with the choice; used by one thread at a time.
struct SeedGround {
    plan::HouseholdFacts facts;
    plan::SowingClimate climate;
    explicit SeedGround(plan::HouseholdFacts of, calendar::Date today)
        : facts(std::move(of)), climate(facts.climate, today)
    {
    }
};

struct SeedFacts {
    std::shared_ptr<const SeedGround> ground;
    std::vector<SheetRows::Row> lots; ///< As SeedsModel's `lots`, in the order chosen.
    std::vector<home::LotId> ids;     ///< Of the same.
    SeedChoice choice;                ///< As asked, or the first lot where nothing was chosen.
    std::optional<SowingSheet> sheet;
    std::string trouble; ///< Why there is no sheet though something was chosen.
};

/// Crops that can be sown from today for so many days; rows: crop, name, how, dates, ready, sentence; crop as the tables
/// call it.
std::vector<SheetRows::Row> sowing_calendar_rows(const SeedGround& ground, const SeedChoice& choice, int days,
                                                 const TodayLook& look);
/// The list and the sheet of what is chosen.
SeedFacts seed_facts(std::shared_ptr<const SeedGround> ground, const SeedChoice& choice, const TodayLook& look);
/// The sheet of another choice.
Result<SowingSheet> sowing_sheet(const SeedGround& ground, const SeedChoice& choice, const TodayLook& look);

} // namespace lathhouse::models
