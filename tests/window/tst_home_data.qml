import QtQuick
import QtTest
import Lathhouse.Models
import Lathhouse.Testing
import Lathhouse.Ui

// Data and backup by mouse and by keyboard, of a household in a folder.
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
        coming: household.plant !== null ? household.plant.coming : null
        narrow: false
        focus: true
    }
    DialogKeys {
        id: keys
        open: false
    }
    TestCase {
        name: "HomeData"
        when: windowShown

        readonly property HomeDataModel keeping: household.home !== null ? household.home.keeping : null

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            page.narrow = false;
            open("folder");
        }

        function open(kind: string): void {
            household.renew(kind);
            compare(household.error, "");
            household.home.start();
            settle();
            toData();
            settle();
            named("homeSheet").forceActiveFocus();
        }
        function toData(): void {
            household.home.section = HomeModel.Data;
            tryCompare(named("homeMore"), "status", Loader.Ready); // Made a part at a time.
        }
        function named(name: string): Item {
            const found = findChild(page, name) as Item;
            verify(found !== null, name);
            return found;
        }
        function settle(): void {
            tryCompare(household.home, "working", false, 30000);
            tryCompare(household.home.keeping, "working", false, 30000);
        }
        function reach(name: string): Item {
            const item = named(name);
            (named("homeSheet") as SheetScroll).reveal(item);
            return item;
        }
        function press(name: string): void {
            mouseClick(reach(name));
        }
        function fill(name: string, words: string): void {
            const field = reach(name) as SheetField;
            field.forceActiveFocus();
            keyClick(Qt.Key_A, Qt.ControlModifier);
            for (const letter of words)
                keyClick(letter);
        }

        function test_saysWhatTheFolderHolds() {
            verify(keeping.holdings.count >= 5);
            compare((named("dataFolder") as Text).text, household.folder + "/home");
            verify(!named("dataWarning").visible);
        }

        function test_aPhotographOutOfTheListsComesBack() {
            open("photos");
            const there = household.home.aside;
            tryCompare(there, "working", false, 30000);
            verify((named("asideLine") as Text).text.startsWith("None: "));
            household.plants.start();
            tryCompare(household.plants, "working", false, 30000);
            household.plants.openId(3);
            tryCompare(household.plant, "working", false, 30000);
            const album = household.plant.album;
            album.open(0);
            tryCompare(album, "working", false, 30000);
            const count = album.count;
            verify(count > 1);
            album.withdraw();
            tryCompare(album, "count", count - 1, 30000);
            tryCompare(there.rows, "count", 1, 30000);
            tryVerify(() => findChild(page, "aside0") !== null);
            verify(named("aside0").Accessible.name.includes("out of the lists"));
            verify(!named("asideGive0").visible);
            press("asideBack0");
            tryCompare(there.rows, "count", 0, 30000);
            tryCompare(album, "count", count, 30000);
            verify((named("asideSaid") as Text).text.includes("back in the lists"));
            // Of no plant: given to one by the keys.
            album.takeOff();
            tryCompare(there.rows, "count", 1, 30000);
            tryVerify(() => findChild(page, "asideGive0") !== null && named("asideGive0").visible);
            reach("asideGive0").forceActiveFocus();
            keyClick(Qt.Key_Space);
            tryVerify(() => findChild(page, "asidePlant0") !== null && named("asidePlant0").visible);
            reach("asidePlant0").forceActiveFocus();
            keyClick(Qt.Key_Space);
            tryCompare(there.rows, "count", 0, 30000);
        }

        function test_theCalendarHoldsTheDaysThatAreAskedFor() {
            const calendar = household.home.calendar;
            fill("calendarField", household.folder + "/tasks.ics");
            fill("calendarDaysField", "900");
            press("calendarButton");
            verify(calendar.daysWrong);
            verify(named("calendarDaysField").activeFocus);
            verify(named("calendarTrouble").visible);
            verify(!household.exists("tasks.ics"));
            fill("calendarDaysField", "30");
            verify(!named("calendarTrouble").visible);
            keyClick(Qt.Key_Return);
            tryCompare(calendar, "working", false, 30000);
            compare(household.contents("tasks.ics"), "30 days, alarm -1");
            fill("calendarDaysField", "");
            keyClick(Qt.Key_Backspace);
            fill("calendarField", household.folder + "/year.ics");
            press("calendarButton");
            tryCompare(calendar, "working", false, 30000);
            compare(household.contents("year.ics"), "365 days, alarm -1");
        }

        function test_backsUpAfterTheQuestionByMouse() {
            fill("backupField", household.folder + "/one.zip");
            press("backupButton");
            verify(named("question1").visible);
            verify(!household.exists("one.zip"));
            press("noButton1");
            verify(!named("question1").visible);
            verify(!household.exists("one.zip"));
            press("backupButton");
            press("yesButton1");
            settle();
            compare(keeping.error, "");
            verify(household.exists("one.zip"));
            verify((named("said1") as Text).text.includes("read back and compared"));
            verify((named("lastBackup") as Text).text.includes("16 May 2026"));
            verify((named("leavesBackup1") as Chip).on);
        }

        function test_theScaleCardIsWrittenByKeysAndReplacedByMouse() {
            fill("cardField", household.folder + "/card");
            keyClick(Qt.Key_Return);
            tryVerify(() => named("cardSaid").visible, 30000);
            verify(household.exists("card.svg"));
            press("cardButton");
            tryVerify(() => named("cardTrouble").visible);
            press("cardReplace");
            tryVerify(() => named("cardSaid").visible, 30000);
            verify(!named("cardReplace").visible);
        }

        function test_whatIsTypedReplacesThePathThatStoodThere() {
            const field = reach("backupField") as SheetField;
            mouseClick(field);
            verify(field.activeFocus);
            for (const letter of household.folder + "/new/four")
                keyClick(letter);
            compare(field.text, household.folder + "/new/four");
            verify((named("backupNote") as Text).text.includes(household.folder + "/new is not there yet"));
            mouseClick(reach("tablesField")); // Whoever has begun to mend one and comes back goes on where it is clicked.
            mouseClick(reach("backupField"));
            compare(field.selectedText, "");
        }

        function test_backsUpByKeyboardAloneAndReplacesWhenAsked() {
            fill("backupField", household.folder + "/two");
            keyClick(Qt.Key_Return);
            tryVerify(() => named("yesButton1").activeFocus);
            keyClick(Qt.Key_Escape); // As "Do not write it".
            verify(!named("question1").visible);
            verify(!household.exists("two.zip"));
            named("backupField").forceActiveFocus();
            keyClick(Qt.Key_Return);
            tryVerify(() => named("yesButton1").activeFocus);
            keyClick(Qt.Key_Return);
            settle();
            verify(household.exists("two.zip"));
            fill("backupField", household.folder + "/two.zip");
            keyClick(Qt.Key_Return);
            verify(keeping.error.includes("there already"));
            verify((named("backupField") as SheetField).wrong);
            verify(named("replaceButton").visible);
            named("replaceButton").forceActiveFocus();
            keyClick(Qt.Key_Space);
            settle();
            compare(keeping.error, "");
            verify(!named("replaceButton").visible);
        }

        function test_returnInTheDialogAcceptsIt() {
            const choose = reach("backupChoose");
            mouseClick(choose);
            let field = null;
            tryVerify(() => {
                field = findChild(choose.Window.contentItem, "fileNameTextField");
                return field !== null && field.visible;
            });
            tryVerify(() => field.Accessible.name === "File name"); // Qt's own has none.
            field.forceActiveFocus();
            keyClick(Qt.Key_A, Qt.ControlModifier);
            for (const letter of "third.zip")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            tryVerify(() => !field.visible);
            tryVerify(() => (named("backupField") as SheetField).text.endsWith("/third.zip")); // A name of one's own.
            tryVerify(() => choose.activeFocus); // And the keys are where they were.
        }

        function test_aNameThatWasTypedIsAFile_data() {
            return [
                { tag: "in the folder", chosen: "/tmp/a b/c#1 50%.pdf".replace("%", "%25"), file: "file:///tmp/a%20b/c%231%2050%25.pdf" },
                { tag: "whole path", chosen: "/tmp/here//tmp/there/c.pdf", file: "file:///tmp/there/c.pdf" },
                { tag: "picked", chosen: "file:///tmp/a%20b.pdf", file: "file:///tmp/a%20b.pdf" }
            ];
        }
        function test_aNameThatWasTypedIsAFile(data) {
            compare(String(keys.fileOf(data.chosen)), data.file);
        }

        function test_aFolderIsWatchedUntilItIsNoLonger() {
            fill("watchField", household.folder + "/nowhere");
            keyClick(Qt.Key_Return);
            verify((named("watchField") as SheetField).wrong);
            verify(household.plant.coming.error.includes("nowhere"));
            fill("watchField", household.folder);
            press("watchButton");
            compare(household.plant.coming.error, "");
            verify((named("watchWords") as Text).text.startsWith(household.folder + " is watched."));
            press("unwatchButton");
            compare(household.plant.coming.watched, "");
            verify(named("watchButton").visible);
        }

        function test_looksThroughTheFolder() {
            press("checkButton");
            settle();
            verify((named("said2") as Text).text.startsWith("The household is sound"));
        }

        function test_restoresIntoANewFolder() {
            keeping.setLeaves(HomeDataModel.BackUp, true);
            keeping.backUp(household.folder + "/b.zip");
            settle();
            fill("restoreFromField", household.folder + "/b.zip");
            keyClick(Qt.Key_Return);
            verify(named("restoreToField").activeFocus);
            fill("restoreToField", household.folder + "/new");
            press("restoreButton");
            settle();
            compare(keeping.error, "");
            verify(household.exists("new/household.sqlite3"));
            press("openButton3");
            compare(household.opened(), household.folder + "/new");
            press("restoreButton");
            settle();
            verify(keeping.error.includes("empty"));
            verify(!named("openButton3").visible);
        }

        function test_tablesAskAndAreWritten() {
            fill("tablesField", household.folder + "/tables");
            press("tablesButton");
            verify(named("question4").visible);
            const yes = named("yesButton4");
            tryVerify(() => yes.activeFocus);
            const sheet = named("homeSheet");
            verify(yes.mapToItem(sheet, 0, yes.height).y <= sheet.height, "the question is in sight");
            press("yesButton4");
            settle();
            verify(household.exists("tables/plants.csv"));
            press("leavesTables0");
            verify(!keeping.tablesLeave);
        }

        function test_tablesAreReadBackByMouse() {
            keeping.setLeaves(HomeDataModel.Tables, true);
            keeping.writeTables(household.folder + "/out");
            settle();
            press("readTablesButton");
            verify(keeping.error.includes("which folder has the tables"));
            fill("tablesFromField", household.folder + "/out");
            keyClick(Qt.Key_Return);
            verify(named("tablesIntoField").activeFocus);
            fill("tablesIntoField", household.folder + "/back");
            press("brokenRows1");
            press("readTablesButton");
            settle();
            compare(keeping.error, "");
            verify(household.exists("back/household.sqlite3"));
            verify((named("said5") as Text).text.includes(household.folder + "/back"));
        }

        function test_photosOfAllAreWrittenWithoutTheirPlaceByMouseAndKeyboard() {
            open("folder photos");
            const leaving = household.home.leaving;
            const out = named("photosOut");
            const inside = name => {
                const found = findChild(out, name) as Item;
                (named("homeSheet") as SheetScroll).reveal(found);
                return found;
            };
            verify(!findChild(out, "writeOut0").visible);
            mouseClick(inside("writeOutButton"));
            verify(leaving.error.includes("which folder"));
            fill("writeToField", household.folder + "/pictures");
            keyClick(Qt.Key_Return);
            tryCompare(leaving, "working", false, 30000);
            compare(leaving.error, "");
            verify(leaving.said.startsWith("Wrote 3 photographs"), leaving.said);
            verify(leaving.said.includes("taken out"));
            verify(household.exists("pictures"));
            mouseClick(inside("writePlace1"));
            mouseClick(inside("writeOutButton"));
            tryCompare(leaving, "working", false, 30000);
            verify(leaving.said.includes("some may say where"), leaving.said);
        }

        function test_lineOnTheLastBackupStandsOverEverySection() {
            household.home.section = HomeModel.Place;
            verify(named("backupLine").visible);
            toData();
            verify(!named("backupLine").visible);
            press("remind3");
            compare(keeping.remindDays, 0);
            household.home.section = HomeModel.Place;
            verify(!named("backupLine").visible);
        }

        function test_sourcesOpenAndClose() {
            verify(!named("sourceList").visible);
            press("sourcesChip");
            verify(named("sourceList").visible);
            verify(keeping.sources.count > 100);
        }

        function test_demonstrationSaysThatNothingIsKept() {
            open("cold");
            verify(!named("backupButton").visible);
            verify((named("dataFolder") as Text).text.includes("invented"));
            compare(keeping.overdue, "");
        }

        function test_narrowStacks() {
            page.narrow = true;
            const data = named("homeData");
            tryVerify(() => named("backupButton").mapToItem(data, 0, 0).y > named("checkButton").mapToItem(data, 0, 0).y);
        }
    }
}
