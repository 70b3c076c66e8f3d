#include "app/cli/export_sheet.h"

#include "app/cli/household_options.h"
#include "app/cli/subcommand.h"

#include <memory>
#include <utility>

namespace lathhouse::cli {
namespace {

struct PaperSheetOptions {
    std::string kind;
    std::string file;
    std::string plant;
    std::string paper = "a4";
    std::optional<int> days;
    std::optional<double> risk_percent;
};

const std::vector<std::pair<std::string, sheet::SheetKind>>& sheet_kinds()
{
    static const std::vector<std::pair<std::string, sheet::SheetKind>> kKinds{{"year", sheet::SheetKind::Year},
                                                                              {"round", sheet::SheetKind::Round},
                                                                              {"plant", sheet::SheetKind::Plant},
                                                                              {"seeds", sheet::SheetKind::Seeds}};
    return kKinds;
}

/// Errors: WrongUsage for an option that the sheet has no use for, or a plant that is not named; OutOfRange for the risk; as
/// plant_called.
Result<sheet::SheetWish> wish_of(const Globals& globals, const PaperSheetOptions& options)
{
    sheet::SheetWish wish;
    for (const auto& [name, kind] : sheet_kinds()) {
        if (name == options.kind) {
            wish.kind = kind;
        }
    }
    wish.paper = options.paper == "letter" ? sheet::Paper::Letter : sheet::Paper::A4;
    if (options.days && wish.kind != sheet::SheetKind::Round) {
        return Error{ErrorCode::WrongUsage, "--days goes with the sheet of the round only"};
    }
    if (options.risk_percent && wish.kind != sheet::SheetKind::Year) {
        return Error{ErrorCode::WrongUsage, "--risk goes with the sheet of the year only"};
    }
    if (options.plant.empty() == (wish.kind == sheet::SheetKind::Plant)) {
        return Error{ErrorCode::WrongUsage, options.plant.empty()
                                                ? "the sheet of a plant takes --plant with its id or name; `lathhouse list "
                                                  "plants` shows them"
                                                : "--plant goes with the sheet of a plant only"};
    }
    wish.days = options.days.value_or(wish.days);
    if (options.risk_percent) {
        if (!(*options.risk_percent >= 0.5 && *options.risk_percent <= 50.0)) {
            return Error{ErrorCode::OutOfRange, "--risk must lie within 0.5 and 50 percent"};
        }
        wish.risk = Probability::clamped(*options.risk_percent / 100.0);
    }
    const auto household = household_of(globals, WithoutHousehold::IsAnError);
    if (!household) {
        return household.error();
    }
    if (wish.kind == sheet::SheetKind::Plant) {
        const auto plant = plant_called(*household, options.plant);
        if (!plant) {
            return plant.error();
        }
        wish.plant = (*plant)->id;
    }
    return wish;
}

Result<Answer> export_paper_sheet(const Globals& globals, const PaperSheetOptions& options, const PrintSheet& print)
{
    const auto wish = wish_of(globals, options);
    if (!wish) {
        return wish.error();
    }
    const auto pages = print(globals, *wish, options.file);
    if (!pages) {
        return pages.error();
    }
    return Answer{{{"file", options.file}, {"sheet", options.kind}, {"paper", options.paper}, {"pages", *pages}},
                  "Wrote " + std::to_string(*pages) + (*pages == 1 ? " page to " : " pages to ") + options.file +
                      ". The name of your place is on it, its coordinates and those of photos are not.\n",
                  {}};
}

} // namespace

PrintSheet no_sheets()
{
    return [](const Globals&, const sheet::SheetWish&, const std::filesystem::path&) -> Result<int> {
        return Error{ErrorCode::Unavailable, "this build of the program has no window and prints no sheets"};
    };
}

void add_export_sheet(Commands& commands, CLI::App& group, PrintSheet print_sheet)
{
    auto options = std::make_shared<PaperSheetOptions>();
    CLI::App& command = add_subcommand(group, "sheet", "A sheet to print (PDF): the year, the round, a plant, the seeds",
                                       "lathhouse export sheet year year.pdf --paper letter");
    std::vector<std::string> names;
    for (const auto& [name, kind] : sheet_kinds()) {
        names.push_back(name);
    }
    command.add_option("sheet", options->kind, "year, round, plant or seeds")
        ->required()
        ->check(CLI::IsMember(names))
        ->type_name("SHEET");
    command.add_option("file", options->file, "The file to write; one that is there is replaced")
        ->required()
        ->type_name("FILE.pdf");
    command.add_option("--plant", options->plant, "Of the sheet of a plant: its id or name")->type_name("PLANT");
    command.add_option("--paper", options->paper, "a4 or letter (default a4)")->check(CLI::IsMember({"a4", "letter"}));
    command.add_option("--days", options->days, "Of the round: so many days from today (default 7)")
        ->check(CLI::Range(1, 31));
    command.add_option("--risk", options->risk_percent,
                       "Of the year: accepted chance of a damaging night for each plant, each way, percent (default 10)")
        ->type_name("PERCENT");
    commands.on_run(command, [options, print_sheet = std::move(print_sheet)](const Globals& globals) {
        return export_paper_sheet(globals, *options, print_sheet);
    });
}

} // namespace lathhouse::cli
