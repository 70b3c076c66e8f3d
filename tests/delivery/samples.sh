#!/usr/bin/env bash
# samples.sh [--write] PROGRAM SOURCE PAGE...: runs every command line of the pages, each page in a folder of its own with a
# household "plants" (unless the page makes that itself), and compares answers with those shown. "today" is 10 January 2027
# where a line does not say. A line that is not the program's must be one of those known to be run by others. With --write
# the pages get the answers as they are now, as far as they show them. Needs nothing but a shell and awk.
set -u
write=0
[ "$1" != --write ] || { write=1; shift; }
program=$1 source_folder=$2
shift 2
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
ran=0 compared=0 known=0 failed=0
unset DISPLAY WAYLAND_DISPLAY QT_QPA_PLATFORM XDG_DATA_HOME XDG_CONFIG_HOME
export LC_ALL=C.UTF-8

# The program under the two names that pages use. A window would stay open: it saves a picture instead.
prepare() {
    local folder=$1 page=$2
    mkdir -p "$folder/app" "$folder/bin" "$folder/home/phone"
    cat >"$folder/bin/lathhouse" <<WRAPPER
#!/usr/bin/env bash
case " \$* " in *" --on "*|" --help "|"  ") on=() ;; *) on=(--on 2027-01-10) ;; esac
case " \$* " in *" --self-test "*|*" --picture "*) ;; *" window "*) set -- "\$@" --picture window.png ;; esac
exec "$program" "\${on[@]}" "\$@"
WRAPPER
    chmod +x "$folder/bin/lathhouse"
    cp "$folder/bin/lathhouse" "$folder/app/run.sh"
    (
        cd "$folder" || exit 1
        bin/lathhouse demo phone --photos 2 >/dev/null && cp phone/photos/*/*.jpg home/phone/ || exit 1
        grep -q 'demo plants$' "$source_folder/$page" || mv phone plants
        set -- home/phone/*.jpg
        cp "$1" leaf.jpg
        # Files of the reader's own, of the forms that the pages describe.
        { echo date,low_c; for day in 01-11 01-12 01-13 01-14 04-25 04-26 04-27 04-28; do echo "2027-$day,$((${day: -1} - 3)).5"; done; } >lows.csv
        awk 'BEGIN { print "date,low,high"
            for (year = 2012; year <= 2026; ++year) for (month = 1; month <= 12; ++month) for (day = 1; day <= 28 + 2 * (month != 2); ++day) {
                mean = 10 - 12 * cos((month - 1 + day / 30) * 3.14159265 / 6) + 4 * sin(day * 7.3 + month * 3.1 + year)
                printf "%d-%02d-%02d,%.1f,%.1f\n", year, month, day, mean - 4, mean + 5 } }' >porch.csv
        awk 'BEGIN { print "date,value"
            for (week = 0; week < 20; ++week) printf "2026-%02d-%02d,%.1f\n", 4 + int(week / 4), 1 + week % 4 * 7, 40 + (week < 8 ? week : 8 + (week - 8) * 0.8) * 0.9 + week % 3 * 0.1
        }' >heights.csv
    ) || { echo "the household of the samples could not be made"; exit 1; }
}

# Run by others: the build and its tests, and what needs files that are not in the repository.
is_known() {
    case $1 in
    ./tests/run.sh* | tests/run.sh* | "cmake --preset "* | "cmake --build "* | "ctest --preset "*) return 0 ;;
    "cpack "* | "cmake --install "* | "sudo "* | tests/delivery/* | app/package/draw_icons.sh*) return 0 ;;
    lathhouse\ normals\ --records\ us_daily* | lathhouse\ towns\ --build* | lathhouse\ coast\ --build*) return 0 ;;
    esac
    return 1
}

check_answer() {
    [ -s "$scratch/shown" ] || return 0
    compared=$((compared + 1))
    local why
    if [ "$write" = 1 ]; then # As many lines as were shown before the first "..."; what follows stays.
        awk -v at="$at" -v out="$scratch/out" 'BEGIN { print "answer\t" at }
            $0 == "..." { cut = 1 } cut { print } !cut && (getline line < out) > 0 { print line }
            END { if (!cut) while ((getline line < out) > 0) print line }' "$scratch/shown" >>"$scratch/new"
        return 0
    fi
    if ! why=$(LC_ALL=C awk -f "$here/answer_fits.awk" "$scratch/shown" "$scratch/out"); then
        echo "$page:$at: $line"
        echo "$why"
        failed=$((failed + 1))
    fi
}

for page in "$@"; do
    folder=
    at=0 line=
    : >"$scratch/shown"
    : >"$scratch/new"
    awk -f "$here/samples_of.awk" "$source_folder/$page" >"$scratch/samples"
    while IFS=$'\t' read -r what first rest || [ -n "$what" ]; do
        if [ "$what" = show ]; then
            # Read as one text: a line of an answer may hold a tab.
            printf '%s\n' "$first${rest:+$'\t'$rest}" >>"$scratch/shown"
            continue
        fi
        [ -z "$line" ] || check_answer
        : >"$scratch/shown"
        at=$first line=$rest
        if is_known "$line"; then
            known=$((known + 1)) line=
            continue
        fi
        if [ -z "$folder" ]; then
            folder=$scratch/$(printf %s "$page" | tr / _)
            prepare "$folder" "$page"
        fi
        if ! (cd "$folder" && HOME=$folder/home PATH=$folder/bin:$PATH bash -c "$line") \
            >"$scratch/out" 2>"$scratch/err" </dev/null; then
            echo "$page:$at: $line"
            sed 's/^/    /' "$scratch/err"
            failed=$((failed + 1))
        fi
        ran=$((ran + 1))
    done <"$scratch/samples"
    [ -z "$line" ] || check_answer
    if [ "$write" = 1 ] && [ -s "$scratch/new" ]; then
        awk -F '\t' 'FNR == NR { if ($1 == "answer") at = $2; else new[at] = new[at] $0 "\n"; next }
            skip && /^(\$ |```)/ { skip = 0 } !skip { print } FNR in new { printf "%s", new[FNR]; skip = 1 }' \
            "$scratch/new" "$source_folder/$page" >"$scratch/page" && cat "$scratch/page" >"$source_folder/$page"
    fi
done
echo "$ran command lines run, $compared answers compared, $known run by others, $failed failed"
[ "$failed" = 0 ] && [ "$ran" -gt 0 ]
