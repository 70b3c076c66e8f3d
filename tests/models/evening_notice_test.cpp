#include "app/models/evening_notice.h"

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <vector>

namespace lathhouse::models {
namespace {

/// A desktop that notes what it was asked to show.
class NotedService : public NoticeService {
public:
    struct Desk {
        State state = State::There;
        QString refusal;
        std::vector<std::pair<QString, QString>> shown;
        int looked = 0;
    };
    explicit NotedService(Desk& desk) : desk_(desk) {}
    void look(std::function<void(State)> answer) override
    {
        ++desk_.looked;
        answer(desk_.state);
    }
    void show(const QString& title, const QString& words, std::function<void(const QString&)> answer) override
    {
        desk_.shown.emplace_back(title, words);
        answer(desk_.refusal);
    }

private:
    Desk& desk_;
};

class EveningNoticeTest : public testing::Test {
protected:
    std::unique_ptr<EveningNotice> opened(QDate today = QDate(2026, 10, 3))
    {
        return std::make_unique<EveningNotice>(std::make_shared<KeptSettings>(folder.filePath("window.ini")),
                                               std::make_unique<NotedService>(desk), today, [this] { return now; });
    }
    QTemporaryDir folder;
    NotedService::Desk desk;
    QDateTime now{QDate(2026, 10, 3), QTime(18, 0)};
};

TEST_F(EveningNoticeTest, IsOffUntilItIsWanted)
{
    const auto notice = opened();
    EXPECT_FALSE(notice->wanted());
    notice->know("Carry six plants in this evening", "Low");
    notice->remind();
    EXPECT_TRUE(desk.shown.empty());
    EXPECT_EQ(desk.looked, 0) << "the bus is not asked for what nobody wants";
    notice->setWanted(true);
    ASSERT_EQ(desk.shown.size(), 1U);
    EXPECT_EQ(desk.shown.front().first, "Carry six plants in this evening");
    EXPECT_EQ(desk.shown.front().second, "Low");
}

TEST_F(EveningNoticeTest, ComesOnceAnEveningAlsoToASecondWindow)
{
    const auto notice = opened();
    notice->setWanted(true);
    const auto second = opened(); // Open at the same time.
    EXPECT_TRUE(second->wanted());
    notice->know("Carry one plant in this evening", "");
    notice->know("Carry two plants in this evening", "");
    notice->remind();
    second->know("Carry two plants in this evening", "");
    opened()->know("Carry two plants in this evening", ""); // Opened again.
    EXPECT_EQ(desk.shown.size(), 1U);
    now = now.addDays(1);
    const auto next = opened(QDate(2026, 10, 4));
    next->know("Carry one plant in this evening", "");
    EXPECT_EQ(desk.shown.size(), 2U);
}

TEST_F(EveningNoticeTest, WaitsForTheEveningOfItsOwnDay)
{
    const auto notice = opened();
    notice->setWanted(true);
    now.setTime(QTime(15, 59));
    notice->know("Carry one plant in this evening", "");
    EXPECT_TRUE(desk.shown.empty());
    now = now.addDays(1).addSecs(3600); // The pages are of yesterday by now.
    notice->remind();
    EXPECT_TRUE(desk.shown.empty());
    now = QDateTime(QDate(2026, 10, 3), QTime(16, 0));
    notice->remind();
    EXPECT_EQ(desk.shown.size(), 1U);
}

TEST_F(EveningNoticeTest, IsSilentOnceAllIsIn)
{
    const auto notice = opened();
    now.setTime(QTime(12, 0));
    notice->setWanted(true);
    notice->know("Carry one plant in this evening", "");
    notice->know("", "");
    now.setTime(QTime(18, 0));
    notice->remind();
    EXPECT_TRUE(desk.shown.empty());
}

TEST_F(EveningNoticeTest, ARefusedOneIsTriedAgainAndSaid)
{
    const auto notice = opened();
    desk.refusal = "no room";
    QSignalSpy standing(notice.get(), &EveningNotice::standingChanged);
    notice->setWanted(true);
    notice->know("Carry one plant in this evening", "");
    EXPECT_TRUE(notice->standing().contains("no room")) << notice->standing().toStdString();
    desk.refusal.clear();
    notice->remind();
    EXPECT_EQ(desk.shown.size(), 2U);
    EXPECT_TRUE(notice->standing().isEmpty());
    EXPECT_EQ(standing.count(), 2);
    notice->remind();
    EXPECT_EQ(desk.shown.size(), 2U);
}

TEST_F(EveningNoticeTest, SaysWhereNothingComesOfIt)
{
    const auto notice = opened();
    EXPECT_TRUE(notice->standing().isEmpty());
    desk.state = NoticeService::State::NoBus;
    notice->look();
    const QString no_bus = notice->standing();
    EXPECT_TRUE(no_bus.contains("no desktop is reached")) << no_bus.toStdString();
    desk.state = NoticeService::State::NoService;
    notice->look();
    EXPECT_NE(notice->standing(), no_bus);
    EXPECT_FALSE(notice->standing().isEmpty());
}

} // namespace
} // namespace lathhouse::models
