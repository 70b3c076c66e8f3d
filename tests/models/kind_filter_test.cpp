#include "app/models/kind_filter.h"

#include "app/models/plants_form.h"
#include "tests/models/start_fixtures.h"

#include <QSet>
#include <QSignalSpy>

#include <algorithm>
#include <set>

namespace lathhouse::models {
namespace {

const auto kinds_of_tables = [] { return plants::PlantReference::built_in().kinds(); };

TEST(KindFilter, NamesEveryGroupOfTheTablesInWords)
{
    const KindFilter filter;
    std::set<std::string> keys;
    for (const auto& kind : kinds_of_tables()) {
        keys.insert(kind.group);
    }
    const auto groups = filter.groups();
    ASSERT_EQ(static_cast<std::size_t>(groups.size()), keys.size() + 1);
    EXPECT_EQ(groups.front(), "all groups");
    for (const auto& words : groups) {
        EXPECT_FALSE(words.contains('_')) << words.toStdString() << " is a key of the tables";
    }
    EXPECT_EQ(QSet<QString>(groups.begin(), groups.end()).size(), groups.size());
    EXPECT_EQ(filter.evidences().size(), 6);
}

TEST(KindFilter, PassesWhatIsOfTheGroupAndRestsOnTheEvidence)
{
    KindFilter filter;
    QSignalSpy changed(&filter, &KindFilter::changed);
    const auto passing = [&] {
        return std::ranges::count_if(kinds_of_tables(), [&](const auto& kind) { return filter.passes(kind); });
    };
    EXPECT_EQ(passing(), std::ssize(kinds_of_tables()));
    EXPECT_FALSE(filter.narrows());
    filter.setGroup(static_cast<int>(filter.groups().indexOf("ferns")));
    EXPECT_EQ(passing(), std::ranges::count(kinds_of_tables(), "fern", &plants::PlantKind::group));
    EXPECT_GT(passing(), 0);
    filter.setEvidence(static_cast<int>(filter.evidences().indexOf("common practice")));
    EXPECT_EQ(passing(), std::ranges::count_if(kinds_of_tables(), [](const auto& kind) {
                  return kind.group == "fern" && kind.cold_evidence == plants::Evidence::Memory;
              }));
    EXPECT_TRUE(filter.meaning().startsWith("Common practice")) << filter.meaning().toStdString();
    EXPECT_EQ(changed.count(), 2);
    for (const int none : {-1, 99}) {
        filter.setGroup(none);
        filter.setEvidence(none);
    }
    EXPECT_EQ(changed.count(), 2);
    filter.clear();
    EXPECT_FALSE(filter.narrows());
    EXPECT_EQ(filter.meaning(), "");
}

TEST(KindFilter, EverySortOfEvidenceIsTheTables)
{
    KindFilter filter;
    std::ptrdiff_t all = 0;
    for (int evidence = 1; evidence < filter.evidences().size(); ++evidence) {
        filter.setEvidence(evidence);
        EXPECT_FALSE(filter.meaning().isEmpty());
        const auto some = std::ranges::count_if(kinds_of_tables(), [&](const auto& kind) { return filter.passes(kind); });
        EXPECT_GT(some, 0) << filter.evidences()[evidence].toStdString();
        all += some;
    }
    EXPECT_EQ(all, std::ssize(kinds_of_tables()));
}

TEST(KindFilter, NarrowsTheFormsListAndWhatIsTyped)
{
    PlantsForm form(british_words());
    const int all = static_cast<int>(kinds_of_tables().size());
    EXPECT_EQ(form.found()->count(), all) << "the list has every kind";
    EXPECT_TRUE(form.foundWords().contains("are known"));
    form.filter()->setGroup(static_cast<int>(form.filter()->groups().indexOf("palms")));
    const int palms = form.found()->count();
    EXPECT_GT(palms, 0);
    EXPECT_LT(palms, all);
    EXPECT_EQ(form.foundWords(), QString("%1 of %2 kinds").arg(palms).arg(all));
    form.setFind("lemon");
    EXPECT_EQ(form.found()->count(), 0);
    EXPECT_TRUE(form.foundWords().contains("another group")) << form.foundWords().toStdString();
    form.pick(0);
    EXPECT_EQ(form.total(), 0);
    form.setFind("qqqq");
    EXPECT_TRUE(form.foundWords().startsWith("No kind here is called")) << form.foundWords().toStdString();
    form.clear();
    EXPECT_FALSE(form.filter()->narrows());
    EXPECT_EQ(form.found()->count(), all);
}

} // namespace
} // namespace lathhouse::models
