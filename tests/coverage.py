#!/usr/bin/env python3
"""coverage.py BUILD SOURCE [--least PERCENT]: sums what the tests of a build with the preset `coverage` ran.

A table of core's lines by room; then the lines that no test ran, under the reason that tests/coverage_reasons.txt has for
them, last those that it has none for. Fails where fewer lines ran than asked for.
"""
import argparse
import collections
import json
import pathlib
import re
import subprocess
import sys


def counted_lines(build, source):
    """How often each line of core ran: {path below the source folder: {line: times}}.

    A function in a header has counts of its own in every object that holds it, though the program has one copy; a line of
    a template is listed once an instance. Both are summed.
    """
    counts = collections.defaultdict(lambda: collections.defaultdict(int))
    # Tools that make the shipped tables are built beside; what they share with the core is in its library.
    notes = sorted(str(path) for path in build.rglob("*.gcno") if "lathhouse_core.dir" in path.parts or "tests" in path.parts)
    if not notes:
        sys.exit("coverage: nothing was built with the preset `coverage` in " + str(build))
    for start in range(0, len(notes), 16):
        said = subprocess.run(["gcov", "--json-format", "--stdout", *notes[start:start + 16]], cwd=build, check=True,
                              stdout=subprocess.PIPE, stderr=subprocess.DEVNULL).stdout
        for document in said.splitlines():
            if not document.strip():
                continue
            for file in json.loads(document)["files"]:
                path = pathlib.Path(build, file["file"]).resolve()
                if not path.is_relative_to(source / "core"):
                    continue
                of_file = counts[str(path.relative_to(source))]
                for line in file["lines"]:
                    of_file[line["line_number"]] += line["count"]
    return counts


def read_reasons(file):
    """Rows `PATH | TEXT | REASON`: regular expressions that must match the path and be found in the line's text."""
    reasons = []
    for number, row in enumerate(file.read_text(encoding="utf-8").splitlines(), 1):
        if not row.strip() or row.startswith("#"):
            continue
        parts = [part.strip() for part in row.split(" | ")]
        if len(parts) != 3:
            sys.exit(f"coverage: {file}:{number} is not `PATH | TEXT | REASON`")
        reasons.append((re.compile(parts[0]), re.compile(parts[1]), parts[2]))
    return reasons


def main():
    arguments = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    arguments.add_argument("build", type=pathlib.Path)
    arguments.add_argument("source", type=pathlib.Path)
    arguments.add_argument("--least", type=float, default=90.0)
    asked = arguments.parse_args()
    build, source = asked.build.resolve(), asked.source.resolve()
    counts = counted_lines(build, source)
    reasons = read_reasons(source / "tests" / "coverage_reasons.txt")

    rooms = collections.defaultdict(lambda: [0, 0, 0])
    missed = collections.defaultdict(list)
    without = []
    for path, lines in sorted(counts.items()):
        text = (source / path).read_text(encoding="utf-8").splitlines()
        room = rooms[path.split("/")[1]]
        room[0] += 1
        if max(lines, default=0) > len(text):
            sys.exit(f"coverage: {path} is not what was built; build again")
        for number, times in sorted(lines.items()):
            line = text[number - 1].strip()
            if not line.strip("{}();, "):
                continue # Brackets alone: what is counted there is the way out when something is thrown.
            room[1] += 1
            if times > 0:
                room[2] += 1
                continue
            where = f"{path}:{number}: {line}"
            why = next((why for file, words, why in reasons if file.fullmatch(path) and words.search(line)), None)
            (missed[why] if why else without).append(where)

    print(f"{'room':12} {'files':>6} {'lines':>7} {'ran':>7} {'share':>8}")
    total = [sum(column) for column in zip(*rooms.values())]
    for room, (files, lines, ran) in sorted(rooms.items()) + [("core", total)]:
        print(f"{room:12} {files:6} {lines:7} {ran:7} {100 * ran / lines:7.1f} %")
    for why, places in sorted(missed.items(), key=lambda group: -len(group[1])):
        print(f"\n{len(places)} lines: {why}")
        print(*("  " + place for place in places), sep="\n")
    if without:
        print(f"\n{len(without)} lines that no test ran, and nothing in tests/coverage_reasons.txt says why")
        print(*("  " + place for place in without), sep="\n")
    share = 100 * total[2] / total[1]
    print(f"\n{share:.1f} % of core's {total[1]} lines ran; {total[1] - total[2]} did not, {len(without)} without a reason")
    return 0 if share >= asked.least else 1


if __name__ == "__main__":
    sys.exit(main())
