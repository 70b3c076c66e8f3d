#pragma once

#include "app/cli/commands.h"
#include "core/home/household.h"
#include "core/sky/spot_view.h"

#include <optional>
#include <string>

namespace lathhouse::cli {

/// A window, porch or open spot as options.
struct ViewOptions {
    std::string kind;
    std::string facing;
    std::optional<double> width;
    std::optional<double> height;
    std::optional<double> sill;
    std::optional<double> distance;
    std::optional<double> sideways;
    std::optional<double> overhang;
    std::optional<double> opposite;
    std::optional<double> behind;
    std::optional<int> panes;
    std::optional<double> passes;
};
void add_view_options(CLI::App& command, ViewOptions& options);
/// Whether any of them was given.
bool has_any(const ViewOptions& options);

/// What the options name. Without any: the open, away from walls; with a way to face and no kind: a window.
struct NamedView {
    home::SpotKind kind;
    sky::SpotView view;
};
/// Errors: WrongUsage for an unknown kind or way to face, or a window that faces nowhere; OutOfRange as
/// sky::SpotView.
Result<NamedView> view_of(const ViewOptions& options);

/// "behind a window facing 180° (S)".
std::string view_in_words(home::SpotKind kind, const sky::SpotView& view);

} // namespace lathhouse::cli
