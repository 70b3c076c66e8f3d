#include "core/photo/drawn_plant.h"

#include "core/photo/resize.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace lathhouse::photo {
namespace {

struct Ink {
    int red;
    int green;
    int blue;
};

constexpr int kFine = 2;              ///< Pixels of the canvas for one of the picture, each way.
constexpr double kGround = 0.06;      ///< Of the picture's height below the pot.
constexpr double kPotHeight = 0.9;    ///< Of the rim's width.
constexpr double kRulerAway = 7.0;    ///< Centimetres from the pot.
constexpr double kRulerWide = 3.0;
constexpr std::array<Ink, 4> kGreens{{{79, 122, 56}, {97, 143, 72}, {58, 96, 44}, {118, 158, 88}}};
constexpr std::array<Ink, 3> kYellows{{{214, 182, 66}, {196, 150, 52}, {226, 200, 92}}};

/// A number of 0 up to 1 that belongs to a leaf: the mixing steps of a well known 32-bit hash (common practice).
double share_of(std::uint32_t seed, std::uint32_t index, std::uint32_t what)
{
    std::uint32_t x = seed * 0x9E3779B9U + index * 0x85EBCA6BU + what * 0xC2B2AE35U + 0x27D4EB2FU;
    x ^= x >> 16;
    x *= 0x7FEB352DU;
    x ^= x >> 15;
    x *= 0x846CA68BU;
    x ^= x >> 16;
    return static_cast<double>(x) / 4294967296.0;
}

/// Areas of one colour on a canvas that is finer than the picture.
class Canvas {
public:
    Canvas(int width, int height, double light) : picture_(width, height), light_(light) {}
    Picture&& take() && { return std::move(picture_); }
    double width() const { return picture_.width; }
    double height() const { return picture_.height; }

    /// Even-odd, by the middles of the pixels.
    void polygon(const std::vector<Point>& corners, Ink ink)
    {
        const auto [low, high] = std::ranges::minmax(corners, {}, &Point::y);
        const int first = std::max(0, static_cast<int>(std::ceil(low.y - 0.5)));
        const int last = std::min(picture_.height - 1, static_cast<int>(std::floor(high.y - 0.5)));
        for (int y = first; y <= last; ++y) {
            crossings_.clear();
            for (std::size_t at = 0; at < corners.size(); ++at) {
                const auto& from = corners[at];
                const auto& to = corners[(at + 1) % corners.size()];
                const double middle = y + 0.5;
                if ((from.y <= middle) != (to.y <= middle)) {
                    crossings_.push_back(from.x + (middle - from.y) / (to.y - from.y) * (to.x - from.x));
                }
            }
            std::ranges::sort(crossings_);
            for (std::size_t at = 0; at + 1 < crossings_.size(); at += 2) {
                fill(y, crossings_[at], crossings_[at + 1], ink);
            }
        }
    }
    void box(double x, double y, double wide, double high, Ink ink)
    {
        polygon({{x, y}, {x + wide, y}, {x + wide, y + high}, {x, y + high}}, ink);
    }
    void stroke(Point from, Point to, double wide, Ink ink)
    {
        const double length = std::max(1e-9, std::hypot(to.x - from.x, to.y - from.y));
        const double across = -(to.y - from.y) / length * wide / 2.0;
        const double along = (to.x - from.x) / length * wide / 2.0;
        polygon({{from.x + across, from.y + along},
                 {to.x + across, to.y + along},
                 {to.x - across, to.y - along},
                 {from.x - across, from.y - along}},
                ink);
    }
    /// degrees: 0 upwards, growing to the right.
    void leaf(Point base, double degrees, double length, double wide, Ink ink)
    {
        constexpr std::array<std::array<double, 2>, 5> kHalf{
            {{0.12, 0.55}, {0.35, 1.0}, {0.6, 0.9}, {0.82, 0.5}, {1.0, 0.0}}};
        const double turn = degrees * std::numbers::pi / 180.0;
        const Point up{std::sin(turn), -std::cos(turn)};
        const Point side{up.y, -up.x};
        std::vector<Point> corners{base};
        const auto add = [&](const std::array<double, 2>& at, double sign) {
            const double far = at[0] * length;
            const double out = sign * at[1] * wide / 2.0;
            corners.push_back({base.x + up.x * far + side.x * out, base.y + up.y * far + side.y * out});
        };
        for (const auto& at : kHalf) {
            add(at, 1.0);
        }
        for (std::size_t at = kHalf.size() - 1; at-- > 0;) {
            add(kHalf[at], -1.0);
        }
        polygon(corners, ink);
    }

private:
    void fill(int y, double from, double to, Ink ink)
    {
        const int begin = std::max(0, static_cast<int>(std::ceil(from - 0.5)));
        const int end = std::min(picture_.width, static_cast<int>(std::ceil(to - 0.5)));
        const auto lit = [this](int value) {
            return static_cast<std::uint8_t>(std::clamp(std::lround(value * light_), 0L, 255L));
        };
        const std::array<std::uint8_t, 3> rgb{lit(ink.red), lit(ink.green), lit(ink.blue)};
        for (int x = begin; x < end; ++x) {
            std::ranges::copy(rgb, picture_.at(x, y));
        }
    }

    Picture picture_;
    double light_;
    std::vector<double> crossings_;
};

class Drawer {
public:
    Drawer(const DrawnPlant& plant, Canvas& canvas, double centimetre)
        : plant_(plant), canvas_(canvas), cm_(centimetre),
          middle_(0.44 * canvas.width() + plant.shift_cm * centimetre),
          rim_(canvas.height() * (1.0 - kGround) - kPotHeight * plant.rim_cm * centimetre)
    {
    }

    void draw()
    {
        ground();
        ruler();
        stems();
        leaves();
        pot();
    }

private:
    Point at(double right_cm, double up_cm) const { return {middle_ + right_cm * cm_, rim_ - up_cm * cm_}; }
    double share(int index, std::uint32_t what) const
    {
        return share_of(plant_.seed, static_cast<std::uint32_t>(index), what);
    }

    void ground()
    {
        const double floor = canvas_.height() * (1.0 - kGround) - 4.0 * cm_;
        if (plant_.outdoors) {
            canvas_.box(0, 0, canvas_.width(), canvas_.height(), {214, 220, 226});
            for (double x = 3.0 * cm_; x < canvas_.width(); x += 11.0 * cm_) {
                canvas_.box(x, floor - 42.0 * cm_, 1.6 * cm_, 42.0 * cm_, {168, 166, 162});
            }
            canvas_.box(0, floor - 44.0 * cm_, canvas_.width(), 2.4 * cm_, {150, 148, 144});
            canvas_.box(0, floor, canvas_.width(), canvas_.height() - floor, {178, 174, 168});
        } else {
            canvas_.box(0, 0, canvas_.width(), canvas_.height(), {226, 226, 222});
            canvas_.box(0, floor, canvas_.width(), canvas_.height() - floor, {176, 168, 158});
            canvas_.box(0, floor, canvas_.width(), 0.7 * cm_, {140, 134, 126});
        }
    }
    void ruler()
    {
        const double x = plant_.rim_cm / 2.0 + kRulerAway;
        const double foot = -kPotHeight * plant_.rim_cm;
        const Point corner = at(x, foot + kDrawnRulerCm);
        canvas_.box(corner.x, corner.y, kRulerWide * cm_, kDrawnRulerCm * cm_, {246, 246, 242});
        for (int mark = 0; mark <= static_cast<int>(kDrawnRulerCm); ++mark) {
            const double wide = mark % 10 == 0 ? kRulerWide : mark % 5 == 0 ? 1.8 : 1.0;
            const Point left = at(x, foot + mark);
            canvas_.box(left.x, left.y - 0.1 * cm_, wide * cm_, 0.2 * cm_, {30, 30, 32});
        }
        canvas_.box(corner.x - 0.2 * cm_, corner.y, 0.2 * cm_, kDrawnRulerCm * cm_, {30, 30, 32});
    }
    void pot()
    {
        const double half = plant_.rim_cm / 2.0;
        const double high = kPotHeight * plant_.rim_cm;
        canvas_.polygon({at(-half * 0.9, -high * 0.2), at(half * 0.9, -high * 0.2), at(half * 0.68, -high),
                         at(-half * 0.68, -high)},
                        {176, 102, 74});
        canvas_.polygon({at(-half, 0.0), at(half, 0.0), at(half, -high * 0.2), at(-half, -high * 0.2)}, {158, 88, 62});
    }

    double crown_low() const { return plant_.form == DrawnForm::Tree ? 0.42 * plant_.height_cm : 0.06 * plant_.height_cm; }
    double crown_half() const
    {
        return plant_.form == DrawnForm::Tree ? 0.3 * plant_.height_cm : 0.46 * plant_.height_cm;
    }

    void stems()
    {
        const Ink wood{120, 112, 100}; // Grey enough to be neither green nor yellow.
        switch (plant_.form) {
        case DrawnForm::Tree:
            canvas_.stroke(at(0, -1), at(0, 0.85 * plant_.height_cm), 0.022 * plant_.height_cm * cm_ + cm_, wood);
            for (int branch = 0; branch < 7; ++branch) {
                const double up = plant_.height_cm * (0.42 + 0.06 * branch);
                const double side = (branch % 2 == 0 ? 1.0 : -1.0) * crown_half() * 0.7;
                canvas_.stroke(at(0, up), at(side, up + 0.12 * plant_.height_cm), 0.8 * cm_, wood);
            }
            break;
        case DrawnForm::Bush:
            for (const double lean : {-0.62, -0.3, 0.0, 0.28, 0.6}) {
                canvas_.stroke(at(lean * 3.0, -1), at(lean * 0.62 * plant_.height_cm, (0.9 - 0.3 * std::abs(lean)) * plant_.height_cm),
                               0.7 * cm_, wood);
            }
            break;
        case DrawnForm::Blades:
        case DrawnForm::Arching:
            break;
        }
    }

    struct Leaf {
        int index;
        Point base;
        double degrees;
        double length;
        double wide;
        double depth; ///< 0 near the mix and inside, 1 at the tips: the lowest turn yellow first, the highest are young.
    };

    Leaf leaf(int index) const
    {
        const double turn = share(index, 1) * 2.0 * std::numbers::pi;
        const double out = std::sqrt(0.04 + 0.96 * share(index, 2));
        const double size = plant_.leaf_cm * (0.8 + 0.4 * share(index, 3));
        const double lean = (share(index, 4) - 0.5) * 80.0;
        switch (plant_.form) {
        case DrawnForm::Tree:
        case DrawnForm::Bush: {
            const double low = crown_low();
            const double half = (plant_.height_cm - low) / 2.0;
            const double right = std::sin(turn) * out * crown_half() * 0.86;
            const double up = std::min(low + half + std::cos(turn) * out * half * 0.86, plant_.height_cm - size);
            return {index, at(right, up - 0.35 * size), std::atan2(right, std::max(1.0, up - 0.2 * plant_.height_cm)) * 57.3 + lean,
                    size, 0.46 * size, std::clamp(up / plant_.height_cm, 0.0, 1.0)};
        }
        case DrawnForm::Blades: {
            const double place = 2.0 * share(index, 1) - 1.0;
            const double length = plant_.height_cm * (1.0 - 0.45 * share(index, 2));
            return {index, at(place * 0.36 * plant_.rim_cm, -1.0), place * 16.0, length, 0.9 * plant_.leaf_cm, share(index, 2)};
        }
        case DrawnForm::Arching:
            break;
        }
        const double place = 2.0 * share(index, 1) - 1.0;
        const double length = plant_.height_cm * (1.0 - 0.3 * share(index, 2));
        return {index, at(place * 0.2 * plant_.rim_cm, -1.0), place * 66.0, length, plant_.leaf_cm, 1.0 - std::abs(place)};
    }

    void leaves()
    {
        std::vector<Leaf> all;
        for (int index = 0; index < plant_.leaves; ++index) {
            all.push_back(leaf(index));
        }
        // One leaf reaches the full height, which is what is measured.
        if (!all.empty() && (plant_.form == DrawnForm::Tree || plant_.form == DrawnForm::Bush)) {
            const double size = plant_.leaf_cm;
            all.front() = {0, at(0.0, plant_.height_cm - size), 0.0, size, 0.46 * size, 1.0};
        } else if (!all.empty()) {
            all.front() = {0, at(0.0, -1.0), 0.0, plant_.height_cm + 1.0, plant_.leaf_cm, 1.0};
        }
        std::vector<int> by_depth(all.size());
        for (std::size_t place = 0; place < all.size(); ++place) {
            by_depth[place] = static_cast<int>(place);
        }
        std::ranges::stable_sort(by_depth, {}, [&](int place) { return all[static_cast<std::size_t>(place)].depth; });
        const auto yellow = static_cast<std::size_t>(std::lround(plant_.yellow_share * static_cast<double>(all.size())));
        const auto cupped = static_cast<std::size_t>(std::lround(plant_.cupped_share * static_cast<double>(all.size())));
        std::vector<bool> is_yellow(all.size());
        std::vector<bool> is_cupped(all.size());
        for (std::size_t rank = 0; rank < all.size(); ++rank) {
            const auto place = static_cast<std::size_t>(by_depth[rank]);
            is_yellow[place] = rank < yellow;
            is_cupped[place] = rank + cupped >= all.size();
        }
        for (std::size_t place = 0; place < all.size(); ++place) {
            const auto& one = all[place];
            const auto tone = share(one.index, 5);
            const Ink ink = is_yellow[place] ? kYellows[static_cast<std::size_t>(tone * 2.999)]
                                             : kGreens[static_cast<std::size_t>(tone * 3.999)];
            canvas_.leaf(one.base, one.degrees, one.length * cm_, one.wide * cm_ * (is_cupped[place] ? 0.4 : 1.0), ink);
        }
        for (int flower = 0; flower < plant_.flowers; ++flower) {
            const auto& one = all.empty() ? leaf(0) : all[static_cast<std::size_t>(flower * 7) % all.size()];
            for (int petal = 0; petal < 6; ++petal) {
                canvas_.leaf(one.base, petal * 60.0, 2.4 * cm_, 2.0 * cm_, {186, 52, 70});
            }
        }
    }

    const DrawnPlant& plant_;
    Canvas& canvas_;
    double cm_; ///< Pixels of the canvas in a centimetre.
    double middle_;
    double rim_;
};

} // namespace

Picture drawn_plant(const DrawnPlant& plant, int width, int height)
{
    Canvas canvas{kFine * width, kFine * height, plant.light};
    Drawer{plant, canvas, kFine * height / plant.frame_cm}.draw();
    return resized(std::move(canvas).take(), width, height);
}

DrawnPlaces drawn_places(const DrawnPlant& plant, int width, int height, double reach_cm)
{
    const double cm = height / plant.frame_cm;
    const Point rim{0.44 * width + plant.shift_cm * cm, height * (1.0 - kGround) - kPotHeight * plant.rim_cm * cm};
    const auto at = [&](double right, double up) {
        return Point{std::clamp(rim.x + right * cm, 0.0, static_cast<double>(width)),
                     std::clamp(rim.y - up * cm, 0.0, static_cast<double>(height))};
    };
    const double ruler = plant.rim_cm / 2.0 + kRulerAway + 0.5 * kRulerWide;
    const double foot = -kPotHeight * plant.rim_cm;
    const double half = 0.4 * reach_cm;
    const double over_ruler = foot + kDrawnRulerCm + 1.0;
    const double clear = plant.rim_cm / 2.0 + kRulerAway - 0.5;
    DrawnPlaces places{at(ruler, foot), at(ruler, foot + kDrawnRulerCm), rim, at(0.0, plant.height_cm), {}};
    places.crown = {at(-half, 0.5), at(std::min(half, clear), 0.5)};
    if (half > clear && over_ruler < reach_cm) { // Round the ruler's end.
        places.crown.push_back(at(clear, std::max(0.5, over_ruler)));
        places.crown.push_back(at(half, std::max(0.5, over_ruler)));
    }
    places.crown.push_back(at(half > clear && over_ruler >= reach_cm ? clear : half, reach_cm));
    places.crown.push_back(at(-half, reach_cm));
    return places;
}

} // namespace lathhouse::photo
