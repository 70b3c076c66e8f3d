#!/usr/bin/env python3
"""One journey of a new grower: from the first start, through every page, to a printed sheet.

journey.py PROGRAM [PICTURES]: drives the program on an X server of its own with keys and mouse, in an empty home. What it
comes to is looked at from outside: the household by the command line, the sheet as a file, what the program said.
Where it fails, a picture of the screen lies in the folder PICTURES (else in the current one). Ends with 77 where a
program that it needs is missing.
"""

import glob
import json
import os
import shutil
import subprocess
import sys
import tempfile
import time

import screen as screens

TODAY = "2026-05-16"
PLANTS = {"Citrus limon": "Lemon", "Nerium oleander": "Oleander"}


class Journey:
    def __init__(self, program, home):
        self.program, self.home = program, home
        self.screen = screens.Screen(home)
        os.mkdir(os.path.join(home, "Documents"))  # As every desktop makes it.
        self.household = os.path.join(home, ".local/share/lathhouse")

    def ask(self, *words):
        """The command line's answer on the household, as JSON."""
        done = subprocess.run([self.program, "--home", self.household, "--on", TODAY, "--json", *words],
                              env=self.screen.environment, stdin=subprocess.DEVNULL, capture_output=True, text=True, timeout=120)
        assert done.returncode == 0, f"lathhouse {' '.join(words)}: {done.stderr}"
        return json.loads(done.stdout)

    def page(self, name):
        self.screen.wait(lambda: self.screen.find("page tab", f"^{name}").has(screens.SELECTED), f"the page {name}")

    # The steps, in order.

    def first_start(self):
        screen = self.screen
        screen.open(self.program, "--on", TODAY)
        find = screen.find("text", "^Nearest town")
        screen.wait(lambda: find.has(screens.FOCUSED), "the keys in the first field")
        screen.type("Graz")
        screen.click(screen.find("push button", "Graz.*Austria"))
        zone = screen.find("text", "^Time zone")
        screen.wait(lambda: zone.text == "Europe/Vienna", "the place's time zone")
        screen.find("chart", "^Map of the stations")
        screen.click(screen.find("push button", "^On to the spots$"))
        for spot in ("South sill", "Roofed balcony"):
            screen.click(screen.find("push button", f"^{spot}$"))
        spots = screen.find("list", "^Spots$")
        screen.wait(lambda: len(spots.children()) == 2, "two spots")
        screen.key("ctrl+Return")
        find = screen.find("text", "^Common or botanical name")
        screen.wait(lambda: find.has(screens.FOCUSED), "the keys in the field of plants")
        for name, common in PLANTS.items():
            screen.key("ctrl+a")
            screen.type(name)
            kinds = screen.find("list", "^Kinds that answer")
            screen.find("push button", name, kinds)
            # Each kind has a button that shows what is known of it.
            screen.wait(lambda: sum(kind.has(screens.SHOWING) and not kind.name.startswith("Look at ")
                                    for kind in kinds.children()) == 1, "one kind alone")
            screen.key("Return")
            screen.find("push button", f"^{common}, 1,", screen.find("list", "^Plants that were picked"))
        assert not os.path.exists(self.household), "the household was written before its grower was done"
        screen.click(screen.find("push button", "^Open the year$"))

    def year_of_the_household(self):
        self.page("Year")
        plants = self.ask("list", "plants")["plants"]
        expected = [(kind, name, 1) for kind, name in PLANTS.items()]
        assert [(plant["kind"], plant["name"], plant["spot"]) for plant in plants] == expected, plants
        spots = self.ask("list", "spots")["spots"]
        assert [spot["name"] for spot in spots] == ["South sill", "Roofed balcony"], spots
        for plant in plants:
            shown = self.ask("show", "plant", str(plant["id"]))
            assert shown["name"] == plant["name"] and shown["spot"] == 1, shown

    def round_of_the_day(self):
        screen = self.screen
        screen.click(screen.find("page tab", "^Round"))
        self.page("Round")
        planned = {task["key"] for task in self.ask("round")["tasks"]}
        task = screen.find("check box", "^Lemon: Feel whether the mix is dry")
        assert not task.has(screens.CHECKED), task.name
        screen.click(task, 0.028)  # Its box, at the left.
        screen.wait(lambda: screen.find("check box", "^Lemon: Feel whether the mix is dry").has(screens.CHECKED), "the tick")

        def told():
            return not any(task["key"].startswith("water/1/") for task in self.ask("round")["tasks"])

        assert any(key.startswith("water/1/") for key in planned), planned
        screen.wait(told, "the ticked task to leave the round of the command line")

    def risk_of_the_year(self):
        screen = self.screen
        screen.key("2")
        self.page("Year")
        slider = screen.find("slider", "^Risk you accept, 1 in 10[.]")
        dates = slider.name.partition(". ")[2]
        screen.drag(slider, 0.5, 0.75)
        slider = screen.find("slider", "^Risk you accept, 1 in 5[.]|^Risk you accept, 1 in 3[.]")
        assert slider.name.partition(". ")[2] != dates, "the dates stayed as they were at another risk"
        screen.key("Left")  # The slider has the keys since it was dragged.
        screen.wait(lambda: screen.look("slider", "^Risk you accept, 1 in (10|5)[.]"), "the risk one stop lower")

    def plants_and_one_of_them(self):
        screen = self.screen
        screen.key("3")
        self.page("Plants")
        plant = screen.find("list item", "^Oleander, South sill")
        screen.click(plant)
        screen.wait(lambda: plant.has(screens.FOCUSED), "the keys at the plant")
        screen.key("Return")
        screen.find("panel", "^Oleander$")
        screen.key("Escape")
        screen.find("list item", "^Oleander, South sill")

    def seeds_and_home(self):
        screen = self.screen
        screen.key("4")
        self.page("Seeds")
        screen.find("label", "^No lot of seed is known yet")
        screen.click(screen.find("page tab", "^Home"))
        self.page("Home")
        screen.find("chart", "^Map of the stations round home")
        screen.click(screen.find("page tab", "^Spots$"))
        screen.find("panel", "^Spots$")

    def printed_sheet(self):
        screen = self.screen
        screen.key("alt+2")
        self.page("Year")
        screen.key("ctrl+p")
        dialog = screen.find("dialog", "^Keep the sheet as$")
        screen.click(screen.find("push button", "^(Open|Save|Keep it)$", dialog))
        screen.find("status bar|statusbar", "[.]pdf")
        files = glob.glob(os.path.join(self.home, "**", "*.pdf"), recursive=True)
        assert len(files) == 1, files
        words = subprocess.run(["pdftotext", "-layout", files[0], "-"], capture_output=True, text=True, check=True,
                               timeout=60).stdout
        for word in ("Graz", *PLANTS.values()):
            assert word in words, f"the sheet does not say {word}: {words}"

    def end(self):
        status = self.screen.shut()
        assert status == 0, f"the program ended with {status}"
        said = self.screen.said().strip()
        assert said == "", f"the program said: {said}"

    def steps(self):
        return (self.first_start, self.year_of_the_household, self.round_of_the_day, self.risk_of_the_year,
                self.plants_and_one_of_them, self.seeds_and_home, self.printed_sheet, self.end)


def main():
    missing = screens.missing_packages()
    if missing:
        print("skipped: this machine lacks", ", ".join(missing))
        return 77
    home = tempfile.mkdtemp(prefix="lathhouse-journey-")
    journey = None
    try:
        journey = Journey(os.path.abspath(sys.argv[1]), home)
        for step in journey.steps():
            began = time.monotonic()
            step()
            print(f"{step.__name__}: {time.monotonic() - began:.1f} s", flush=True)
    except (screens.NotThere, AssertionError) as failure:
        print(f"failed: {failure}")
        if journey is not None:
            picture = os.path.join(sys.argv[2] if len(sys.argv) > 2 else ".", "journey-failed.png")
            journey.screen.picture(picture)
            print(f"the screen: {picture}\nwhat a screen reader finds:")
            try:
                print(journey.screen.describe())
            except Exception as nothing:  # The program is gone.
                print(f"  nothing: {nothing}")
            print("the program said:\n" + journey.screen.said())
        return 1
    finally:
        if journey is not None:
            journey.screen.close()
        shutil.rmtree(home, ignore_errors=True)
    return 0


if __name__ == "__main__":
    sys.exit(main())
