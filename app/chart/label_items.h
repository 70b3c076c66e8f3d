#pragma once

#include "app/chart/year_items.h"

#include <memory>
#include <vector>

namespace lathhouse::chart {

/// Words of one label; painted once, then only moved.
class LabelItem : public QQuickPaintedItem {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(QString words READ words NOTIFY wordsChanged)

public:
    explicit LabelItem(QQuickItem* parent = nullptr);
    void show(const ChartLabel& label, const ChartInk& ink);
    /// Left end of the first base line, in pixels of the parent.
    void put(QPointF at);
    QString words() const { return label_.lines.join(QLatin1Char(' ')); }

    void paint(QPainter* painter) override;

signals:
    void wordsChanged();

private:
    ChartLabel label_;
    ChartInk ink_;
};

/// The words of the bands, each an item of its own, so that one that steps aside for the cursor repaints
/// nothing.
class YearLabels : public QQuickItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(lathhouse::chart::YearBands* bands READ bands WRITE setBands NOTIFY bandsChanged REQUIRED)

public:
    explicit YearLabels(QQuickItem* parent = nullptr);

    YearBands* bands() const { return bands_; }
    void setBands(YearBands* bands);

signals:
    void bandsChanged();

protected:
    void updatePolish() override;

private:
    void write_anew();
    void step_aside();

    QPointer<YearBands> bands_;
    bool words_are_old_ = true;
    std::unique_ptr<YearPainter> painter_; ///< The wishes ask it for base lines.
    std::vector<LabelWish> wishes_;
    std::vector<LabelPlace> at_home_;
    std::vector<LabelItem*> items_; ///< Children of this item.
};

} // namespace lathhouse::chart
