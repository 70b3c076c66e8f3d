import QtQuick
import QtTest
import Lathhouse.Testing
import Lathhouse.Ui

// The page Round of the demonstration household by mouse and by keyboard.
Item {
    id: root
    width: 1280
    height: 744

    DemonstrationRound {
        id: household
    }
    RoundPage {
        id: page
        anchors.fill: parent
        round: household.round
        narrow: false
        focus: true
    }
    TestCase {
        id: tests
        name: "Round"
        when: windowShown

        function init() {
            failOnWarning(/.?/);
            open("");
            verify(household.round.count > 5);
        }

        function open(kind: string): void {
            compare(household.error, "");
            household.renew(kind);
            household.round.start();
            tryCompare(household.round, "working", false, 30000);
            named("roundRows").forceActiveFocus();
        }

        function named(name: string): Item {
            const found = findChild(page, name) as Item;
            verify(found !== null, name);
            return found;
        }

        function row(index: int): RoundRow {
            const list = named("roundRows") as ListView;
            list.positionViewAtIndex(index, ListView.Contain);
            tryVerify(() => list.itemAtIndex(index) !== null);
            return list.itemAtIndex(index) as RoundRow;
        }

        function settle(): void {
            tryCompare(household.round, "working", false, 30000);
        }

        function test_upAndDownChooseAndSpaceTicks() {
            keyClick(Qt.Key_Down);
            keyClick(Qt.Key_Down);
            compare(household.round.currentRow, 2);
            keyClick(Qt.Key_Up);
            compare(household.round.currentRow, 1);
            keyClick(Qt.Key_Space);
            compare(household.isDone(1), true);
            settle();
            compare(household.isDone(1), true);
            compare(row(1).done, true);
            verify(row(1).Accessible.checked);
        }

        function test_controlZTakesBack() {
            keyClick(Qt.Key_Space);
            settle();
            verify(named("undoBar").visible);
            keyClick(Qt.Key_Z, Qt.ControlModifier);
            settle();
            compare(household.isDone(0), false);
            verify((named("said") as Text).text.startsWith("Taken back: "));
            verify(!named("undoButton").visible);
        }

        function test_chosenRowStaysInSight() {
            keyClick(Qt.Key_End);
            compare(household.round.currentRow, household.round.count - 1);
            const list = named("roundRows") as ListView;
            verify(list.contentY > 0);
            keyClick(Qt.Key_Down);
            compare(household.round.currentRow, household.round.count - 1);
            keyClick(Qt.Key_Home);
            compare(household.round.currentRow, 0);
        }

        function test_clickOnTheBoxTicksAndOnTheRowOnlyChooses() {
            const second = row(1);
            const body = findChild(second, "roundBody") as Item;
            mouseClick(body, 400, body.height / 2);
            compare(household.round.currentRow, 1);
            compare(household.isDone(1), false);
            const box = findChild(second, "tickTarget") as Item;
            verify(box.width >= 44 && box.height >= 44);
            mouseClick(box, box.width / 2, box.height / 2);
            compare(household.isDone(1), true);
            settle();
            mouseClick(named("undoButton"));
            settle();
            compare(household.isDone(1), false);
            verify(named("roundRows").activeFocus);
            keyClick(Qt.Key_Space);
            compare(household.isDone(1), true);
            settle();
        }

        function test_putOffByButtonAndKey() {
            const before = household.round.count;
            const task = household.taskOf(1);
            keyClick(Qt.Key_Down);
            mouseClick(named("laterButton"));
            settle();
            compare(household.round.count, before - 1);
            verify((named("said") as Text).text.startsWith("Put off to Sun 17 May: "));
            keyClick(Qt.Key_U);
            settle();
            compare(household.round.count, before);
            compare(household.taskOf(1), task);
            keyClick(Qt.Key_P);
            settle();
            compare(household.round.count, before - 1);
        }

        function test_washingStandsApartAndCannotBePutOff() {
            let wash = -1;
            for (let index = 0; index < household.round.count && wash < 0; ++index) {
                if (household.taskOf(index).startsWith("Wash hands"))
                    wash = index;
            }
            verify(wash > 0);
            compare(row(wash).isHygiene, true);
            verify(row(wash + 1).heading !== "");
            household.round.currentRow = wash;
            keyClick(Qt.Key_P);
            verify(named("failure").visible);
            verify((named("failureText") as Text).text.startsWith("Washing cannot be put off"));
            keyClick(Qt.Key_Space);
            settle();
            compare(household.isDone(wash), true);
            verify(!named("failure").visible);
        }

        function test_rowSpeaksAllOfItself() {
            const first = row(0);
            compare(first.Accessible.role, Accessible.CheckBox);
            verify(first.Accessible.name.includes(first.task));
            verify(first.Accessible.name.includes("Not done"));
            for (const caution of first.cautions)
                verify(first.Accessible.name.includes(caution));
        }

        function test_emptyAndBrokenSayWhatToDo() {
            open("empty");
            verify(named("roundEmpty").visible);
            compare(named("laterButton").visible, false);
            keyClick(Qt.Key_Space);
            keyClick(Qt.Key_Down);
            open("broken");
            verify(!named("roundEmpty").visible);
            verify(named("failure").visible);
            compare((named("failureText") as Text).text, "The folder is gone.");
        }
    }
}
