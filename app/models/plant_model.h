#pragma once

#include "app/models/comparison_model.h"
#include "app/models/feeding_ask_model.h"
#include "app/models/measure_model.h"
#include "app/models/photo_export_model.h"
#include "app/models/plant_facts.h"
#include "app/models/plants_model.h"

#include <QPointer>

namespace lathhouse::models {

/// The page of one plant: the one that is open in the collection. It reads nothing itself; what it shows is worked
/// out in a thread from what the collection has read.
class PlantModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")
    Q_PROPERTY(int plantId READ plantId NOTIFY plantChanged)
    Q_PROPERTY(QString name READ name NOTIFY plantChanged)
    Q_PROPERTY(QString botanical READ botanical NOTIFY plantChanged)
    Q_PROPERTY(QString since READ since NOTIFY plantChanged)
    /// How and when it went, where it is gone; else empty.
    Q_PROPERTY(QString left READ left NOTIFY plantChanged)
    /// What comes before all else, and why; empty where nothing is to be warned of.
    Q_PROPERTY(QString warning READ warning NOTIFY plantChanged)
    Q_PROPERTY(QString warningWhy READ warningWhy NOTIFY plantChanged)
    /// Roles: words, hand, reason.
    Q_PROPERTY(lathhouse::models::SheetRows* chips READ chips CONSTANT)
    /// When it is fed next and how strong; empty where it is not to be fed.
    Q_PROPERTY(QString feedLine READ feedLine NOTIFY plantChanged)
    Q_PROPERTY(double feedPpm READ feedPpm NOTIFY plantChanged)
    Q_PROPERTY(bool canAskDose READ canAskDose NOTIFY plantChanged)
    /// Roles: source, date, words, newest, sentence, photo.
    Q_PROPERTY(lathhouse::models::SheetRows* photos READ photos CONSTANT)
    Q_PROPERTY(QString photosHead READ photosHead NOTIFY plantChanged)
    Q_PROPERTY(QString photosNote READ photosNote NOTIFY plantChanged)
    /// Roles: words, shown.
    Q_PROPERTY(lathhouse::models::SheetRows* kinds READ kinds CONSTANT)
    /// What happened between the readings; the one that is judged is shown. Roles: words, shown.
    Q_PROPERTY(lathhouse::models::SheetRows* judged READ judged CONSTANT)
    /// Plants of its kind that were measured too; those taken for spared are shown. Roles: words, shown.
    Q_PROPERTY(lathhouse::models::SheetRows* spared READ spared CONSTANT)
    Q_PROPERTY(bool hasChart READ hasChart NOTIFY plantChanged)
    /// Whether a fit with its band lies in the chart.
    Q_PROPERTY(bool hasBand READ hasBand NOTIFY plantChanged)
    Q_PROPERTY(QString chartTitle READ chartTitle NOTIFY plantChanged)
    Q_PROPERTY(QString chartNote READ chartNote NOTIFY plantChanged)
    Q_PROPERTY(QString chartSpoken READ chartSpoken NOTIFY plantChanged)
    /// Place of the verdict in growth::Verdict; -1 without one.
    Q_PROPERTY(int verdict READ verdict NOTIFY plantChanged)
    Q_PROPERTY(double share READ share NOTIFY plantChanged)
    Q_PROPERTY(QString verdictWord READ verdictWord NOTIFY plantChanged)
    Q_PROPERTY(QString verdictAfter READ verdictAfter NOTIFY plantChanged)
    Q_PROPERTY(QString verdictWords READ verdictWords NOTIFY plantChanged)
    Q_PROPERTY(QString verdictNote READ verdictNote NOTIFY plantChanged)
    Q_PROPERTY(QString nextHead READ nextHead NOTIFY plantChanged)
    Q_PROPERTY(QString nextRest READ nextRest NOTIFY plantChanged)
    Q_PROPERTY(QString needsSpoken READ needsSpoken NOTIFY plantChanged)
    Q_PROPERTY(QString lightWords READ lightWords NOTIFY plantChanged)
    /// Roles: strong, rest, rust.
    Q_PROPERTY(lathhouse::models::SheetRows* hazards READ hazards CONSTANT)
    Q_PROPERTY(QStringList notes READ notes NOTIFY plantChanged)
    /// Roles: date, value, change, repeats, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* readings READ readings CONSTANT)
    /// The newest of what happened; roles: date, what, note, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* history READ history CONSTANT)
    /// All that happened, shown or not.
    Q_PROPERTY(int historyCount READ historyCount NOTIFY plantChanged)
    /// All its photos, measuring in them, and photos on their way in.
    Q_PROPERTY(lathhouse::models::PhotosModel* album READ album CONSTANT)
    Q_PROPERTY(lathhouse::models::MeasureModel* measure READ measure CONSTANT)
    Q_PROPERTY(lathhouse::models::PhotoImportModel* coming READ coming CONSTANT)
    /// Its feeding through the year, under lamps.
    Q_PROPERTY(lathhouse::models::FeedingAskModel* feedingAsked READ feedingAsked CONSTANT)
    /// Its photographs written out for others.
    Q_PROPERTY(lathhouse::models::PhotoExportModel* leaving READ leaving CONSTANT)
    /// Two marked plants beside each other.
    Q_PROPERTY(lathhouse::models::ComparisonModel* comparison READ comparison CONSTANT)
    Q_PROPERTY(int photosShown READ photosShown WRITE setPhotosShown NOTIFY photosShownChanged)

public:
    explicit PlantModel(PlantsModel& plants, QObject* parent = nullptr);

    int plantId() const { return facts_.id; }
    QString name() const { return facts_.name; }
    QString botanical() const { return facts_.botanical; }
    QString since() const { return facts_.since; }
    QString left() const { return facts_.left; }
    QString warning() const { return facts_.warning; }
    QString warningWhy() const { return facts_.warning_why; }
    SheetRows* chips() { return &chips_; }
    QString feedLine() const { return facts_.feed_line; }
    double feedPpm() const { return facts_.feed ? facts_.feed->ppm : 0.0; }
    bool canAskDose() const { return facts_.feed.has_value(); }
    SheetRows* photos() { return &photos_; }
    QString photosHead() const { return facts_.photos_head; }
    QString photosNote() const { return facts_.photos_note; }
    SheetRows* kinds() { return &kinds_; }
    SheetRows* judged() { return &judged_; }
    SheetRows* spared() { return &spared_; }
    bool hasChart() const { return facts_.chart.has_value(); }
    bool hasBand() const { return facts_.chart && facts_.chart->growth.course.size() >= 2; }
    QString chartTitle() const { return facts_.chart_title; }
    QString chartNote() const { return facts_.chart_note; }
    QString chartSpoken() const { return facts_.chart_spoken; }
    int verdict() const { return facts_.verdict; }
    double share() const { return facts_.share; }
    QString verdictWord() const { return facts_.verdict_word; }
    QString verdictAfter() const { return facts_.verdict_after; }
    QString verdictWords() const { return facts_.verdict_words; }
    QString verdictNote() const { return facts_.verdict_note; }
    QString nextHead() const { return facts_.next_head; }
    QString nextRest() const { return facts_.next_rest; }
    QString needsSpoken() const { return facts_.needs_spoken; }
    QString lightWords() const { return facts_.light_words; }
    SheetRows* hazards() { return &hazards_; }
    QStringList notes() const { return facts_.notes; }
    SheetRows* readings() { return &readings_; }
    SheetRows* history() { return &history_; }
    int historyCount() const { return static_cast<int>(facts_.history_count); }
    PhotosModel* album() { return &album_; }
    MeasureModel* measure() { return &measure_in_photo_; }
    PhotoImportModel* coming() { return &coming_; }
    PhotoExportModel* leaving() { return &leaving_; }
    FeedingAskModel* feedingAsked() { return &feeding_asked_; }
    ComparisonModel* comparison() { return &comparison_; }
    int photosShown() const { return photos_shown_; }
    void setPhotosShown(int photos); ///< Held within 1 and 24.

    const PlantFacts& facts() const { return facts_; }
    const YearWords& words() const { return plants_.look().words; }
    calendar::Date today() const { return plants_.look().today; }

    /// How much feed goes into the water for it.
    Q_INVOKABLE void askDose();
    /// Shows another of the plant's measures, by its place among the kinds.
    Q_INVOKABLE void choose(int kind);
    /// Judges growth after another event, by its place among `judged`.
    Q_INVOKABLE void judge(int event);
    /// Takes a plant of its kind for spared or no longer, by its place among `spared`: its growth is the clock then.
    Q_INVOKABLE void takeForSpared(int plant);
    /// Shows fifty more of what happened; few are enough for most visits, and a plant of ten years has thousands.
    Q_INVOKABLE void showMoreHistory();
    /// Shows the newest few alone.
    Q_INVOKABLE void showNewestHistory();

signals:
    void plantChanged();
    void photosShownChanged();
    void feedDoseAsked(const lathhouse::models::DoseWish& wish);

protected:
    void read() override;

private:
    PlantsModel& plants_;
    PlantFacts facts_;
    std::optional<home::MeasurementKind> measure_;
    JudgeAsked judge_;
    int photos_shown_ = 6;
    std::size_t history_shown_;
    int asked_ = 0; ///< Pages asked for; only the last one is shown.
    SheetRows chips_;
    SheetRows photos_;
    SheetRows kinds_;
    SheetRows judged_;
    SheetRows spared_;
    SheetRows hazards_;
    SheetRows readings_;
    SheetRows history_;
    PhotosModel album_;
    MeasureModel measure_in_photo_;
    PhotoImportModel coming_;
    PhotoExportModel leaving_;
    FeedingAskModel feeding_asked_;
    ComparisonModel comparison_;
};

} // namespace lathhouse::models
