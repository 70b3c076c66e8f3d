import QtQuick
import QtTest
import Lathhouse.Testing
import Lathhouse.Ui

// The page Seeds by mouse and by keyboard.
Item {
    id: root
    width: 1280
    height: 744

    DemonstrationRound {
        id: household
    }
    SeedsPage {
        id: page
        anchors.fill: parent
        seeds: household.seeds
        narrow: false
        focus: true
    }
    TestCase {
        name: "Seeds"
        when: windowShown

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            page.narrow = false;
            page.wide = false;
            page.opened = false;
            open("seeds");
        }

        function open(kind: string): void {
            compare(household.error, "");
            household.renew(kind);
            household.seeds.start();
            settle();
            named("lotRows").forceActiveFocus();
        }

        function named(name: string): Item {
            const found = findChild(page, name) as Item;
            verify(found !== null, name);
            return found;
        }

        function settle(): void {
            tryCompare(household.seeds, "working", false, 30000);
        }

        function choose(name: string): void {
            for (let row = 0; row < household.seeds.lots.count; ++row) {
                if (household.seeds.lots.at(row, "name") === name)
                    household.seeds.currentRow = row;
            }
            settle();
            compare(household.seeds.name, name);
        }

        function test_whatIsSownTodayBecomesATray() {
            choose("Zinnia");
            const trays = household.seeds.trays.count;
            mouseClick(named("sownField"));
            keyClick("x");
            keyClick(Qt.Key_Return);
            verify(household.seeds.error.includes("how many seeds"));
            verify(named("sownField").activeFocus);
            keyClick(Qt.Key_Backspace);
            compare(household.seeds.error, "");
            keyClick("9");
            mouseClick(named("sownButton"));
            settle();
            compare(household.seeds.trays.count, trays + 1);
            compare((named("sownField") as SheetField).text, "");
            verify((findChild(named("seedsUndoBar"), "said") as Text).text.includes("9 seeds were sown today"));
            mouseClick(named("traysAgo"));
            keyClick("3");
            verify((named("traysDay") as Text).text.includes("May"));
            compare(household.seeds.daysAgo, 3);
            keyClick(Qt.Key_Return);
            verify(named("sownField").activeFocus);
            mouseClick(named("traysAgo"));
            keyClick(Qt.Key_Backspace);
            keyClick("x");
            verify((named("traysAgo") as SheetField).wrong);
            keyClick(Qt.Key_Backspace);
            compare(household.seeds.daysAgo, 0);
            verify(!named("traysDay").visible);
        }

        function test_aTrayKeepsWhereItStandsHowWarmAndANote() {
            choose("Zinnia");
            const trays = household.seeds.trays.count;
            const spots = named("traySpots") as SpotChips;
            const spot = household.seeds.spots.at(0, "name");
            (named("sownField") as SheetField).text = "7";
            named("mixField").forceActiveFocus();
            for (const letter of "hot")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            verify(household.seeds.error.includes("how warm the mix is"));
            verify(named("mixField").activeFocus);
            compare(household.seeds.trays.count, trays);
            (named("mixField") as SheetField).text = "22,5";
            (named("trayNote") as SheetField).text = "under glass";
            spots.chosen(0);
            compare(spots.current, 0);
            keyClick(Qt.Key_Return);
            settle();
            compare(household.seeds.trays.count, trays + 1);
            let kept = "";
            for (let at = 0; at < household.seeds.trays.count; ++at) {
                if (household.seeds.trays.at(at, "seeds") === 7)
                    kept = household.seeds.trays.at(at, "sentence");
            }
            verify(kept.includes(spot), kept);
            verify(kept.includes("22.5"), kept);
            verify(kept.includes("under glass"), kept);
            compare((named("trayNote") as SheetField).text, "");
            spots.chosen(0);
            compare(spots.current, -1);
        }

        function test_anotherRiskMovesTheDates() {
            choose("Tomato, red");
            const told = () => {
                let all = "";
                for (let at = 0; at < household.seeds.dates.count; ++at)
                    all += household.seeds.dates.at(at, "sentence");
                return all;
            };
            const before = told();
            const careful = named("sowingRisk0") as Chip;
            verify(careful.Accessible.name === "1 in 50");
            careful.forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Space);
            settle();
            compare(household.seeds.riskStop, 0);
            verify(told() !== before);
            mouseClick(named("sowingRisk2"));
            settle();
            compare(told(), before);
        }

        function test_seedlingsArePottedFromTheTray() {
            choose("Zinnia");
            keyClick(Qt.Key_Plus);
            keyClick(Qt.Key_Plus);
            settle();
            const button = findChild(named("trays"), "potButton") as SheetButton;
            verify(button.visible);
            button.forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Return);
            const number = findChild(named("trays"), "pottedField") as SheetField;
            verify(number.activeFocus);
            keyClick("9");
            keyClick(Qt.Key_Return);
            verify(household.seeds.error.includes("has 2 seedlings"));
            verify(number.activeFocus);
            number.text = "2";
            (findChild(named("trays"), "pottedName") as SheetField).text = "Porch zinnia";
            keyClick(Qt.Key_Return);
            verify(household.seeds.error.startsWith("Say where they stand")); // The tray stands nowhere.
            const spots = findChild(named("trays"), "pottedSpots") as SpotChips;
            spots.chosen(0);
            number.forceActiveFocus();
            keyClick(Qt.Key_Return);
            settle();
            compare(household.seeds.error, "");
            verify((findChild(named("seedsUndoBar"), "said") as Text).text.includes("2 plants"));
            compare(household.seeds.trays.at(0, "toPot"), 0);
            verify(!(findChild(named("trays"), "potButton") as SheetButton).visible);
        }

        function test_whatCanBeSownIsListedAndOpensItsSheet() {
            mouseClick(named("calendarChip"));
            settle();
            verify(named("sowingCalendar").visible);
            verify(!named("sowingPane").visible);
            compare(household.seeds.sowingDays, 30);
            verify(household.seeds.sowings.count > 3);
            waitForRendering(page);
            mouseClick(named("sowingDays0"));
            settle();
            compare(household.seeds.sowingDays, 7);
            const name = household.seeds.sowings.at(0, "name");
            named("sowing0").forceActiveFocus();
            keyClick(Qt.Key_Return);
            settle();
            verify(named("sowingPane").visible);
            compare(household.seeds.name, name);
            compare(household.seeds.sowingDays, 0);
        }

        function test_traysStandWhereItIsWarmer() {
            choose("Zinnia");
            mouseClick(named("roomField"));
            keyClick("9");
            keyClick("9");
            keyClick(Qt.Key_Return);
            verify(household.seeds.error !== "");
            keyClick(Qt.Key_A, Qt.ControlModifier);
            keyClick("2");
            keyClick("5");
            keyClick(Qt.Key_Return);
            settle();
            compare(household.seeds.error, "");
            compare((named("roomField") as SheetField).text, "25.0");
        }

        function test_whatIsWaitedForComesFirstAndArrowsChoose() {
            compare(household.seeds.lots.count, 4);
            compare(household.seeds.lots.at(0, "name"), "Zinnia");
            compare(household.seeds.currentRow, 0);
            keyClick(Qt.Key_Down);
            settle();
            compare(household.seeds.currentRow, 1);
            compare(household.seeds.name, household.seeds.lots.at(1, "name"));
            keyClick(Qt.Key_End);
            settle();
            compare(household.seeds.currentRow, 3);
            keyClick(Qt.Key_N);
            settle();
            compare(household.seeds.lots.at(0, "name"), "Lettuce, old");
            mouseClick(named("byDateChip"));
            settle();
            compare(household.seeds.lots.at(0, "name"), "Zinnia");
        }

        function test_ownCountsAreFilledDots() {
            for (let row = 0; row < household.seeds.lots.count; ++row) {
                const own = household.seeds.lots.at(row, "name") === "Tomato, red";
                compare(household.seeds.lots.at(row, "counted"), own);
                verify(household.seeds.lots.at(row, "low") < household.seeds.lots.at(row, "mean"));
                verify(household.seeds.lots.at(row, "mean") < household.seeds.lots.at(row, "high"));
            }
        }

        function test_plusAndMinusCountAndAreTakenBack() {
            choose("Zinnia");
            compare(household.seeds.trays.count, 1);
            keyClick(Qt.Key_Plus);
            keyClick(Qt.Key_Plus);
            compare(household.seeds.trays.at(0, "emerged"), 2);
            settle();
            compare(household.seeds.trays.at(0, "emerged"), 2);
            const fewer = findChild(named("trays"), "fewerButton") as SheetButton;
            (named("sowingSheet") as SheetScroll).scrollTo(fewer.mapToItem(named("sowingPane"), 0, 0).y - 100);
            mouseClick(fewer);
            settle();
            compare(household.seeds.trays.at(0, "emerged"), 1);
            page.visible = false;
            page.visible = true;
            page.forceActiveFocus();
            verify(named("seedsUndoBar").visible);
            verify((findChild(named("seedsUndoBar"), "said") as Text).text.startsWith("Counted: 1 up in tray 2"));
            mouseClick(findChild(named("seedsUndoBar"), "undoButton"));
            settle();
            compare(household.seeds.trays.at(0, "emerged"), 2);
            keyClick(Qt.Key_Z, Qt.ControlModifier | Qt.ShiftModifier);
            settle();
            compare(household.seeds.trays.at(0, "emerged"), 1);
            keyClick(Qt.Key_U);
            keyClick(Qt.Key_U);
            keyClick(Qt.Key_U);
            settle();
            compare(household.seeds.trays.at(0, "emerged"), 0);
            compare(household.seeds.canUndo, false);
            keyClick(Qt.Key_Minus);
            verify(named("seedTrouble").visible);
            keyClick(Qt.Key_U);
            verify(household.seeds.error.startsWith("Nothing was counted"));
        }

        function test_cellsOfATrayArePressed() {
            choose("Zinnia");
            const cell = at => findChild(findChild(named("trays"), "trayCells"), "cell" + at);
            compare(findChild(named("trays"), "trayCells").up.length, 12);
            (named("sowingSheet") as Flickable).contentY = cell(6).mapToItem(named("sowingPane"), 0, 0).y - 100;
            mouseClick(cell(6));
            settle();
            compare(household.seeds.trays.at(0, "emerged"), 1);
            verify(cell(6).isUp && !cell(0).isUp);
            findChild(named("trays"), "trayCells").forceActiveFocus();
            findChild(named("trays"), "trayCells").current = 6;
            keyClick(Qt.Key_Right);
            keyClick(Qt.Key_Space);
            settle();
            compare(household.seeds.trays.at(0, "emerged"), 2);
            verify(cell(6).isUp && cell(7).isUp);
            mouseClick(cell(6));
            settle();
            compare(household.seeds.trays.at(0, "emerged"), 1);
            verify(!cell(6).isUp && cell(7).isUp);
            // What is counted by other ways fills the first ones that are free.
            household.seeds.count(0, 1);
            settle();
            verify(cell(0).isUp && cell(7).isUp && !cell(6).isUp);
        }

        function test_whenNoMoreComesTheShareChanges() {
            choose("Zinnia");
            const row = household.seeds.currentRow;
            compare(household.seeds.lots.at(row, "counted"), false);
            for (let seedling = 0; seedling < 11; ++seedling)
                household.seeds.count(0, 1);
            settle();
            const last = findChild(named("trays"), "lastChip");
            (named("sowingSheet") as Flickable).contentY = last.mapToItem(named("sowingPane"), 0, 0).y - 100;
            mouseClick(last);
            settle();
            let after = -1;
            for (let lot = 0; lot < household.seeds.lots.count; ++lot) {
                if (household.seeds.lots.at(lot, "name") === "Zinnia")
                    after = lot;
            }
            compare(household.seeds.lots.at(after, "counted"), true);
            compare(household.seeds.lots.at(after, "basis"), "11 of 12 came up");
        }

        function test_seedsFollowThePlantsWanted() {
            choose("Tomato, red");
            verify(household.seeds.amount.endsWith("for 5 plants"));
            (named("sowingSheet") as SheetScroll).scrollTo(0);
            mouseClick(named("morePlants"));
            settle();
            verify(household.seeds.amount.endsWith("for 6 plants"));
            household.seeds.plants = 0;
            settle();
            verify(household.seeds.amount.endsWith("for 1 plant"));
            mouseClick(named("fewerPlants"));
            compare(household.seeds.plants, 1);
        }

        function test_aNameOfManyLettersStaysOnTheSheet(): void {
            choose("Tomato, red");
            const heading = named("sowingTitle") as Text;
            heading.text = "Ochsenherztomate".repeat(14);
            tryVerify(() => heading.lineCount > 1);
            verify(heading.contentWidth <= heading.width && heading.width <= named("sowingSheet").width);
            heading.text = Qt.binding(() => household.seeds.name);
            tryCompare(heading, "lineCount", 1);
        }

        function test_anyCropHasASheet() {
            const field = named("cropField");
            tryVerify(() => { // Again while the head still takes its place.
                mouseClick(field);
                return field.activeFocus;
            });
            for (const letter of "basil")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            settle();
            tryCompare(household.seeds, "currentRow", -1);
            settle();
            compare(household.seeds.botanical, "Ocimum basilicum");
            verify(household.seeds.dates.count > 2);
            verify(named("sowingBar").visible);
            keyClick(Qt.Key_A, Qt.ControlModifier);
            for (const letter of "bazil")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            settle();
            verify(named("seedTrouble").visible);
            compare(household.seeds.botanical, "Ocimum basilicum");
        }

        function test_narrowOpensTheSheetOverTheListAndGoesBack() {
            page.narrow = true;
            verify(named("lotRows").visible);
            verify(!named("sowingSheet").visible);
            keyClick(Qt.Key_Return);
            verify(!named("lotRows").visible);
            verify(named("sowingSheet").visible);
            keyClick(Qt.Key_Escape);
            verify(named("lotRows").visible);
            keyClick(Qt.Key_Return);
            mouseClick(named("backButton"));
            verify(named("lotRows").visible);
            verify(named("lotRows").activeFocus);
        }

        function test_wideHasAColumnForTheTrays() {
            choose("Zinnia");
            const side = named("traySide");
            const trays = named("trayPane");
            const dates = named("sowingDates");
            const low = item => item.mapToItem(page, 0, 0).y;
            verify(!side.visible);
            verify(low(trays) > low(dates), "below the dates");
            page.wide = true;
            waitForRendering(page, 300);
            verify(side.visible);
            verify(trays.mapToItem(page, 0, 0).x >= side.x);
            verify(trays.mapToItem(page, trays.width, 0).x <= page.width);
            verify(named("sowingSheet").x + named("sowingSheet").width <= side.x, "beside the sheet");
            verify(named("lotRows").x + named("lotRows").width <= named("sowingSheet").x);
            verify(!named("traysEmpty").visible, "Zinnia has a tray");
            // It is counted there as anywhere.
            const more = findChild(named("trays"), "moreButton") as SheetButton;
            mouseClick(more);
            settle();
            compare(household.seeds.trays.at(0, "emerged"), 1);
            // F6 goes there too.
            named("sowingSheet").nextItemInFocusChain(true).forceActiveFocus();
            keyClick(Qt.Key_F6);
            verify(trays.visible);
            let within = page.Window.activeFocusItem;
            while (within !== null && within !== side)
                within = within.parent;
            verify(within === side, "the keys are at the trays");
            // A lot without a tray says so; a crop without a lot has no column.
            named("lotRows").forceActiveFocus();
            let bare = -1;
            for (let row = 0; row < household.seeds.lots.count && bare < 0; ++row) {
                household.seeds.currentRow = row;
                settle();
                if (household.seeds.trays.count === 0)
                    bare = row;
            }
            verify(bare >= 0);
            verify(side.visible);
            verify(named("traysEmpty").visible);
            household.seeds.chooseCrop("basil");
            settle();
            tryCompare(household.seeds, "currentRow", -1);
            verify(!side.visible);
            verify(!trays.visible);
            page.wide = false;
            choose("Zinnia");
            waitForRendering(page, 300);
            verify(!side.visible);
            verify(trays.visible);
            verify(low(trays) > low(dates));
        }

        function test_noWordsAreShrunkBelowTheSmallestSize() {
            const head = named("shareHead") as Text;
            compare(head.fontSizeMode, Text.FixedSize);
            verify(head.contentWidth <= head.width + 1);
            verify(head.height <= head.parent.height, "its lines stand above the rule");
        }

        function test_withoutLotsTheListSaysWhatToDo() {
            open("");
            verify(named("seedsEmpty").visible);
            verify(!named("seedsPrintButton").visible);
            verify(!named("sowingSheet").visible);
            keyClick(Qt.Key_Down);
            keyClick(Qt.Key_Plus);
            compare(household.seeds.currentRow, -1);
        }

        function test_brokenSaysWhy() {
            open("broken");
            compare(household.seeds.error, "The folder is gone.");
            verify(named("seedsAgain").visible);
            mouseClick(named("seedsAgain"));
            settle();
            compare(household.seeds.error, "The folder is gone.");
        }
    }
}
