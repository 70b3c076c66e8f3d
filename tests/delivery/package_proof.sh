#!/usr/bin/env bash
# package_proof.sh [--builds N] [--package FILE.deb] [FOLDER]: proves the Debian package from end to end, as root on a Debian.
# Builds it from what is committed (N = 2: twice, in folders of different names, and compares the bytes), has lintian look at
# it, installs it into a bare Debian 12 made by mmdebstrap from this machine's own package sources, runs there as an
# ordinary user every command line of the pages, every command's own example and the window's self-test, removes it, and
# looks whether anything is left. Takes about ten minutes a build and ten more. Needs what app/packages.txt lists, and
# mmdebstrap, lintian, dpkg-dev and file. Everything lies in FOLDER (a new one below /tmp), which is kept.
set -eu -o pipefail
builds=1 package=
while [ $# -gt 0 ]; do
    case $1 in
    --builds) builds=$2; shift 2 ;;
    --package) package=$(realpath "$2"); shift 2 ;;
    -*) echo "package_proof.sh takes --builds N, --package FILE.deb and a folder, not $1"; exit 2 ;;
    *) break ;;
    esac
done
source_folder=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
folder=${1:-$(mktemp -d /tmp/lathhouse-proof.XXXXXX)}
mkdir -p "$folder"
folder=$(realpath "$folder")
for tool in mmdebstrap lintian dpkg-shlibdeps cpack; do
    command -v "$tool" >/dev/null || { echo "there is no $tool; apt-get install mmdebstrap lintian dpkg-dev cmake"; exit 1; }
done
[ "$(id -u)" = 0 ] || { echo "only root can make and enter a bare system"; exit 1; }
proved() { echo "$(date +%T) proved: $*"; }

# --- The package
SOURCE_DATE_EPOCH=$(git -C "$source_folder" log -1 --format=%ct)
export SOURCE_DATE_EPOCH
rm -rf "$folder"/source-* "$folder/root"
for number in $(seq "$builds"); do
    [ -z "$package" ] || [ "$number" -gt 1 ] || continue
    # Folders of other lengths, so that a path that gets into the program shows.
    from=$folder/source-$(printf "%0*d" "$number" 0)
    mkdir "$from"
    git -C "$source_folder" archive HEAD | tar -x -C "$from"
    cmake -S "$from" -B "$from/build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DLATHHOUSE_BUILD_TESTS=OFF \
        -DLATHHOUSE_UNITY=ON >"$folder/build-$number.log"
    nice cmake --build "$from/build" >>"$folder/build-$number.log"
    (cd "$from/build" && cpack -G DEB >>"$folder/build-$number.log")
    made=$(ls "$from"/build/lathhouse_*.deb)
    proved "package $number is built, $(stat -c %s "$made") bytes, SHA-256 $(sha256sum "$made" | cut -c 1-64)"
    if grep -qa "$from" "$from/build/_CPack_Packages/Linux/DEB"/*/usr/bin/lathhouse; then
        echo "the program holds the folder that it was built in"
        exit 1
    fi
    if [ -z "$package" ]; then
        package=$made
    else
        cmp "$package" "$made"
        proved "build $number gives the same bytes"
    fi
done

lintian --allow-root --fail-on error "$package" | tee "$folder/lintian.log"
proved "lintian finds no error and $(grep -c '^W:' "$folder/lintian.log" || true) warnings"

# --- A bare system
sources=()
for list in /etc/apt/sources.list /etc/apt/sources.list.d/*.list /etc/apt/sources.list.d/*.sources; do
    [ -s "$list" ] && sources+=("$list")
done
root=$folder/root
mmdebstrap --quiet --variant=minbase --mode=root bookworm "$root" "${sources[@]}" >"$folder/root.log" 2>&1
proved "a bare Debian $(cat "$root/etc/debian_version") with $(chroot "$root" dpkg-query -W | wc -l) packages"
cp "$package" "$root/lathhouse.deb"
cp /etc/resolv.conf "$root/etc/resolv.conf"
apt-config dump | grep -E '^Acquire::(http|https)::Proxy' >"$root/etc/apt/apt.conf.d/98proof" || true
mkdir "$root/proof"
git -C "$source_folder" archive HEAD README.md DEVELOPERS.md docs climate-data/README.md tests/delivery | tar -x -C "$root/proof"
# Processes and mounts of what runs there end with it.
inside() { unshare --mount --pid --fork chroot "$root" /bin/sh -euc "mount -t proc proc /proc; export LC_ALL=C.UTF-8 DEBIAN_FRONTEND=noninteractive; $1"; }

inside 'apt-get -q update; apt-get -qy --no-install-recommends install /lathhouse.deb' >"$folder/install.log" 2>&1
proved "the package is installed with $(grep -c '^Unpacking' "$folder/install.log") packages in all, none of them only recommended"
inside 'useradd --create-home grower
    chown -R grower /proof
    missing=$(ldd /usr/bin/lathhouse | grep "not found" || true); test -z "$missing"
    dpkg --verify lathhouse'
proved "every library and every file of the package is there"

inside 'su grower -c "cd /proof && bash tests/delivery/samples.sh /usr/bin/lathhouse /proof README.md DEVELOPERS.md docs/*.md docs/methods/*.md"' |
    tee "$folder/samples.log"
proved "every command line of the pages runs and answers as shown"

cat >"$root/proof/examples.sh" <<'EXAMPLES'
# The example that every command shows, in a folder with a household; what needs a file of one's own may ask for it in one
# line, and nothing may crash.
cd "$(mktemp -d)" || exit 1
export HOME=$PWD
lathhouse --on 2027-01-10 demo .local/share/lathhouse >/dev/null || exit 1
cp -r .local/share/lathhouse plants
names='/^Subcommands:/ { list = 1; next } /^$/ { list = 0 } list && /^  [a-z]/ { sub(/,.*/, "", $1); print $1 }'
commands=0 answered=0 asked=0 bad=0
try() {
    help=$(lathhouse "$@" --help) || { echo "no help: $*"; bad=$((bad + 1)); return; }
    commands=$((commands + 1))
    example=$(printf '%s\n' "$help" | sed -n '/^Example:/{n;s/^ *lathhouse/lathhouse --on 2027-01-10/p}')
    [ -n "$example" ] || return
    case $example in *" window"*) example="$example --page year" ;; esac
    bash -c "$example" >said 2>wrong </dev/null
    status=$?
    if [ "$status" = 0 ]; then answered=$((answered + 1))
    elif [ "$status" -le 2 ] && [ "$(wc -l <wrong)" = 1 ] && grep -q '^lathhouse: ' wrong; then asked=$((asked + 1))
    else echo "status $status: $example"; head -n 3 wrong; bad=$((bad + 1)); fi
}
for command in $(lathhouse --help | awk "$names"); do
    try "$command"
    for part in $(lathhouse "$command" --help | awk "$names"); do try "$command" "$part"; done
done
echo "$commands commands and parts of commands have help; of their examples $answered answered, $asked asked for a file or a thing in one line, $bad were bad"
[ "$bad" = 0 ]
EXAMPLES
inside 'su grower -c "bash /proof/examples.sh"' | tee "$folder/examples.log"
proved "every command runs"

inside 'su grower -c "lathhouse --on 2026-03-14 window --self-test"' | tee "$folder/self-test.log"
grep -q '"warnings":\[\]' "$folder/self-test.log"
proved "the window shows all its pages without a warning"

inside 'dpkg -L lathhouse | while read -r path; do test -d "$path" || echo "$path"; done >/files
    apt-get -qy purge lathhouse' >"$folder/purge.log" 2>&1
inside 'while read -r path; do test ! -e "$path" || { echo "left behind: $path"; exit 1; }; done </files
    left=$(find / -xdev -iname "*lathhouse*" -not -path "/proof/*" -not -path "/home/*" -not -path "/tmp/*" -not -path "/proc/*" -not -name lathhouse.deb -not -path "/var/log/*")
    test -z "$left" || { echo "left behind: $left"; exit 1; }
    ! dpkg-query -W lathhouse 2>/dev/null'
proved "it is removed and leaves nothing"
echo "the package is proved: $package; everything lies in $folder"
