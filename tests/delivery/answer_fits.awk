# Whether an answer (second file) is what a page shows of it (first file). A line "..." in the page stands for any number of
# lines; a space that may not be broken and one that may are the same, and spaces at the end are none. Prints the first
# line that does not fit; exit status 1 then. Bytes are compared: run with LC_ALL=C.
{ gsub(/\302\240|\342\200\257/, " "); sub(/ +$/, "") }
FNR == NR { shown[++pieces] = $0; next }
{ said[++lines] = $0 }
function fits_at(first, start,    at) { # The run of shown lines from `first` to the next "...", at line `start`.
    for (at = 0; first + at <= pieces && shown[first + at] != "..."; ++at) if (said[start + at] != shown[first + at]) return -1
    return at
}
END {
    place = 1
    line = 1
    while (place <= pieces) {
        gap = 0
        while (place <= pieces && shown[place] == "...") { gap = 1; ++place }
        if (place > pieces) exit 0
        long = fits_at(place, line)
        while (gap && long < 0 && line <= lines) long = fits_at(place, ++line)
        if (long < 0) {
            for (at = 0; !gap && said[line + at] == shown[place + at]; ++at) {}
            printf "    the page shows: %s\n    the program says: %s\n", shown[place + at], gap ? "no such lines" : said[line + at]
            exit 1
        }
        place += long
        line += long
    }
    if (line <= lines) { printf "    the program says more: %s\n", said[line]; exit 1 }
}
