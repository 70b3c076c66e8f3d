#include "app/sheet/flow.h"

#include <utility>

namespace lathhouse::sheet {

namespace {

constexpr qreal kTop = 40.0;
/// Lowest edge of a block above the page's lower edge.
constexpr qreal kBottom = kFootLine + 24.0;

struct Placed {
    QPointF at;
    Flow::Draw draw;
};

} // namespace

Flow::Flow(Pages& pages, qreal head_height, Draw head, qreal again_height, Draw again)
    : pages_(pages), head_height_(head_height), head_(std::move(head)), again_height_(again_height),
      again_(std::move(again))
{
}

void Flow::add(qreal height, Draw draw)
{
    blocks_.push_back({height, std::move(draw), Kind::Block});
}

void Flow::add_heading(qreal height, Draw draw)
{
    blocks_.push_back({height, std::move(draw), Kind::Heading});
}

void Flow::add_space(qreal height)
{
    blocks_.push_back({height, {}, Kind::Space});
}

qreal Flow::height_with_next(std::size_t block) const
{
    qreal height = 0.0;
    for (; block < blocks_.size(); ++block) {
        height += blocks_[block].height;
        if (blocks_[block].kind == Kind::Block) {
            break;
        }
    }
    return height;
}

void Flow::finish()
{
    const qreal bottom = pages_.size().height() - kBottom;
    std::vector<std::vector<Placed>> sheets(1);
    sheets.back().push_back({{left(), kTop}, head_});
    qreal top = kTop + head_height_;
    qreal y = top;
    for (std::size_t place = 0; place < blocks_.size(); ++place) {
        const Block& block = blocks_[place];
        const bool at_top = y <= top + 0.5;
        if (block.kind == Kind::Space) {
            y += at_top ? 0.0 : block.height;
            continue;
        }
        if (!at_top && y + height_with_next(place) > bottom) {
            sheets.emplace_back();
            sheets.back().push_back({{left(), kTop}, again_});
            top = kTop + again_height_;
            y = top;
        }
        sheets.back().push_back({{left(), y}, block.draw});
        y += block.height;
    }
    for (auto& sheet : sheets) {
        pages_.add([blocks = std::move(sheet)](QPainter& painter) {
            for (const Placed& block : blocks) {
                block.draw(painter, block.at);
            }
        });
    }
}

} // namespace lathhouse::sheet
