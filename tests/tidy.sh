#!/usr/bin/env bash
# tidy.sh [WHAT]: clang-tidy by .clang-tidy over core and app; WHAT keeps the compilations whose list of files matches it,
# for example: tests/tidy.sh core/climate. Findings come to standard output, how far it is to standard error.
# Last line: N findings. LATHHOUSE_JOBS says how many run at once (as many as there are processors).
#
# Files are read several at a time, as in a build with LATHHOUSE_UNITY: nearly all the time goes to headers, and files
# read together read them once. Version 16 or later: 14 cannot parse the ranges of GCC 12's library.
set -u
source_folder=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
. "$source_folder/app/install-packages.sh"
cache=${XDG_CACHE_HOME:-${HOME:-/tmp}/.cache}/lathhouse
build=${LATHHOUSE_TIDY_BUILD:-$cache/tidy-$(printf %s "$source_folder" | cksum | cut -d ' ' -f 1)}
tidy=${CLANG_TIDY:-clang-tidy-16}
command -v "$tidy" >/dev/null || {
    echo "lathhouse: no $tidy here; install clang-tidy-16, or name another in CLANG_TIDY" >&2
    exit 1
}
install_packages "$build/packages.stamp" "$source_folder/app/packages.txt" "$source_folder/tests/packages.txt" || exit 1
cmake -S "$source_folder" --preset dev -B "$build" -DLATHHOUSE_UNITY=ON -DCMAKE_DISABLE_PRECOMPILE_HEADERS=ON \
    -DCMAKE_UNITY_BUILD_BATCH_SIZE=40 >&2 || exit 1

# What is compiled of core and app, core first: our own files, and those that bring several of ours together.
together='/CMakeFiles/lathhouse(_core|_words|_cli|_notices|_window|_viewmodels|_tongue|_pack_[a-z]*)?\.dir/Unity/'
units=$(sed -n 's/^ *"file": "\(.*\)",\{0,1\}$/\1/p' "$build/compile_commands.json" |
    grep -E "^$source_folder/(core|app)/|$together" | sort -u)
units=$(grep /core/ <<<"$units"; grep -v /core/ <<<"$units")
# They include files that a build would write (tables as text, what moc says), too: empty ones will do, and building the
# real ones would build half the core.
for made in $(grep -hE "^#include \"$build/" $(grep -F /Unity/ <<<"$units") | cut -d '"' -f 2 | sort -u); do
    [ -e "$made" ] || { mkdir -p "$(dirname "$made")" && : >"$made"; }
done
if [ -n "${1:-}" ]; then
    units=$(grep -lE "$1" $(grep -F /Unity/ <<<"$units"); grep -vF /Unity/ <<<"$units" | grep -E "$1")
    [ -n "$units" ] || { echo "nothing that is compiled matches $1; give a part of a path, as core/climate" >&2; exit 2; }
fi

report=$build/findings.log
: >"$report"
# A file that brings others together includes sources, which is what this one check warns of; pragmas that are GCC's alone
# say nothing to clang.
export tidy build report
printf '%s\n' $units | xargs -P "${LATHHOUSE_JOBS:-$(nproc)}" -I @ sh -c '
    echo "$(date +%T) @" >&2
    "$tidy" -p "$build" --quiet --checks=-bugprone-suspicious-include --extra-arg=-Wno-unknown-pragmas @ 2>/dev/null >>"$report"'
# What stands in a header is found by everybody who includes it.
findings=$(grep -E '^/.*: (error|warning): ' "$report" | sed -e "s|^$source_folder/||" -e 's/,-warnings-as-errors\]$/]/' | sort -u)
[ -n "$findings" ] && printf '%s\n' "$findings"
count=$(grep -c . <<<"$findings")
echo "$count findings"
[ "$count" = 0 ]
