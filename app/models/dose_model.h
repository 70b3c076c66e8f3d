#pragma once

#include "app/models/dose_wish.h"
#include "app/models/jug_door.h"
#include "app/models/kept_settings.h"
#include "app/models/sheet_model.h"
#include "app/models/sheet_rows.h"
#include "app/models/year_words.h"
#include "app/words/mix_words.h"

#include <QStringList>

#include <memory>
#include <optional>
#include <vector>

namespace lathhouse::models {

/// How much of the grower's own feed goes into the grower's own can, in the household's measures; the same for oil and soap
/// against pests. What the grower has is asked once and remembered on this machine; then every feed of the round and of a
/// plant's page says its dose in one line. (Its base is named in full for the type description of the QML module.)
class DoseModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")
    Q_PROPERTY(bool open READ open NOTIFY openChanged)
    /// Oil or soap instead of feed.
    Q_PROPERTY(bool spray READ spray NOTIFY openChanged)
    Q_PROPERTY(QString title READ title NOTIFY openChanged)
    Q_PROPERTY(QString feed READ feed WRITE setFeed NOTIFY typed)
    Q_PROPERTY(bool liquid READ liquid WRITE setLiquid NOTIFY typed)
    /// Grams of a level teaspoon of powder, or of a millilitre of liquid; may be blank.
    Q_PROPERTY(QString weight READ weight WRITE setWeight NOTIFY typed)
    Q_PROPERTY(QString water READ water WRITE setWater NOTIFY typed)
    /// Nitrogen wanted, ppm.
    Q_PROPERTY(QString strength READ strength WRITE setStrength NOTIFY typed)
    Q_PROPERTY(bool soap READ soap WRITE setSoap NOTIFY typed)
    /// Of the water, oil or soap.
    Q_PROPERTY(QString percent READ percent WRITE setPercent NOTIFY typed)
    Q_PROPERTY(QString canName READ canName WRITE setCanName NOTIFY typed)
    Q_PROPERTY(QString canHolds READ canHolds WRITE setCanHolds NOTIFY typed)
    /// Cans to take with one press: the usual ones and the household's own; roles: words, value, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* cans READ cans CONSTANT)
    /// The dose, a whole sentence; empty until it can be worked out.
    Q_PROPERTY(QString dose READ dose NOTIFY typed)
    /// Why there is no dose, of the first field that is filled in and wrong; empty while only some are blank.
    Q_PROPERTY(QString why READ why NOTIFY typed)
    /// What it makes, what is unusual or not known.
    Q_PROPERTY(QStringList remarks READ remarks NOTIFY typed)
    Q_PROPERTY(QStringList cautions READ cautions NOTIFY typed)
    Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)
    Q_PROPERTY(int troubleField READ troubleField NOTIFY troubleChanged)
    /// Goes up with whatever `line` rests on; 0 until a feed is known.
    Q_PROPERTY(int revision READ revision NOTIFY revisionChanged)

public:
    /// Where something is wrong; None: nowhere.
    enum Field { None, Feed, Weight, Water, Strength, Percent, CanName, CanHolds };
    Q_ENUM(Field)

    DoseModel(JugDoor door, std::shared_ptr<KeptSettings> kept, YearWords words, QObject* parent = nullptr);

    bool open() const { return open_; }
    bool spray() const { return spray_; }
    QString title() const;
    QString feed() const { return feed_; }
    bool liquid() const { return liquid_; }
    QString weight() const { return weight_; }
    QString water() const { return water_; }
    QString strength() const { return strength_; }
    bool soap() const { return soap_; }
    QString percent() const { return percent_; }
    QString canName() const { return can_name_; }
    QString canHolds() const { return can_holds_; }
    void setFeed(const QString& feed) { type(feed_, feed); }
    void setLiquid(bool liquid);
    void setWeight(const QString& weight) { type(weight_, weight); }
    void setWater(const QString& water) { type(water_, water); }
    void setStrength(const QString& strength) { type(strength_, strength); }
    void setSoap(bool soap);
    void setPercent(const QString& percent) { type(percent_, percent); }
    void setCanName(const QString& name) { type(can_name_, name); }
    void setCanHolds(const QString& holds) { type(can_holds_, holds); }
    SheetRows* cans() { return &cans_; }
    QString dose() const { return dose_; }
    QString why() const { return why_; }
    QStringList remarks() const { return remarks_; }
    QStringList cautions() const;
    QString trouble() const { return trouble_; }
    int troubleField() const { return trouble_field_; }
    int revision() const { return revision_; }

    /// Opens the form for a feed, or for a spray.
    void ask(DoseWish wish);
    void ask_spray(QString plant);
    /// "2.5 g of 20-10-20, about ½ teaspoon, into 2 L of water." for what is remembered; empty where nothing is.
    Q_INVOKABLE QString line(double ppm) const;
    /// Remembers what the form says and closes it; where something is wrong it says so and stays.
    Q_INVOKABLE void keep();
    /// Keeps a can or a spoon of the household's own and takes it.
    Q_INVOKABLE void keepCan();
    Q_INVOKABLE void leave();
    /// All is said in other units from now on.
    void say_again();

signals:
    void openChanged();
    void typed();
    void troubleChanged();
    void revisionChanged();
    /// What is wrong stands at a field.
    void wrong();

protected:
    void read() override;

private:
    struct Asked { ///< As it was typed, understood; or what is wrong with it.
        words::FeedAtHand feed;
        std::optional<plan::FeedLabel> label;
        std::optional<double> density;
        std::optional<Litres> water;
        double ppm = 0.0;
        double percent = 0.0;
        Field wrong = None;
        QString trouble;
        QString typed_trouble; ///< Of the first that is filled in and wrong.
    };
    void type(QString& field, const QString& words);
    void recall();
    void begin();
    void tell_cans();
    void work_out();
    Asked asked() const;
    /// typed: as it is written in the field; a can of the household's own is told with what it holds.
    QString water_words(const QString& typed, Litres water) const;
    void set_trouble(Field field, QString words);
    void take_off_trouble();

    JugDoor door_;
    std::shared_ptr<KeptSettings> kept_;
    YearWords words_;
    DoseWish wish_;
    std::vector<home::Jug> jugs_;
    bool open_ = false;
    bool spray_ = false;
    QString feed_;
    bool liquid_ = false;
    QString weight_;
    QString water_;
    QString strength_;
    bool soap_ = false;
    QString percent_;
    QString can_name_;
    QString can_holds_;
    QString dose_;
    QString why_;
    QStringList remarks_;
    QString trouble_;
    Field trouble_field_ = None;
    int revision_ = 0;
    SheetRows cans_;
};

} // namespace lathhouse::models
