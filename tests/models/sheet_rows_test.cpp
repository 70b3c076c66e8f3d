#include "app/models/sheet_rows.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <gtest/gtest.h>

namespace lathhouse::models {
namespace {

TEST(SheetRows, KeepsTheRulesOfModels)
{
    SheetRows rows({"name", "size"});
    QAbstractItemModelTester tester(&rows, QAbstractItemModelTester::FailureReportingMode::Fatal);
    rows.show({{"a", 1}, {"b", 2}});
    rows.show({{"c", 3}, {"d", 4}});
    rows.show({{"e", 5}});
    rows.show({});
    EXPECT_EQ(rows.rowCount(), 0);
    EXPECT_EQ(rows.rowCount(rows.index(0)), 0);
}

TEST(SheetRows, GivesWhatStandsUnderARole)
{
    SheetRows rows({"name", "size"});
    rows.show({{"a", 1}, {"b", 2}});
    EXPECT_EQ(rows.at(1, "size").toInt(), 2);
    EXPECT_EQ(rows.data(rows.index(1), Qt::UserRole + 2).toInt(), 2);
    EXPECT_EQ(rows.data(rows.index(0), Qt::DisplayRole).toString(), "a");
    EXPECT_FALSE(rows.at(2, "size").isValid());
    EXPECT_FALSE(rows.at(-1, "size").isValid());
    EXPECT_FALSE(rows.at(0, "colour").isValid());
    EXPECT_FALSE(rows.data(rows.index(0), Qt::UserRole + 9).isValid());
}

TEST(SheetRows, SameNumberOfRowsKeepsThePlaces)
{
    SheetRows rows({"name"});
    rows.show({{"a"}, {"b"}});
    QSignalSpy reset(&rows, &QAbstractItemModel::modelReset);
    QSignalSpy changed(&rows, &QAbstractItemModel::dataChanged);
    rows.show({{"a"}, {"c"}});
    EXPECT_EQ(reset.count(), 0);
    EXPECT_EQ(changed.count(), 1);
    rows.show({{"a"}});
    EXPECT_EQ(reset.count(), 1);
}

} // namespace
} // namespace lathhouse::models
