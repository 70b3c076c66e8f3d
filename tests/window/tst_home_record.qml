import QtQuick
import QtTest
import Lathhouse.Models
import Lathhouse.Testing
import Lathhouse.Ui

// The household's own record by mouse and by keyboard.
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
        name: "HomeRecord"
        when: windowShown

        readonly property HomeRecordModel record: household.home !== null ? household.home.record : null

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            page.narrow = false;
            household.renew();
            household.home.start();
            settle();
            household.home.section = HomeModel.Record;
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
            tryCompare(household.home.record, "working", false, 30000);
        }
        function press(name: string): void {
            const item = named(name);
            (named("homeSheet") as SheetScroll).reveal(item);
            mouseClick(item);
        }
        function fill(name: string, words: string): void {
            const field = named(name) as SheetField;
            field.forceActiveFocus();
            keyClick(Qt.Key_A, Qt.ControlModifier);
            for (const letter of words)
                keyClick(letter);
        }

        function test_aPositionThatIsNoneIsSaid() {
            press("recordMore");
            fill("recordField", household.writeRecord("porch.csv", false));
            fill("recordPosition", "nowhere");
            keyClick(Qt.Key_Return);
            settle();
            verify(record.error.includes("nowhere"));
            verify(!record.isThere);
        }

        function test_takesARecordInByKeyboardAndBringsItBack() {
            verify(!named("recordMonths").visible);
            press("recordMore");
            fill("recordColumns", "Day,Min,Max");
            fill("recordField", household.writeRecord("porch.csv", false));
            keyClick(Qt.Key_Return);
            settle();
            compare(record.error, "");
            verify((named("recordTitle") as Text).text.startsWith("porch, 2005 to 2019"));
            verify((named("recordVerdict") as Text).text.startsWith("Plausible"));
            compare(record.months.count, 12);
            press("removeRecord");
            settle();
            verify(!record.isThere);
            named("recordField").forceActiveFocus();
            named("homeSheet").forceActiveFocus();
            const undo = findChild(named("recordUndo"), "undoButton") as Item;
            mouseClick(undo);
            settle();
            verify(record.isThere);
        }

        function test_faultStandsInPlaceAndCanBeInsistedOn() {
            press("recordMore");
            fill("recordColumns", "Day,Min,Max");
            fill("recordField", household.folder + "/none.csv");
            press("takeButton");
            settle();
            verify(record.error.includes("none.csv"));
            verify((named("recordField") as SheetField).wrong);
            fill("recordField", household.writeRecord("porch.csv", true));
            compare(record.error, "");
            press("takeButton");
            settle();
            verify(named("insistButton").visible);
            press("recordDegrees1");
            press("takeButton");
            settle();
            compare(record.error, "");
            verify(record.isThere);
            verify(!named("insistButton").visible);
        }

        function test_narrowStacks() {
            const own = named("recordTitle").parent;
            const months = named("recordMonths").parent;
            verify(months.x >= own.width && months.y < own.height);
            page.narrow = true;
            tryVerify(() => months.x === 0 && months.y >= own.height && named("homeRecord").implicitHeight >= months.y + months.height);
        }
    }
}
