#!/usr/bin/env python3
"""Brings the tables of translations up to date with the source.

    app/i18n/renew.py            new sentences come in as unfinished, those that are gone leave
    app/i18n/renew.py --check    changes nothing; says what is missing, unfinished or wrong, and fails by it

Translate what is unfinished in Qt Linguist or any editor. A translation keeps the places (%1) and the blanks at both ends
of its source. Texts of the core's tables that the window shows stand in app/words/data/table_texts.csv: a text that is
not there comes in with blank cells, and no translation may have other figures than its text. Sentences that the words room makes with `phrase` all stand in the context "words": lupdate names them after
return types otherwise. So do those that the core makes with `said`; of them are left out what only somebody at the command
line or at the building of a table reads: sentences that name a command or an option, and those of the files below.
"""
import ast
import csv
import glob
import io
import os
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree
from xml.sax.saxutils import escape

LANGUAGES = ["de", "es"]
HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(os.path.dirname(HERE))
# What these say is about a table that comes with the program or is made at the command line, and nobody at the window.
NOT_AT_THE_WINDOW = re.compile(r"^core/(climate/(build_station_table|leave_\w+|monthly_form|pack_stations|station_rows|"
                               r"world_rows)|geodesy/(build_\w+|pack_towns|town_rows)|growth/series|plan/(care_lines|cautions|"
                               r"damage_table|growing_rules|spray_gate))\.cpp$")
# Of the commands what also opens the window.
DOORS_OF_COMMANDS = ["app/cli/household_options.cpp", "app/cli/open_household.h"]
FOR_COMMAND_LINE = re.compile(r"`(lathhouse|export) |(^| )--[a-z]")
# Columns of the core's tables that the window shows as text; ";": a list of them, "first": a list whose first is shown.
SHOWN_COLUMNS = {
    "core/plan/data/care_lines.csv": {"text": ""},
    "core/plan/data/cautions.csv": {"text": ""},
    "core/plan/data/damage_modes.csv": {"name": "", "examples": ";", "outlook": "", "conflict": "", "note": ""},
    "core/plan/data/damage_signs.csv": {"text": ""},
    "core/plan/data/sensitive_kinds.csv": {"note": ""},
    "core/plants/data/pest_clocks.csv": {"study": ""},
    "core/plants/data/pests.csv": {"name": "", "look_at": ";", "found_as": ";", "spreads_by": ";", "treated_with": ";", "note": ""},
    "core/plants/data/plants.csv": {"hazards": "", "growth_season": "", "confidence": "", "note": ""},
    "core/plants/data/seeds.csv": {"names": "first", "before_sowing": "", "photoperiod_note": "", "confidence": ""},
}
TABLE_TEXTS = os.path.join(ROOT, "app/words/data/table_texts.csv")
LITERALS = r'((?:"(?:[^"\\]|\\.)*"\s*)+)'
OF_CORE = re.compile(r"\bsaid(?:_later(?:<\d>)?)?\(\s*" + LITERALS)
MADE_OF = re.compile(r"(?:ErrorCode::\w+|\.code),\s*")
SAID = re.compile(r"\b(?:said|said_later(?:<\d>)?)\(|\bSaid\{")
A_LITERAL = re.compile(r'"(?:[^"\\]|\\.)*"')
SHOWN_UNSAID = re.compile(r"error(?:\(\))?(?:\.|->)message\b(?!\.find|\()")
OF_WORDS = re.compile(r"^(std|words|lathhouse::words)(::.*)?$")


def messages(file):
    """(context, source, comment) and translation of every message, in the order of the file; None: unfinished."""
    found = {}
    for context in ElementTree.parse(file).getroot().findall("context"):
        name = context.find("name").text
        name = "words" if OF_WORDS.match(name) else name
        for message in context.findall("message"):
            comment = message.find("comment")
            translation = message.find("translation")
            finished = translation is not None and translation.get("type") is None and translation.text
            key = (name, message.find("source").text, comment.text if comment is not None else "")
            found.setdefault(key, translation.text if finished else None)
    return found


def in_source():
    lupdate = shutil.which("lupdate") or "/usr/lib/qt6/bin/lupdate"
    with tempfile.TemporaryDirectory() as folder:
        file = os.path.join(folder, "source.ts")
        done = subprocess.run([lupdate, "-silent", "-locations", "none", "-tr-function-alias",
                               "tr+=phrase,QT_TR_NOOP+=said_later", "-I", ".", "-extensions", "qml,cpp,h", "-source-language",
                               "en", "qml", "app", "-ts", file], cwd=ROOT, stderr=subprocess.PIPE, text=True)
        if done.returncode != 0:
            sys.exit("lupdate failed: " + done.stderr)
        found = dict.fromkeys(messages(file))
    found.update(dict.fromkeys(("words", sentence, "") for sentence in sorted(said_in_core()[0])))
    return sorted(found, key=lambda key: (key[0] == "words", key[0]))


def text_of(literals):
    return "".join(ast.literal_eval(one) for one in re.findall(r'"(?:[^"\\]|\\.)*"', literals))


def files_of(*patterns):
    for pattern in patterns:
        for file in sorted(glob.glob(os.path.join(ROOT, pattern), recursive=True)):
            with open(file, encoding="utf-8") as read:
                yield os.path.relpath(file, ROOT).replace(os.sep, "/"), read.read()


def said_in_core():
    """Sentences that the core makes its errors of, and those among them that the command line alone understands."""
    shown, for_command_line = set(), set()
    for file, text in files_of("core/**/*.h", "core/**/*.cpp", "app/models/*.cpp", *DOORS_OF_COMMANDS):
        if not NOT_AT_THE_WINDOW.match(file):
            for found in OF_CORE.finditer(re.sub(r"^\s*//.*$", "", text, flags=re.MULTILINE)):
                sentence = text_of(found.group(1))
                (for_command_line if FOR_COMMAND_LINE.search(sentence) else shown).add(sentence)
    return shown, for_command_line


def up_to_its_end(text, begin):
    """What stands from there to the bracket that closes it."""
    depth = 0
    at = begin
    while at < len(text):
        literal = A_LITERAL.match(text, at)
        if literal:
            at = literal.end()
            continue
        depth += (text[at] in "([{") - (text[at] in ")]}")
        if depth < 0:
            break
        at += 1
    return text[begin:at]


def has_text_of_its_own(made_of):
    """Whether something in quotation marks stands in it beside what is said."""
    while found := SAID.search(made_of):
        said = up_to_its_end(made_of, found.end())
        made_of = made_of[:found.start()] + made_of[found.end() + len(said) + 1:]
    return '"' in made_of


def unsaid():
    """Where an error would reach somebody in English for want of a sentence, in sentences."""
    for file, text in files_of("core/**/*.h", "core/**/*.cpp"):
        if not NOT_AT_THE_WINDOW.match(file):
            for found in MADE_OF.finditer(text):
                if has_text_of_its_own(up_to_its_end(text, found.end())):
                    yield f"{file}, line {text.count(chr(10), 0, found.start()) + 1}: an error is made of a text; make it with said(...)"
    for file, text in files_of("app/*.cpp", "app/models/*.cpp", "app/models/*.h", "app/sheet/*.cpp"):
        for found in SHOWN_UNSAID.finditer(text):
            if file != "app/main.cpp":
                yield f"{file}, line {text.count(chr(10), 0, found.start()) + 1}: a message is shown in English; say it with words::refusal"


def without_window():
    """What stands in refusal.cpp in the stead of no sentence of the core, and the core's that name a command and have none."""
    _, for_command_line = said_in_core()
    with open(os.path.join(ROOT, "app/words/refusal.cpp"), encoding="utf-8") as read:
        worded = {text_of(one) for one in re.findall(r"ForWindow\{" + LITERALS, read.read())}
    for sentence in sorted(for_command_line - worded):
        yield f"app/words/refusal.cpp has nothing for the window in the stead of {sentence!r}"
    for sentence in sorted(one for one in worded - for_command_line if FOR_COMMAND_LINE.search(one)):
        yield f"app/words/refusal.cpp has {sentence!r}, which the core does not say"


def table(file):
    """The lines before the head of a table, which are remarks, and its rows by the names of their columns."""
    with open(file, encoding="utf-8", newline="") as read:
        lines = read.read().splitlines(keepends=True)
    head = next(at for at, line in enumerate(lines) if not line.startswith("#"))
    return lines[:head], list(csv.DictReader(io.StringIO("".join(lines[head:]))))


def shown_in_tables():
    """Every text of the core's tables that the window shows, with where it stands first."""
    found = {}
    for file, columns in SHOWN_COLUMNS.items():
        for row in table(os.path.join(ROOT, file))[1]:
            for column, kind in columns.items():
                texts = [text.strip() for text in row[column].split(";")] if kind else [row[column]]
                for text in texts[:1] if kind == "first" else texts:
                    if text:
                        found.setdefault(text, f"{file}, {column}")
    return found


def faults_of_table_texts():
    def figures(text):
        return sorted(re.findall(r"(?<!\w)-?\d+(?:\.\d+)?", text.replace("\u2212", "-").replace(",", ".")))

    there = {}
    for row in table(TABLE_TEXTS)[1]:
        text = row["en"]
        if text in there:
            yield f"table_texts.csv: {text!r} stands twice"
        there[text] = row
        for language in LANGUAGES:
            if not (row[language] or "").strip():
                yield f"table_texts.csv: {language}: {text!r} is not translated"
            elif figures(row[language]) != figures(text):
                yield f"table_texts.csv: {language}: {text!r} has other figures than {row[language]!r}"
    for text, place in shown_in_tables().items():
        if text not in there:
            yield f"table_texts.csv: {text!r} is missing ({place})"


def renew_table_texts():
    """Brings in the texts that are missing, with blank cells; says how many have a blank cell."""
    rows = table(TABLE_TEXTS)[1]
    there = {row["en"] for row in rows}
    missing = [text for text in shown_in_tables() if text not in there]
    with open(TABLE_TEXTS, "a", encoding="utf-8", newline="") as out:
        csv.writer(out, lineterminator="\n").writerows([text] + [""] * len(LANGUAGES) for text in missing)
    blank = sum(1 for row in rows if not all(row[language] for language in LANGUAGES))
    print(f"table_texts.csv: {len(rows) + len(missing)} texts, {blank + len(missing)} to translate")


def quoted(text):
    return escape(text, {'"': "&quot;", "'": "&apos;"})


def write(file, language, keys, translations):
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>",
             f'<TS version="2.1" language="{language}" sourcelanguage="en">']
    context = None
    for key in keys:
        if key[0] != context:
            if context is not None:
                lines.append("</context>")
            context = key[0]
            lines += ["<context>", f"    <name>{quoted(context)}</name>"]
        lines += ["    <message>", f"        <source>{quoted(key[1])}</source>"]
        if key[2]:
            lines.append(f"        <comment>{quoted(key[2])}</comment>")
        said = translations.get(key)
        lines.append('        <translation type="unfinished"></translation>' if said is None
                     else f"        <translation>{quoted(said)}</translation>")
        lines.append("    </message>")
    lines += ["</context>", "</TS>"]
    with open(file, "w", encoding="utf-8") as out:
        out.write("\n".join(lines) + "\n")


def faults_of(language, keys, translations):
    """What is wrong with a table, in sentences."""
    def places(text):
        return sorted(set(re.findall(r"%L?\d|%n", text)))

    def blanks(text):
        return text[:1].isspace(), text[-1:].isspace()

    for key in keys:
        name = f"{language}: {key[0]}: {key[1]!r}"
        if key not in translations:
            yield f"{name} is not in the table"
        elif translations[key] is None:
            yield f"{name} is not translated"
        elif places(translations[key]) != places(key[1]):
            yield f"{name} has other places than {translations[key]!r}"
        elif blanks(translations[key]) != blanks(key[1]):
            yield f"{name} begins or ends with another blank than {translations[key]!r}"
    for key in translations:
        if key not in set(keys):
            yield f"{language}: {key[0]}: {key[1]!r} stands in the table and no more in the source"


def main():
    check = sys.argv[1:] == ["--check"]
    keys = in_source()
    faults = [*unsaid(), *without_window(), *faults_of_table_texts()] if check else []
    if not check:
        renew_table_texts()
    for language in LANGUAGES:
        file = os.path.join(HERE, f"lathhouse_{language}.ts")
        translations = messages(file) if os.path.exists(file) else {}
        if not check:
            write(file, language, keys, translations)
            left = [key for key in keys if translations.get(key) is None]
            print(f"{language}: {len(keys)} sentences, {len(left)} to translate")
        else:
            faults += faults_of(language, keys, translations)
    for fault in faults:
        print(fault)
    if faults:
        print(f"{len(faults)} to mend: run app/i18n/renew.py, then translate what is unfinished in app/i18n/*.ts and app/words/data/table_texts.csv")
    sys.exit(1 if faults else 0)


main()
