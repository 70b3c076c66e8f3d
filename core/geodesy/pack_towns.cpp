#include "core/base/csv.h"
#include "core/geodesy/town_table.h"

#include <iostream>

/// lathhouse_pack_towns FOLDER TOWNS.bin: packs towns.csv and regions.csv while the program is built.
int main(int argc, char** argv)
{
    if (argc != 3) {
        std::cerr << "usage: lathhouse_pack_towns FOLDER TOWNS.bin\n";
        return 2;
    }
    const auto rows = lathhouse::geodesy::read_town_rows(argv[1]);
    if (!rows) {
        std::cerr << "lathhouse_pack_towns: " << rows.error().message << '\n';
        return 1;
    }
    const auto written = lathhouse::write_file_whole(argv[2], lathhouse::geodesy::pack_towns(*rows));
    if (!written) {
        std::cerr << "lathhouse_pack_towns: " << written.error().message << '\n';
        return 1;
    }
    return 0;
}
