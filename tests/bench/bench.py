#!/usr/bin/env python3
"""bench.py BUILD [--quick] [--json FILE] [--keep] [--only ROOM ...]: runs the benchmarks built in BUILD and prints one table.

Every row stands beside a reference measured by the same program in the same minute; what counts is their ratio, which a
slow or busy machine leaves alone. What has grown by over a fifth against the ratios kept in tests/bench/ratios.csv is
listed; nothing fails by it. --quick leaves out what takes long and the window; --keep writes the ratios anew; --json
writes rows, exponents and every measurement of Google Benchmark."""
import argparse
import csv
import datetime
import json
import math
import os
import platform
import re
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
KEPT = os.path.join(HERE, "ratios.csv")
WORSE = 1.2

# Times are short there: the least of three.
QUICK = ["--benchmark_repetitions=3", "--benchmark_min_time=0.1"]
# Room, its arguments, those of --quick; None: left out by --quick.
ROOMS = [
    ("sky", [], QUICK),
    ("climate", [], QUICK),
    ("records", [], ["--stations", "100", "--rounds", "5"]),
    ("moves", ["--benchmark_filter=^whole_plan|yardstick"],
     ["--benchmark_filter=^(whole_plan/fast/|yardstick)", *QUICK]),
    ("growth", [], QUICK),
    ("journal", [], ["--benchmark_filter=/(1000|10000)$|yardstick", *QUICK]),
    ("photo", [], ["--photos", "8"]),
    ("backup", [], ["--files", "40"]),
    ("start", [], None),
    ("window", [], None),
    ("plants", [], None),
    ("pauses", [], None),
]

# What it is, room, measurement, reference, what the reference is called, and the bar of the project in words.
ROWS = [
    ("sunrise and sunset, 48 degrees", "sky", "rises_and_sets/48", "rises_and_sets_by_meeus/48", "short series of Meeus", "1,000,000 pairs/s"),
    ("sunrise and sunset, 60 degrees", "sky", "rises_and_sets/60", "rises_and_sets_by_meeus/60", "short series of Meeus", "1,000,000 pairs/s"),
    ("sunrise and sunset, 60 degrees", "sky", "rises_and_sets/60", "rises_and_sets_by_erfa/60", "ERFA", ""),
    ("daily records to normals and dates, two cores", "records", "normals_two_cores", "sha256sum", "sha256sum", "0.4 x"),
    ("daily records to normals and dates, one core", "records", "normals_one_core", "normals_two_cores", "two cores", ""),
    ("daily records to normals, processor time", "records", "normals_two_cores_processor", "sha256sum_processor", "sha256sum's", ""),
    ("daily records read only, two cores", "records", "read_two_cores", "cat", "cat", ""),
    ("daily records to a checked table of stations", "records", "station_table", "sha256sum", "sha256sum", ""),
    ("monthly figures of a place", "climate", "monthly_figures", "yardstick", "yardstick", ""),
    ("model of a place and dates of a line", "climate", "model_and_dates", "yardstick", "yardstick", "50 ms"),
    ("model moved to neighbours' dates", "climate", "model_moved_to_neighbours", "yardstick", "yardstick", ""),
    ("year plan, 10 plants", "moves", "whole_plan/fast/plants:10/spots:6/seed:1", "yardstick", "yardstick", ""),
    ("year plan, 60 plants", "moves", "whole_plan/fast/plants:60/spots:20/seed:1", "yardstick", "yardstick", "100 ms"),
    ("year plan, 250 plants", "moves", "whole_plan/fast_large/plants:250/spots:40/seed:1", "yardstick", "yardstick", ""),
    ("year plan, 1,000 plants", "moves", "whole_plan/fast_large/plants:1000/spots:100/seed:1", "yardstick", "yardstick", "5 s"),
    ("verdict of recovery, 100 readings", "growth", "judge_series/100/100", "yardstick", "yardstick", ""),
    ("journal: first opening, 1,000 entries", "journal", "opens_first/1000", "sqlite_looks_through/1000", "SQLite's look", ""),
    ("journal: first opening, 10,000 entries", "journal", "opens_first/10000", "sqlite_looks_through/10000", "SQLite's look", ""),
    ("journal: first opening, 100,000 entries", "journal", "opens_first/100000", "sqlite_looks_through/100000", "SQLite's look", ""),
    ("journal: first opening, 200,000 entries", "journal", "opens_first/200000", "sqlite_looks_through/200000", "SQLite's look", "300 ms"),
    ("journal: opened again, 200,000 entries", "journal", "opens", "yardstick", "yardstick", "300 ms"),
    ("journal: page of a plant, 1,000 entries", "journal", "plant_page/1000", "sqlite_reads_plant/1000", "SQLite's reading", ""),
    ("journal: page of a plant, 10,000 entries", "journal", "plant_page/10000", "sqlite_reads_plant/10000", "SQLite's reading", ""),
    ("journal: page of a plant, 100,000 entries", "journal", "plant_page/100000", "sqlite_reads_plant/100000", "SQLite's reading", ""),
    ("journal: page of a plant, 200,000 entries", "journal", "plant_page/200000", "sqlite_reads_plant/200000", "SQLite's reading", "10 ms"),
    ("journal: all of a plant, 200,000 entries", "journal", "whole_plant/200000", "sqlite_reads_plant/200000", "SQLite's reading", ""),
    ("photo import", "photo", "import", "import_parts_together", "its parts", "1.25 x"),
    ("photo import, processor time", "photo", "import_processor", "import_parts_processor", "its parts'", ""),
    ("green cover, 12 megapixels", "photo", "green_cover", "green_cover_of_opencv", "OpenCV, one core", "50 ms"),
    ("green cover, 12 megapixels", "photo", "green_cover", "pixels_copied", "copying the pixels", ""),
    ("backup with digests, read back", "backup", "backup", "zip", "zip -0", ""),
    ("backup with digests, read back", "backup", "backup", "cp", "cp and sync", ""),
    ("restore, compared", "backup", "restore", "cp", "cp and sync", ""),
    ("check of a household", "backup", "check", "sha256sum", "sha256sum", ""),
    ("command line: starts and tells its version", "start", "says_version", "yardstick", "yardstick", ""),
    ("command line: list of the demonstration's plants", "start", "list_plants/demonstration", "yardstick", "yardstick", ""),
    ("command line: plants among 200,000 measurements", "start", "list_plants/large", "yardstick", "yardstick", ""),
    ("window: first frame, demonstration", "start", "first_frame/demonstration", "yardstick", "yardstick", "300 ms"),
    ("window: first frame, 200,000 measurements", "start", "first_frame/large", "yardstick", "yardstick", "1 s"),
    ("window: slider to dates", "window", "slider_to_dates/60_plants", "yardstick", "yardstick", "50 ms"),
    ("window: slider to plan solved", "window", "slider_to_solved_plan/60_plants", "yardstick", "yardstick", "200 ms"),
    ("window: step of the cursor", "window", "cursor_step/60_plants", "yardstick", "yardstick", "16 ms"),
    ("window: scroll of the year", "window", "scroll_of_rows/60_plants", "yardstick", "yardstick", "16 ms"),
    ("plants page, 5,000 plants: scroll", "plants", "scroll_of_shelves", "yardstick", "yardstick", "16 ms"),
    ("plants page, 5,000 plants: fast scroll", "plants", "fast_scroll_of_shelves", "yardstick", "yardstick", "16 ms"),
    ("plants page, 5,000 plants: scroll of the table", "plants", "scroll_of_table", "yardstick", "yardstick", "16 ms"),
    ("plants page, 5,000 plants: step", "plants", "arrow_step", "yardstick", "yardstick", "16 ms"),
    # The longest that nobody could have done anything while the window did it.
    *[("stands still: " + step, "pauses", "longest_pause/" + step, "yardstick", "yardstick", "100 ms")
      for step in ("opens round", "opens plants", "opens seeds", "opens home", "opens year", "opens a plant", "opens the journal",
                   "finds in the journal", "writes and reads all anew", "opens plants, of photos", "photos come in", "opens data", "writes a backup", "restores a backup",
                   "checks the household", "reads a record of 28 years", "shows the year of that record")],
]

# What grows with what: name, room, pattern whose group is the size.
GROWTH = [
    ("year plan, by plants", "moves", r"whole_plan/fast(?:_large)?/plants:(\d+)/spots:\d+/seed:1\b"),
    ("journal: first opening, by entries", "journal", r"opens_first/(\d+)"),
    ("journal: page of a plant, by entries", "journal", r"plant_page/(\d+)"),
    ("journal: all of a plant, by entries", "journal", r"whole_plant/(\d+)"),
    ("journal: what verdicts rest on, by entries", "journal", r"leading_measures/(\d+)"),
]


def run(build, room, arguments):
    """Measurements of one program by their names; None where it is not built."""
    program = os.path.join(build, "tests", "bench", room + "_bench")
    if not os.access(program, os.X_OK):
        return None
    done = subprocess.run([program, *arguments, "--benchmark_format=json"], stdout=subprocess.PIPE, text=True)
    if done.returncode != 0:
        sys.exit("%s_bench failed" % room)
    found = {}
    for one in json.loads(done.stdout)["benchmarks"]:
        if one.get("run_type") == "aggregate":
            continue
        name = re.sub(r"/(iterations:\d+|manual_time|process_time|real_time)", "", one["name"])
        scale = {"ns": 1e-6, "us": 1e-3, "ms": 1.0, "s": 1e3}[one["time_unit"]]
        milliseconds = one["real_time"] * scale
        # Where a loop does many of a thing at once, one of them is the measure.
        if "items_per_second" in one:
            milliseconds = 1e3 / one["items_per_second"]
        if name not in found or milliseconds < found[name]["milliseconds"]:
            found[name] = {**one, "milliseconds": milliseconds}
    return found


def watched(build):
    """Whether the sanitizers watch what was built in `build`."""
    with open(os.path.join(build, "CMakeCache.txt")) as cache:
        return any(re.fullmatch("LATHHOUSE_SANITIZE:[A-Z]+=(ON|TRUE|1)", line.rstrip(), re.IGNORECASE) for line in cache)


def exponent(points):
    """Slope of the straight line through the logarithms."""
    logs = [(math.log(x), math.log(y)) for x, y in points]
    mean_x, mean_y = (sum(v[k] for v in logs) / len(logs) for k in (0, 1))
    return sum((x - mean_x) * (y - mean_y) for x, y in logs) / sum((x - mean_x) ** 2 for x, _ in logs)


def shown(milliseconds):
    for unit, scale in (("s", 1e3), ("ms", 1.0), ("us", 1e-3)):
        if milliseconds >= scale:
            return "%.3g %s" % (milliseconds / scale, unit)
    return "%.3g ns" % (milliseconds * 1e6)


def machine():
    model = "unknown processor"
    try:
        with open("/proc/cpuinfo") as info:
            model = next((line.split(":")[1].strip() for line in info if line.startswith("model name")), model)
    except OSError:
        pass
    return "%s, %d cores, load %.1f, %s" % (model, os.cpu_count(), os.getloadavg()[0], platform.system())


def main():
    asked = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    asked.add_argument("build")
    asked.add_argument("--quick", action="store_true")
    asked.add_argument("--json", metavar="FILE")
    asked.add_argument("--keep", action="store_true")
    asked.add_argument("--only", nargs="+", metavar="ROOM", choices=[room for room, _, _ in ROOMS])
    asked.add_argument("--records", nargs="+", metavar="FILE", help="daily records and, second, where their stations stand")
    options = asked.parse_args()

    measured, left_out = {}, []
    for room, arguments, quick in ROOMS:
        if options.only and room not in options.only:
            continue
        if options.quick and quick is None:
            left_out.append(room)
            continue
        chosen = list(quick if options.quick else arguments)
        if room == "records" and options.records:
            chosen += ["--records", options.records[0]]
            chosen += ["--places", options.records[1]] if len(options.records) > 1 else []
        found = run(options.build, room, chosen)
        if found is None:
            left_out.append(room)
        else:
            measured[room] = found

    # The small inputs of --quick have ratios of their own, and so has a build that the sanitizers watch.
    under_sanitizers = watched(options.build)
    size = ("watched " if under_sanitizers else "") + ("quick" if options.quick else "full")
    kept = {}
    if os.path.exists(KEPT):
        with open(KEPT, newline="") as file:
            kept = {(row["size"], row["room"], row["measured"], row["reference"]): row for row in csv.DictReader(file)}
    rows, worse, compared = [], [], 0
    today = datetime.date.today().isoformat()
    print(machine() + (", watched by the sanitizers: ratios count, times do not" if under_sanitizers else ""))
    layout = "%-48s %10s  %-22s %10s %9s %9s  %s"
    print(layout % ("what", "time", "reference", "its time", "ratio", "before", "bar"))
    for what, room, name, reference, called, bar in ROWS:
        ours, theirs = measured.get(room, {}).get(name), measured.get(room, {}).get(reference)
        if not ours or not theirs:
            continue
        ratio = ours["milliseconds"] / theirs["milliseconds"]
        before = kept.get((size, room, name, reference))
        mark = ""
        compared += before is not None
        if before and ratio > WORSE * float(before["ratio"]):
            worse.append("%s (against %s): %.3g, was %s on %s" % (what, called, ratio, before["ratio"], before["date"]))
            mark = " *"
        print(layout % (what, shown(ours["milliseconds"]), called, shown(theirs["milliseconds"]), "%.3g" % ratio,
                        before["ratio"] if before else "", ("" if under_sanitizers else bar) + mark))
        rows.append({"what": what, "room": room, "measured": name, "reference": reference, "milliseconds": ours["milliseconds"],
                     "reference_milliseconds": theirs["milliseconds"], "ratio": ratio, "bar": bar})
    grown = []
    for what, room, pattern in GROWTH:
        points = sorted({int(match[1]): one["milliseconds"] for name, one in measured.get(room, {}).items()
                         if (match := re.fullmatch(pattern, name))}.items())
        if len(points) >= 3:
            grown.append({"what": what, "points": points, "exponent": exponent(points), "at_its_end": exponent(points[-2:])})
            print("%-48s n^%.2f, at its end n^%.2f  %s" % (what, grown[-1]["exponent"], grown[-1]["at_its_end"], ", ".join("%d: %s" % (n, shown(t)) for n, t in points)))
    for name, one in measured.get("start", {}).items():
        if "memory_mb" in one:
            print("memory of the window with all pages open, %s: %.0f MB (bar 250 MB)" % (name.split("/")[1], one["memory_mb"]))
    if left_out:
        print("left out: " + ", ".join(left_out))
    for line in worse:
        print("over a fifth worse: " + line)
    if not worse:
        print("of %d ratios that are kept none is over a fifth worse" % compared if compared else "no ratios of such a run are kept")

    if options.json:
        with open(options.json, "w") as file:
            json.dump({"date": today, "machine": machine(), "rows": rows, "growth": grown, "worse": worse,
                       "measurements": measured}, file, indent=1)
    if options.keep:
        for row in rows:
            key = (size, row["room"], row["measured"], row["reference"])
            kept[key] = dict(zip(("size", "room", "measured", "reference"), key), ratio="%.3g" % row["ratio"], date=today)
        with open(KEPT, "w", newline="") as file:
            table = csv.DictWriter(file, ["size", "room", "measured", "reference", "ratio", "date"], lineterminator="\n")
            table.writeheader()
            table.writerows(kept[key] for key in sorted(kept))


if __name__ == "__main__":
    main()
