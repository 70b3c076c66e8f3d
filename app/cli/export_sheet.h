#pragma once

#include "app/cli/commands.h"
#include "app/sheet/sheet_wish.h"

#include <filesystem>
#include <functional>

namespace lathhouse::cli {

/// Prints a sheet of the caller's household into a PDF file and returns its number of pages. Commands know no Qt, so
/// whoever runs them brings it along.
using PrintSheet = std::function<Result<int>(const Globals&, const sheet::SheetWish&, const std::filesystem::path&)>;

/// For builds without a window: says that sheets cannot be printed.
PrintSheet no_sheets();

/// export sheet; group: the command `export`.
void add_export_sheet(Commands& commands, CLI::App& group, PrintSheet print_sheet);

/// As run, with sheets.
int run(int argc, const char* const* argv, std::ostream& out, std::ostream& err, const OpenWindow& open_window,
        const PrintSheet& print_sheet);

} // namespace lathhouse::cli
