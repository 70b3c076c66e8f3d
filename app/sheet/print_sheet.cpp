#include "app/sheet/print_sheet.h"

#include "app/models/household_year.h"
#include "app/models/plants_facts.h"
#include "app/sheet/plant_sheet.h"
#include "app/sheet/print_text.h"
#include "app/sheet/round_sheet.h"
#include "app/sheet/seed_sheet.h"
#include "app/sheet/year_sheet.h"

#include <algorithm>

namespace lathhouse::sheet {

namespace {

using models::text;

constexpr std::size_t kPhotosOfPlant = 6;
constexpr std::size_t kWholePast = 1'000'000; // Paper has no button for more of it.

/// Lots that are still to be sown this year, in order of sowing.
std::vector<YearSheetFacts::Sowing> sowings_of(const plan::HouseholdFacts& facts, const models::TodayLook& look)
{
    std::vector<YearSheetFacts::Sowing> sowings;
    const auto ground = std::make_shared<const models::SeedGround>(facts, look.today);
    const auto list = models::seed_facts(ground, {}, look);
    const auto end = look.today + calendar::Days{365};
    for (const auto lot : list.ids) {
        models::SeedChoice choice;
        choice.lot = lot;
        const auto sheet = models::sowing_sheet(*ground, choice, look);
        const bool empty = facts.seeds.seeds_left(lot) == 0;
        if (sheet && sheet->bar && sheet->bar->sow && !empty && sheet->bar->sow->to >= look.today &&
            sheet->bar->sow->from < end) {
            sowings.push_back({sheet->name, *sheet->bar});
        }
    }
    return sowings;
}

Pages year_pages(const models::PlantBook& book, const SheetWish& wish, const models::TodayLook& look)
{
    auto shown = models::household_year(book.facts, look.today, look.words.units());
    auto solved = shown.solver(wish.risk);
    return year_sheet({std::move(shown.year), std::move(solved), wish.risk,
                       sowings_of(book.facts, look), wish.order},
                      look.words, wish.paper);
}

/// A document's pages and what it is called.
struct Document {
    Pages pages;
    QString title;
};

Result<Document> year_document(const models::PlantBook& book, const SheetWish& wish, const models::TodayLook& look)
{
    return Document{year_pages(book, wish, look), tr("The year from %1").arg(look.words.long_date_with_year(look.today))};
}

Result<Document> round_document(const models::PlantBook& book, const SheetWish& wish, const models::TodayLook& look)
{
    const auto facts = round_sheet_facts(book.facts, look.today, std::max(1, wish.days), look.words);
    return Document{round_sheet(facts, look.words, wish.paper),
                    tr("The round from %1").arg(look.words.long_date_with_year(look.today))};
}

Result<Document> plant_document(const models::PlantDoor& door, const models::PlantBook& book, const SheetWish& wish,
                                const models::TodayLook& look)
{
    const auto ground = models::plants_ground(std::make_shared<const models::PlantBook>(book), look.today, models::PlantsDepth::Plan);
    if (!ground) {
        return ground.error();
    }
    const auto facts = models::plant_facts(**ground, wish.plant, {.newest = kWholePast, .photos = kPhotosOfPlant}, door, look);
    if (!facts) {
        return facts.error();
    }
    if (facts->gone) {
        return Error{ErrorCode::NotFound, "there is no plant " + std::to_string(wish.plant) + " in the household"};
    }
    return Document{plant_sheet(*facts, text(book.facts.as_told.name), look, wish.paper), facts->name};
}

Result<Document> seed_document(const models::PlantBook& book, const SheetWish& wish, const models::TodayLook& look)
{
    const auto ground = std::make_shared<const models::SeedGround>(book.facts, look.today);
    models::SeedChoice choice;
    choice.risk = wish.risk;
    SeedSheetFacts facts{text(book.facts.as_told.name), models::seed_facts(ground, choice, look), {}};
    for (const auto lot : facts.list.ids) {
        choice.lot = lot;
        auto sheet = models::sowing_sheet(*ground, choice, look);
        facts.sheets.push_back(sheet ? std::optional{*std::move(sheet)} : std::nullopt);
    }
    return Document{seed_sheet(facts, look, wish.paper),
                    tr("Seeds on %1").arg(look.words.long_date_with_year(look.today))};
}

Result<Document> document_of(const models::PlantDoor& door, const SheetWish& wish, const models::TodayLook& look)
{
    const auto book = door.load();
    if (!book) {
        return book.error();
    }
    switch (wish.kind) {
    case SheetKind::Year:
        return year_document(*book, wish, look);
    case SheetKind::Round:
        return round_document(*book, wish, look);
    case SheetKind::Plant:
        return plant_document(door, *book, wish, look);
    case SheetKind::Seeds:
        break;
    }
    return seed_document(*book, wish, look);
}

} // namespace

Result<PrintedSheet> print_sheet(const models::PlantDoor& door, const SheetWish& wish, calendar::Date today,
                                 const models::YearWords& words)
{
    const auto document = document_of(door, wish, {today, words});
    if (!document) {
        return document.error();
    }
    const auto pdf =
        document->pages.pdf(document->title, tr("Lathhouse · printed %1").arg(words.date_with_year(today)), today);
    if (!pdf) {
        return pdf.error();
    }
    return PrintedSheet{*pdf, document->pages.count()};
}

} // namespace lathhouse::sheet
