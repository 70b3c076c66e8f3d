#include "app/print_command.h"

#include "app/sheet/print_sheet.h"
#include "core/base/csv.h"

#include <QGuiApplication>
#include <QHashFunctions>
#include <QTemporaryDir>

#include <memory>

namespace lathhouse {

Result<int> print_to_file(char** argv, const models::PlantDoor& door, const sheet::SheetWish& wish, calendar::Date today,
                          words::UnitSystem units, const std::filesystem::path& file)
{
    // Qt's PDF has its fonts in the order of a hash; with one seed equal sheets give equal bytes.
    QHashSeed::setDeterministicGlobalSeed();
    std::unique_ptr<QTemporaryDir> runtime_folder;
    if (!qEnvironmentVariableIsSet("XDG_RUNTIME_DIR")) { // Qt says something about it otherwise.
        runtime_folder = std::make_unique<QTemporaryDir>();
        qputenv("XDG_RUNTIME_DIR", runtime_folder->path().toUtf8());
    }
    qputenv("QT_QPA_PLATFORM", "offscreen");
    int none = 1; // The command line has been read; Qt gets the program's name alone.
    const QGuiApplication application(none, argv);
    const auto printed = sheet::print_sheet(
        door, wish, today,
        models::YearWords(units.us_measures() ? models::Units::Us : models::Units::Metric));
    if (!printed) {
        return printed.error();
    }
    if (const auto written = write_file_whole(file, printed->pdf); !written) {
        return written.error();
    }
    return printed->pages;
}

} // namespace lathhouse
