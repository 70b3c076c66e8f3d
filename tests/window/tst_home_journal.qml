import QtQuick
import QtTest
import Lathhouse.Models
import Lathhouse.Testing
import Lathhouse.Ui

// The journal of the household by mouse and by keyboard.
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
    SignalSpy {
        id: asked
        target: page
        signalName: "plantAsked"
    }
    TestCase {
        name: "HomeJournal"
        when: windowShown

        readonly property HomeJournalModel journal: household.home !== null ? household.home.journal : null
        property ListView rows: null

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            page.narrow = false;
            household.renew();
            household.home.start();
            settle();
            household.home.section = HomeModel.Journal;
            settle();
            rows = named("journalRows") as ListView;
            named("homeSheet").forceActiveFocus();
        }
        function named(name: string): Item {
            const found = findChild(page, name) as Item;
            verify(found !== null, name);
            return found;
        }
        function settle(): void {
            tryCompare(household.home, "working", false, 30000);
            tryCompare(household.home.journal, "working", false, 30000);
            tryCompare(household.home, "working", false, 30000);
        }
        function press(name: string): void {
            waitForItemPolished(named("journalLog")); // What was chosen may have moved what is below.
            wait(50);
            mouseClick(named(name));
        }
        function type(words: string): void {
            for (const letter of words)
                keyClick(letter);
        }

        function test_rowsAreSpokenAndFillWhatRoomThereIs() {
            verify(journal.rows.count > 5);
            compare(rows.count, journal.rows.count);
            verify(rows.y + rows.height <= named("homeJournal").height + 1);
            tryVerify(() => rows.itemAtIndex(0) !== null);
            compare(rows.itemAtIndex(0).Accessible.name, journal.rows.at(0, "sentence"));
            verify((named("journalLine") as Text).text.includes("newest first"));
        }

        function test_aRowOpensThePageOfItsPlant() {
            verify(journal.log(0, 0, "", "swept", ""), journal.error); // At a spot, of no plant.
            settle();
            let of = -1;
            let none = -1;
            for (let row = journal.rows.count - 1; row >= 0; row--) {
                if (journal.rows.at(row, "plant") !== 0)
                    of = row;
                else
                    none = row;
            }
            verify(of >= 0 && none >= 0);
            asked.clear();
            rows.forceActiveFocus();
            rows.currentIndex = none;
            keyClick(Qt.Key_Return);
            compare(asked.count, 0);
            rows.currentIndex = of;
            keyClick(Qt.Key_Return);
            compare(asked.count, 1);
            compare(asked.signalArguments[0][0], journal.rows.at(of, "plant"));
        }

        function test_keysGoThroughTheRows() {
            keyClick(Qt.Key_PageDown); // From the page into the list.
            verify(rows.activeFocus);
            keyClick(Qt.Key_Down);
            compare(rows.currentIndex, 1);
            keyClick(Qt.Key_PageDown);
            verify(rows.currentIndex > 5);
            keyClick(Qt.Key_End);
            compare(rows.currentIndex, rows.count - 1);
            tryVerify(() => rows.atYEnd);
            keyClick(Qt.Key_Home);
            compare(rows.currentIndex, 0);
            tryVerify(() => rows.atYBeginning);
        }

        function test_wordsAreFoundByKeyboard() {
            const all = rows.count;
            const field = named("journalFind") as SheetField;
            field.forceActiveFocus();
            type("moved");
            verify(rows.count > 0 && rows.count < all);
            for (let row = 0; row < rows.count; ++row)
                verify(journal.rows.at(row, "sentence").toLowerCase().includes("moved"));
            keyClick(Qt.Key_Down);
            verify(rows.activeFocus);
            field.forceActiveFocus();
            type("zzz");
            compare(rows.count, 0);
            verify((named("journalLine") as Text).text.startsWith("None of"));
        }

        function test_whatWasMeasuredIsFoundAmongWhatHappened() {
            const all = rows.count;
            const field = named("journalFind") as SheetField;
            field.forceActiveFocus();
            type("measured");
            verify(rows.count > 0 && rows.count < all);
            for (let row = 0; row < rows.count; ++row)
                verify(journal.rows.at(row, "what").startsWith("Measured: "), journal.rows.at(row, "what"));
            keyClick(Qt.Key_Down);
            verify(rows.activeFocus);
            tryVerify(() => rows.itemAtIndex(0) !== null);
            compare(rows.itemAtIndex(0).Accessible.name, journal.rows.at(0, "sentence"));
            field.forceActiveFocus();
            keyClick(Qt.Key_A, Qt.ControlModifier);
            keyClick(Qt.Key_Backspace);
            compare(rows.count, all);
        }

        function test_isLoggedAtASpotByMouse() {
            const all = rows.count;
            verify(!named("journalLog").visible);
            press("journalLogButton");
            verify(named("journalLog").visible);
            verify(!named("journalDetail").visible);
            press("journalSpot1");
            press("journalWhat2");
            press("journalDetail");
            type("soap");
            press("journalKeep");
            settle();
            compare(rows.count, all + 1);
            compare(journal.rows.at(0, "who"), journal.spots[1]);
            compare(journal.rows.at(0, "what"), "Treated with soap");
            verify(!named("journalLog").visible);
            verify((named("journalSaid") as Text).text.startsWith("Kept: " + journal.spots[1]));
        }

        function test_aPestIsChosenAndWhatIsMissingIsAskedFor() {
            const all = rows.count;
            press("journalLogButton");
            press("journalWhat10");
            verify(findChild(page, "journalPest0") !== null);
            press("journalKeep");
            verify(named("journalTrouble").visible);
            verify(named("journalDetail").activeFocus);
            compare(rows.count, all);
            press("journalPest0");
            verify(!named("journalTrouble").visible);
            compare((named("journalDetail") as SheetField).text, (named("journalPest0") as Chip).text);
            press("journalKeep");
            settle();
            compare(rows.count, all + 1);
            verify(journal.rows.at(0, "what").toLowerCase().endsWith("found"));
        }

        function test_whatConcernsTheWholeHouseholdIsLoggedByKeyboard() {
            const home = journal.spots.length;
            keyClick(Qt.Key_L, Qt.ControlModifier);
            press("journalWhat13"); // A cold night stays one where the place is another.
            const chip = named("journalSpot" + home);
            chip.forceActiveFocus();
            keyClick(Qt.Key_Space);
            tryVerify(() => findChild(page, "journalWhat3") === null); // Less happens to all of it.
            compare((named("journalWhat1") as Chip).text, "Cold night");
            verify((named("journalWhat1") as Chip).on);
            named("journalDetail").forceActiveFocus();
            type("cold");
            keyClick(Qt.Key_Return);
            verify(named("journalDetail").activeFocus);
            verify(named("journalTrouble").visible);
            keyClick(Qt.Key_A, Qt.ControlModifier);
            type("-3");
            keyClick(Qt.Key_Return);
            settle();
            compare(journal.rows.at(0, "what"), "Cold night");
            compare(journal.rows.at(0, "who"), "");
        }

        function test_isLoggedAtASpotByKeyboard() {
            const all = rows.count;
            keyClick(Qt.Key_L, Qt.ControlModifier);
            verify(named("journalWords").activeFocus);
            keyClick(Qt.Key_Return);
            verify(named("journalLog").visible);
            verify(named("journalTrouble").visible);
            type("washed");
            verify(!named("journalTrouble").visible);
            named("journalAgo").forceActiveFocus();
            type("x");
            keyClick(Qt.Key_Return);
            verify(named("journalAgo").activeFocus);
            keyClick(Qt.Key_Backspace);
            keyClick(Qt.Key_Return);
            settle();
            compare(rows.count, all + 1);
            compare(journal.rows.at(0, "what"), "Note: washed");
            verify(rows.activeFocus);
            keyClick(Qt.Key_L, Qt.ControlModifier);
            keyClick(Qt.Key_Escape);
            verify(!named("journalLog").visible);
        }

        function test_narrowStacks() {
            page.narrow = true;
            tryVerify(() => rows.itemAtIndex(0) !== null && rows.itemAtIndex(0).height > 30);
        }
    }
}
