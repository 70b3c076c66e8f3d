#!/usr/bin/env bash
# links.sh SOURCE PAGE...: every link of the pages leads to a file and a heading that are there, every picture is there,
# every path of the repository that stands between backticks is there, and every picture in docs/pictures is shown by one
# of the pages. Links to other hosts are counted and not followed.
set -u
source_folder=$1
shift
cd "$source_folder" || exit 1
links=0 paths=0 elsewhere=0 failed=0

wrong() {
    echo "$1"
    failed=$((failed + 1))
}

# Text outside blocks, one line each with its number: LINE<TAB>TEXT.
prose() {
    awk '/^ *```/ { inside = !inside; next } !inside { printf "%d\t%s\n", FNR, $0 }' "$1"
}

# The anchors that the headings of a page make: small letters, no signs, a dash for a space, -1 and on for the same again.
anchors() {
    prose "$1" | cut -f 2- | sed -nE 's/^#+ +//p' | tr '[:upper:]' '[:lower:]' |
        sed -E 's/[^[:alnum:] _-]//g; s/ /-/g' | awk 'seen[$0]++ { $0 = $0 "-" seen[$0] - 1 } { print }'
}

shown=$(mktemp)
trap 'rm -f "$shown"' EXIT
for page in "$@"; do
    folder=$(dirname "$page")
    while IFS=$'\t' read -r at target; do
        case $target in
        https://* | http://* | mailto:*) elsewhere=$((elsewhere + 1)); continue ;;
        esac
        links=$((links + 1))
        file=${target%%#*}
        file=${file:+$folder/$file}
        file=${file:-$page}
        if [ ! -e "$file" ]; then
            wrong "$page:$at: $target is not there"
            continue
        fi
        realpath --relative-to=. "$file" >>"$shown"
        case $target in
        *#*) anchors "$file" | grep -qxF -- "${target#*#}" || wrong "$page:$at: $file has no heading #${target#*#}" ;;
        esac
    done < <(prose "$page" | awk -F '\t' '{
        text = $2
        gsub(/`[^`]*`/, "", text)
        while (match(text, /\]\([^) ]+/)) { print $1 "\t" substr(text, RSTART + 2, RLENGTH - 2); text = substr(text, RSTART + RLENGTH) } }')
    while IFS=$'\t' read -r at path; do
        paths=$((paths + 1))
        # A concept is named without the ending of its files, a group of files with an asterisk.
        compgen -G "$path" >/dev/null || compgen -G "$path.*" >/dev/null || wrong "$page:$at: $path is not there"
    done < <(prose "$page" | awk -F '\t' '{
        pieces = split($2, piece, "`")
        for (at = 2; at < pieces; at += 2)
            if (piece[at] ~ /^(app|qml|core|tests|docs|climate-data|\.ci)\/[A-Za-z0-9_.*\/-]*$/) print $1 "\t" piece[at] }')
done
for picture in docs/pictures/*; do
    grep -qxF "$picture" "$shown" || wrong "$picture is shown by no page"
done
echo "$links links and $paths paths followed, $elsewhere links to other hosts, $failed failed"
[ "$failed" = 0 ] && [ "$links" -gt 0 ]
