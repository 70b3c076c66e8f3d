#pragma once

#include "app/models/place_form.h"
#include "app/models/plants_form.h"
#include "app/models/spots_form.h"

#include <array>
#include <filesystem>

namespace lathhouse::models {

/// The first start: place, spots, plants. Each step can be left out and mended later; nothing is written before the
/// end, and then all of it at once.
class FirstStartModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")
    Q_PROPERTY(lathhouse::models::PlaceForm* place READ place CONSTANT)
    Q_PROPERTY(lathhouse::models::SpotsForm* spots READ spots CONSTANT)
    Q_PROPERTY(lathhouse::models::PlantsForm* plants READ plants CONSTANT)
    /// 0 place, 1 spots, 2 plants.
    Q_PROPERTY(int step READ step WRITE setStep NOTIFY stepChanged)
    /// What each step has so far, in words.
    Q_PROPERTY(QString placeWords READ placeWords NOTIFY wordsChanged)
    Q_PROPERTY(QString spotsWords READ spotsWords NOTIFY wordsChanged)
    Q_PROPERTY(QString plantsWords READ plantsWords NOTIFY wordsChanged)
    /// What leaving this step out means, in a sentence.
    Q_PROPERTY(QString leaveWords READ leaveWords NOTIFY wordsChanged)
    Q_PROPERTY(QString homeName READ homeName WRITE setHomeName NOTIFY wordsChanged)
    Q_PROPERTY(QString folder READ folder CONSTANT)

public:
    static constexpr int kSteps = 3;

    FirstStartModel(PlaceDoor door, std::filesystem::path folder, YearWords words, calendar::Date today,
                    QObject* parent = nullptr);

    PlaceForm* place() { return &place_; }
    SpotsForm* spots() { return &spots_; }
    PlantsForm* plants() { return &plants_; }
    int step() const { return step_; }
    void setStep(int step); ///< Ignored outside the steps. What was typed stays.
    QString placeWords() const;
    QString spotsWords() const;
    QString plantsWords() const;
    QString leaveWords() const;
    QString homeName() const { return home_name_; }
    void setHomeName(const QString& name);
    QString folder() const { return QString::fromStdString(folder_.string()); }

    /// On to the next step with what was typed; from the last one everything is written. Whether that step was right,
    /// else it says what is wrong at its field.
    Q_INVOKABLE bool next();
    /// On without what was typed here, which stays for coming back.
    Q_INVOKABLE void leaveOut();
    Q_INVOKABLE void back();
    /// Opens the example household instead.
    Q_INVOKABLE void openExample();

signals:
    void stepChanged();
    void wordsChanged();
    /// The household is in its folder.
    void made();
    void exampleAsked();

protected:
    void read() override;

private:
    void follow_place();
    void follow_spots();
    void go_on(bool used);
    void finish();
    void write();
    bool uses(int step) const { return !left_out_[static_cast<std::size_t>(step)]; }

    std::filesystem::path folder_;
    PlaceDoor door_;
    calendar::Date today_;
    PlaceForm place_;
    SpotsForm spots_;
    PlantsForm plants_;
    int step_ = 0;
    std::array<bool, kSteps> left_out_{};
    QString home_name_;
    bool finishing_ = false;
};

} // namespace lathhouse::models
