#include "app/sheet/sheet_printer.h"

#include "app/models/free_place.h"
#include "app/sheet/print_sheet.h"
#include "core/base/csv.h"
#include "core/photo/scale_card.h"

#include <QDir>
#include <QLocale>

#include <filesystem>

namespace lathhouse::sheet {

namespace {

/// Letter where it is the custom, else A4.
Paper usual_paper()
{
    return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem ? Paper::Letter : Paper::A4;
}

std::optional<SheetKind> kind_of(const QString& page)
{
    if (page == QLatin1String("year")) {
        return SheetKind::Year;
    }
    if (page == QLatin1String("round")) {
        return SheetKind::Round;
    }
    if (page == QLatin1String("plants")) {
        return SheetKind::Plant;
    }
    return page == QLatin1String("seeds") ? std::optional{SheetKind::Seeds} : std::nullopt;
}

bool is_card(const QString& page)
{
    return page == QLatin1String("card");
}

} // namespace

SheetPrinter::SheetPrinter(models::PlantDoor door, calendar::Date today, models::YearWords words, QObject* parent)
    : models::SheetModel(parent), door_(std::move(door)), today_(today), words_(std::move(words))
{
}

void SheetPrinter::setYear(models::YearModel* year)
{
    if (year != year_) {
        year_ = year;
        emit yearChanged();
    }
}

void SheetPrinter::follow(const models::TonightModel& tonight, const models::SeedsModel& seeds)
{
    tonight_ = &tonight;
    seeds_ = &seeds;
}

bool SheetPrinter::hasSheet(const QString& page, int plant) const
{
    const auto kind = kind_of(page);
    return is_card(page) || (kind && (*kind != SheetKind::Plant || plant != 0));
}

QUrl SheetPrinter::suggestedFolder() const
{
    // Where nobody made a folder for documents the dialog would begin in some other place without a word.
    return QUrl::fromLocalFile(models::documents_folder());
}

QUrl SheetPrinter::suggestedFile(const QString& page, const QString& plant) const
{
    const QString folder = suggestedFolder().toLocalFile();
    if (is_card(page)) {
        return QUrl::fromLocalFile(QDir(folder).filePath(QStringLiteral("scale-card.svg")));
    }
    const QString name = page == QLatin1String("plants") ? models::file_name(plant, QStringLiteral("plant")) : page;
    return QUrl::fromLocalFile(QDir(folder).filePath(
        QStringLiteral("%1-%2.pdf").arg(name, QString::fromStdString(calendar::to_text(today_)))));
}

void SheetPrinter::print(const QString& page, int plant, const QUrl& file)
{
    const auto kind = kind_of(page);
    if (!hasSheet(page, plant)) {
        return;
    }
    if (!file.isLocalFile()) {
        fail_with(tr("A sheet is kept in a folder of this computer; %1 is none.").arg(file.toString()));
        return;
    }
    QString name = file.toLocalFile();
    const QString ending = is_card(page) ? QStringLiteral(".svg") : QStringLiteral(".pdf");
    if (!name.endsWith(ending, Qt::CaseInsensitive)) {
        name += ending;
    }
    if (is_card(page)) {
        write(name, [](const std::filesystem::path& to) -> Result<int> {
            const auto written = write_file_whole(to, photo::scale_card_svg());
            return written ? Result<int>{1} : Result<int>{written.error()};
        });
        return;
    }
    SheetWish wish;
    wish.kind = *kind;
    wish.paper = usual_paper();
    wish.plant = plant;
    if (tonight_ != nullptr) {
        wish.days = tonight_->days();
    }
    if (*kind == SheetKind::Seeds && seeds_ != nullptr) {
        wish.risk = seeds_->risk();
    } else if (year_ != nullptr) {
        wish.risk = year_->risk();
        wish.order = static_cast<models::RowOrder>(year_->plants()->rowOrder());
    }
    write(name, [door = door_, wish, today = today_, words = words_](const std::filesystem::path& to) -> Result<int> {
        const auto printed = print_sheet(door, wish, today, words);
        if (!printed) {
            return printed.error();
        }
        const auto written = write_file_whole(to, printed->pdf);
        return written ? Result<int>{printed->pages} : Result<int>{written.error()};
    });
}

void SheetPrinter::write(const QString& name, std::function<Result<int>(const std::filesystem::path&)> make)
{
    clear_error();
    say({});
    work<int>(
        [make = std::move(make), name] { return make(std::filesystem::path{name.toStdU16String()}); },
        [this, name](Result<int> pages) {
            if (!pages) {
                fail(pages.error());
                return;
            }
            const QString where = QDir::toNativeSeparators(name);
            say(*pages == 1 ? tr("1 page is kept in %1.").arg(where)
                            : tr("%1 pages are kept in %2.").arg(*pages).arg(where));
        });
}

void SheetPrinter::dismiss()
{
    clear_error();
    say({});
}

} // namespace lathhouse::sheet
