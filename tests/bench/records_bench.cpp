// Daily records to normals and dates beside `sha256sum` of the same file, taken in turn:
// records_bench [--stations N] [--records FILE [--places FILE.csv]] [--rounds N] [Google Benchmark's own].
// Without a file it makes its own of N (1,203) invented stations.
#include "core/climate/build_station_table.h"
#include "core/climate/daily_records.h"
#include "core/climate/normals.h"
#include "tests/bench/invented_records.h"
#include "tests/bench/recorded_times.h"

#include <optional>

namespace fs = std::filesystem;
using namespace lathhouse;

namespace {

constexpr std::array kLines = {Celsius::from_degrees(-5.0), Celsius::from_degrees(-2.2), Celsius::from_degrees(0.0),
                               Celsius::from_degrees(2.2),  Celsius::from_degrees(5.0),  Celsius::from_degrees(10.0)};
constexpr climate::BasePeriod kBase{1991, 2018};

/// Normals of every station that has enough years, on so many threads; how many there were.
std::size_t normals_on(const climate::DailyFile& file, int threads)
{
    const auto pieces = file.pieces(static_cast<std::size_t>(threads) * 8);
    std::vector<std::vector<climate::RecordNormals>> parts(pieces.size());
    const auto read = file.for_each_station_of(pieces, threads, [&](std::size_t piece, const climate::DailyRecord& record) {
        if (auto normals = climate::normals_of(record, kBase, kLines)) {
            parts[piece].push_back(*std::move(normals));
        }
    });
    std::size_t count = 0;
    for (const auto& part : parts) {
        count += part.size();
    }
    return read ? count : 0;
}

/// Reading alone.
bool read_on(const climate::DailyFile& file, int threads)
{
    const auto pieces = file.pieces(static_cast<std::size_t>(threads) * 8);
    return file
        .for_each_station_of(pieces, threads,
                             [](std::size_t, const climate::DailyRecord& record) { benchmark::DoNotOptimize(&record); })
        .has_value();
}

} // namespace

int main(int argc, char** argv)
{
    std::optional<fs::path> records;
    std::optional<fs::path> places;
    int stations = 1203;
    int rounds = 7;
    for (int i = 1; i + 1 < argc; ++i) {
        const std::string option = argv[i];
        if (option == "--records") {
            records = argv[i + 1];
        } else if (option == "--places") {
            places = argv[i + 1];
        } else if (option == "--stations") {
            stations = std::atoi(argv[i + 1]);
        } else if (option == "--rounds") {
            rounds = std::atoi(argv[i + 1]);
        }
    }
    std::string folder = (fs::temp_directory_path() / "lathhouse_bench_XXXXXX").string();
    if (mkdtemp(folder.data()) == nullptr) {
        return 1;
    }
    if (!records) {
        records = fs::path{folder} / "records.dly";
        places = fs::path{folder} / "places.csv";
        write_invented_records(*records, *places, stations);
    }
    RecordedTimes taken;
    const double megabytes = static_cast<double>(fs::file_size(*records)) / 1e6;
    std::size_t answered = 0;
    for (int round = 0; round < rounds; ++round) {
        const auto in_turn = [&](const char* name, int whose, auto work) {
            const double before = processor_seconds(whose);
            taken.time(name, work);
            taken.add(std::string{name} + "_processor", processor_seconds(whose) - before);
        };
        in_turn("sha256sum", RUSAGE_CHILDREN,
                [&] { return std::system(("sha256sum '" + records->string() + "' > /dev/null").c_str()) == 0; });
        in_turn("normals_two_cores", RUSAGE_SELF, [&] {
            const auto file = climate::DailyFile::open(*records);
            answered = file ? normals_on(*file, 2) : 0;
            return answered > 0;
        });
        in_turn("normals_one_core", RUSAGE_SELF, [&] {
            const auto file = climate::DailyFile::open(*records);
            return file && normals_on(*file, 1) == answered;
        });
        in_turn("read_two_cores", RUSAGE_SELF, [&] {
            const auto file = climate::DailyFile::open(*records);
            return file && read_on(*file, 2);
        });
        taken.time("cat", [&] { return std::system(("cat '" + records->string() + "' > /dev/null").c_str()) == 0; });
        if (places) {
            in_turn("station_table", RUSAGE_SELF, [&] {
                climate::TableSources sources;
                sources.records = {*records};
                sources.places = *places;
                sources.base = kBase;
                return climate::build_station_table(sources).has_value();
            });
        }
    }
    taken.tell("normals_two_cores", "megabytes", megabytes);
    taken.tell("normals_two_cores", "stations", static_cast<double>(answered));
    fs::remove_all(folder);
    return taken.tell_all(argc, argv);
}
