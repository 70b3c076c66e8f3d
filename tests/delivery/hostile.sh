#!/usr/bin/env bash
# hostile.sh PROGRAM SOURCE: gives the program inputs that nobody would write. Each is to be refused with the exit status and
# the words named, in one line, with nothing on standard output and no file made or changed; docs/reliability.md has a row
# for each under the same name.
set -u
program=$1 page=$2/docs/reliability.md
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
cd "$scratch" || exit 1
export LC_ALL=C.UTF-8 HOME=$scratch
unset DISPLAY WAYLAND_DISPLAY QT_QPA_PLATFORM XDG_DATA_HOME LATHHOUSE_STATIONS LATHHOUSE_TOWNS LATHHOUSE_COAST
mkdir said
tried=0 failed=0

wrong() {
    echo "$1"
    failed=$((failed + 1))
}
listing() { find . -path ./said -prune -o -name '*.sqlite3-*' -o -type f -exec cksum {} + -o -print | sort; }

refused() { # NAME STATUS WORDS ARGUMENT...
    local name=$1 status=$2 words=$3 got
    shift 3
    tried=$((tried + 1))
    grep -qF "| $name |" "$page" || wrong "docs/reliability.md has no row for: $name"
    "$program" "$@" >said/out 2>said/err </dev/null
    got=$?
    [ "$got" = "$status" ] || wrong "$name: exit status $got, not $status"
    [ ! -s said/out ] || wrong "$name: it was answered"
    { [ "$(wc -l <said/err)" = 1 ] && grep -q '^lathhouse: ' said/err; } || wrong "$name: it was not refused in one line: $(head -c 500 said/err)"
    grep -qF -- "$words" said/err || wrong "$name: $(head -c 500 said/err)"
}

"$program" --on 2027-01-10 demo good --photos 1 >said/out && "$program" --home good --on 2027-01-10 backup abcd.zip >said/out || exit 1
photo=$(ls good/photos/*/*.jpg)
# --- Backups
head -c 50000 abcd.zip >half.zip
LC_ALL=C sed 's#abcd/data/#../../ab/x#g' abcd.zip >climbs.zip
cp abcd.zip altered.zip && printf X | dd of=altered.zip bs=1 seek=60000 conv=notrunc 2>/dev/null
: >empty
echo text >text
# --- Databases
mkdir text_home torn_home newer_home
cp text text_home/household.sqlite3
head -c 100000 good/household.sqlite3 >torn_home/household.sqlite3
# The number of the schema stands in the header, at byte 60, the highest first.
cp good/household.sqlite3 newer_home/ && printf '\0\0\177\377' | dd of=newer_home/household.sqlite3 bs=1 seek=60 conv=notrunc 2>/dev/null
# --- Tables, photos
printf 'date,low\0,high\n2020-01-01,1,2\n' >zero_byte.csv
printf '\377\376d\0a\0t\0e\0' >other_letters.csv
head -c 3000000 /dev/zero | tr '\0' 1 >one_line.csv
printf 'date,value\n2026-02-30,1\n' >no_day.csv
printf 'date,value\n2026-02-01,1e999\n' >no_number.csv
head -c 3000 "$photo" >torn.jpg
head -c 5000 good/household.sqlite3 >torn.bin
mkfifo pipe
before=$(listing)

refused "a backup cut off" 2 "torn or was altered" restore half.zip new
refused "a backup with a byte altered" 1 "altered or is torn, use another backup" restore altered.zip new
refused "a backup whose paths leave the folder" 2 'in its path; nothing was unpacked' restore climbs.zip new
refused "a text in place of a backup" 2 "this is no zip file" restore text new
refused "an empty file in place of a backup" 2 "this is no zip file" restore empty new
refused "a device without end in place of a backup" 1 "is no file" restore /dev/zero new
refused "a backup into a household that is there" 1 "already holds a household" restore abcd.zip good
refused "a database that is a text" 1 "is not a household" --home text_home list plants
refused "a database cut off" 1 "is damaged" --home torn_home list plants
refused "a database of a newer version" 1 "newer version" --home newer_home list plants
refused "a photo that is a text" 2 "is no photo" photo text
refused "a photo cut off" 2 "is cut off or damaged" photo torn.jpg
refused "a device without end in place of a photo" 1 "is not a file" photo /dev/zero
refused "a table with zero bytes" 2 'has no column "low"' --home good place import zero_byte.csv
refused "a table in UTF-16" 2 'has no column "date"' --home good place import other_letters.csv
refused "a table that is one line of 3 MB" 2 'has no column "date"' growth --series one_line.csv --event 2026-06-01
refused "a 30 February in a table" 2 "the calendar has no day 30" growth --series no_day.csv --event 2026-06-01
refused "1e999 in a table" 2 '"1e999" is no number' growth --series no_number.csv --event 2026-06-01
refused "a latitude of 91 degrees" 2 "outside -90 to 90" frost --at 91,0
refused "nan and inf for a place" 2 "is no place" frost --at nan,inf
refused "1e999 for a temperature" 2 "must lie within" frost --at 48,20 --threshold 1e999
refused "a path for a time zone" 2 "there is no time zone" sun --at 48,20 --from 2027-01-01 --zone ../../../etc/passwd
export LATHHOUSE_STATIONS=$scratch/torn.bin
refused "a torn table of stations" 1 "is damaged" frost --at 48,20
unset LATHHOUSE_STATIONS
refused "a household of a hundred million plants" 2 "1 to 5000 plants" demo new --plants 99999999
refused "a pipe to write to" 1 "cannot be written" --home good --on 2027-01-10 export calendar pipe
refused "a folder below a file to write to" 1 "cannot be made" demo text/new

[ "$(listing)" = "$before" ] || wrong "files were made or changed: $(diff <(echo "$before") <(listing) | grep '^[<>]' | head -5)"
# An answer that finds no room is told by the exit status.
if "$program" list kinds >/dev/full 2>said/err; then wrong "a full disk for an answer is not told"; fi
echo "$tried inputs tried, $failed failed"
[ "$failed" = 0 ]
