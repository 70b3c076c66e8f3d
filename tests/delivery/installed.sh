#!/usr/bin/env bash
# installed.sh BUILD [WHAT]: installs the build into a folder of its own (as a package is made, with DESTDIR), and looks at
# what is there. WHAT: files (all of them and the program run from there), desktop, metainfo, mime, manual, icons. Exit status
# 77 where the tool that a look needs is absent.
set -u
build=$1 what=${2:-files}
root=$(mktemp -d)
trap 'rm -rf "$root"' EXIT
export LC_ALL=C.UTF-8 HOME=$root/home
unset DISPLAY WAYLAND_DISPLAY XDG_DATA_HOME LATHHOUSE_STATIONS LATHHOUSE_TOWNS LATHHOUSE_COAST
failed=0

wrong() {
    echo "$1"
    failed=1
}
needs() {
    command -v "$1" >/dev/null || { echo "not looked at: there is no $1 (Debian package $2)"; exit 77; }
}

DESTDIR=$root cmake --install "$build" --prefix /usr >"$root/said" 2>&1 || { cat "$root/said"; exit 1; }
share=$root/usr/share

wanted="bin/lathhouse
share/applications/lathhouse.desktop
share/doc/lathhouse/changelog
share/doc/lathhouse/copyright
share/icons/hicolor/128x128/apps/lathhouse.png
share/icons/hicolor/16x16/apps/lathhouse.png
share/icons/hicolor/24x24/apps/lathhouse.png
share/icons/hicolor/256x256/apps/lathhouse.png
share/icons/hicolor/32x32/apps/lathhouse.png
share/icons/hicolor/48x48/apps/lathhouse.png
share/icons/hicolor/64x64/apps/lathhouse.png
share/icons/hicolor/scalable/apps/lathhouse.svg
share/lathhouse/coast.txt
share/lathhouse/stations.README.md
share/lathhouse/stations.bin
share/lathhouse/towns.bin
share/man/man1/lathhouse.1
share/metainfo/lathhouse.metainfo.xml
share/mime/packages/lathhouse.xml"

case $what in
files)
    difference=$(diff <(echo "$wanted") <(cd "$root/usr" && find . -type f | sed 's|^\./||' | LC_ALL=C sort))
    [ -z "$difference" ] || wrong "installed are other files than wanted (<: missing, >: more):
$difference"
    program=$root/usr/bin/lathhouse
    says() { # WORDS ARGUMENT...
        "$program" "${@:2}" >"$root/said" 2>&1
        grep -qF -- "$1" "$root/said" || wrong "the installed program answers ${*:2} with: $(cat "$root/said")"
    }
    says 'nights a year' frost --at 48.2,20.5 --elevation 150 --threshold 0
    says Debrecen where Debrecen
    says 'The nearest coast is ' coast --at 41.4,2.2
    # Its tables are those of its own prefix: without one it says where it has looked, and that is not the build.
    mv "$share/lathhouse/stations.bin" "$root/away"
    said=$("$program" stations --near 48.2,20.5 2>&1) && wrong "the program needs no table of its own prefix"
    case $said in
    *"$build"*) wrong "the installed program looks into the build: $said" ;;
    *"$share/lathhouse/stations.bin"*) ;;
    *) wrong "the program does not say where its table is missing: $said" ;;
    esac
    ;;
desktop)
    needs desktop-file-validate desktop-file-utils
    desktop-file-validate "$share/applications/lathhouse.desktop" || failed=1
    # What it starts is a command that there is.
    while read -r line; do
        line="$root/usr/bin/${line#Exec=}"
        $line --help >/dev/null || wrong "cannot be started: $line"
    done < <(grep '^Exec=' "$share/applications/lathhouse.desktop")
    ;;
metainfo)
    needs appstreamcli appstream
    appstreamcli validate --no-net "$share/metainfo/lathhouse.metainfo.xml" || failed=1
    version=$("$root/usr/bin/lathhouse" --version)
    grep -q "<release version=\"${version#lathhouse }\"" "$share/metainfo/lathhouse.metainfo.xml" ||
        wrong "the metainfo does not know $version"
    head -n 1 "$share/doc/lathhouse/changelog" | grep -qF "(${version#lathhouse })" || wrong "the changelog does not begin with $version"
    grep -qF "Lathhouse ${version#lathhouse }\"" "$share/man/man1/lathhouse.1" || wrong "the manual page is not that of $version"
    ;;
mime)
    needs update-mime-database shared-mime-info
    needs gio libglib2.0-bin
    cp /usr/share/mime/packages/freedesktop.org.xml "$share/mime/packages/"
    update-mime-database "$share/mime" >"$root/said" 2>&1 || { cat "$root/said"; failed=1; }
    cd "$root" || exit 1
    usr/bin/lathhouse --on 2027-01-10 demo plants --photos 0 >/dev/null
    usr/bin/lathhouse --home plants backup any.lathhouse.zip >/dev/null
    cp any.lathhouse.zip backup
    cp plants/household.sqlite3 household
    kind() { XDG_DATA_HOME=$share XDG_DATA_DIRS=$share gio info -a standard::content-type "$1" | sed -n 's/.*content-type: //p'; }
    for file in any.lathhouse.zip:backup backup:backup household:household plants/household.sqlite3:household; do
        [ "$(kind "${file%:*}")" = "application/x-lathhouse-${file#*:}" ] || wrong "${file%:*} is taken for $(kind "${file%:*}")"
    done
    [ "$(kind "$share/icons/hicolor/16x16/apps/lathhouse.png")" = image/png ] || wrong "what is not ours is taken for something else"
    ;;
icons)
    for file in "$share"/icons/hicolor/*x*/apps/lathhouse.png; do
        size=$(basename "$(dirname "$(dirname "$file")")")
        # A PNG's width and height stand at bytes 16 and 20, the first of each is the highest.
        drawn=$(od -An -j16 -N8 -tu1 "$file" | awk '{ print $3 * 256 + $4 "x" $7 * 256 + $8 }')
        [ "$drawn" = "$size" ] || wrong "$file is $drawn"
    done
    ;;
manual)
    needs man man-db
    said=$(MANROFFSEQ='' MANWIDTH=80 man --warnings --encoding=utf8 --local-file "$share/man/man1/lathhouse.1" 2>&1 >/dev/null)
    [ -z "$said" ] || wrong "$said"
    ;;
*)
    echo "installed.sh looks at files, desktop, metainfo, mime, icons, manual; not at $what"
    exit 2
    ;;
esac
exit "$failed"
