#pragma once

#include "app/models/calendar_model.h"
#include "app/models/home_data_model.h"
#include "app/models/home_facts.h"
#include "app/models/home_journal_model.h"
#include "app/models/home_people_model.h"
#include "app/models/home_record_model.h"
#include "app/models/household_door.h"
#include "app/models/light_reading_model.h"
#include "app/models/night_entry_model.h"
#include "app/models/night_line_model.h"
#include "app/models/photo_export_model.h"
#include "app/models/photos_aside_model.h"
#include "app/models/place_months_model.h"
#include "app/models/settings_model.h"
#include "app/models/sheet_model.h"

namespace lathhouse::models {

/// Models of Home's further sections; a section whose model is not given is not there.
struct HomeSections {
    HomeDataModel* keeping = nullptr;
    HomeRecordModel* record = nullptr;
    HomePeopleModel* people = nullptr;
    SettingsModel* settings = nullptr;
    CalendarModel* calendar = nullptr; ///< A part of the section Data, as the next.
    PhotoExportModel* leaving = nullptr; ///< Of the household.
    HomeJournalModel* journal = nullptr;
    PhotosAsideModel* aside = nullptr; ///< Of the section Data too.
};

/// The page Home: the place, its spots' light, and their thermometers. (Its base is named in full for the type
/// description of the QML module.)
class HomeModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Is given to the window")
    /// A Section; kept while the window is open.
    Q_PROPERTY(int section READ section WRITE setSection NOTIFY sectionChanged)
    Q_PROPERTY(lathhouse::models::HomeDataModel* keeping READ keeping CONSTANT)
    Q_PROPERTY(lathhouse::models::HomeRecordModel* record READ record CONSTANT)
    Q_PROPERTY(lathhouse::models::HomePeopleModel* people READ people CONSTANT)
    Q_PROPERTY(lathhouse::models::SettingsModel* settings READ settings CONSTANT)
    Q_PROPERTY(lathhouse::models::CalendarModel* calendar READ calendar CONSTANT)
    Q_PROPERTY(lathhouse::models::PhotoExportModel* leaving READ leaving CONSTANT)
    Q_PROPERTY(lathhouse::models::HomeJournalModel* journal READ journal CONSTANT)
    Q_PROPERTY(lathhouse::models::PhotosAsideModel* aside READ aside CONSTANT)
    /// Nights at or below a line of one's own.
    Q_PROPERTY(lathhouse::models::NightLineModel* line READ line CONSTANT)
    /// The twelve months of the place.
    Q_PROPERTY(lathhouse::models::PlaceMonthsModel* months READ months CONSTANT)
    /// How right the kept forecasts were; roles: ahead, nights, error, miss, season, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* forecasts READ forecasts CONSTANT)
    /// A night with all that was read of it.
    Q_PROPERTY(lathhouse::models::NightEntryModel* entry READ entry CONSTANT)
    Q_PROPERTY(QString place READ place NOTIFY homeChanged)
    Q_PROPERTY(QString position READ position NOTIFY homeChanged)
    Q_PROPERTY(QString mapNote READ mapNote NOTIFY homeChanged)
    Q_PROPERTY(QString base READ base NOTIFY homeChanged)
    Q_PROPERTY(QString credits READ credits NOTIFY homeChanged)
    Q_PROPERTY(QString warning READ warning NOTIFY homeChanged)
    Q_PROPERTY(lathhouse::models::SheetRows* figures READ figures CONSTANT)
    Q_PROPERTY(lathhouse::models::SheetRows* stations READ stations CONSTANT)
    /// The spots, to choose from, and the one whose light is shown.
    Q_PROPERTY(lathhouse::models::SheetRows* spots READ spots CONSTANT)
    Q_PROPERTY(int spot READ spot WRITE setSpot NOTIFY spotChanged)
    Q_PROPERTY(QString spotFacts READ spotFacts NOTIFY spotChanged)
    Q_PROPERTY(lathhouse::models::SheetRows* lightMonths READ lightMonths CONSTANT)
    Q_PROPERTY(lathhouse::models::SheetRows* lightPlants READ lightPlants CONSTANT)
    /// What a meter reads at the spot that is shown, and how long a lamp burns there.
    Q_PROPERTY(lathhouse::models::LightReadingModel* meter READ meter CONSTANT)
    Q_PROPERTY(QString lightLine READ lightLine NOTIFY spotChanged)
    /// What the band of days is, how sure it is and whence; or why there is none.
    Q_PROPERTY(QString lightNote READ lightNote NOTIFY spotChanged)
    Q_PROPERTY(bool lightSpread READ lightSpread NOTIFY spotChanged)
    /// The spot whose light is drawn beside it; -1: none. Kept while the window is open.
    Q_PROPERTY(int beside READ beside WRITE setBeside NOTIFY spotChanged)
    Q_PROPERTY(QString besideName READ besideName NOTIFY spotChanged)
    /// The spots outdoors, and the one whose thermometer is shown.
    Q_PROPERTY(lathhouse::models::SheetRows* outdoors READ outdoors CONSTANT)
    Q_PROPERTY(int outdoor READ outdoor WRITE setOutdoor NOTIFY outdoorChanged)
    Q_PROPERTY(QString offsetTitle READ offsetTitle NOTIFY outdoorChanged)
    Q_PROPERTY(QString offsetNow READ offsetNow NOTIFY outdoorChanged)
    Q_PROPERTY(QString offsetRange READ offsetRange NOTIFY outdoorChanged)
    Q_PROPERTY(QString offsetKinds READ offsetKinds NOTIFY outdoorChanged)
    Q_PROPERTY(lathhouse::models::SheetRows* nights READ nights CONSTANT)
    Q_PROPERTY(QString unit READ unit NOTIFY homeChanged)
    /// Whether `error` and `said` speak of a file of readings.
    Q_PROPERTY(bool aboutFile READ aboutFile NOTIFY aboutFileChanged)

public:
    enum Section { Place, Spots, Thermometer, Record, People, Journal, Data, Settings };
    Q_ENUM(Section)
    static constexpr int kSections = 8;

    HomeModel(HouseholdDoor door, TodayLook look, QObject* parent = nullptr);

    int section() const { return section_; }
    void setSection(int section); ///< Ignored where there is no such section.
    Q_INVOKABLE bool has(int section) const;
    /// To the next section that is there, or the one before.
    Q_INVOKABLE void step(int by);
    /// Gives the further sections; before the page is shown. They outlive this.
    void join(HomeSections sections) { sections_ = sections; }
    HomeDataModel* keeping() const { return sections_.keeping; }
    HomeRecordModel* record() const { return sections_.record; }
    HomePeopleModel* people() const { return sections_.people; }
    SettingsModel* settings() const { return sections_.settings; }
    CalendarModel* calendar() const { return sections_.calendar; }
    PhotoExportModel* leaving() const { return sections_.leaving; }
    HomeJournalModel* journal() const { return sections_.journal; }
    PhotosAsideModel* aside() const { return sections_.aside; }
    NightLineModel* line() { return &line_; }
    PlaceMonthsModel* months() { return &months_; }
    NightEntryModel* entry() { return &entry_; }
    LightReadingModel* meter() { return &meter_; }
    SheetRows* forecasts() { return &forecasts_; }
    QString place() const { return facts_.place; }
    QString position() const { return facts_.position; }
    QString mapNote() const { return facts_.map_note; }
    QString base() const { return facts_.base; }
    QString credits() const { return facts_.credits; }
    QString warning() const { return facts_.warning; }
    SheetRows* figures() { return &figures_; }
    SheetRows* stations() { return &stations_; }
    SheetRows* spots() { return &spots_; }
    int spot() const { return spot_; }
    void setSpot(int spot); ///< Ignored outside the spots.
    QString spotFacts() const;
    SheetRows* lightMonths() { return &light_months_; }
    SheetRows* lightPlants() { return &light_plants_; }
    QString lightLine() const;
    QString lightNote() const;
    bool lightSpread() const { return light() != nullptr && light()->days.has_value(); }
    int beside() const { return beside_; }
    void setBeside(int spot); ///< The one whose light is shown anyway, or none of the spots: none.
    QString besideName() const;
    SheetRows* outdoors() { return &outdoors_; }
    int outdoor() const { return outdoor_; }
    void setOutdoor(int outdoor);
    QString offsetTitle() const;
    QString offsetNow() const;
    QString offsetRange() const;
    QString offsetKinds() const;
    SheetRows* nights() { return &nights_; }
    QString unit() const { return look_.words.unit(); }

    bool aboutFile() const { return about_file_; }

    const HomeFacts& facts() const { return facts_; }
    const SpotLight* light() const;
    const SpotLight* lightBeside() const; ///< May be null.
    const OffsetCourse* offset() const;
    const YearWords& words() const { return look_.words; }

    /// Keeps the low of the night that ended so many days ago at the spot shown. sky: 0 not said, 1 clear and calm, 2 cloud
    /// or wind. Whether it could be read as a temperature and a day; else `error` says why.
    Q_INVOKABLE bool logNight(const QString& low, int sky, int days_ago = 0);
    /// Keeps the nights of a file, in the forms of home::readings_from: all of them or none. Rows that name no spot are of the one
    /// shown; columns: "date=Day,low_c=Min" where the file calls them otherwise, else blank. Whether there is a file to read;
    /// what is wrong with it `error` says when it was read.
    Q_INVOKABLE bool logFile(const QString& path, const QString& columns = {});
    /// That morning in words; empty outside 0..3650.
    Q_INVOKABLE QString dateAgo(int days) const;

signals:
    void sectionChanged();
    void homeChanged();
    void spotChanged();
    void outdoorChanged();
    void aboutFileChanged();

protected:
    void read() override;

private:
    void show_spot();
    void show_outdoor();
    void speak_of_file(bool file);

    HouseholdDoor door_;
    TodayLook look_;
    HomeFacts facts_;
    HomeSections sections_;
    int section_ = Place;
    int spot_ = 0;
    int beside_ = -1;
    int outdoor_ = 0;
    bool about_file_ = false;
    NightLineModel line_;
    PlaceMonthsModel months_;
    NightEntryModel entry_;
    LightReadingModel meter_;
    SheetRows figures_;
    SheetRows stations_;
    SheetRows spots_;
    SheetRows light_months_;
    SheetRows light_plants_;
    SheetRows outdoors_;
    SheetRows nights_;
    SheetRows forecasts_;
};

} // namespace lathhouse::models
