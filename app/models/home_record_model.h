#pragma once

#include "app/models/record_facts.h"
#include "app/models/sheet_model.h"

#include <QUrl>

#include <filesystem>

namespace lathhouse::models {

/// Where the record of a household is read and written. Called from the model's thread.
struct RecordDoor {
    std::function<Result<home::Household>()> load;
    std::function<Result<void>(const climate::OwnRecord&)> keep;
    std::function<Result<void>()> remove;
    ShippedClimate shipped;
    bool keeps = true; ///< Whether what is written outlasts the window.
};
RecordDoor record_in_folder(std::filesystem::path folder, ShippedClimate shipped);
/// Of a household in memory: `household` gives it, `change` puts another record in it.
RecordDoor record_in_memory(std::function<Result<home::Household>()> load,
                            std::function<Result<void>(std::shared_ptr<const climate::OwnRecord>)> change,
                            ShippedClimate shipped);

/// The section Own record of Home: a record of days that the grower imports, compared with the shipped table.
class HomeRecordModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page Home")
    Q_PROPERTY(bool isThere READ isThere NOTIFY recordChanged)
    Q_PROPERTY(bool keeps READ keeps CONSTANT)
    Q_PROPERTY(QString title READ title NOTIFY recordChanged)
    Q_PROPERTY(QString origin READ origin NOTIFY recordChanged)
    Q_PROPERTY(QString verdict READ verdict NOTIFY recordChanged)
    Q_PROPERTY(bool doubtful READ doubtful NOTIFY recordChanged)
    Q_PROPERTY(QString use READ use NOTIFY recordChanged)
    Q_PROPERTY(lathhouse::models::SheetRows* figures READ figures CONSTANT)
    Q_PROPERTY(lathhouse::models::SheetRows* months READ months CONSTANT)
    Q_PROPERTY(QString unit READ unit NOTIFY recordChanged)
    /// Whether a height is typed in feet, else in metres.
    Q_PROPERTY(bool feet READ feet NOTIFY recordChanged)
    /// Whether the last file was refused as not plausible alone, so that "all the same" takes it.
    Q_PROPERTY(bool canInsist READ canInsist NOTIFY insistChanged)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY undoChanged)
    Q_PROPERTY(bool canRedo READ canRedo NOTIFY undoChanged)
    Q_PROPERTY(bool heightKnown READ heightKnown NOTIFY recordChanged)

public:
    /// today: the date of the import.
    HomeRecordModel(RecordDoor door, TodayLook look, QObject* parent = nullptr);

    bool isThere() const { return facts_.is_there; }
    bool keeps() const { return door_.keeps; }
    QString title() const { return facts_.title; }
    QString origin() const { return facts_.origin; }
    QString verdict() const { return facts_.verdict; }
    bool doubtful() const { return facts_.doubtful; }
    QString use() const { return facts_.use; }
    SheetRows* figures() { return &figures_; }
    SheetRows* months() { return &months_; }
    QString unit() const { return look_.words.unit(); }
    bool feet() const { return look_.words.units() == Units::Us; }
    bool canInsist() const { return can_insist_; }
    bool canUndo() const { return undo_.has_value(); }
    bool canRedo() const { return redo_.has_value(); }
    bool heightKnown() const { return height_known_; }

    /// Takes a file in, in the place of a record that may be there. units: 0 °C and mm, 1 °F and inches. columns: the
    /// names of date, low, high and rain as "Day,Min,Max,Rain"; empty: the usual ones. station: of a file with
    /// several. height: where it was kept, in feet or metres as `feet` says; empty: the household's. insist: though implausible. position: where
    /// it was kept, both coordinates in any form; empty: at home.
    Q_INVOKABLE void take(const QString& file, int units, const QString& columns, const QString& station,
                          const QString& height, bool insist = false, const QString& position = {});
    Q_INVOKABLE void remove();
    /// Back to the record, or to none, that was there before the last change of this window; and forth again.
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    Q_INVOKABLE static QString pathOf(const QUrl& address) { return address.toLocalFile(); }
    /// The path of the one file that was let go here; empty where it is none of this computer or there are several, and
    /// `error` says so.
    Q_INVOKABLE QString pathOfDropped(const QList<QUrl>& files);

signals:
    void recordChanged();
    void insistChanged();
    /// The file calls its columns otherwise than is known.
    void columnsAsked();
    void undoChanged();

protected:
    void read() override;

private:
    using Kept = std::shared_ptr<const climate::OwnRecord>; ///< nullptr: none.
    enum class Step { New, Back, Forth };
    /// Puts a record in the household, or takes it out, and reads it again.
    void change(Kept to, QString said, Step step);

    RecordDoor door_;
    TodayLook look_;
    RecordFacts facts_;
    Kept record_;
    std::optional<Kept> undo_;
    std::optional<Kept> redo_;
    bool can_insist_ = false;
    bool height_known_ = true;
    SheetRows figures_;
    SheetRows months_;
};

} // namespace lathhouse::models
