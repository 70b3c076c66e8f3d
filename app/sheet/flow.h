#pragma once

#include "app/sheet/paper.h"

#include <QPointF>

#include <functional>
#include <vector>

namespace lathhouse::sheet {

/// Blocks one below the other, over as many pages as they need; a block is never split.
class Flow {
public:
    /// Draws at its upper left corner.
    using Draw = std::function<void(QPainter&, QPointF)>;

    /// head: drawn at the top of the first page, `again` at that of each further one; both with their heights.
    Flow(Pages& pages, qreal head_height, Draw head, qreal again_height, Draw again);

    qreal left() const { return kMargin; }
    qreal width() const { return pages_.size().width() - 2.0 * kMargin; }

    void add(qreal height, Draw draw);
    /// The same for what heads the block after it: the two stay on one page.
    void add_heading(qreal height, Draw draw);
    /// Nothing at the top of a page.
    void add_space(qreal height);
    /// Lays the blocks out and adds the pages. Called once.
    void finish();

private:
    enum class Kind { Block, Heading, Space };
    struct Block {
        qreal height;
        Draw draw;
        Kind kind;
    };
    /// Of the block with everything that must stay with it.
    qreal height_with_next(std::size_t block) const;

    Pages& pages_;
    qreal head_height_;
    Draw head_;
    qreal again_height_;
    Draw again_;
    std::vector<Block> blocks_;
};

} // namespace lathhouse::sheet
