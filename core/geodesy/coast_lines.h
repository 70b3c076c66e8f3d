#pragma once

#include "core/base/result.h"
#include "core/units/length.h"
#include "core/units/position.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace lathhouse::geodesy {

/// A stretch of coast; an island's ends where it began.
using CoastLine = std::vector<Position>;

/// The coast lines of the world at a scale of 1 : 50 million: oceans and their seas, no lakes, of which
/// the Caspian Sea is one. Small islands are not there. Positions to a hundredth of a degree; the line itself
/// is drawn to some kilometres. Source: Natural Earth, 1:50m land, public domain.
class CoastLines {
public:
    /// Where the file is: $LATHHOUSE_COAST, else beside the build, else the installed prefix.
    static Result<std::filesystem::path> find();
    /// Errors: NotFound, Unreadable, Malformed with file and line.
    static Result<CoastLines> load(const std::filesystem::path& file);
    /// The content of such a file: lines that begin with '#' are skipped; each other line is a stretch of
    /// coast in hundredths of a degree, longitude and latitude of its first point, then the steps from point
    /// to point. Errors: Malformed with name and line.
    static Result<CoastLines> parse(std::string_view text, std::string_view name);
    /// The shipped lines, loaded once in the life of the program. Errors: as find and load.
    static Result<const CoastLines*> shipped();
    /// Coast lines given as they are, for tests. Stretches of one point are dropped.
    static CoastLines of(std::vector<CoastLine> lines);

    const std::vector<CoastLine>& lines() const { return lines_; }

    /// Geodesic distance to the nearest point of these coast lines, from land or sea. 0 is not to be
    /// expected: who stands on the shore is told up to a few kilometres.
    ///
    /// Accuracy: exact to some metres for the lines as they are; the lines are the error.
    /// Errors: NotFound where there are no lines at all.
    Result<Metres> distance_to_coast(Position from) const;

private:
    struct Segment {
        std::array<double, 3> start, end; ///< On the unit sphere.
        std::uint32_t line, point;
    };
    /// Segments that follow each other, all of them within a ball: one far away is passed by as a whole.
    struct Run {
        std::array<double, 3> centre;
        double radius;
        std::size_t first, end;
    };
    CoastLines() = default;
    void gather_segments();
    void gather_runs();

    std::vector<CoastLine> lines_;
    std::vector<Segment> segments_;
    std::vector<Run> runs_;
};

/// Coast lines made from land areas in TopoJSON (one object "land"), simplified by at most
/// `tolerance_degrees` and rounded to hundredths of a degree: the content of the file that CoastLines reads.
/// Seams of the areas that are no coast, along the 180th meridian and at the South Pole, are left out.
/// Errors: NotFound, Unreadable, Malformed.
Result<std::string> build_coast_text(const std::filesystem::path& topology, double tolerance_degrees);

} // namespace lathhouse::geodesy
