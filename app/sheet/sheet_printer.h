#pragma once

#include "app/models/plant_door.h"
#include "app/models/seeds_model.h"
#include "app/models/sheet_model.h"
#include "app/models/tonight_model.h"
#include "app/models/year_model.h"
#include "app/models/year_words.h"
#include "app/sheet/sheet_wish.h"

#include <QString>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include <filesystem>
#include <functional>

namespace lathhouse::sheet {

/// Prints sheets for the window (its base is named in full for the type description), each in the thread of the model; `said` is where the last one was kept, `error` why
/// it was not.
class SheetPrinter : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")
    /// The year to print is the one that is shown, at its risk.
    Q_PROPERTY(lathhouse::models::YearModel* year READ year WRITE setYear NOTIFY yearChanged)

public:
    SheetPrinter(models::PlantDoor door, calendar::Date today, models::YearWords words, QObject* parent = nullptr);

    models::YearModel* year() const { return year_; }
    void setYear(models::YearModel* year);
    /// The days of the round and the risk of the sowings to print are those that are shown.
    void follow(const models::TonightModel& tonight, const models::SeedsModel& seeds);

    /// A name for the file of a page's sheet in a folder of the user's: page "year", "round", "plants" or "seeds"; a
    /// plant's own name comes in. "card" is the scale card, a drawing (SVG).
    Q_INVOKABLE QUrl suggestedFile(const QString& page, const QString& plant) const;
    /// Of the same.
    Q_INVOKABLE QUrl suggestedFolder() const;
    /// Whether that page has a sheet: all but Home, and Plants where one plant is open.
    Q_INVOKABLE bool hasSheet(const QString& page, int plant) const;
    /// Prints and writes; a name without ".pdf" gets it, and the card's ".svg".
    Q_INVOKABLE void print(const QString& page, int plant, const QUrl& file);
    /// Takes the last word away.
    Q_INVOKABLE void dismiss();

signals:
    void yearChanged();

protected:
    void read() override {}

private:
    void write(const QString& name, std::function<Result<int>(const std::filesystem::path&)> make);

    models::PlantDoor door_;
    calendar::Date today_;
    models::YearWords words_;
    models::YearModel* year_ = nullptr;
    const models::TonightModel* tonight_ = nullptr;
    const models::SeedsModel* seeds_ = nullptr;
};

} // namespace lathhouse::sheet
