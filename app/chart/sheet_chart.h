#pragma once

#include "app/chart/chart_ink.h"

#include <QPointer>
#include <QQuickPaintedItem>
#include <QtQml/qqmlregistration.h>

namespace lathhouse::chart {

/// A chart that takes its colours and sizes from the theme and is painted anew when they change. Derived classes name
/// it in full, for the type description of the QML module.
class SheetChart : public QQuickPaintedItem {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(QObject* theme READ theme WRITE setTheme NOTIFY themeChanged REQUIRED)
    /// Anything that changes when the theme's colours or sizes do.
    Q_PROPERTY(QString scheme READ scheme WRITE setScheme NOTIFY themeChanged)

public:
    explicit SheetChart(QQuickItem* parent = nullptr);

    QObject* theme() const { return theme_; }
    void setTheme(QObject* theme);
    QString scheme() const { return scheme_; }
    void setScheme(const QString& scheme);

    void paint(QPainter* painter) final;

signals:
    void themeChanged();

protected:
    /// What is not seen gives its picture back, of which Qt keeps two, and is painted anew once it is seen.
    void itemChange(ItemChange change, const ItemChangeData& value) override;
    virtual void draw(QPainter& painter, const ChartInk& ink, const QRectF& room) const = 0;
    /// For the setters of what is drawn: whether it is another value now.
    template <class Value>
    bool change(Value& kept, const Value& value)
    {
        if (kept == value) {
            return false;
        }
        kept = value;
        update();
        return true;
    }

private:
    QPointer<QObject> theme_;
    QString scheme_;
};

} // namespace lathhouse::chart
