#pragma once

#include "app/models/plants_model.h"

#include <QUrl>

#include <array>

namespace lathhouse::models {

/// Two plants beside each other: what they are, where they stand, what they bear and need, how they grow. What was
/// measured of both is read off both; a comparison of two plants of a home proves nothing about why they differ.
class ComparisonModel : public lathhouse::models::SheetModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the model of a page")
    Q_PROPERTY(bool shown READ shown NOTIFY shownChanged)
    Q_PROPERTY(QString first READ first NOTIFY comparedChanged)
    Q_PROPERTY(QString second READ second NOTIFY comparedChanged)
    /// Newest photographs; empty without one.
    Q_PROPERTY(QUrl firstPicture READ firstPicture NOTIFY comparedChanged)
    Q_PROPERTY(QUrl secondPicture READ secondPicture NOTIFY comparedChanged)
    /// Roles: group, what, first, second, differs, sentence. `group` is empty but for the first row of one.
    Q_PROPERTY(lathhouse::models::SheetRows* rows READ rows CONSTANT)
    /// "9 of 14 differ."
    Q_PROPERTY(QString summary READ summary NOTIFY comparedChanged)

public:
    explicit ComparisonModel(PlantsModel& plants, QObject* parent = nullptr);

    bool shown() const { return shown_; }
    QString first() const { return sides_[0].name; }
    QString second() const { return sides_[1].name; }
    QUrl firstPicture() const { return sides_[0].picture; }
    QUrl secondPicture() const { return sides_[1].picture; }
    SheetRows* rows() { return &rows_; }
    QString summary() const;

    /// Shows the two plants that are marked. Gives whether two are.
    Q_INVOKABLE bool open();
    Q_INVOKABLE void close();

    struct Side {
        QString name;
        QUrl picture;
    };
    struct Compared {
        std::array<Side, 2> sides;
        std::vector<SheetRows::Row> rows;
        int differing = 0;
        bool gone = false; ///< One of them is no longer there.
    };

signals:
    void shownChanged();
    void comparedChanged();

protected:
    void read() override;

private:
    PlantsModel& plants_;
    bool shown_ = false;
    std::array<home::PlantId, 2> ids_{};
    std::array<Side, 2> sides_;
    int differing_ = 0;
    SheetRows rows_;
};

} // namespace lathhouse::models
