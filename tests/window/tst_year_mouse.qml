import QtQuick
import QtTest
import Lathhouse.Models
import Lathhouse.Testing
import Lathhouse.Ui

// The page Year of the demonstration household by mouse alone.
Item {
    id: root
    width: 1280
    height: 744

    DemonstrationYear {
        id: household
    }
    YearPage {
        id: page
        width: root.width
        height: 744
        year: household.year
        narrow: false
        wide: false
        focus: true
    }
    SignalSpy {
        id: asked
        target: page
        signalName: "plantAsked"
    }
    TestCase {
        id: tests
        name: "YearMouse"
        when: windowShown

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            compare(household.error, "");
            page.height = 744;
            household.renew();
            page.asTable = false;
            tryCompare(household.year, "planning", false);
        }

        function named(name: string): Item {
            const found = findChild(page, name) as Item;
            verify(found !== null, name);
            return found;
        }

        function test_clickSetsTheCursorWhereItFell() {
            const plot = named("pointer");
            mouseClick(plot, plot.width / 2, 120);
            verify(Math.abs(household.year.cursorDay - 182) <= 1, household.year.cursorDay);
            const bands = named("bands") as YearBands;
            verify(Math.abs(bands.cursorX - (bands.width - plot.width / 2)) < 2.5);
        }

        function test_draggingScrubsTheDates() {
            const plot = named("pointer");
            mousePress(plot, 20, 30);
            const begin = household.year.cursorDay;
            for (let x = 40; x <= 400; x += 40)
                mouseMove(plot, x, 30, -1, Qt.LeftButton);
            verify(household.year.cursorDay > begin + 150);
            mouseRelease(plot, 400, 30);
            const end = household.year.cursorDay;
            mouseMove(plot, 100, 30);
            compare(household.year.cursorDay, end);
        }

        function test_pressingARowTwiceOpensItsPlant() {
            asked.clear();
            const list = named("plantRows") as ListView;
            tryVerify(() => list.itemAtIndex(1) !== null);
            const row = list.itemAtIndex(1);
            mouseClick(row, 20, row.height / 2);
            compare(asked.count, 0);
            mouseDoubleClickSequence(row, 20, row.height / 2);
            compare(asked.count, 1);
            compare(asked.signalArguments[0][0], household.year.plants.idAt(1));
        }

        function test_orderOfTheRowsIsPressed() {
            const order = household.year.plants.rowOrder;
            mouseClick(named("rowOrderButton"));
            compare(household.year.plants.rowOrder, (order + 1) % 3);
            household.year.plants.rowOrder = 0;
        }

        function test_dateTabIsDrawnAlong() {
            household.year.cursorDay = 100;
            const tab = named("dateTab");
            const chart = named("yearChart");
            const at = tab.mapToItem(chart, tab.width / 2 + 8, tab.height / 2);
            mousePress(chart, at.x, at.y);
            compare(household.year.cursorDay, 100, "where it is held it stays");
            mouseMove(chart, at.x + 60, at.y, -1, Qt.LeftButton);
            mouseMove(chart, at.x + 120, at.y, -1, Qt.LeftButton);
            mouseRelease(chart, at.x + 120, at.y);
            const plot = named("pointer");
            verify(Math.abs(household.year.cursorDay - 100 - 120 * household.year.view.days / plot.width) <= 2, household.year.cursorDay);
        }

        function test_clickOnABarReadsItsRow() {
            const list = named("plantRows") as ListView;
            const row = list.itemAtIndex(3);
            const plot = named("pointer");
            const at = row.mapToItem(plot, 300, row.height / 2);
            mouseClick(plot, at.x, at.y);
            compare(household.year.currentRow, 3);
        }

        function test_clickOnANameReadsItsRow() {
            const list = named("plantRows") as ListView;
            const row = list.itemAtIndex(2);
            mouseClick(row, 40, row.height / 2);
            compare(household.year.currentRow, 2);
        }

        function test_sliderFollowsTheDrag() {
            const slider = named("riskSlider") as RiskSlider;
            const careful = household.mayGoOut(0);
            const step = (slider.width - 52) / 4;
            mousePress(slider, 26 + 2 * step, 16);
            mouseMove(slider, 26 + 2.6 * step, 16, -1, Qt.LeftButton);
            mouseMove(slider, 26 + 3 * step, 16, -1, Qt.LeftButton);
            compare(household.year.riskStop, 3);
            verify(household.mayGoOut(0) < careful);
            mouseMove(slider, 26 + 4 * step, 16, -1, Qt.LeftButton);
            compare(household.year.riskStop, 4);
            mouseRelease(slider, 26 + 4 * step, 16);
            compare(household.year.riskStop, 4);
            tryCompare(household.year, "planning", false);
        }

        function test_buttonTurnsTheChartIntoATable() {
            mouseClick(named("tableButton"));
            compare(page.asTable, true);
            const rows = named("tableRows") as ListView;
            mouseClick(rows, 100, 12 + 25 * 4);
            const day = household.year.cursorDay;
            verify(day >= 4);
            mouseClick(named("tableButton"));
            compare(page.asTable, false);
            compare(household.year.cursorDay, day);
        }

        function test_wheelScrollsTheRowsWithinTheirEnds() {
            page.height = 480;
            const list = named("plantRows") as ListView;
            const plot = named("pointer");
            tryVerify(() => list.contentHeight > list.height);
            mouseWheel(plot, 100, plot.height - 20, 0, -120);
            verify(list.contentY > 0);
            for (let turn = 0; turn < 40; ++turn)
                mouseWheel(plot, 100, plot.height - 20, 0, -120);
            verify(Math.abs(list.contentY - (list.contentHeight - list.height)) < 1);
            for (let turn = 0; turn < 40; ++turn)
                mouseWheel(plot, 100, plot.height - 20, 0, 120);
            compare(list.contentY, 0);
        }

        function test_wheelWithControlShowsLessOfTheYear() {
            const plot = named("pointer");
            const bands = named("bands") as YearBands;
            compare(household.year.view.days, household.year.dayCount);
            const day = bands.dayAt(bands.width - plot.width / 2);
            mouseWheel(plot, plot.width / 2, 100, 0, 120, Qt.NoButton, Qt.ControlModifier);
            compare(household.year.view.days, 183);
            verify(Math.abs(bands.dayAt(bands.width - plot.width / 2) - day) <= 1);
            mouseWheel(plot, plot.width / 2, 100, 0, 120, Qt.NoButton, Qt.ControlModifier);
            compare(household.year.view.days, 92);
            mouseWheel(plot, plot.width / 2, 100, 0, 120, Qt.NoButton, Qt.ControlModifier);
            mouseWheel(plot, plot.width / 2, 100, 0, 120, Qt.NoButton, Qt.ControlModifier);
            compare(household.year.view.days, 7);
            verify(household.year.cursorDay >= household.year.view.first);
            mouseClick(plot, 2, 120);
            compare(household.year.cursorDay, household.year.view.first);
            for (let turn = 0; turn < 5; ++turn)
                mouseWheel(plot, plot.width / 2, 100, 0, -120, Qt.NoButton, Qt.ControlModifier);
            compare(household.year.view.first, 0);
            compare(household.year.view.days, household.year.dayCount);
        }

        /// A row whose plant goes out well after today.
        function rowGoingOut(): int {
            for (let row = 0; row < 10; ++row) {
                if (household.goesOut(row) > 30)
                    return row;
            }
            fail("no plant goes out");
            return -1;
        }

        function test_draggingABarsEdgePinsThatDate() {
            const row = rowGoingOut();
            const day = household.goesOut(row);
            const list = named("plantRows") as ListView;
            const bar = list.itemAtIndex(row);
            const plot = named("pointer");
            const bands = named("bands") as YearBands;
            const y = bar.mapToItem(plot, 0, bar.height / 2).y;
            const xOf = day => bands.xOf(day) - (bands.width - plot.width);
            mouseMove(plot, xOf(day) + 40, y);
            mouseMove(plot, xOf(day), y);
            compare(plot.cursorShape, Qt.SplitHCursor);
            mousePress(plot, xOf(day), y);
            compare(household.year.edge.row, row);
            for (let step = 1; step <= 12; ++step)
                mouseMove(plot, xOf(day + step), y, -1, Qt.LeftButton);
            verify(Math.abs(household.year.edge.day - day - 12) <= 1, household.year.edge.day);
            const words = named("edgeWords");
            compare(words.visible, true);
            verify(words.Accessible.name.includes("of a harmful night after it"), words.Accessible.name);
            verify(words.x + words.width <= page.width);
            const dropped = household.year.edge.day;
            mouseRelease(plot, xOf(day + 12), y);
            tryCompare(household.year.edge, "row", -1, 20000);
            tryVerify(() => {
                const at = list.itemAtIndex(household.year.currentRow) as PlantRow;
                return at !== null && at.pinned !== "";
            });
            compare(household.goesOut(household.year.currentRow), dropped);
            page.forceActiveFocus();
            keyClick(Qt.Key_P);
            tryVerify(() => household.goesOut(household.year.currentRow) === day, 20000);
        }

        function test_drawerOfTheNarrowPageOpensAndCloses() {
            page.narrow = true;
            const button = named("allNumbers");
            mouseClick(button);
            tryCompare(named("drawer"), "opacity", 1);
            mouseClick(button);
            tryCompare(named("drawer"), "visible", false);
            page.narrow = false;
        }
    }
}
