#!/usr/bin/env python3
"""Brings the tables of translations up to date with the source.

    app/i18n/renew.py            new sentences come in as unfinished, those that are gone leave
    app/i18n/renew.py --check    changes nothing; says what is missing, unfinished or wrong, and fails by it

Translate what is unfinished in Qt Linguist or any editor. A translation keeps the places (%1) and the blanks at both ends
of its source. Sentences that the words room makes with `phrase` all stand in the context "words": lupdate names them after
return types otherwise.
"""
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
        return sorted(messages(file), key=lambda key: (key[0] == "words", key[0]))


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
    faults = []
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
        print(f"{len(faults)} to mend: run app/i18n/renew.py, then translate what is unfinished in app/i18n/*.ts")
    sys.exit(1 if faults else 0)


main()
