#!/usr/bin/env bash
# Installs what is missing, builds the program outside the source folder and runs it with the arguments given.
set -u
here=${BASH_SOURCE[0]}
[[ $here == */* ]] && here=${here%/*} || here=.
cd_before=$PWD
cd "$here/.." && source_folder=$PWD && cd "$cd_before" || exit 1
. "$source_folder/app/install-packages.sh"
build=${XDG_CACHE_HOME:-${HOME:-/tmp}/.cache}/lathhouse/release${source_folder//\//-}

install_packages "$build/packages.stamp" "$source_folder/app/packages.txt" || exit 1

# Whether nothing changed since the last build: no file or folder of the sources, no package of the system. Asking the
# build system takes several times as long.
is_built() {
    [ -x "$build/app/lathhouse" ] && [ "$build/built.stamp" -nt /var/lib/dpkg/status ] &&
        [ -z "$(find "$source_folder"/{CMakeLists.txt,app,climate-data,core,qml} -newer "$build/built.stamp" -print -quit)" ]
}

build() {
    if [ ! -f "$build/build.ninja" ]; then
        echo "lathhouse: building for the first time, this takes about a quarter of an hour" >&2
        cmake -S "$source_folder" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DLATHHOUSE_BUILD_TESTS=OFF \
            -DLATHHOUSE_UNITY=ON >&2 || exit 1
    fi
    local log=$build/build.log
    exec 9>"$build/lock"
    flock 9
    touch "$build/begun.stamp"
    if ! ninja -C "$build" lathhouse >"$log" 2>&1; then
        cat "$log" >&2
        echo "lathhouse: the build failed; the lines above say why" >&2
        exit 1
    fi
    mv "$build/begun.stamp" "$build/built.stamp" # What changed while it was built counts as changed.
    exec 9>&-
}

is_built || build
exec "$build/app/lathhouse" "$@"
