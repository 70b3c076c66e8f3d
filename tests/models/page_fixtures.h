#pragma once

#include "app/models/household_door.h"
#include "app/models/sheet_model.h"
#include "app/models/tonight_facts.h"
#include "tests/window/demonstration_round.h"

#include <QTest>

#include <gtest/gtest.h>

namespace lathhouse::models {

inline const calendar::Date kShownToday{2026, 5, 16};

inline const plan::HouseholdFacts& plain_facts()
{
    static const auto kFacts = demonstration_facts(kShownToday);
    EXPECT_TRUE(kFacts);
    return *kFacts;
}

inline HouseholdDoor door_of(plan::HouseholdFacts facts)
{
    return door_to_memory(std::make_shared<MemoryHousehold>(std::move(facts)));
}

inline TodayLook british_look(Units units = Units::Metric)
{
    return {kShownToday, YearWords(units, QLocale(QLocale::English, QLocale::UnitedKingdom)), {{"Roofed balcony", 3}}};
}

inline void wait_for(SheetModel& model)
{
    ASSERT_TRUE(QTest::qWaitFor([&model] { return !model.working(); }, 30'000));
}

} // namespace lathhouse::models
