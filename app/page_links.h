#pragma once

#include "app/models/ask_model.h"
#include "app/models/changes_model.h"
#include "app/models/dose_model.h"
#include "app/models/evening_notice.h"
#include "app/models/home_model.h"
#include "app/models/mend_model.h"
#include "app/models/plant_model.h"
#include "app/models/plants_model.h"
#include "app/models/round_model.h"
#include "app/models/seeds_model.h"
#include "app/models/tonight_model.h"
#include "app/models/year_model.h"

#include <functional>
#include <vector>

namespace lathhouse {

/// What one page writes is read by the others that were opened.
void connect_pages(models::YearModel& year, models::RoundModel& round, models::TonightModel& tonight, models::PlantsModel& plants,
                   models::SeedsModel& seeds, models::HomeModel& home);

/// What is taken back for the whole window is read by every page; none of them takes back its own any more. Once
/// something new is written, the words on what was taken back go.
void connect_changes(models::ChangesModel& changes, models::YearModel& year, models::RoundModel& round,
                     models::TonightModel& tonight, models::PlantsModel& plants, models::SeedsModel& seeds,
                     models::HomeModel& home);

/// What was changed in the household itself is read by every page. The words on it go once something else is done, as
/// those on what was taken back do.
void connect_mend(models::MendModel& mend, models::ChangesModel& changes, models::YearModel& year, models::RoundModel& round,
                  const std::vector<models::SheetModel*>& pages);

/// What a page said it did last stays until something is written anywhere else, whichever page is looked at; then Undo
/// of that page would no longer take back what came last. speaking: have words and Undo; writing: write only.
void connect_said(models::YearModel& year, models::RoundModel& round, const std::vector<models::SheetModel*>& speaking,
                  const std::vector<models::SheetModel*>& writing);

/// What the round or a plant's page asks of a dose is asked of the form for it.
void connect_dose(models::DoseModel& dose, models::RoundModel& round, models::PlantModel& plant);

/// Whether to spray what the round treats is asked of the form for it.
void connect_ask(models::AskModel& ask, models::RoundModel& round);

/// Reads every page again once another program wrote into the household.
void watch_household(std::function<bool()> written_elsewhere, models::YearModel& year, models::RoundModel& round,
                     const std::vector<models::SheetModel*>& pages);

/// What the window's title says of a cold night is said once by the desktop as well, where that is wanted: then round
/// and tonight are read whether or not anyone opens their page.
void connect_notice(models::EveningNotice& notice, models::RoundModel& round, models::TonightModel& tonight);

} // namespace lathhouse
