#!/usr/bin/env bash
# Installs what is missing, builds the program outside the source folder and runs it with the arguments given.
set -u
source_folder=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
. "$source_folder/app/install-packages.sh"
cache=${XDG_CACHE_HOME:-${HOME:-/tmp}/.cache}/lathhouse
build=$cache/release-$(printf %s "$source_folder" | cksum | cut -d ' ' -f 1)

install_packages "$build/packages.stamp" "$source_folder/app/packages.txt" || exit 1
if [ ! -f "$build/build.ninja" ]; then
    echo "lathhouse: building for the first time, this takes a few minutes" >&2
    cmake -S "$source_folder" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DLATHHOUSE_BUILD_TESTS=OFF \
        -DLATHHOUSE_UNITY=ON >&2 || exit 1
fi
log=$build/build.log
exec 9>"$build/lock"
flock 9
if ! ninja -C "$build" lathhouse >"$log" 2>&1; then
    cat "$log" >&2
    echo "lathhouse: the build failed; the lines above say why" >&2
    exit 1
fi
exec 9>&-
exec "$build/app/lathhouse" "$@"
