#pragma once

#include <QObject>
#include <QPointer>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace lathhouse::chart {

/// A small plate in the hand of a spot.
class SpotSwatch : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QObject* theme READ theme WRITE setTheme NOTIFY changed REQUIRED)
    Q_PROPERTY(QString scheme READ scheme WRITE setScheme NOTIFY changed)
    Q_PROPERTY(int colour READ colour WRITE setColour NOTIFY changed)

public:
    explicit SpotSwatch(QQuickItem* parent = nullptr);

    QObject* theme() const { return theme_; }
    void setTheme(QObject* theme);
    QString scheme() const { return scheme_; }
    void setScheme(const QString& scheme);
    int colour() const { return colour_; }
    /// Negative: nothing is drawn; from kSpotColours on: turned.
    void setColour(int colour);

    void paint(QPainter* painter) override;

signals:
    void changed();

private:
    QPointer<QObject> theme_;
    QString scheme_;
    int colour_ = -1;
};

} // namespace lathhouse::chart
