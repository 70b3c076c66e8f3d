import QtQuick
import QtTest
import Lathhouse.Models
import Lathhouse.Testing
import Lathhouse.Ui

// The place Plants by mouse and by keyboard.
Item {
    id: root
    width: 1256
    height: 744

    DemonstrationRound {
        id: household
    }
    MendedHousehold { // The same household, to be changed.
        id: mended
    }
    PlantsPage {
        id: page
        anchors.fill: parent
        plants: household.plants
        plant: household.plant
        narrow: false
        wide: false
        focus: true
    }
    TestCase {
        name: "Plants"
        when: windowShown

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            page.narrow = false;
            page.mend = null;
            page.back();
            open("harm");
        }

        function open(kind: string): void {
            compare(household.error, "");
            household.renew(kind);
            household.plants.start();
            settle();
            named("plantCollection").forceActiveFocus();
        }
        function named(name: string): Item {
            const found = findChild(page, name) as Item;
            verify(found !== null, name);
            return found;
        }
        /// Not made yet, or hidden.
        function isHidden(name: string): bool {
            return !((findChild(page, name) as Item)?.visible ?? false);
        }
        function settle(): void {
            tryCompare(household.plants, "working", false, 30000);
            tryCompare(household.plant, "working", false, 30000);
        }
        function nameAt(shown: int): string {
            household.plants.current = shown;
            return household.plants.target;
        }

        function test_arrowsWalkAndEnterOpens() {
            compare(household.plants.current, 0);
            keyClick(Qt.Key_Right);
            compare(household.plants.current, 1);
            keyClick(Qt.Key_Down);
            verify(household.plants.shelves.lineOf(household.plants.current) > 0);
            keyClick(Qt.Key_Up);
            keyClick(Qt.Key_Home);
            compare(household.plants.current, 0);
            keyClick(Qt.Key_End);
            compare(household.plants.current, 13);
            const name = household.plants.target;
            keyClick(Qt.Key_Return);
            settle();
            verify(named("plantPage").visible);
            compare((named("plantName") as Text).text, name);
            verify(isHidden("plantCollection"));
            keyClick(Qt.Key_Escape);
            verify(named("plantCollection").visible);
            compare(household.plants.target, name);
            keyClick(Qt.Key_Left);
            compare(household.plants.current, 12);
        }

        function shelfPlants(from: Item): list<ShelfPlant> {
            const found = [];
            for (let at = 0; at < from.children.length; ++at) {
                const plant = from.children[at] as ShelfPlant;
                if (plant !== null && plant.visible && plant.name !== "")
                    found.push(plant);
                for (const below of shelfPlants(from.children[at]))
                    found.push(below);
            }
            return found;
        }
        function test_pointerCarriesAPlantToAnotherShelf(): void {
            const shelves = named("shelves") as ListView;
            const plant = shelfPlants(shelves.contentItem)[0];
            const name = plant.name;
            let other = null;
            for (let line = 1; line < shelves.count && other === null; ++line) {
                const item = shelves.itemAtIndex(line) as ShelfLine;
                if (item !== null && item.shelf !== 0 && item.spot !== "")
                    other = item;
            }
            verify(other !== null);
            const spot = other.spot;
            const to = other.mapToItem(plant, 260, 60);
            mousePress(plant, 40, 40);
            for (let step = 1; step <= 10; ++step)
                mouseMove(plant, 40 + (to.x - 40) * step / 10, 40 + (to.y - 40) * step / 10, -1, Qt.LeftButton);
            const hint = named("carried");
            verify(hint.visible);
            compare(hint["words"], name + " to " + spot);
            mouseRelease(plant, to.x, to.y);
            verify(!hint.visible);
            settle();
            verify(household.plants.said.includes(spot), household.plants.said);
            verify(shelfPlants(shelves.contentItem).some(item => item.name === name && item.mapToItem(shelves, 0, 0).y > shelves.height / 6));
            compare(household.plants.opened, 0);
            compare(household.plants.markedCount, 0);
            keyClick(Qt.Key_Z, Qt.ControlModifier);
            settle();
            compare(shelfPlants(shelves.contentItem)[0].name, name);
        }

        function test_aMoveOfTodayMayHaveBeenPlanned(): void {
            const bar = named("plantsUndoBar");
            const instead = findChild(bar, "insteadButton") as SheetButton;
            const id = household.plants.shownId(0);
            const last = household.plants.spots.count - 1;
            verify(household.plants.moveTo(last));
            settle();
            verify(!instead.visible, "nothing can be planned here");
            page.mend = mended.mend;
            verify(instead.visible);
            const spot = household.plants.movedSpot;
            compare(household.plants.movedPlant, id);
            mouseClick(instead);
            settle();
            verify(household.plants.said.startsWith("Taken back: "));
            compare(household.plants.movedPlant, 0);
            verify(!instead.visible);
            tryCompare(mended.mend, "form", MendModel.PinPlant);
            compare(mended.mend.pin.plant, mended.nameOfPlant(id));
            compare(mended.mend.pin.spots[mended.mend.pin.spot], household.plants.spots.at(last, "name"));
            verify(spot > 0);
            mended.mend.leave();
            household.plants.mark(0);
            household.plants.mark(1);
            compare(household.plants.markedCount, 2);
            verify(household.plants.moveTo(last));
            settle();
            verify(!instead.visible, "two plants are two plans");
        }

        /// An act of the menu, once it stands where it stays.
        function act(acts: Item, name: string): Item {
            const found = findChild(acts, "act_" + name) as Item;
            verify(found !== null, name);
            tryVerify(() => found.y > 0);
            return found;
        }

        function test_actsOfAPlantByKeys() {
            const acts = named("plantActs") as PlantActs;
            keyClick(Qt.Key_Right);
            const name = household.plants.target;
            keyClick(Qt.Key_Menu);
            verify(acts.visible);
            compare(acts.title, name);
            compare(acts.Accessible.name, name);
            const mark = findChild(acts, "act_mark") as SpokenButton;
            verify(mark.activeFocus);
            compare(mark.Accessible.role, Accessible.MenuItem);
            keyClick(Qt.Key_Space);
            compare(household.plants.markedCount, 1);
            verify(named("shelves").activeFocus);
            keyClick(Qt.Key_Right); // Another one, while one is marked: it is marked too, or done to alone.
            keyClick(Qt.Key_F10, Qt.ShiftModifier);
            verify(acts.title !== name);
            const other = acts.title;
            keyClick(Qt.Key_Return);
            compare(household.plants.markedCount, 2);
            keyClick(Qt.Key_Menu);
            compare(acts.title, "2 plants");
            verify(findChild(acts, "act_compare") !== null && findChild(acts, "act_photos") === null);
            keyClick(Qt.Key_Down);
            keyClick(Qt.Key_Down);
            verify((findChild(acts, "act_water") as Item).activeFocus);
            keyClick(Qt.Key_Return);
            settle();
            compare(household.plants.said, "2 plants: watered today.");
            keyClick(Qt.Key_Z, Qt.ControlModifier);
            settle();
            keyClick(Qt.Key_Menu);
            keyClick(Qt.Key_Return); // Its mark comes off.
            compare(household.plants.markedCount, 1);
            keyClick(Qt.Key_Menu);
            compare(acts.title, other);
            mouseClick(act(acts, "feed"));
            settle();
            compare(household.plants.said, other + ": fed today.");
            compare(household.plants.markedCount, 0);
            keyClick(Qt.Key_Menu);
            mouseClick(act(acts, "note"));
            verify(named("logPanel").visible);
            compare(named("logPanel")["what"], PlantsModel.Noted);
            keyClick(Qt.Key_Escape);
            keyClick(Qt.Key_Menu);
            mouseClick(act(acts, "move"));
            verify(named("movePanel").visible);
            keyClick(Qt.Key_Escape);
            verify(findChild(acts, "act_keep") === null);
            keyClick(Qt.Key_Menu);
            keyClick(Qt.Key_Escape);
            verify(!acts.visible);
            verify(named("shelves").activeFocus);
        }

        function test_actsOfAPlantByTheRightButton() {
            const acts = named("plantActs") as PlantActs;
            const plant = shelfPlants((named("shelves") as ListView).contentItem)[1];
            mouseClick(plant, 40, 40, Qt.RightButton);
            verify(acts.visible);
            compare(acts.title, plant.name);
            compare(household.plants.opened, 0);
            mouseClick(acts, 3, 3);
            verify(!acts.visible);
            keyClick(Qt.Key_T);
            const table = named("plantTable") as ListView;
            tryVerify(() => table.itemAtIndex(2) !== null);
            const row = table.itemAtIndex(2) as PlantTableRow;
            mouseClick(row, 80, row.height / 2, Qt.RightButton);
            verify(acts.visible);
            compare(acts.title, row.name);
            mouseClick(act(acts, "open"));
            settle();
            compare(household.plants.opened, household.plants.shownId(2));
            household.plants.close();
            keyClick(Qt.Key_Menu);
            verify(acts.visible);
            keyClick(Qt.Key_Escape);
            verify(table.activeFocus);
            keyClick(Qt.Key_T);
        }

        function test_filterChipsAndFind() {
            mouseClick(named("filterChip" + PlantsModel.Poisonous));
            verify(household.plants.shownCount > 0 && household.plants.shownCount < 14);
            keyClick(Qt.Key_Escape);
            compare(household.plants.shownCount, 14);
            keyClick(Qt.Key_F, Qt.ControlModifier);
            verify(named("findField").activeFocus);
            for (const letter of "fig")
                keyClick(letter);
            verify(household.plants.shownCount < 14);
            keyClick(Qt.Key_Return);
            tryVerify(() => !named("findField").activeFocus);
            compare(household.plants.opened, 0);
            keyClick(Qt.Key_Escape);
            compare(household.plants.shownCount, 14);
            keyClick(Qt.Key_F, Qt.ControlModifier);
            for (const letter of "qqq")
                keyClick(letter);
            verify(named("plantsEmpty").visible);
            keyClick(Qt.Key_Escape);
            verify(!named("plantsEmpty").visible);
        }

        function test_tableSortsByItsHeads() {
            keyClick(Qt.Key_T);
            verify(named("plantTable").visible);
            verify(!named("shelves").visible);
            compare(household.plants.sortedBy, 0);
            const first = nameAt(0);
            mouseClick(named("sortHead0"));
            verify(household.plants.descending);
            verify(nameAt(0) !== first);
            mouseClick(named("sortHead1"));
            compare(household.plants.sortedBy, 1);
            named("plantTable").forceActiveFocus();
            keyClick(Qt.Key_Down);
            compare(household.plants.current, 1);
            keyClick(Qt.Key_Return);
            settle();
            verify(named("plantPage").visible);
        }

        /// How many filled buttons can be seen.
        function filledButtons(within: Item): int {
            let seen = within instanceof ActButton && (within as ActButton).filled ? 1 : 0;
            for (const child of Array.from(within.children)) {
                if (child.visible)
                    seen += filledButtons(child);
            }
            return seen;
        }

        function test_logForSeveralAndTakeItBack() {
            keyClick(Qt.Key_Space);
            keyClick(Qt.Key_Right);
            keyClick(Qt.Key_Space);
            compare(household.plants.markedCount, 2);
            compare(filledButtons(page), 1);
            keyClick(Qt.Key_L, Qt.ControlModifier);
            verify(named("logPanel").visible);
            compare(filledButtons(page), 1);
            verify(!(named("logButton") as ActButton).filled, "the panel has the main act");
            mouseClick(named("logChip" + PlantsModel.Watered));
            mouseClick(named("keepButton"));
            settle();
            verify(isHidden("logPanel"));
            compare(household.plants.said, "2 plants: watered today.");
            keyClick(Qt.Key_Z, Qt.ControlModifier);
            settle();
            verify(household.plants.said.startsWith("Taken back"));
            compare(household.plants.canUndo, false);
            keyClick(Qt.Key_Z, Qt.ControlModifier | Qt.ShiftModifier);
            settle();
            compare(household.plants.canUndo, true);
            keyClick(Qt.Key_Escape);
            compare(household.plants.markedCount, 0);
        }

        function test_whatWasDoneStaysInWordsUntilTheNextChange() {
            const bar = named("plantsUndoBar");
            household.plants.openId(3);
            settle();
            keyClick(Qt.Key_L, Qt.ControlModifier);
            mouseClick(named("logChip" + PlantsModel.Watered));
            mouseClick(named("keepButton"));
            settle();
            verify(bar.visible);
            const words = household.plants.said;
            household.plants.openId(4);
            settle();
            page.visible = false;
            page.visible = true;
            page.forceActiveFocus();
            verify(bar.visible);
            compare((findChild(bar, "said") as Text).text, words);
            mouseClick(findChild(bar, "undoButton"));
            settle();
            compare(household.plants.said, "Taken back: " + words);
            compare(household.plants.opened, 4);
            household.plants.close();
            verify(bar.visible);
        }

        function test_theBandIsExplainedWhereOneLies() {
            household.plants.openId(3);
            settle();
            compare(named("bandWords").visible, household.plant.hasBand);
            household.plants.openId(1);
            settle();
            compare(named("bandWords").visible, household.plant.hasBand);
        }

        function test_measuringTakesANumberAndSaysWhatIsNone() {
            keyClick(Qt.Key_L, Qt.ControlModifier);
            mouseClick(named("logChip" + PlantsModel.Measured));
            waitForRendering(page);
            mouseClick(named("logNumber"));
            verify(named("logNumber").activeFocus);
            for (const letter of "tall")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            verify(named("logPanel").visible);
            verify(household.plants.error.includes("tall"));
            keyClick(Qt.Key_A, Qt.ControlModifier);
            for (const letter of "27.3")
                keyClick(letter);
            compare(household.plants.error, "");
            keyClick(Qt.Key_Return);
            settle();
            verify(isHidden("logPanel"));
            verify(household.plants.said.includes("27.3"));
        }

        function test_measuringTakesTimeMethodAndName() {
            keyClick(Qt.Key_L, Qt.ControlModifier);
            mouseClick(named("logChip" + PlantsModel.Watered));
            verify(!named("logTime").visible);
            mouseClick(named("logChip" + PlantsModel.Measured));
            waitForRendering(page);
            mouseClick(named("methodChip3")); // By eye.
            compare((named("logPanel") as LogPanel).method, 2);
            named("logTime").forceActiveFocus();
            for (const letter of "noon")
                keyClick(letter);
            named("logNumber").forceActiveFocus();
            for (const letter of "27.3")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            verify(household.plants.error.includes("noon"));
            verify(named("logTime").activeFocus);
            keyClick(Qt.Key_A, Qt.ControlModifier);
            for (const letter of "14:30")
                keyClick(letter);
            named("logBy").forceActiveFocus();
            for (const letter of "Anna")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            settle();
            verify(isHidden("logPanel"));
            verify(household.plants.said.includes("27.3"));
        }

        function test_dividingMakesPlants() {
            const all = household.plants.count;
            keyClick(Qt.Key_L, Qt.ControlModifier);
            mouseClick(named("logChip" + PlantsModel.Divided));
            waitForRendering(page);
            mouseClick(named("keepButton"));
            verify(household.plants.error !== "");
            verify(named("logDetail").activeFocus);
            for (const letter of "Left, Right")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            settle();
            verify(isHidden("logPanel"));
            compare(household.plants.count, all + 2);
            keyClick(Qt.Key_Z, Qt.ControlModifier);
            settle();
            compare(household.plants.count, all);
        }

        function test_feedingThroughTheYearIsAskedFor() {
            household.plants.openId(3);
            settle();
            const chip = named("feedingYearChip");
            (named("plantSheet") as Flickable).contentY = chip.mapToItem(named("plantSheet"), 0, 0).y - 100;
            mouseClick(chip);
            tryCompare(household.plant.feedingAsked, "working", false, 30000);
            verify(named("feedingSpells").visible);
            verify(household.plant.feedingAsked.spells.count > 0);
            verify(!named("lampFlux").visible);
            named("lampHours").forceActiveFocus();
            for (const letter of "99")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            verify(household.plant.feedingAsked.error.includes("24"));
            keyClick(Qt.Key_A, Qt.ControlModifier);
            for (const letter of "16")
                keyClick(letter);
            verify(named("lampFlux").visible);
            keyClick(Qt.Key_Return);
            tryCompare(household.plant.feedingAsked, "working", false, 30000);
            compare(household.plant.feedingAsked.error, "");
            mouseClick(named("waterKind2"));
            tryCompare(household.plant.feedingAsked, "working", false, 30000);
            verify(household.plant.feedingAsked.notes.length > 2);
            household.plants.openId(4);
            settle();
            verify(!named("feedingSpells").visible);
        }

        function test_escapeLeavesTheLog() {
            keyClick(Qt.Key_L, Qt.ControlModifier);
            verify(named("logPanel").visible);
            keyClick(Qt.Key_Escape);
            verify(isHidden("logPanel"));
            keyClick(Qt.Key_Right);
            compare(household.plants.current, 1);
        }

        function test_keepingAtASpotIsReachedByKeyAndFromMoving() {
            keyClick(Qt.Key_M);
            verify(!named("keepAtSpotButton").visible);
            keyClick(Qt.Key_Escape);
            keyClick(Qt.Key_K);
            compare(mended.mend.form, MendModel.None);
            page.mend = mended.mend;
            keyClick(Qt.Key_K);
            tryCompare(mended.mend, "form", MendModel.PinPlant);
            compare(mended.mend.pin.plant, household.plants.target);
            mended.mend.leave();
            keyClick(Qt.Key_Right);
            keyClick(Qt.Key_M);
            mouseClick(named("keepAtSpotButton"));
            verify(isHidden("movePanel"));
            tryCompare(mended.mend, "form", MendModel.PinPlant);
            compare(mended.mend.pin.plant, household.plants.target);
            mended.mend.leave();
            keyClick(Qt.Key_Space); // What is marked may be several: no one plant.
            keyClick(Qt.Key_K);
            verify(!mended.mend.working);
        }

        function test_moveByTheNumberOfTheSpot() {
            const spots = household.plants.spots.count;
            keyClick(Qt.Key_M);
            verify(named("movePanel").visible);
            keyClick(Qt.Key_0 + spots);
            settle();
            verify(isHidden("movePanel"));
            verify(household.plants.said.includes(household.plants.spots.at(spots - 1, "name")));
            keyClick(Qt.Key_Z, Qt.ControlModifier);
            settle();
            keyClick(Qt.Key_M);
            mouseClick(named("spotChip" + spots));
            settle();
            verify(household.plants.canUndo);
        }

        function test_aNameOfManyLettersStaysOnThePage(): void {
            keyClick(Qt.Key_Return);
            settle();
            const heading = named("plantName") as Text;
            const beside = named("plantBotanical") as Text;
            verify(beside.text !== "");
            for (const name of ["Wandelroeschen".repeat(16), "A very old lemon from grandmother's yard ".repeat(5)]) {
                heading.text = name;
                tryVerify(() => heading.lineCount > 1);
                verify(heading.contentWidth <= heading.width && heading.width <= heading.parent.width);
                tryVerify(() => beside.y >= heading.y + heading.height);
                verify(beside.height <= 2 * beside.font.pixelSize * beside.lineCount, "no gap below the name");
            }
            heading.text = Qt.binding(() => household.plant.name);
            tryVerify(() => beside.y === heading.y);
        }

        function test_pageShowsGrowthAndItsTable() {
            keyClick(Qt.Key_Return);
            for (let shown = 0; shown < 14 && household.plant.verdict < 0; ++shown) {
                household.plants.open(shown);
                settle();
            }
            verify(household.plant.verdict >= 0);
            verify(named("growthChart").visible);
            keyClick(Qt.Key_T);
            verify(named("readingsTable").visible);
            verify(!named("growthChart").visible);
            mouseClick(named("twinChip"));
            verify(named("growthChart").visible);
            if (household.plant.kinds.count > 1) {
                mouseClick(named("kindChip1"));
                settle();
                compare(household.plant.chartTitle, household.plant.kinds.at(1, "words"));
            }
            verify(named("noPhotos").visible);
            keyClick(Qt.Key_PageDown);
            verify((named("plantSheet") as Flickable).contentY > 0);
            keyClick(Qt.Key_Home);
            compare((named("plantSheet") as Flickable).contentY, 0);
            mouseClick(named("backButton"));
            verify(named("plantCollection").visible);
        }

        function test_growthIsJudgedAfterAnotherEvent() {
            for (let shown = 0; shown < 14 && household.plant.judged.count < 2; ++shown) {
                household.plants.open(shown);
                settle();
            }
            verify(household.plant.judged.count >= 2);
            verify(named("judgedAfter").visible);
            const sheet = named("plantSheet") as Flickable;
            for (let at = 0; at < household.plant.judged.count; ++at) {
                waitForRendering(page, 300); // Chips take their places with the next frame only, the bold one wider.
                sheet.contentY = Math.max(0, named("judgedAfter").mapToItem(sheet.contentItem, 0, 0).y - 200);
                waitForRendering(page, 300);
                const chip = named("judgedChip" + at);
                if (at % 2 === 0) {
                    mouseClick(chip);
                } else {
                    chip.forceActiveFocus();
                    keyClick(Qt.Key_Space);
                }
                settle();
                verify(household.plant.judged.at(at, "shown"));
                compare(household.plant.verdictAfter, "after: " + household.plant.judged.at(at, "words"));
            }
            // Each kind of the demonstration stands there once: nothing is there to be spared.
            verify(!named("sparedBeside").visible);
        }

        function test_clicksChooseMarkAndOpen() {
            const shelves = named("shelves");
            mouseClick(shelves, 184 + 80, 60);
            compare(household.plants.current, 0);
            mouseClick(shelves, 184 + 80, 60, Qt.LeftButton, Qt.ControlModifier);
            compare(household.plants.markedCount, 1);
            mouseDoubleClickSequence(shelves, 184 + 80, 60);
            settle();
            verify(named("plantPage").visible);
        }

        function test_twoMarkedAreCompared() {
            keyClick(Qt.Key_C);
            verify(!household.plant.comparison.shown); // Nothing is marked.
            const second = nameAt(3);
            const first = nameAt(0);
            keyClick(Qt.Key_Space);
            household.plants.current = 3;
            keyClick(Qt.Key_Space);
            verify(named("compareButton").visible);
            keyClick(Qt.Key_C);
            tryCompare(household.plant.comparison, "working", false, 30000);
            verify(named("plantComparison").visible);
            tryVerify(() => named("comparisonSheet").activeFocus);
            const comparison = household.plant.comparison;
            verify(comparison.first === first && comparison.second === second || comparison.first === second && comparison.second === first);
            verify(household.plant.comparison.rows.count > 10);
            keyClick(Qt.Key_Escape);
            tryVerify(() => named("plantCollection").visible);
            compare(household.plants.markedCount, 2);
        }

        function test_narrowKeepsAllInSight() {
            page.narrow = true;
            root.width = 776;
            waitForRendering(page);
            verify(household.plants.columns >= 2);
            keyClick(Qt.Key_T);
            keyClick(Qt.Key_Return);
            settle();
            verify(named("plantPage").visible);
            root.width = 1256;
        }

        function test_emptySaysWhatToDo() {
            open("empty");
            verify(named("plantsEmpty").visible);
            compare(household.plants.title, "No plants yet");
            compare(findChild(page, "filterChip0"), null); // There is nothing to choose among.
            keyClick(Qt.Key_Down);
            keyClick(Qt.Key_Return);
            keyClick(Qt.Key_L, Qt.ControlModifier);
            verify(isHidden("logPanel"));
            compare(household.plants.opened, 0);
        }

        function test_aPlantThatDiedOpensFromItsNameAndTakesANoteAlone(): void {
            household.plants.openId(3);
            settle();
            const name = household.plant.name;
            verify(household.plants.log(PlantsModel.Died, "", 0, "dry"));
            settle();
            compare(household.plants.opened, 0);
            const past = named("gonePlant0") as SheetButton;
            compare(past.text, name);
            verify(past.reason.startsWith("died on"));
            past.forceActiveFocus();
            keyClick(Qt.Key_Return);
            settle();
            compare(household.plants.opened, 3);
            verify(named("plantGone").visible);
            verify(named("plantGone").Accessible.name.includes("died on"));
            verify(!named("plantMoveButton").visible);
            verify(!named("plantFeeding").visible);
            keyClick(Qt.Key_M);
            verify(isHidden("movePanel"));
            keyClick(Qt.Key_L);
            verify(named("logPanel").visible);
            verify(!named("logChip0").visible);
            verify(named("logChip3").activeFocus);
            keyClick(Qt.Key_Right);
            verify(named("logChip3").activeFocus);
            named("logNote").forceActiveFocus();
            for (const letter of "a good one")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            verify(isHidden("logPanel"));
            settle();
            compare(household.plants.error, "");
            keyClick(Qt.Key_Escape);
            compare(household.plants.opened, 0);
        }

        function test_whatIsMeasuredAndTreatedIsAskedInFull(): void {
            household.plants.openId(3);
            settle();
            page.log();
            (named("logPanel") as LogPanel).choose(PlantsModel.Treated);
            verify(named("logCaution").visible);
            verify((named("logCaution") as Text).text.startsWith("The label"));
            (named("logPanel") as LogPanel).choose(PlantsModel.Measured);
            verify(!named("logCaution").visible);
            verify(!named("logZone").visible);
            const typed = {"logNumber": "12", "logTime": "1:00", "logZone": "Asia/Tokyo", "logPot": "2", "logMix": "bark", "logAgo": "3"};
            for (const field of ["logNumber", "logTime", "logZone", "logPot", "logMix", "logAgo"]) {
                verify(named(field).visible, field);
                named(field).forceActiveFocus();
                (named(field) as SheetField).text = typed[field];
            }
            keyClick(Qt.Key_Return);
            verify(isHidden("logPanel"), household.plants.error);
            settle();
            compare(household.plants.error, "");
        }

        function test_brokenSaysWhy() {
            open("broken");
            compare(household.plants.error, "The folder is gone.");
            verify(named("plantsAgain").visible);
            mouseClick(named("plantsAgain"));
            settle();
            compare(household.plants.error, "The folder is gone.");
        }
    }
}
