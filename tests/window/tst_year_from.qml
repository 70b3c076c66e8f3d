import QtQuick
import QtTest
import Lathhouse.Testing
import Lathhouse.Ui

// The year from another date, by keyboard and by mouse.
Item {
    id: root
    width: 1280
    height: 744

    DemonstrationYear {
        id: household
    }
    YearPage {
        id: page
        anchors.fill: parent
        year: household.year
        narrow: root.width < 1000
        wide: false
        focus: true
    }
    SignalSpy {
        id: changed
        target: household.year
        signalName: "householdChanged"
    }
    TestCase {
        name: "YearFrom"
        when: windowShown

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            root.width = 1280;
            Theme.textPercent = 100;
            compare(household.error, "");
            household.renew();
            page.allNumbers = false;
            tryCompare(household.year, "planning", false);
            page.forceActiveFocus();
        }
        function cleanup() {
            root.width = 1280;
            Theme.textPercent = 100;
        }
        function named(name: string): Item {
            const found = findChild(page, name) as Item;
            verify(found !== null, name);
            return found;
        }
        function type(words: string): void {
            for (const letter of words)
                keyClick(letter);
        }
        function waitForYear(): void {
            tryVerify(() => changed.count > 0, 20000);
            tryCompare(household.year, "planning", false, 20000);
        }

        function test_byKeysThereAndBack() {
            keyClick(Qt.Key_F);
            verify(named("yearFrom").visible);
            verify(named("yearFromField").activeFocus);
            type("spring");
            keyClick(Qt.Key_Return);
            verify(named("yearFromTrouble").visible);
            verify((named("yearFromField") as SheetField).wrong);
            keyClick(Qt.Key_A, Qt.ControlModifier);
            changed.clear();
            type("1.3.2027");
            verify(!named("yearFromTrouble").visible);
            keyClick(Qt.Key_Return);
            verify(!named("yearFrom").visible);
            waitForYear();
            verify(household.year.begin.elsewhere);
            verify(household.year.begin.title.includes("1 March 2027"), household.year.begin.title);
            verify(named("fromElsewhere").visible);
            verify(!named("keepPlan").visible);
            keyClick(Qt.Key_Right);
            compare(household.year.cursorDay, 1);
            keyClick(Qt.Key_F);
            keyClick(Qt.Key_Delete);
            changed.clear();
            keyClick(Qt.Key_Return);
            waitForYear();
            verify(!household.year.begin.elsewhere);
            verify(!named("fromElsewhere").visible);
        }

        function test_byMouseAndEscapeLeavesIt() {
            mouseClick(named("yearFromButton"));
            verify(named("yearFrom").visible);
            type("1.3.2199");
            mouseClick(named("yearFromShow"));
            verify(household.year.begin.trouble !== "");
            keyClick(Qt.Key_Escape);
            verify(!named("yearFrom").visible);
            compare(household.year.begin.trouble, "");
            mouseClick(named("yearFromButton"));
            changed.clear();
            type("1.3.2027");
            mouseClick(named("yearFromShow"));
            waitForYear();
            mouseClick(named("yearFromButton"));
            changed.clear();
            tryVerify(() => named("yearFromToday").x > named("yearFromShow").x && named("yearFromClose").x > named("yearFromToday").x);
            mouseClick(named("yearFromToday"));
            waitForYear();
            verify(!household.year.begin.elsewhere);
            mouseClick(named("yearFromButton"));
            verify(!named("yearFromToday").visible);
            wait(50); // The buttons close up.
            mouseClick(named("yearFromClose"));
            verify(!named("yearFrom").visible);
        }

        function test_aNarrowWindowHasItAmongAllNumbers() {
            root.width = 640;
            verify(!named("yearFromButton").visible);
            page.allNumbers = true;
            const button = named("drawerReadoutFrom");
            tryVerify(() => button.visible);
            button.forceActiveFocus();
            keyClick(Qt.Key_Space);
            verify(named("yearFrom").visible);
            keyClick(Qt.Key_Escape);
            verify(!named("yearFrom").visible);
        }
    }
}
