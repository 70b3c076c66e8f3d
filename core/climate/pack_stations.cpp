#include "core/base/csv.h"
#include "core/climate/station_rows.h"
#include "core/climate/station_table.h"

#include <iostream>

/// lathhouse_pack_stations STATIONS.csv STATIONS.bin: packs the shipped table while the program is built.
int main(int argc, char** argv)
{
    if (argc != 3) {
        std::cerr << "usage: lathhouse_pack_stations STATIONS.csv STATIONS.bin\n";
        return 2;
    }
    const auto stations = lathhouse::climate::read_station_rows(argv[1]);
    if (!stations) {
        std::cerr << "lathhouse_pack_stations: " << stations.error().message << '\n';
        return 1;
    }
    const auto written = lathhouse::write_file_whole(argv[2], lathhouse::climate::pack_stations(*stations));
    if (!written) {
        std::cerr << "lathhouse_pack_stations: " << written.error().message << '\n';
        return 1;
    }
    return 0;
}
