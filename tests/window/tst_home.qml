import QtQuick
import QtTest
import Lathhouse.Models
import Lathhouse.Testing
import Lathhouse.Ui

// The page Home of the demonstration household by mouse and by keyboard.
Item {
    id: root
    width: 1280
    height: 744

    DemonstrationRound {
        id: household
    }
    HomePage {
        id: page
        anchors.fill: parent
        home: household.home
        narrow: false
        focus: true
    }
    TestCase {
        name: "Home"
        when: windowShown

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            page.narrow = false;
            open("cold");
        }

        function open(kind: string): void {
            compare(household.error, "");
            household.renew(kind);
            household.home.start();
            settle();
            named("homeSheet").forceActiveFocus();
        }

        function named(name: string): Item {
            const found = findChild(page, name) as Item;
            verify(found !== null, name);
            return found;
        }

        function settle(): void {
            tryCompare(household.home, "working", false, 30000);
        }

        /// Brings an item into sight and waits until it holds still there: what is read or laid out late moves what is below
        /// it, and a sheet whose height is not known yet does not scroll far enough, so that a click would go beside.
        function inSight(name: string): Item {
            const item = named(name);
            const sheet = named("homeSheet") as SheetScroll;
            let before = NaN;
            tryVerify(() => {
                sheet.reveal(item);
                const top = item.mapToItem(sheet, 0, 0).y;
                const still = top === before && top >= 0 && top + item.height <= sheet.height;
                before = top;
                return still && !household.home.working && !household.home.line.working && !household.home.entry.working;
            }, 30000, name);
            return item;
        }

        function type(words: string): void {
            for (const letter of words)
                keyClick(letter);
        }

        function test_placeSaysWhatItIsLikeAndWhoSaysSo() {
            verify(named("placeMap").visible);
            verify(household.home.figures.count >= 6);
            verify(household.home.position.includes("N"));
            verify(household.home.base.includes("not promises"));
            verify(household.home.credits.includes("Natural Earth"));
            keyClick(Qt.Key_T);
            verify(!named("placeMap").visible);
            verify(named("stationTable").visible);
            verify(household.home.stations.count > 0);
            mouseClick(named("mapTableChip"));
            verify(named("placeMap").visible);
        }

        function test_arrowsAndChipsGoThroughTheSections() {
            keyClick(Qt.Key_Right);
            compare(household.home.section, 1);
            verify(named("homeSpots").visible);
            keyClick(Qt.Key_Right);
            compare(household.home.section, HomeModel.Thermometer);
            for (let times = 0; times < 7; ++times)
                keyClick(Qt.Key_Right);
            compare(household.home.section, HomeModel.Settings);
            settle();
            while (household.home.section > HomeModel.Spots)
                keyClick(Qt.Key_Left);
            compare(household.home.section, HomeModel.Spots);
            mouseClick(named("section0"));
            compare(household.home.section, 0);
            verify(named("homePlace").visible);
        }

        function test_aMetersReadingMakesADaysLightAndALampItsHours() {
            household.home.section = HomeModel.Spots;
            mouseClick(inSight("meterReadingField"));
            type("10800");
            verify(named("meterDaily").visible);
            verify((named("meterDaily") as Text).text.includes("5.76 moles"));
            verify((named("meterAgainst") as Text).text.includes(household.home.spots.at(household.home.spot, "name")));
            keyClick(Qt.Key_Tab);
            verify(named("meterHoursField").activeFocus);
            type("40");
            verify(!named("meterDaily").visible);
            verify((named("meterHoursField") as SheetField).wrong);
            keyClick(Qt.Key_Backspace);
            verify((named("meterDaily") as Text).text.includes("2.88 moles"));
            mouseClick(inSight("meterSource2"));
            verify((named("meterDaily") as Text).text.includes("2.10 moles"));
            named("meterUnit2").forceActiveFocus();
            keyClick(Qt.Key_Space);
            verify(!named("meterSource2").visible);
            verify((named("meterReadingField") as SheetField).wrong);
            named("lampTargetField").forceActiveFocus();
            type("30");
            verify(!named("lampMonths").visible);
            keyClick(Qt.Key_Tab);
            verify(named("lampLightField").activeFocus);
            type("200");
            verify(named("lampMonths").visible);
            compare(household.home.meter.months.count, 12);
            verify(named("lampTooLong").visible);
            verify((named("lampCaution") as Text).text.includes("residual current"));
            for (const field of ["meterReading", "meterHours", "lampTarget", "lampLight"])
                compare(named(field + "Field").visible, true);
        }

        function test_theTwelveMonthsAreMadeWhenTheyAreOpened() {
            compare(findChild(page, "monthsAir"), null);
            mouseClick(inSight("monthsButton"));
            tryVerify(() => household.home.months.air.count === 12, 10000);
            const air = named("monthsAir") as PlaceMonthsTable;
            compare(air.Accessible.role, Accessible.Table);
            verify(air.Accessible.name !== "");
            verify((named("monthsYear") as Text).text.includes("The mean of the day"));
            const pot = named("monthsPotField") as SheetField;
            const january = findChild(named("monthsGround"), "month0") as TwinRow;
            compare(january.cells.length, 6);
            const drinks = january.cells[5];
            pot.forceActiveFocus();
            type("4");
            verify(pot.wrong);
            type("5");
            verify(!pot.wrong);
            tryVerify(() => (named("monthsOfPot") as Text).text.includes("45 cm"), 10000);
            verify(january.cells[5] !== drinks);
            named("monthsButton").forceActiveFocus();
            keyClick(Qt.Key_Space);
            tryVerify(() => findChild(page, "monthsAir") === null);
            compare(household.home.months.air.count, 0);
        }

        function test_nightsOfASpotAreListedAndPutRight() {
            household.home.section = HomeModel.Thermometer;
            const entry = household.home.entry;
            entry.spot = 0;
            named("entryLowField").forceActiveFocus();
            type("15.5");
            mouseClick(inSight("entryKeep"));
            tryVerify(() => !entry.working && !household.home.working, 10000);
            mouseClick(inSight("entryListed"));
            verify(entry.readings.count > 0);
            const low = named("entryLow") as LabelledField;
            mouseClick(inSight("mendNight0"));
            compare(low.value, "15.5");
            verify(named("entryLowField").activeFocus);
            type("14.5"); // All of it is chosen.
            keyClick(Qt.Key_Return);
            tryVerify(() => !entry.working && !household.home.working && entry.readings.at(0, "low").startsWith("14.5"), 10000);
            named("entryListed").forceActiveFocus();
            keyClick(Qt.Key_Space);
            tryVerify(() => findChild(page, "keptNights") === null);
        }

        function test_aLineOfOnesOwnHasItsChances() {
            mouseClick(inSight("lineLow"));
            type("mild");
            keyClick(Qt.Key_Return);
            verify(named("lineTrouble").visible);
            verify((named("lineLow") as SheetField).wrong);
            keyClick(Qt.Key_A, Qt.ControlModifier);
            type("2");
            keyClick(Qt.Key_Tab);
            verify(named("lineFrom").activeFocus);
            type("1.5.2027");
            keyClick(Qt.Key_Tab);
            type("31.5.2027");
            mouseClick(inSight("lineAsk"));
            tryCompare(household.home.line, "working", false, 30000);
            compare(household.home.line.error, "");
            verify(named("lineDates").visible);
            verify((named("lineBetween") as Text).text.includes("1 May 2027"));
            const open = (named("lineHead") as Text).text;
            compare(household.home.line.place, 0);
            mouseClick(inSight("linePlace1"));
            compare(household.home.line.place, 1);
            tryCompare(household.home.line, "working", false, 30000);
            verify((named("lineHead") as Text).text !== open);
            named("linePlace0").forceActiveFocus();
            keyClick(Qt.Key_Space);
            tryCompare(household.home.line, "working", false, 30000);
            compare((named("lineHead") as Text).text, open);
        }

        function chances(): list<string> {
            const line = household.home.line;
            const said = [];
            for (let row = 0; row < line.dates.count; ++row)
                said.push(line.dates.at(row, "chance"));
            return said;
        }
        function test_oneMoreChanceHasItsDates() {
            mouseClick(inSight("lineLow"));
            type("2");
            mouseClick(inSight("lineChance"));
            type("often");
            keyClick(Qt.Key_Return);
            verify(named("lineTrouble").visible);
            verify((named("lineChance") as SheetField).wrong);
            verify(!(named("lineLow") as SheetField).wrong);
            verify(named("lineChance").activeFocus);
            keyClick(Qt.Key_A, Qt.ControlModifier);
            type("1 in 12");
            verify(!named("lineTrouble").visible);
            keyClick(Qt.Key_Return);
            tryCompare(household.home.line, "working", false, 30000);
            verify(chances().includes("1 in 12"));
            keyClick(Qt.Key_A, Qt.ControlModifier);
            keyClick(Qt.Key_Backspace);
            mouseClick(inSight("lineAsk"));
            tryCompare(household.home.line, "working", false, 30000);
            verify(chances().length > 0);
            verify(!chances().includes("1 in 12"));
        }

        function test_aNightIsKeptWithAllThatWasRead() {
            mouseClick(named("section2"));
            const spots = household.home.entry.spots;
            compare(spots.count, household.home.spots.count);
            mouseClick(inSight("entryLowField"));
            type("15");
            keyClick(Qt.Key_Tab);
            verify(named("entryHighField").activeFocus);
            type("9");
            keyClick(Qt.Key_Return);
            verify((named("entryHighField") as SheetField).wrong);
            verify(named("entryHighField").activeFocus);
            keyClick(Qt.Key_A, Qt.ControlModifier);
            type("21");
            keyClick(Qt.Key_Tab);
            type("4");
            compare(household.home.entry.error, "");
            mouseClick(inSight("entrySky1"));
            mouseClick(inSight("entryKeep"));
            tryCompare(household.home.entry, "working", false, 30000);
            settle();
            verify((named("entrySaid") as Text).text.includes("15.0"), (named("entrySaid") as Text).text);
            compare((named("entryHighField") as SheetField).text, "");
        }

        function test_aFieldHasRoomForItsExample() {
            const field = named("lineFrom") as SheetField;
            const example = field.placeholderText;
            const usual = field.width;
            field.placeholderText = "from, such as the first of the month of May 2027";
            verify(field.width > usual);
            field.placeholderText = example;
            compare(field.width, usual);
        }

        function test_readingsOfAFileAreKeptOrRefusedWhole() {
            mouseClick(named("section2"));
            mouseClick(inSight("readingsButton"));
            verify((named("readingsTrouble") as Item).visible);
            verify(named("readingsField").activeFocus);
            type("/no/such/file.csv");
            compare(household.home.error, "");
            keyClick(Qt.Key_Return);
            settle();
            verify(household.home.error.includes("file.csv"));
            verify(household.home.aboutFile);
        }

        function test_lightOfEachSpotAsChartTableAndWords() {
            mouseClick(named("section1"));
            compare(household.home.lightMonths.count, 12);
            const first = household.home.lightLine;
            keyClick(Qt.Key_Down);
            compare(household.home.spot, 1);
            verify(household.home.lightLine !== first);
            verify(named("spotLight").visible);
            keyClick(Qt.Key_T);
            verify(!named("spotLight").visible);
            verify(named("lightTable").visible);
            keyClick(Qt.Key_T);
            for (let spot = 0; spot < household.home.spots.count; ++spot) {
                household.home.spot = spot;
                for (let plant = 0; plant < household.home.lightPlants.count; ++plant)
                    verify(household.home.lightPlants.at(plant, "words").includes("enough"));
            }
        }

        function test_daysOfTheSpotAndAnotherSpotBesideIt() {
            mouseClick(named("section1"));
            household.home.spot = 0;
            const chart = named("spotLight");
            verify(household.home.lightSpread);
            verify(chart.Accessible.name.includes("9 days in 10"));
            verify(named("lightNote").visible);
            verify((named("lightNote") as Words).text.includes("the mean of the month"));
            verify(!named("beside0").visible); // Not with itself.
            const chip = inSight("beside1") as Chip;
            tryVerify(() => chip.x > 0 && (named("beside2") as Item).x > chip.x && (named("beside5") as Item).x > 4 * chip.width); // Laid out in their row.
            compare(chip.Accessible.role, Accessible.CheckBox);
            mouseClick(chip);
            compare(household.home.beside, 1);
            verify(chip.on);
            verify(chip.Accessible.checked);
            verify(chart.Accessible.name.includes(household.home.besideName));
            chip.forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_T);
            const head = findChild(named("lightTable"), "lightHead") as TwinRow;
            compare(head.cells.length, 5);
            compare(head.cells[3], household.home.besideName);
            verify(head.sentence.includes("9 days in 10, " + household.home.besideName));
            keyClick(Qt.Key_T);
            keyClick(Qt.Key_Return);
            compare(household.home.beside, -1);
            compare(head.cells.length, 4);
            keyClick(Qt.Key_Tab);
            verify((named("beside2") as Chip).activeFocus);
            keyClick(Qt.Key_Space);
            compare(household.home.beside, 2);
            household.home.spot = 2;
            compare(household.home.beside, -1);
            verify(!named("beside2").visible);
            household.home.spot = 0;
        }

        function test_lastNightIsLoggedInOneLineAndTheBandNarrows() {
            mouseClick(named("section2"));
            const nights = household.home.nights.count;
            verify(nights >= 10);
            const line = named("nightLine") as LogLine;
            const field = findChild(line, "lowField") as SheetField;
            keyClick(Qt.Key_L, Qt.ControlModifier);
            verify(field.activeFocus);
            type("cold");
            keyClick(Qt.Key_Return);
            verify(household.home.error.includes("is not a number"));
            compare(household.home.nights.count, nights);
            keyClick(Qt.Key_A, Qt.ControlModifier);
            type("5,4");
            mouseClick(findChild(line, "cloudChip"));
            compare(line.sky, 2);
            field.forceActiveFocus();
            keyClick(Qt.Key_Return);
            settle();
            compare(household.home.error, "");
            compare(household.home.nights.count, nights + 1);
            compare(household.home.nights.at(0, "low"), "5.4\u202f°C");
            compare(household.home.nights.at(0, "sky"), "cloud or wind");
            verify((named("homeSaid") as Text).text.startsWith("Kept: 5.4"));
            compare(field.text, "");
            // The same night again takes its place.
            type("5.0");
            keyClick(Qt.Key_Return);
            settle();
            compare(household.home.nights.count, nights + 1);
            compare(household.home.nights.at(0, "low"), "5.0\u202f°C");
        }

        function test_aDayThatIsNoneHasTheKeys() {
            mouseClick(named("section2"));
            const nights = household.home.nights.count;
            const low = findChild(named("nightLine"), "lowField") as SheetField;
            const ago = findChild(named("nightLine"), "nightAgo") as SheetField;
            low.forceActiveFocus();
            type("4.1");
            for (const none of ["x", "9999"]) {
                ago.clear();
                ago.forceActiveFocus();
                type(none);
                keyClick(Qt.Key_Return);
                compare(household.home.nights.count, nights);
                verify(ago.activeFocus && ago.wrong && !low.wrong, none);
            }
            (named("nightLine") as LogLine).empty();
            household.home.forgive();
        }

        function test_arrowsInTheFieldStayThere() {
            mouseClick(named("section2"));
            const field = findChild(named("nightLine"), "lowField") as SheetField;
            field.forceActiveFocus();
            type("12");
            keyClick(Qt.Key_Left);
            keyClick(Qt.Key_Left);
            keyClick(Qt.Key_Left);
            keyClick(Qt.Key_T);
            compare(household.home.section, 2);
            verify(named("offsetChart").visible);
            compare(field.text, "t12");
        }

        function test_narrowStacks() {
            page.narrow = true;
            const place = named("homePlace");
            tryVerify(() => place.height > named("placeMap").height + 100);
            const sheet = named("homeSheet") as Flickable;
            tryVerify(() => sheet.contentHeight > sheet.height); // There is something to scroll to.
            tryVerify(() => { // Again while the page still takes its place.
                keyClick(Qt.Key_PageDown);
                return sheet.contentY > 0;
            });
        }

        function test_emptyAndBrokenSayWhatToDo() {
            open("empty");
            household.home.section = 1;
            compare(household.home.spots.count, 0);
            household.home.section = 2;
            compare(household.home.outdoors.count, 0);
            verify(!named("nightLine").visible);
            open("broken");
            verify(named("homeFailure").visible);
            compare(household.home.error, "The folder is gone.");
        }
    }
}
