#pragma once

#include "core/plants/plant_kind.h"

#include <QObject>
#include <QStringList>
#include <QtQml/qqmlregistration.h>

#include <string>
#include <vector>

namespace lathhouse::models {

/// Which kinds of the tables are listed: of one group, or whose cold lines rest on one sort of evidence.
class KindFilter : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Belongs to the form that adds plants")
    /// In words, "all" first; the place of the chosen one.
    Q_PROPERTY(QStringList groups READ groups CONSTANT)
    Q_PROPERTY(int group READ group WRITE setGroup NOTIFY changed)
    Q_PROPERTY(QStringList evidences READ evidences CONSTANT)
    Q_PROPERTY(int evidence READ evidence WRITE setEvidence NOTIFY changed)
    /// What the chosen evidence means, in whole; empty for all.
    Q_PROPERTY(QString meaning READ meaning NOTIFY changed)

public:
    explicit KindFilter(QObject* parent = nullptr);

    QStringList groups() const;
    int group() const { return group_; }
    void setGroup(int group); ///< Ignored outside the groups, as below.
    QStringList evidences() const;
    int evidence() const { return evidence_; }
    void setEvidence(int evidence);
    QString meaning() const;

    bool narrows() const { return group_ > 0 || evidence_ > 0; }
    bool passes(const plants::PlantKind& kind) const;
    Q_INVOKABLE void clear();

signals:
    void changed();

private:
    std::vector<std::string> groups_; ///< Of the tables, those of the most kinds first.
    int group_ = 0;
    int evidence_ = 0;
};

} // namespace lathhouse::models
