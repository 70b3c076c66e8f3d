#!/usr/bin/env python3
"""Pictures of all pages, in each look, size and language that the window has, to be looked at.

pictures.py PROGRAM CONTACT_SHEET FOLDER [--only VARIANT] [--write DOCS]: the self-test of the window opens every page,
section and form of the demonstration household, and the first start; each is kept as FOLDER/VARIANT/NAME.png, and all
of a variant on one sheet, FOLDER/pages-VARIANT.png. With --write the sheets go to the folder DOCS as well
(docs/pictures). Fails where a page says a warning, has an item without a name or one too small to be pressed, a text without room or over another, or is missing.
"""

import json
import os
import shutil
import subprocess
import sys

PAGES = ["round", "year", "plants", "plant", "compare", "seeds", "home-place", "home-spots", "home-thermometer",
         "home-record", "home-people", "home-journal", "home-data", "home-settings", "add-plants", "kind", "change-plant", "add-spots",
         "change-spot", "change-place", "add-lot", "keep-at-spot", "ask-cold", "ask-damage", "ask-spray", "ask-course",
         "ask-water", "ask-harden", "photo", "two-photos", "measure", "keys"]
STARTS = ["start-1", "start-2", "start-3"]
# What the environment says, and the words for the program.
VARIANTS = {
    "light": ({}, []),
    "dark": ({"LATHHOUSE_THEME": "dark"}, []),
    "contrast": ({"LATHHOUSE_THEME": "contrast"}, []),
    "large-text": ({"LATHHOUSE_TEXT": "200"}, []),
    "small": ({"LATHHOUSE_SIZE": "1024x600"}, []),
    # The smallest window, and little width with long words, both with the largest text.
    "smallest": ({"LATHHOUSE_TEXT": "200", "LATHHOUSE_SIZE": "520x480"}, []),
    "large-german": ({"LATHHOUSE_TEXT": "200", "LATHHOUSE_SIZE": "800x900"}, ["--language", "de"]),
    "touch": ({"LATHHOUSE_TOUCH": "on", "LATHHOUSE_SIZE": "1024x768"}, []),
    "german": ({}, ["--language", "de"]),
    "spanish": ({}, ["--language", "es"]),
    "mirror": ({}, ["--language", "mirror"]),
}
# Half the year looks another way in autumn.
DATES = {"dark": "2026-11-14", "spanish": "2026-11-14"}
COLUMNS, WIDTH = 4, 400


def self_test(program, folder, environment, words):
    """What the self-test answers; its pictures are in the folder."""
    kept = {name: value for name, value in os.environ.items() if not name.startswith("LATHHOUSE_")}
    done = subprocess.run([program, *words, "--self-test"], stdin=subprocess.DEVNULL, capture_output=True, text=True, timeout=300,
                          env={**kept, "LC_ALL": "C.UTF-8", "TZ": "UTC", "QT_QPA_PLATFORM": "offscreen",
                               "QT_QUICK_BACKEND": "software", "LATHHOUSE_PICTURES": folder, **environment})
    assert done.returncode == 0, f"{' '.join(words)}: {done.stdout}{done.stderr}"
    return json.loads(done.stdout)


def variant(program, sheet_maker, folder, name):
    environment, words = VARIANTS[name]
    pictures = os.path.join(folder, name)
    shutil.rmtree(pictures, ignore_errors=True)
    date = ["--on", DATES.get(name, "2026-05-16")]
    answers = [self_test(program, pictures, environment, [*date, "window", "--page", "round", *words]),
               self_test(program, pictures, environment, [*date, "--home", os.path.join(folder, "no-such-household"), "window",
                                                          "--page", "start", *words])]
    for answer in answers:
        assert answer["nameless"] == [] and answer["warnings"] == [] and answer["small"] == [], (name, answer)
    files = [os.path.join(pictures, page + ".png") for page in PAGES + STARTS]
    missing = [file for file in files if not os.path.exists(file)]
    assert not missing, f"{name}: no picture of {missing}"
    sheet = os.path.join(folder, f"pages-{name}.png")
    subprocess.run([sheet_maker, sheet, str(COLUMNS), str(WIDTH), *files], check=True,
                   env={**os.environ, "QT_QPA_PLATFORM": "offscreen"}, stdin=subprocess.DEVNULL)
    cut = sorted({text for answer in answers for text in answer["cut"]})
    assert not cut, f"{name}: texts without room: {cut}"
    over = sorted({text for answer in answers for text in answer["over"]})
    assert not over, f"{name}: texts over each other: {over}"
    print(f"{name}: {len(files)} pictures", flush=True)
    return sheet


def main():
    words = sys.argv[1:]
    only = words.pop(words.index("--only") + 1) if "--only" in words else None
    docs = words.pop(words.index("--write") + 1) if "--write" in words else None
    program, sheet_maker, folder = (os.path.abspath(word) for word in words if not word.startswith("--"))
    os.makedirs(folder, exist_ok=True)
    for name in VARIANTS if only is None else [only]:
        sheet = variant(program, sheet_maker, folder, name)
        if docs is not None:
            shutil.copyfile(sheet, os.path.join(docs, os.path.basename(sheet)))
    return 0


if __name__ == "__main__":
    sys.exit(main())
