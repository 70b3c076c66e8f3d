import QtQuick
import QtTest
import Lathhouse.Models
import Lathhouse.Testing
import Lathhouse.Ui

// People and animals by mouse and by keyboard.
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
        name: "HomePeople"
        when: windowShown

        readonly property HomePeopleModel people: household.home !== null ? household.home.people : null

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            page.narrow = false;
            household.renew();
            household.home.start();
            settle();
            household.home.section = HomeModel.People;
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
            tryCompare(household.home.people, "working", false, 30000);
        }
        function press(name: string): void {
            const item = named(name);
            (named("homeSheet") as SheetScroll).reveal(item);
            mouseClick(item);
            settle();
        }

        function test_catIsAddedReachesASpotAndIsTakenBackByMouse() {
            const before = people.harms.count;
            press("kind1");
            press("addMember");
            compare(people.members.count, 1);
            for (let spot = 0; spot < people.spots.count; ++spot)
                press("reach0_" + spot);
            verify((named("reach0_0") as Chip).on);
            verify(people.harms.count > before);
            verify((named("peopleLine") as Text).text.includes("stand within reach"));
            mouseClick(findChild(named("peopleUndo"), "undoButton"));
            settle();
            verify(!(named("reach0_" + (people.spots.count - 1)) as Chip).on);
            press("removeMember0");
            compare(people.members.count, 0);
        }

        function test_oneOfThemGetsAnotherName() {
            press("kind1");
            press("addMember");
            press("renameMember0");
            const field = named("memberName0") as SheetField;
            verify(field.activeFocus);
            compare(field.text, ""); // It had none.
            for (const letter of "Mia")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            settle();
            compare(people.members.at(0, "name"), "Mia");
            compare(people.members.at(0, "own"), "Mia");
            verify(!named("memberName0").visible);
            press("renameMember0");
            keyClick(Qt.Key_Escape);
            verify(!named("memberName0").visible);
            verify(named("renameMember0").activeFocus);
            press("removeMember0");
        }

        function test_childIsAddedByKeyboardAlone() {
            const field = named("memberName") as SheetField;
            field.forceActiveFocus();
            for (const letter of "Ida")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            settle();
            compare(people.members.count, 1);
            compare(people.members.at(0, "name"), "Ida");
            compare(field.text, "");
            const chip = named("reach0_1") as Chip;
            chip.forceActiveFocus();
            keyClick(Qt.Key_Space);
            settle();
            verify((named("reach0_1") as Chip).on);
            verify((named("reach0_1") as Chip).activeFocus);
            keyClick(Qt.Key_Z, Qt.ControlModifier);
            settle();
            verify(!(named("reach0_1") as Chip).on);
            keyClick(Qt.Key_Z, Qt.ControlModifier | Qt.ShiftModifier);
            settle();
            verify((named("reach0_1") as Chip).on);
        }

        function test_everyHarmNamesTheHazardAndTheCaution() {
            press("addMember");
            for (let spot = 0; spot < people.spots.count; ++spot)
                people.setReach(0, spot, true);
            settle();
            verify(people.harms.count > 0);
            for (let row = 0; row < people.harms.count; ++row) {
                verify(people.harms.at(row, "hazard") !== "");
                verify(people.harms.at(row, "caution") !== "");
            }
        }

        function test_narrowStacks() {
            page.narrow = true;
            const part = named("homePeople");
            tryVerify(() => named("peopleLine").mapToItem(part, 0, 0).y > named("addMember").mapToItem(part, 0, 0).y);
        }
    }
}
