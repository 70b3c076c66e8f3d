#pragma once

#include "app/models/sheet_rows.h"
#include "app/models/year_words.h"
#include "core/home/seed_lot.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace lathhouse::models {

/// A lot of seed as it is typed.
class LotForm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the model of a page")
    Q_PROPERTY(QString crop READ crop WRITE setCrop NOTIFY changed)
    /// Crops that answer to it; roles: words, detail, sentence.
    Q_PROPERTY(lathhouse::models::SheetRows* crops READ crops CONSTANT)
    Q_PROPERTY(QString name MEMBER name_ NOTIFY changed)
    Q_PROPERTY(QString year MEMBER year_ NOTIFY changed)
    Q_PROPERTY(QString percent MEMBER percent_ NOTIFY changed)
    Q_PROPERTY(QString seeds MEMBER seeds_ NOTIFY changed)
    Q_PROPERTY(QString note MEMBER note_ NOTIFY changed)
    /// What is wrong, a sentence, and at which field: 0 crop, 1 name, 2 year, 3 percent, 4 seeds; -1: none.
    Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)
    Q_PROPERTY(int troubleField READ troubleField NOTIFY troubleChanged)

public:
    explicit LotForm(calendar::Date today, QObject* parent = nullptr);

    QString crop() const { return crop_; }
    void setCrop(const QString& crop);
    SheetRows* crops() { return &crops_; }
    QString trouble() const { return trouble_; }
    int troubleField() const { return trouble_field_; }
    /// Takes the crop in that row.
    Q_INVOKABLE void choose(int row);

    /// crop: the one that is looked at, may be empty.
    void clear(std::vector<std::string> taken, const QString& crop = {});
    /// The lot, or nullopt with what is wrong.
    std::optional<home::SeedLot> lot();

signals:
    void changed();
    void troubleChanged();

private:
    /// "Tomato 2027".
    QString usual_name(const QString& crop) const;
    std::optional<home::SeedLot> fail(int field, const QString& words);

    calendar::Date today_;
    std::vector<std::string> taken_;
    std::vector<std::string> found_;
    QString crop_, name_, year_, percent_, seeds_, note_, trouble_;
    int trouble_field_ = -1;
    SheetRows crops_;
};

} // namespace lathhouse::models
