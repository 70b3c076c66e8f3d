#pragma once

#include "app/models/kind_filter.h"
#include "app/models/kind_model.h"
#include "app/models/sheet_rows.h"
#include "app/models/year_words.h"
#include "core/home/household.h"
#include "core/plants/plant_kind.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace lathhouse::models {

/// Where a plant of the form may stand.
struct StandingPlace {
    int number; ///< As the form's plants keep it.
    QString name;
    int free = 0; ///< Pots that still fit.
    bool in_reach = false;
    bool indoors = true;
};

/// So many plants of one kind, as they are picked.
struct PlantDraft {
    plants::PlantKind kind;
    bool own = false; ///< A kind of the grower's own.
    bool hazardous = false;
    bool outdoors = false; ///< Grown outdoors while the nights allow.
    int count = 1;
    int spot = 0; ///< Number of its place; 0: nowhere yet.
};

/// Plants to be added: found by botanical or common name among the kinds, or of a kind of one's own.
class PlantsForm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the model of a page")
    Q_PROPERTY(QString find READ find WRITE setFind NOTIFY findChanged)
    /// Roles: words (its common name), detail (its botanical one), lines, hazard, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* found READ found CONSTANT)
    /// Which kinds are looked through.
    Q_PROPERTY(lathhouse::models::KindFilter* filter READ filter CONSTANT)
    /// "273 kinds are known", "12 of 273 kinds"; or that none is called that, with names that are near.
    Q_PROPERTY(QString foundWords READ foundWords NOTIFY findChanged)
    /// Roles: words, second (its botanical name), number, where, trouble, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* picked READ picked CONSTANT)
    Q_PROPERTY(int total READ total NOTIFY pickedChanged)
    Q_PROPERTY(int current READ current WRITE setCurrent NOTIFY currentChanged)
    Q_PROPERTY(QString currentName READ currentName NOTIFY pickedChanged)
    /// Places where the current plants may stand; roles: text, number, chosen, reason.
    Q_PROPERTY(lathhouse::models::SheetRows* places READ places CONSTANT)
    // A kind of one's own. Temperatures are night lows in the shown unit.
    Q_PROPERTY(QString ownName MEMBER own_name_ NOTIFY ownChanged)
    Q_PROPERTY(QString ownSafe MEMBER own_safe_ NOTIFY ownChanged)
    Q_PROPERTY(QString ownDamage MEMBER own_damage_ NOTIFY ownChanged)
    Q_PROPERTY(QString ownLethal MEMBER own_lethal_ NOTIFY ownChanged)
    /// 0 low to 3 very high.
    Q_PROPERTY(int ownLight MEMBER own_light_ NOTIFY ownChanged)
    Q_PROPERTY(bool ownPoisonous MEMBER own_poisonous_ NOTIFY ownChanged)
    Q_PROPERTY(bool ownDries MEMBER own_dries_ NOTIFY ownChanged)
    Q_PROPERTY(bool ownOutdoors MEMBER own_outdoors_ NOTIFY ownChanged)
    Q_PROPERTY(QString ownTrouble READ ownTrouble NOTIFY ownTroubleChanged)
    /// The field that is wrong: 0 name, 1 safe night, 2 damage, 3 lethal; -1: none.
    Q_PROPERTY(int ownTroubleField READ ownTroubleField NOTIFY ownTroubleChanged)
    /// A kind that is looked at before it is picked.
    Q_PROPERTY(lathhouse::models::KindModel* looked READ looked CONSTANT)
    Q_PROPERTY(QString unit READ unit CONSTANT)
    Q_PROPERTY(QString exampleSafe READ exampleSafe CONSTANT)
    Q_PROPERTY(QString exampleDamage READ exampleDamage CONSTANT)

public:
    explicit PlantsForm(YearWords words, QObject* parent = nullptr);

    QString find() const { return find_; }
    void setFind(const QString& find);
    KindFilter* filter() { return &filter_; }
    SheetRows* found() { return &found_; }
    QString foundWords() const { return found_words_; }
    SheetRows* picked() { return &picked_; }
    int total() const;
    int current() const { return current_; }
    void setCurrent(int current); ///< Ignored outside those picked.
    QString currentName() const;
    KindModel* looked() { return &looked_; }
    SheetRows* places() { return &places_rows_; }
    QString ownTrouble() const { return own_trouble_; }
    int ownTroubleField() const { return own_trouble_field_; }
    QString unit() const { return words_.unit(); }
    QString exampleSafe() const { return words_.bare(Celsius::from_degrees(10.0)); }
    QString exampleDamage() const { return words_.bare(Celsius::from_degrees(2.0)); }

    /// Picks the kind in that row of those found; one more of it where it is picked already.
    Q_INVOKABLE void pick(int row);
    /// Shows what is known of the kind in that row of those found.
    Q_INVOKABLE void look(int row);
    /// Picks the one that is looked at, and closes it.
    Q_INVOKABLE void pickLooked();
    Q_INVOKABLE void more(int row);
    Q_INVOKABLE void fewer(int row); ///< The last one takes the kind away.
    Q_INVOKABLE void standAt(int row, int place); ///< By the row among `places`.
    /// Adds a plant of a kind of one's own; whether it could be read, else ownTrouble says why.
    Q_INVOKABLE bool addOwn();

    const std::vector<PlantDraft>& drafts() const { return drafts_; }
    void set_places(std::vector<StandingPlace> places);
    /// Names of plants that are there, or were.
    void set_taken(std::vector<std::string> names);
    /// The plants, each with a name of its own; `spot_of` gives the id of a place by its number. Errors: as make_plant.
    Result<std::vector<home::Plant>> make(const std::function<std::optional<home::SpotId>(int)>& spot_of) const;
    void clear();

signals:
    void findChanged();
    void pickedChanged();
    void currentChanged();
    void ownChanged();
    void ownTroubleChanged();

private:
    void search();
    void show();
    void add(PlantDraft draft);
    void pick_kind(const plants::PlantKind& kind);
    int free_at(const StandingPlace& place) const;
    int place_for(const PlantDraft& draft) const;
    const StandingPlace* place_of(int number) const;
    QString trouble_of(const PlantDraft& draft) const;
    bool fail_own(int field, const QString& words);

    YearWords words_;
    KindFilter filter_;
    QString find_;
    QString found_words_;
    std::vector<const plants::PlantKind*> matches_;
    KindModel looked_;
    const plants::PlantKind* looked_kind_ = nullptr;
    std::vector<PlantDraft> drafts_;
    std::vector<StandingPlace> places_;
    std::vector<std::string> taken_;
    int current_ = -1;
    QString own_name_, own_safe_, own_damage_, own_lethal_, own_trouble_;
    int own_trouble_field_ = -1;
    int own_light_ = 2;
    bool own_poisonous_ = false;
    bool own_dries_ = false;
    bool own_outdoors_ = true;
    SheetRows found_;
    SheetRows picked_;
    SheetRows places_rows_;
};

} // namespace lathhouse::models
