# Takes the command lines out of a page of Markdown, one a line: "run<TAB>LINE<TAB>COMMAND", each followed by what the page
# shows as its answer, "show<TAB>TEXT". Command lines stand in blocks marked sh, one a line, in blocks of which the first
# line begins with "$ ", there with their answers, and between backticks in the text if they begin with ./app/run.sh.
function command(text) { printf "run\t%d\t%s\n", begun, text }

/^ *```/ {
    if (inside) {
        inside = 0
    } else {
        inside = 1
        shell = ($0 ~ /^ *```sh *$/)
        answers = -1
    }
    kept = ""
    next
}
inside && answers < 0 && !shell { answers = (substr($0, 1, 2) == "$ ") }
inside && shell {
    if (kept == "") begun = FNR
    if (sub(/\\$/, "")) { kept = kept $0; next }
    line = kept $0
    kept = ""
    if (line !~ /^ *(#.*)?$/) command(line)
    next
}
inside && answers == 1 {
    if (substr($0, 1, 2) == "$ ") { begun = FNR; command(substr($0, 3)) } else printf "show\t%s\n", $0
    next
}
inside { next }
{
    pieces = split($0, piece, "`")
    begun = FNR
    for (at = 2; at < pieces; at += 2) if (piece[at] ~ /^\.\/app\/run\.sh ./ && piece[at] !~ /[A-Z][A-Z]/) command(piece[at])
}
