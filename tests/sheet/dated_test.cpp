#include "app/sheet/paper.h"

#include <gtest/gtest.h>

namespace lathhouse::sheet {
namespace {

const calendar::Date kDay{2026, 3, 14};

TEST(Dated, SetsTheMomentOfTheFile)
{
    EXPECT_EQ(dated("/CreationDate (D:20261127074512Z)\n", kDay), "/CreationDate (D:20260314000000Z)\n");
    EXPECT_EQ(dated("(D:20261127074512+01'00') (D:20261127074513Z)", kDay), "(D:20260314000000+01'00') (D:20260314000000Z)");
}

TEST(Dated, LeavesAPackedPageAloneThatHoldsTheMarkByChance)
{
    const QByteArray page("stream\n\x78(D:\x9c\x01(D:2026112707451\xff ... ) endstream");
    EXPECT_EQ(dated(page, kDay), page);
    EXPECT_EQ(dated("(D:2026", kDay), "(D:2026"); // It ends there.
}

} // namespace
} // namespace lathhouse::sheet
