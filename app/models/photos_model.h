#pragma once

#include "app/models/photo_image.h"
#include "app/models/photo_import_model.h"

#include <atomic>

namespace lathhouse::models {

/// The photos of the plant whose page is open: one that is looked at, a second one beside it, what can be done with
/// them.
class PhotosModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page of a plant")
    /// What is open over the plant's page.
    Q_PROPERTY(int view READ view NOTIFY viewChanged)
    Q_PROPERTY(int count READ count NOTIFY currentChanged)
    /// Place of the photo that is looked at, the oldest first; -1 where there is none.
    Q_PROPERTY(int current READ current WRITE setCurrent NOTIFY currentChanged)
    /// The same of the one beside it.
    Q_PROPERTY(int other READ other WRITE setOther NOTIFY currentChanged)
    Q_PROPERTY(QString place READ place NOTIFY currentChanged)
    Q_PROPERTY(QString date READ date NOTIFY currentChanged)
    Q_PROPERTY(QString otherDate READ otherDate NOTIFY currentChanged)
    /// What is known of it; roles: name, words.
    Q_PROPERTY(lathhouse::models::SheetRows* facts READ facts CONSTANT)
    /// What was measured at both dates; roles: name, before, after, change, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* changes READ changes CONSTANT)
    Q_PROPERTY(QString changesNote READ changesNote NOTIFY currentChanged)
    Q_PROPERTY(bool isPicture READ isPicture NOTIFY currentChanged)
    Q_PROPERTY(QVariant image READ imageValue NOTIFY imageChanged)
    Q_PROPERTY(QVariant otherImage READ otherImageValue NOTIFY imageChanged)
    /// Plants that it may be given to; roles: plant, name.
    Q_PROPERTY(lathhouse::models::SheetRows* others READ others CONSTANT)

public:
    enum View { Closed, One, Two, Measuring };
    Q_ENUM(View)

    explicit PhotosModel(PlantsModel& plants, QObject* parent = nullptr);
    ~PhotosModel() override;

    int view() const { return view_; }
    int count() const { return static_cast<int>(photos_.size()); }
    int current() const { return current_; }
    void setCurrent(int current); ///< Held within those there are.
    int other() const { return other_; }
    void setOther(int other);
    int photoId() const { return current_ < 0 ? 0 : at(current_).id; }
    QString place() const;
    QString date() const { return date_of(current_); }
    QString otherDate() const { return date_of(other_); }
    SheetRows* facts() { return &facts_; }
    SheetRows* changes() { return &changes_; }
    QString changesNote() const { return changes_note_; }
    bool isPicture() const;
    QImage image() const { return image_; }
    QImage otherImage() const { return other_image_; }
    /// As QML takes them: pictures, for PhotoPane alone.
    QVariant imageValue() const { return image_; }
    QVariant otherImageValue() const { return other_image_; }
    SheetRows* others() { return &others_; }

    /// The photo that is looked at; nullptr without one.
    const home::Photo* photo() const { return current_ < 0 ? nullptr : &at(current_); }
    /// The one beside it; nullptr where one is looked at alone.
    const home::Photo* photo_beside() const { return view_ != Two || other_ < 0 ? nullptr : &at(other_); }

    Q_INVOKABLE void open(int photo); ///< By its number; 0: the one that is looked at.
    /// The one that is looked at, or from the plant's page the newest, beside the oldest or the one chosen before.
    Q_INVOKABLE void openTwo();
    Q_INVOKABLE void openMeasuring();
    Q_INVOKABLE void close();
    Q_INVOKABLE void choosePicture();
    Q_INVOKABLE void chooseDrawing();
    Q_INVOKABLE void takeOff();
    /// Out of every list; PhotosAsideModel brings it back.
    Q_INVOKABLE void withdraw();
    Q_INVOKABLE void assignTo(int plant);
    /// Dates it by hand: a date as it is typed, with the time of day behind it where it is known, else noon. Gives whether it
    /// was taken; `error` says what is wrong with it.
    Q_INVOKABLE bool dateAs(const QString& typed);

signals:
    void viewChanged();
    void currentChanged();
    void imageChanged();

protected:
    void read() override;

private:
    const home::Photo& at(int place) const { return photos_[static_cast<std::size_t>(place)]; }
    QString date_of(int place) const;
    void leave(); ///< Forgets them until they are looked at.
    void gather();
    void gather_once();
    void show();
    void load(int place, bool beside);
    void tell_changes();
    void set_view(View view);
    void change(home::PhotoChangeKind kind, home::PlantId plant, const QString& words,
                std::optional<std::chrono::local_seconds> taken = {});

    PlantsModel& plants_;
    View view_ = Closed;
    std::vector<home::Photo> photos_; ///< Of the plant, the oldest first.
    bool gathered_ = false;
    home::PlantId plant_ = 0;
    int current_ = -1;
    int other_ = -1;
    QImage image_;
    QImage other_image_;
    QString changes_note_;
    SheetRows facts_;
    SheetRows changes_;
    SheetRows others_;
    /// Number of the picture that is wanted last, beside or not: those asked for before are not read any more.
    std::shared_ptr<std::atomic<int>> wanted_ = std::make_shared<std::atomic<int>>(0);
    std::shared_ptr<std::atomic<int>> wanted_beside_ = std::make_shared<std::atomic<int>>(0);
};

} // namespace lathhouse::models
