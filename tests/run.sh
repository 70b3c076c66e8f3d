#!/usr/bin/env bash
# Installs what is missing, builds everything and runs every test. Last line: N passed, N failed[, N skipped].
# Arguments are handed to ctest, for example: tests/run.sh -R night
# tests/run.sh --fuzz [SECONDS] gives every reader inputs that nobody would write instead, a minute in all.
# tests/run.sh --faults [KILLS [SECONDS]] counts what a household outlives: kills, full disks, damage, fuzz, valgrind.
# tests/run.sh --bench [--quick] [--json FILE] [--keep] [--only ROOM...] measures instead, every row beside a reference:
# tests/bench/bench.py says more. What has grown by over a fifth against the ratios kept is listed and fails nothing.
# tests/run.sh --core builds the core and its tests alone, where Qt may not be looked for; the whole build goes on from it.
# tests/run.sh --coverage says which lines of the core its own tests run, by room, and why the others do not.
# tests/run.sh --threads watches the models and what runs beside them with the thread sanitizer.
# Built with the sanitizers (preset asan); LATHHOUSE_PRESET=dev builds as one does at work, asan-pointers with every check.
set -u
source_folder=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
. "$source_folder/app/install-packages.sh"
cache=${XDG_CACHE_HOME:-${HOME:-/tmp}/.cache}/lathhouse
preset=${LATHHOUSE_PRESET:-asan}
if [ "${1:-}" = --faults ] || [ "${1:-}" = --bench ]; then
    preset=${LATHHOUSE_PRESET:-dev} # Neither valgrind nor times go with the sanitizers.
fi
if [ "${1:-}" = --coverage ]; then
    preset=coverage
fi
if [ "${1:-}" = --threads ]; then
    preset=tsan
fi
build=$cache/$preset-$(printf %s "$source_folder" | cksum | cut -d ' ' -f 1)

install_packages "$build/packages.stamp" "$source_folder/app/packages.txt" "$source_folder/tests/packages.txt" || exit 1
cd "$source_folder" || exit 1
without_qt=OFF
if [ "${1:-}" = --core ]; then
    without_qt=ON
fi
benches=OFF
if [ "${1:-}" = --bench ]; then
    benches=ON
fi
cmake --preset "$preset" -B "$build" -DLATHHOUSE_UNITY=ON -DCMAKE_DISABLE_FIND_PACKAGE_Qt6=$without_qt \
    -DLATHHOUSE_BUILD_BENCH=$benches >&2 || exit 1
if [ "${1:-}" = --fuzz ]; then
    cmake --build "$build" --target fuzz >&2 || { echo "lathhouse: the build failed" >&2; exit 1; }
    cd "$build" && exec tests/fuzz/fuzz --seconds "${2:-60}" --seed "${LATHHOUSE_FUZZ_SEED:-$(date +%j)}"
fi
if [ "${1:-}" = --faults ]; then
    cmake --build "$build" --target fuzz journal_test lathhouse >&2 || { echo "lathhouse: the build failed" >&2; exit 1; }
    exec tests/faults.sh "$build" "$source_folder" "${@:2}"
fi
if [ "${1:-}" = --coverage ]; then
    cmake --build "$build" >&2 || { echo "lathhouse: the build failed" >&2; exit 1; }
    find "$build" -name '*.gcda' -delete # Counts are of this run alone.
    ctest --test-dir "$build" -j "$(nproc)" --output-on-failure >&2 || { echo "lathhouse: tests failed" >&2; exit 1; }
    exec tests/coverage.py "$build" "$source_folder"
fi
if [ "${1:-}" = --threads ]; then
    cmake --build "$build" --target models_test >&2 ||
        { echo "lathhouse: the build failed" >&2; exit 1; }
    exec tests/threads.sh "$build"
fi
if [ "${1:-}" = --bench ]; then
    targets=benches
    if [[ " $* " =~ \ --only\ ([a-z ]+[a-z]) ]]; then # Only what is asked for is built.
        targets=${BASH_REMATCH[1]// /_bench }_bench
    fi
    # shellcheck disable=SC2086 # One word a target.
    cmake --build "$build" --target $targets >&2 || { echo "lathhouse: the build failed" >&2; exit 1; }
    exec tests/bench/bench.py "$build" "${@:2}"
fi
cmake --build "$build" >&2 || { echo "lathhouse: the build failed" >&2; exit 1; }
if [ "${1:-}" = --core ]; then
    exit 0
fi

# Looked at by builds with sanitizers alone. What was freed is kept to catch who uses it still: of 16 megabytes, not 256, which
# the tests' processor time pays for in pages touched anew.
export ASAN_OPTIONS=quarantine_size_mb=16${ASAN_OPTIONS:+:$ASAN_OPTIONS}
export LSAN_OPTIONS=suppressions=$source_folder/tests/lsan.supp:print_suppressions=0
report=$build/ctest.log
# One process more than there are processors: some wait for the disk.
ctest --test-dir "$build" -j "$(($(nproc) + 1))" --output-on-failure "$@" 2>&1 | tee "$report" | grep -v ' Passed \|^ *Start '
# ctest says how each process ended; its log, line by line, which tests those of GoogleTest ran. A process that ran none is
# one test itself, and one that ended otherwise than its tests say, by a crash or a leak, has failed once more.
read -r passed failed skipped total < <(awk '
    FNR == NR {
        if ($0 ~ /^ *[0-9]+\/[0-9]+ Test +#[0-9]+: /) {
            name = $0; sub(/^.*#[0-9]+: /, "", name); sub(/ .*$/, "", name)
            ended[name] = $0 ~ /\*\*\*(Skipped|Not Run \(Disabled\))/ ? "skipped" : $0 ~ / Passed +[0-9.]+ sec/ ? "passed" : "failed"
        }
        next
    }
    /^[0-9]+\/[0-9]+ Testing: / { name = $3 }
    /^\[       OK \] .* \([0-9]+ ms\)$/ { ok[name]++ }
    /^\[  FAILED  \] .* \([0-9]+ ms\)$/ { bad[name]++ }
    /^\[  SKIPPED \] .* \([0-9]+ ms\)$/ { left[name]++ }
    END {
        for (name in ended) {
            if (ok[name] + bad[name] + left[name] == 0) {
                count[ended[name]]++
            } else {
                count["passed"] += ok[name]; count["failed"] += bad[name]; count["skipped"] += left[name]
                if (ended[name] == "failed" && bad[name] == 0) count["failed"]++
            }
        }
        print count["passed"] + 0, count["failed"] + 0, count["skipped"] + 0, count["passed"] + count["failed"] + count["skipped"]
    }
' "$report" "$build/Testing/Temporary/LastTest.log")
if [ "${total:-0}" = 0 ]; then
    echo "lathhouse: no test ran" >&2
    failed=1
fi
if [ "$skipped" -gt 0 ]; then
    echo "$passed passed, $failed failed, $skipped skipped"
else
    echo "$passed passed, $failed failed"
fi
[ "$failed" = 0 ]
