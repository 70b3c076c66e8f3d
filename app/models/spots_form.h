#pragma once

#include "app/models/sheet_rows.h"
#include "app/models/spot_draft.h"
#include "app/models/year_words.h"
#include "core/home/new_spot.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <memory>
#include <optional>
#include <vector>

namespace lathhouse::models {

/// Spots: ready-made ones with one press, each open to change.
class SpotsForm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the model of a page")
    /// Roles: text, reason. One press adds the spot.
    Q_PROPERTY(lathhouse::models::SheetRows* ready READ ready CONSTANT)
    /// Roles: words (its name), detail, trouble, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* spots READ spots CONSTANT)
    /// Roles: text, reason; by the place in home::SpotKind.
    Q_PROPERTY(lathhouse::models::SheetRows* kinds READ kinds CONSTANT)
    /// Roles: text, spoken; the eight directions from north.
    Q_PROPERTY(lathhouse::models::SheetRows* facings READ facings CONSTANT)
    Q_PROPERTY(int current READ current WRITE setCurrent NOTIFY currentChanged)
    // The spot that is being changed.
    Q_PROPERTY(QString name READ name WRITE setName NOTIFY draftChanged)
    Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY draftChanged)
    Q_PROPERTY(int facing READ facing WRITE setFacing NOTIFY draftChanged)
    Q_PROPERTY(QString pots READ pots WRITE setPots NOTIFY draftChanged)
    Q_PROPERTY(QString winter READ winter WRITE setWinter NOTIFY draftChanged)
    Q_PROPERTY(QString summer READ summer WRITE setSummer NOTIFY draftChanged)
    Q_PROPERTY(bool inReach READ inReach WRITE setInReach NOTIFY draftChanged)
    Q_PROPERTY(bool apart READ apart WRITE setApart NOTIFY draftChanged)
    Q_PROPERTY(bool windy READ windy WRITE setWindy NOTIFY draftChanged)
    Q_PROPERTY(bool indoors READ indoors NOTIFY draftChanged)
    /// Whether the way it faces counts.
    Q_PROPERTY(bool faces READ faces NOTIFY draftChanged)
    Q_PROPERTY(QString nameTrouble READ nameTrouble NOTIFY draftChanged)
    Q_PROPERTY(QString potsTrouble READ potsTrouble NOTIFY draftChanged)
    Q_PROPERTY(QString roomTrouble READ roomTrouble NOTIFY draftChanged)
    /// What may be measured: of the window or the open side, of the light, of the nights. Roles: measure (a number for
    /// setMeasure), label, unit, usual, value, note, trouble. Which there are goes by the kind and the side.
    Q_PROPERTY(lathhouse::models::SheetRows* windowMeasures READ windowMeasures CONSTANT)
    Q_PROPERTY(lathhouse::models::SheetRows* lightMeasures READ lightMeasures CONSTANT)
    Q_PROPERTY(lathhouse::models::SheetRows* nightMeasures READ nightMeasures CONSTANT)
    Q_PROPERTY(QString measuresTrouble READ measuresTrouble NOTIFY draftChanged)
    Q_PROPERTY(bool hasOpening READ hasOpening NOTIFY draftChanged)
    /// Whether the measures are shown.
    Q_PROPERTY(bool measuring MEMBER measuring_ NOTIFY measuringChanged)
    /// The light that follows from it at the place; empty where the place is not known.
    Q_PROPERTY(QString light READ light NOTIFY draftChanged)
    Q_PROPERTY(QString unit READ unit CONSTANT)
    Q_PROPERTY(QString usualWinter READ usualWinter CONSTANT)
    Q_PROPERTY(QString usualSummer READ usualSummer CONSTANT)

public:
    explicit SpotsForm(YearWords words, QObject* parent = nullptr);

    SheetRows* ready() { return &ready_; }
    SheetRows* spots() { return &spots_; }
    SheetRows* kinds() { return &kinds_; }
    SheetRows* facings() { return &facings_; }
    int current() const { return current_; }
    void setCurrent(int current); ///< Ignored outside the spots.
    QString name() const { return draft() != nullptr ? draft()->name : QString{}; }
    void setName(const QString& name);
    int kind() const { return draft() != nullptr ? static_cast<int>(draft()->kind) : 0; }
    void setKind(int kind);
    int facing() const { return draft() != nullptr ? draft()->facing : -1; }
    void setFacing(int facing); ///< The one that it has already takes it away, where the kind may have none.
    QString pots() const { return draft() != nullptr ? draft()->pots : QString{}; }
    void setPots(const QString& pots);
    QString winter() const { return draft() != nullptr ? draft()->winter : QString{}; }
    void setWinter(const QString& winter);
    QString summer() const { return draft() != nullptr ? draft()->summer : QString{}; }
    void setSummer(const QString& summer);
    bool inReach() const { return draft() != nullptr && draft()->in_reach; }
    void setInReach(bool in_reach);
    bool apart() const { return draft() != nullptr && draft()->apart; }
    void setApart(bool apart);
    bool windy() const { return draft() != nullptr && draft()->windy; }
    void setWindy(bool windy);
    bool indoors() const { return draft() != nullptr && draft()->kind == home::SpotKind::Indoors; }
    bool faces() const { return draft() != nullptr && draft()->kind != home::SpotKind::Glazed; }
    SheetRows* windowMeasures() { return &window_measures_; }
    SheetRows* lightMeasures() { return &light_measures_; }
    SheetRows* nightMeasures() { return &night_measures_; }
    Q_INVOKABLE void setMeasure(int measure, const QString& typed); ///< A SpotMeasure.
    QString measuresTrouble() const;
    bool hasOpening() const;
    QString nameTrouble() const;
    QString potsTrouble() const;
    QString roomTrouble() const;
    QString light() const;
    QString unit() const { return words_.unit(); }
    QString usualWinter() const { return words_.bare(home::kUsualRoomInWinter); }
    QString usualSummer() const { return words_.bare(home::kUsualRoomInSummer); }

    Q_INVOKABLE void addReady(int row);
    Q_INVOKABLE void remove(int row);

    const std::vector<SpotDraft>& drafts() const { return drafts_; }
    /// The year by which the light of a spot is worked out; may be nullptr.
    void set_year(std::shared_ptr<const home::YearOfSky> year);
    /// Names that are taken elsewhere in the household.
    void set_taken(std::vector<std::string> names);
    /// Errors: WrongUsage with the first thing that is wrong; then that spot is the current one.
    Result<bool> check();
    /// What a draft says; only of drafts that check() found right.
    home::SpotWish wish(const SpotDraft& draft) const;
    /// The form holds this one spot alone, for changing one that is there.
    void fill(const home::Spot& spot);
    void clear();

signals:
    void currentChanged();
    void draftChanged();
    void measuringChanged();
    /// Spots came, went or changed.
    void spotsChanged();

private:
    const SpotDraft* draft() const;
    SpotDraft* draft();
    template <class Value>
    void set(Value SpotDraft::*member, const Value& value);
    void changed();
    void show();
    void show_measures();
    QString trouble_of_name(const SpotDraft& draft) const;
    QString trouble_of_pots(const SpotDraft& draft) const;
    QString trouble_of_room(const SpotDraft& draft) const;
    QString first_trouble_of(const SpotDraft& draft) const;
    QString words_of(const SpotDraft& draft) const;
    QString free_name(const QString& wished) const;

    YearWords words_;
    std::vector<SpotDraft> drafts_;
    int next_number_ = 1;
    int current_ = -1;
    bool measuring_ = false;
    std::vector<std::string> taken_;
    std::shared_ptr<const home::YearOfSky> year_;
    SheetRows ready_;
    SheetRows spots_;
    SheetRows kinds_;
    SheetRows facings_;
    SheetRows window_measures_;
    SheetRows light_measures_;
    SheetRows night_measures_;
};

} // namespace lathhouse::models
