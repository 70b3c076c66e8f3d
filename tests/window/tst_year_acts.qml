import QtQuick
import QtTest
import Lathhouse.Testing
import Lathhouse.Ui

// What can be done from the rows of the year: with a lot that can be sown, and with what is to be carried today.
Item {
    id: root
    width: 1280
    height: 744

    DemonstrationYear {
        id: years
        where: "seeds"
    }
    DemonstrationRound {
        id: household
    }
    YearPage {
        id: page
        anchors.fill: parent
        year: years.year
        round: household.round
        narrow: false
        wide: false
        focus: true
    }
    SeedsPage {
        id: seedsPage
        anchors.fill: parent
        visible: false
        seeds: household.seeds
        narrow: false
    }
    SignalSpy {
        id: asked
        target: page
        signalName: "lotAsked"
    }
    TestCase {
        id: tests
        name: "YearActs"
        when: windowShown

        function init(): void {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            compare(years.error, "");
            household.renew("seeds");
            years.renew();
            page.visible = true;
            seedsPage.visible = false;
            seedsPage.narrow = false;
            tryCompare(years.year, "planning", false, 30000);
            tryVerify(() => years.year.sowings.count > 1, 30000);
            page.forceActiveFocus();
            waitForRendering(page, 300);
            asked.clear();
        }
        function named(of: Item, name: string): Item {
            const found = findChild(of, name) as Item;
            verify(found !== null, name);
            return found;
        }
        function act(name: string): Item {
            return named(named(page, "sowingActs"), "act_" + name);
        }

        function test_aSowingHasActsByKeys(): void {
            const rows = named(page, "sowingRows") as SowingRows;
            const acts = named(page, "sowingActs") as SowingActs;
            rows.forceActiveFocus(Qt.TabFocusReason);
            verify(rows.activeFocus);
            const first = named(rows, "sowingRow0");
            const list = named(page, "plantRows") as ListView;
            const high = first.mapToItem(list, 0, 0).y;
            verify(high >= 0 && high + first.height <= list.height, "the row with the keys is in sight: " + high);
            keyClick(Qt.Key_Down);
            compare(rows.current, 1);
            verify(named(rows, "sowingRow1").Accessible.focused);
            keyClick(Qt.Key_Menu);
            verify(acts.visible);
            const lot = years.year.sowings.at(1, "name");
            compare(acts.title, lot);
            keyClick(Qt.Key_Down);
            keyClick(Qt.Key_Return);
            verify(!acts.visible);
            compare(asked.count, 1);
            compare(asked.signalArguments[0][0], lot);
            compare(asked.signalArguments[0][1], "sow");
            verify(rows.activeFocus);
            keyClick(Qt.Key_Up);
            compare(rows.current, 0);
            keyClick(Qt.Key_F10, Qt.ShiftModifier);
            verify(acts.visible);
            keyClick(Qt.Key_Escape);
            verify(!acts.visible);
            keyClick(Qt.Key_Return);
            compare(asked.count, 2);
            compare(asked.signalArguments[1][0], years.year.sowings.at(0, "name"));
            compare(asked.signalArguments[1][1], "open");
            keyClick(Qt.Key_Backtab, Qt.ShiftModifier);
            verify(!rows.activeFocus);
            verify(list.activeFocus, "back to the plants");
            keyClick(Qt.Key_Down);
            compare(years.year.currentRow, 1);
            keyClick(Qt.Key_Tab);
            verify(rows.activeFocus);
            const label = list.itemAtIndex(years.year.currentRow) as PlantRow;
            list.positionViewAtIndex(years.year.currentRow, ListView.Contain);
            mouseClick(label, 40, label.height / 2, Qt.RightButton);
            verify(named(page, "yearActs").visible);
            keyClick(Qt.Key_Escape);
            verify(!rows.activeFocus && list.activeFocus, "the plants whose acts were asked");
        }

        function test_aSowingHasActsByTheMouseOnItsNameAndItsBar(): void {
            const rows = named(page, "sowingRows") as SowingRows;
            const acts = named(page, "sowingActs") as SowingActs;
            rows.forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Down); // Into sight.
            const row = named(rows, "sowingRow1");
            waitForRendering(page, 300);
            mouseClick(row, 40, row.height / 2, Qt.RightButton);
            verify(acts.visible);
            compare(acts.title, years.year.sowings.at(1, "name"));
            mouseClick(act("can"));
            compare(asked.signalArguments[0][1], "can");
            mouseDoubleClickSequence(row, 40, row.height / 2);
            compare(asked.count, 2);
            compare(asked.signalArguments[1][1], "open");
            const plot = named(page, "pointer");
            const at = row.mapToItem(plot, 0, row.height / 2);
            mouseClick(plot, 300, at.y, Qt.RightButton);
            verify(acts.visible);
            compare(acts.title, years.year.sowings.at(1, "name"));
            keyClick(Qt.Key_Escape);
            mousePress(row, 40, row.height / 2);
            tryVerify(() => acts.visible, 3000);
            mouseRelease(row, 40, row.height / 2);
            keyClick(Qt.Key_Escape);
        }

        function test_theLotIsOpenedOrSownInSeeds(): void {
            page.visible = false;
            seedsPage.visible = true;
            seedsPage.show("Zinnia", "sow"); // Before anything is read.
            household.seeds.start();
            tryCompare(household.seeds, "working", false, 30000);
            tryCompare(household.seeds, "name", "Zinnia");
            const field = named(seedsPage, "sownField");
            tryVerify(() => field.activeFocus);
            seedsPage.forceActiveFocus();
            named(seedsPage, "lotRows").forceActiveFocus();
            seedsPage.show("Tomato, red", "open");
            tryCompare(household.seeds, "name", "Tomato, red");
            verify(!field.activeFocus);
            seedsPage.narrow = true;
            seedsPage.opened = false;
            seedsPage.show("Zinnia", "sow");
            tryCompare(household.seeds, "name", "Zinnia");
            tryVerify(() => field.activeFocus);
            verify(seedsPage.opened);
            seedsPage.show("Zinnia", "can");
            compare(household.seeds.sowingDays, 30);
            tryCompare(household.seeds, "working", false, 30000);
            verify(named(seedsPage, "sowingCalendar").visible);
        }

        function test_whatIsToBeCarriedTodayIsSaidAtThePlant(): void {
            household.renew("cold");
            household.round.start();
            tryVerify(() => household.round.carriesLeft > 0 && !household.round.working, 30000);
            const list = named(page, "plantRows") as ListView;
            let due = 0;
            for (let row = 0; row < list.count; ++row) {
                list.positionViewAtIndex(row, ListView.Contain);
                const plant = list.itemAtIndex(row) as PlantRow;
                const words = findChild(plant, "dueWords") as Text;
                const carried = household.round.carryOf(years.year.plants.idAt(row)) === 1;
                if (carried) {
                    ++due;
                    compare(plant.due, "carry in this evening");
                    verify(words.visible);
                    compare(words.text, plant.due);
                    verify(words.contentWidth <= words.width + 1);
                    verify(words.y + words.height <= plant.height, "within its row");
                    verify(plant.Accessible.name.endsWith("Due: carry in this evening."), plant.Accessible.name);
                } else if (plant.due === "") {
                    verify(!words.visible);
                    compare(plant.Accessible.name, plant.sentence);
                }
            }
            compare(due, household.round.carriesLeft);
            household.round.tickCarries();
            tryCompare(household.round, "working", false, 30000);
            compare(household.round.carriesLeft, 0);
            for (let row = 0; row < list.count; ++row) {
                list.positionViewAtIndex(row, ListView.Contain);
                verify((list.itemAtIndex(row) as PlantRow).due !== "carry in this evening");
            }
        }
    }
}
