#!/usr/bin/env bash
# faults.sh BUILD SOURCE [KILLS [SECONDS]]: what a household must outlive, each with its count: kills at random moments, full
# disks and torn files, damaged pages, inputs that nobody would write, and the command line's main paths watched by valgrind.
# Called by tests/run.sh --faults. Last line: N passed, N failed.
set -u
build=$1 source=$2 kills=${3:-1000} seconds=${4:-60}
work=$(mktemp -d) && trap 'rm -rf "$work"' EXIT
passed=0 failed=0

printf '%-34s %10s %9s %8s  %s\n' what runs failures seconds counted
# row WHAT FILE-OF-OUTPUT STATUS RUNS SECONDS COUNTED
row() {
    printf '%-34s %10s %9s %8s  %s\n' "$1" "$4" "$([ "$3" = 0 ] && echo 0 || echo "$3")" "$5" "$6"
    if [ "$3" = 0 ]; then passed=$((passed + 1)); else failed=$((failed + 1)) && tail -n 30 "$2"; fi
}

# tests WHAT BINARY FILTER: tests of GoogleTest, counted by its own lines.
tests() {
    local begun=$SECONDS
    LATHHOUSE_KILLS=$kills "$build/tests/$2" --gtest_filter="$3" >"$work/said" 2>&1
    local status=$? ran bad
    ran=$(grep -cE '^\[       OK \]|^\[  FAILED  \] .* ms\)$' "$work/said")
    bad=$(grep -cE '^\[  FAILED  \] .* ms\)$' "$work/said")
    [ "$ran" = 0 ] && echo "no test is called so: $3" >>"$work/said" && bad=1
    [ "$status" != 0 ] && [ "$bad" = 0 ] && bad=1
    row "$1" "$work/said" "$bad" "$ran" $((SECONDS - begun)) "$(grep -E '^[0-9]+ kills' "$work/said" | paste -sd ';' -)"
}

tests 'killed while it writes' journal/journal_test 'Killed.*'
tests 'killed, stopped, full while it copies' journal/journal_test \
    'Backups.*Stopped:Backups.*FullDisk*:Backups.*Killed*:PhotoImport.*Stopped*:PhotoImport.*Killed*'
tests 'damaged pages and torn files' journal/journal_test \
    'Backups.*Damaged*:Tables.*Damaged*:Checks.*Damaged*:Checks.*Torn*'
tests 'two programs on one folder' journal/journal_test 'Together*'

begun=$SECONDS
"$build/tests/fuzz/fuzz" --seconds "$seconds" --seed "${LATHHOUSE_FUZZ_SEED:-$(date +%j)}" >"$work/said" 2>&1
status=$?
counted=$(tail -n 1 "$work/said")
row 'inputs that nobody would write' "$work/said" $status "${counted%% *}" $((SECONDS - begun)) "$counted"

begun=$SECONDS
"$source/tests/delivery/hostile.sh" "$build/app/lathhouse" "$source" >"$work/said" 2>&1
status=$?
counted=$(tail -n 1 "$work/said")
row 'hostile files on the command line' "$work/said" $status "${counted%% *}" $((SECONDS - begun)) "$counted"

# Wrong reads and writes of memory are found by the sanitizers as well; reads of what was never written are not.
begun=$SECONDS runs=0 bad=0
: >"$work/said"
if command -v valgrind >/dev/null; then
    home=$work/home
    while read -r arguments; do
        runs=$((runs + 1))
        # shellcheck disable=SC2086
        if ! (cd "$work" && valgrind -q --error-exitcode=99 "$build/app/lathhouse" --on 2027-04-16 $arguments) >"$work/one" 2>&1; then
            bad=$((bad + 1))
            { echo "lathhouse $arguments"; tail -n 30 "$work/one"; } >>"$work/said"
        fi
    done <<COMMANDS
demo $home --years 1
sun --at=47.5,19
frost --at=47.5,19 --elevation 110
chance --at=47.5,19 --elevation 110 --threshold 0 --from 2027-04-20 --to 2027-05-10
climate --at=-30.9,-55.5 --elevation 150
where Szeged
--home $home list plants
--home $home show plant 3
--home $home tonight --low 1 --sky clear --wind calm
--home $home round
--home $home sowing --calendar
--home $home feeding
--home $home water
--home $home harden
--home $home growth --plant 3
--home $home log measurement leaves 12 --plant 3
--home $home log undo
--home $home check
--home $home backup $work/kept.zip
restore $work/kept.zip $work/again
--home $home export csv $work/tables
--home $home export calendar $work/year.ics
--home $home export sheet year $work/year.pdf
--home $home moves
COMMANDS
    row "main paths under valgrind" "$work/said" $bad $runs $((SECONDS - begun)) "$runs commands"
else
    echo 'valgrind is not there: its row is left out (Debian package valgrind)'
fi

echo "$passed passed, $failed failed"
[ "$failed" = 0 ]
