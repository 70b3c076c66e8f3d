#include "app/page_links.h"

#include <QTimer>

#include <memory>
#include <utility>

namespace lathhouse {

void connect_pages(models::YearModel& year, models::RoundModel& round, models::TonightModel& tonight, models::PlantsModel& plants,
                   models::SeedsModel& seeds, models::HomeModel& home)
{
    const auto follow_round = [&round] {
        if (round.known()) {
            round.reload();
        }
    };
    for (models::SheetModel* page : {static_cast<models::SheetModel*>(&tonight), static_cast<models::SheetModel*>(&plants), static_cast<models::SheetModel*>(&seeds),
                                     static_cast<models::SheetModel*>(&home)}) {
        QObject::connect(page, &models::SheetModel::written, &round, follow_round);
    }
    for (models::SheetModel* page : {static_cast<models::SheetModel*>(&tonight), static_cast<models::SheetModel*>(&plants),
                                     static_cast<models::SheetModel*>(&seeds), static_cast<models::SheetModel*>(&home)}) {
        QObject::connect(page, &models::SheetModel::written, &year, &models::YearModel::follow);
        QObject::connect(&year, &models::YearModel::written, page, &models::SheetModel::follow);
    }
    QObject::connect(&round, &models::RoundModel::written, &year, &models::YearModel::follow);
    QObject::connect(&year, &models::YearModel::written, &round, follow_round);
    QObject::connect(&home, &models::SheetModel::written, &tonight, &models::SheetModel::follow);
    QObject::connect(&plants, &models::SheetModel::written, &tonight, &models::SheetModel::follow);
    QObject::connect(&plants, &models::SheetModel::written, &home, &models::SheetModel::follow);
    QObject::connect(&home, &models::SheetModel::written, &plants, &models::SheetModel::follow);
    QObject::connect(&round, &models::RoundModel::written, &plants, &models::SheetModel::follow);
    QObject::connect(&tonight, &models::SheetModel::written, &home, &models::SheetModel::follow);
    QObject::connect(&tonight, &models::SheetModel::written, &plants, &models::SheetModel::follow);
    QObject::connect(&round, &models::RoundModel::written, &seeds, &models::SheetModel::follow);
    QObject::connect(&seeds, &models::SheetModel::written, &tonight, &models::SheetModel::follow);
    QObject::connect(&seeds, &models::SheetModel::written, &plants, &models::SheetModel::follow); // Seedlings that were potted.
    QObject::connect(&round, &models::RoundModel::written, &tonight, &models::SheetModel::follow);
    QObject::connect(&round, &models::RoundModel::written, &home, &models::SheetModel::follow);
}

void connect_changes(models::ChangesModel& changes, models::YearModel& year, models::RoundModel& round,
                     models::TonightModel& tonight, models::PlantsModel& plants, models::SeedsModel& seeds,
                     models::HomeModel& home)
{
    QObject::connect(&changes, &models::SheetModel::written, &round, [&round] {
        round.forget();
        if (round.known()) {
            round.reload();
        }
    });
    QObject::connect(&changes, &models::SheetModel::written, &plants, &models::PlantsModel::forget);
    QObject::connect(&changes, &models::SheetModel::written, &seeds, &models::SeedsModel::forget);
    QObject::connect(&changes, &models::SheetModel::written, &year, &models::YearModel::follow);
    for (models::SheetModel* page : {static_cast<models::SheetModel*>(&tonight), static_cast<models::SheetModel*>(&plants),
                                     static_cast<models::SheetModel*>(&seeds), static_cast<models::SheetModel*>(&home)}) {
        QObject::connect(&changes, &models::SheetModel::written, page, &models::SheetModel::follow);
        QObject::connect(page, &models::SheetModel::written, &changes, &models::ChangesModel::leave);
    }
    QObject::connect(&round, &models::RoundModel::written, &changes, &models::ChangesModel::leave);
    QObject::connect(&year, &models::YearModel::written, &changes, &models::ChangesModel::leave);
}

void connect_mend(models::MendModel& mend, models::ChangesModel& changes, models::YearModel& year, models::RoundModel& round,
                  const std::vector<models::SheetModel*>& pages)
{
    QObject::connect(&mend, &models::SheetModel::written, &changes, &models::ChangesModel::leave);
    QObject::connect(&changes, &models::SheetModel::written, &mend, &models::MendModel::hush);
    QObject::connect(&mend, &models::SheetModel::written, &year, &models::YearModel::follow);
    QObject::connect(&year, &models::YearModel::written, &mend, &models::MendModel::hush);
    QObject::connect(&mend, &models::SheetModel::written, &round, [&round] {
        if (round.known()) {
            round.reload();
        }
    });
    QObject::connect(&round, &models::RoundModel::written, &mend, &models::MendModel::hush);
    for (models::SheetModel* page : pages) {
        QObject::connect(&mend, &models::SheetModel::written, page, &models::SheetModel::follow);
        QObject::connect(page, &models::SheetModel::written, &mend, &models::MendModel::hush);
    }
}

void connect_said(models::YearModel& year, models::RoundModel& round, const std::vector<models::SheetModel*>& speaking,
                  const std::vector<models::SheetModel*>& writing)
{
    const auto hush_round = [&round] { round.hush(); };
    for (models::SheetModel* page : speaking) {
        QObject::connect(&year, &models::YearModel::written, page, &models::SheetModel::hush);
        QObject::connect(&round, &models::RoundModel::written, page, &models::SheetModel::hush);
        QObject::connect(page, &models::SheetModel::written, &round, hush_round);
        for (models::SheetModel* other : speaking) {
            if (other != page) {
                QObject::connect(page, &models::SheetModel::written, other, &models::SheetModel::hush);
            }
        }
        for (models::SheetModel* other : writing) {
            QObject::connect(other, &models::SheetModel::written, page, &models::SheetModel::hush);
        }
    }
    for (models::SheetModel* other : writing) {
        QObject::connect(other, &models::SheetModel::written, &round, hush_round);
    }
    QObject::connect(&year, &models::YearModel::written, &round, hush_round);
}

void connect_dose(models::DoseModel& dose, models::RoundModel& round, models::PlantModel& plant)
{
    QObject::connect(&round, &models::RoundModel::feedDoseAsked, &dose, &models::DoseModel::ask);
    QObject::connect(&round, &models::RoundModel::sprayDoseAsked, &dose, &models::DoseModel::ask_spray);
    QObject::connect(&plant, &models::PlantModel::feedDoseAsked, &dose, &models::DoseModel::ask);
    // The household's cans are read once a feed may be told.
    QObject::connect(&round, &models::RoundModel::roundChanged, &dose, &models::SheetModel::start);
    QObject::connect(&plant, &models::PlantModel::plantChanged, &dose, &models::SheetModel::start);
}

void connect_ask(models::AskModel& ask, models::RoundModel& round)
{
    QObject::connect(&round, &models::RoundModel::sprayAsked, &ask, &models::AskModel::ask_spray);
}

void watch_household(std::function<bool()> written_elsewhere, models::YearModel& year, models::RoundModel& round,
                     const std::vector<models::SheetModel*>& pages)
{
    if (!written_elsewhere) {
        return;
    }
    const auto asked = std::make_shared<std::function<bool()>>(std::move(written_elsewhere));
    const auto own = [asked] { (*asked)(); }; // What this window writes is read by whoever must.
    QObject::connect(&year, &models::YearModel::written, &year, own);
    QObject::connect(&round, &models::RoundModel::written, &round, own);
    for (models::SheetModel* page : pages) {
        QObject::connect(page, &models::SheetModel::written, page, own);
    }
    auto* timer = new QTimer(&year);
    constexpr int kEvery = 2000; // Milliseconds.
    QObject::connect(timer, &QTimer::timeout, &year, [asked, &year, &round, pages] {
        if (!(*asked)()) {
            return;
        }
        year.follow();
        if (round.known()) {
            round.reload();
        }
        for (models::SheetModel* page : pages) {
            page->follow();
        }
    });
    timer->start(kEvery);
}

void connect_notice(models::EveningNotice& notice, models::RoundModel& round, models::TonightModel& tonight)
{
    const auto know = [&notice, &round, &tonight] {
        if (round.known() && tonight.known()) {
            notice.know(round.coldTitle(), tonight.line());
        }
    };
    QObject::connect(&round, &models::RoundModel::roundChanged, &notice, know);
    QObject::connect(&tonight, &models::TonightModel::tonightChanged, &notice, know);
    const auto read = [&notice, &round, &tonight] {
        if (notice.wanted()) {
            tonight.start();
            round.start();
        }
    };
    QObject::connect(&notice, &models::EveningNotice::wantedChanged, &notice, read);
    constexpr int kOnceShown = 2000; // Milliseconds: the window comes first.
    QTimer::singleShot(kOnceShown, &notice, read);
    auto* timer = new QTimer(&notice);
    constexpr int kEvery = 60'000;
    QObject::connect(timer, &QTimer::timeout, &notice, &models::EveningNotice::remind);
    timer->start(kEvery);
}

} // namespace lathhouse
