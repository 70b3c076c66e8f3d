#pragma once

#include "app/models/photos_model.h"
#include "core/photo/photo_length.h"

#include <QPointF>

#include <array>

namespace lathhouse::models {

/// Measuring in the photo that is looked at: a length by something of known size, or the green share of an outline, as the camera took it
/// or with its colours set by a patch that is grey in truth.
/// Places are pixels of the upright picture.
class MeasureModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the page of a plant")
    /// A picture, for PhotoPane alone.
    Q_PROPERTY(QVariant image READ imageValue NOTIFY imageChanged)
    Q_PROPERTY(int imageWidth READ imageWidth NOTIFY imageChanged)
    Q_PROPERTY(QString about READ about NOTIFY imageChanged)
    Q_PROPERTY(int mode READ mode WRITE setMode NOTIFY marksChanged)
    /// What the length is of the plant; roles: text.
    Q_PROPERTY(lathhouse::models::SheetRows* kinds READ kinds CONSTANT)
    Q_PROPERTY(int kind READ kind WRITE setKind NOTIFY marksChanged)
    Q_PROPERTY(QString unit READ unit CONSTANT)
    Q_PROPERTY(QString knownSize READ knownSize WRITE setKnownSize NOTIFY marksChanged)
    Q_PROPERTY(bool knownWrong READ knownWrong NOTIFY marksChanged)
    /// Place of the mark that keys move: A, B, 1, 2 for a length, corners of the outline or of the grey patch else.
    Q_PROPERTY(int chosen READ chosen WRITE setChosen NOTIFY marksChanged)
    Q_PROPERTY(QString chosenWords READ chosenWords NOTIFY marksChanged)
    /// Changes with every mark; for what is bound to `at` and `isSet`.
    Q_PROPERTY(int marks READ marks NOTIFY marksChanged)
    Q_PROPERTY(int corners READ corners NOTIFY marksChanged)
    Q_PROPERTY(QString result READ result NOTIFY resultChanged)
    Q_PROPERTY(QString range READ range NOTIFY resultChanged)
    /// Roles: name, value, note, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* rows READ rows CONSTANT)
    Q_PROPERTY(QString advice READ advice NOTIFY resultChanged)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY resultChanged)

public:
    enum Mode { Length, Green, Grey };
    Q_ENUM(Mode)
    enum Mark { A, B, First, Second };
    Q_ENUM(Mark)

    MeasureModel(PlantsModel& plants, PhotosModel& photos, QObject* parent = nullptr);

    QImage image() const { return photo_ ? photo_->image : QImage{}; }
    QVariant imageValue() const { return image(); }
    int imageWidth() const { return photo_ ? photo_->picture->width : 1; }
    QString about() const;
    int mode() const { return mode_; }
    void setMode(int mode);
    SheetRows* kinds() { return &kinds_; }
    int kind() const { return kind_; }
    void setKind(int kind);
    QString unit() const;
    QString knownSize() const { return known_size_; }
    void setKnownSize(const QString& size);
    bool knownWrong() const;
    int chosen() const { return chosen_; }
    void setChosen(int chosen);
    QString chosenWords() const;
    int marks() const { return marks_; }
    int corners() const { return static_cast<int>(outline().size()); }
    QString result() const { return result_; }
    QString range() const { return range_; }
    SheetRows* rows() { return &rows_; }
    QString advice() const { return advice_; }
    bool canKeep() const { return can_keep_; }

    Q_INVOKABLE bool isSet(int mark) const;
    Q_INVOKABLE QPointF at(int mark) const;
    /// "A", "B", "1", "2"; the number of a corner.
    Q_INVOKABLE QString plate(int mark) const;
    /// Sets the chosen mark where it is not set yet and goes on to the next; else moves the nearest within `reach`, or
    /// the chosen one. A new corner in Green and Grey. Gives the mark that was set. step: what a pixel of the screen is of
    /// the picture there, since nobody can point nearer than that.
    Q_INVOKABLE int place(double x, double y, double reach, double step = 1.0);
    /// Moves a mark, held within the picture; step as above.
    Q_INVOKABLE void move(int mark, double x, double y, double step = 1.0);
    /// Moves the chosen mark; one that is not set appears in the middle.
    Q_INVOKABLE void nudge(double dx, double dy);
    /// Chooses the next (1) or the one before (-1); false at the end, where Tab leaves the picture.
    Q_INVOKABLE bool step(int by);
    /// Takes the mark back that was set last.
    Q_INVOKABLE void takeBack();
    /// Keeps the reading in mind and takes the marks away for another.
    Q_INVOKABLE void tryAgain();
    /// Writes what was measured, or a value that was typed instead; false where that is none.
    Q_INVOKABLE bool keep(const QString& typed);

signals:
    void imageChanged();
    void marksChanged();
    void resultChanged();

protected:
    void read() override;

private:
    struct Reading {
        photo::Stretch length;
        photo::Stretch scale;
        double length_error; ///< One standard error of the marks of each, pixels of the picture.
        double scale_error;
    };
    /// The corners that are set now: round the leaves, or round the grey patch.
    const std::vector<photo::Point>& outline() const { return mode_ == Grey ? grey_ : outline_; }
    std::vector<photo::Point>& outline() { return mode_ == Grey ? grey_ : outline_; }
    std::optional<double> known_metres() const;
    /// How truly a mark was set by hand, one standard error in pixels of the picture: two (common practice, no source), but
    /// no less than a pixel of the screen at the size at which it was set.
    double error_of(Mark mark) const;
    std::optional<Reading> running() const;
    std::vector<Reading> readings() const; ///< Those in mind and the one that is set.
    home::MeasurementKind measured_kind() const;
    std::optional<home::Measurement> last_reading() const;
    void start_over();
    double held(double value, int side) const;
    void changed();
    void tell();
    void tell_length();
    void tell_green();
    void tell_change(double value, std::optional<double> real);
    QString value_words(double value) const;

    PlantsModel& plants_;
    PhotosModel& photos_;
    std::optional<ReadPhoto> photo_;
    std::optional<home::Photo> entry_;
    int asked_ = 0;
    int green_asked_ = 0;
    int mode_ = Length;
    int kind_ = 0;
    QString known_size_;
    std::array<std::optional<photo::Point>, 4> points_;
    std::array<double, 4> steps_{1.0, 1.0, 1.0, 1.0}; ///< How finely each of them could be set, pixels of the picture.
    std::vector<photo::Point> outline_;
    std::vector<photo::Point> grey_; ///< Round what is grey in truth; it sets the colours from three corners on.
    std::vector<int> order_; ///< Marks of the length as they were set.
    std::vector<Reading> tries_;
    int chosen_ = 0;
    int marks_ = 0;
    std::optional<double> value_; ///< In the kept unit.
    std::optional<double> yellow_; ///< Beside green cover.
    bool by_grey_ = false; ///< Their colours are set by the patch.
    QString result_;
    QString range_;
    QString advice_;
    bool can_keep_ = false;
    SheetRows kinds_;
    SheetRows rows_;
};

} // namespace lathhouse::models
