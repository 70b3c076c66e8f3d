import QtQuick
import QtTest
import Lathhouse.Models
import Lathhouse.Testing
import Lathhouse.Ui

// The pages with a finger alone.
Item {
    id: root
    width: 1024
    height: 700

    DemonstrationYear {
        id: years
    }
    DemonstrationRound {
        id: household
    }
    YearPage {
        id: yearPage
        anchors.fill: parent
        visible: false
        year: years.year
        narrow: false
        wide: false
    }
    RoundPage {
        id: roundPage
        anchors.fill: parent
        visible: false
        round: household.round
        tonight: household.tonight
        dose: household.dose
        narrow: false
    }
    PlantsPage {
        id: plantsPage
        anchors.fill: parent
        visible: false
        plants: household.plants
        plant: household.plant
        narrow: false
        wide: false
    }
    TestCase {
        id: tests
        name: "Touch"
        when: windowShown

        function init(): void {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            Theme.touch = true;
            root.height = 700;
        }
        function cleanup(): void {
            Theme.touch = false;
            for (const page of [yearPage, roundPage, plantsPage])
                page.visible = false;
        }
        function named(page: Item, name: string): Item {
            const found = findChild(page, name) as Item;
            verify(found !== null, name);
            return found;
        }
        function tap(item: Item, x: real, y: real): void {
            touchEvent(item).press(1, item, x, y).commit();
            touchEvent(item).release(1, item, x, y).commit();
        }
        /// A finger from one place to another and up; it stays a moment in between, so that nothing flies on. Too soon after
        /// a tap Qt takes it for a double one and does not tell of its moves.
        function drag(item: Item, from: point, to: point): void {
            wait(Application.styleHints.mouseDoubleClickInterval + 50);
            const finger = touchEvent(item);
            finger.press(1, item, from.x, from.y).commit();
            for (let step = 1; step <= 10; ++step)
                finger.move(1, item, from.x + (to.x - from.x) * step / 10, from.y + (to.y - from.y) * step / 10).commit();
            wait(150);
            finger.move(1, item, to.x, to.y).commit();
            finger.release(1, item, to.x, to.y).commit();
        }
        function openYear(): Item {
            yearPage.visible = true;
            years.renew();
            tryCompare(years.year, "planning", false);
            const rows = named(yearPage, "plantRows") as ListView;
            tryVerify(() => rows.itemAtIndex(2) !== null && rows.itemAtIndex(2).height >= 44 && !isPolishScheduled(rows));
            return named(yearPage, "pointer");
        }
        function openRound(): ListView {
            roundPage.visible = true;
            household.renew("");
            household.round.start();
            household.tonight.start();
            tryCompare(household.round, "working", false, 30000);
            tryCompare(household.tonight, "working", false, 30000);
            const list = named(roundPage, "roundRows") as ListView;
            tryVerify(() => list.itemAtIndex(0) !== null);
            return list;
        }
        function openPlants(): void {
            plantsPage.visible = true;
            household.renew("photos");
            household.plants.start();
            tryCompare(household.plants, "working", false, 30000);
        }

        function test_rowsAndButtonsAreLargeEnough(): void {
            openYear();
            const rows = named(yearPage, "plantRows") as ListView;
            verify(rows.itemAtIndex(0).height >= 44);
            compare(Theme.target(28), 44);
            Theme.touch = false;
            compare(Theme.target(28), 28);
            verify(rows.itemAtIndex(0).height < 44);
        }

        function test_tapReadsADateAndARow(): void {
            const plot = openYear();
            const rows = named(yearPage, "plantRows") as ListView;
            const row = rows.itemAtIndex(2);
            const at = row.mapToItem(plot, 0, row.height / 2);
            tap(plot, plot.width / 2, at.y);
            compare(years.year.currentRow, 2);
            verify(Math.abs(years.year.cursorDay - 182) <= 1, years.year.cursorDay);
        }

        function test_fingerAlongScrubsTheDatesAndRowsStay(): void {
            const plot = openYear();
            const rows = named(yearPage, "plantRows") as ListView;
            const row = rows.itemAtIndex(2);
            const y = row.mapToItem(plot, 0, row.height / 2).y;
            drag(plot, Qt.point(plot.width - 300, y), Qt.point(plot.width - 40, y + 4));
            verify(years.year.cursorDay > 330, years.year.cursorDay);
            compare(rows.contentY, rows.originY);
        }

        function test_fingerUpMovesTheRowsAndDatesStay(): void {
            const plot = openYear();
            const rows = named(yearPage, "plantRows") as ListView;
            verify(rows.contentHeight > rows.height + 60, "rows to be moved");
            const row = rows.itemAtIndex(2);
            const y = row.mapToItem(plot, 0, row.height / 2).y;
            const begin = rows.contentY;
            touchEvent(plot).press(1, plot, plot.width / 2, y).commit();
            const day = years.year.cursorDay;
            touchEvent(plot).release(1, plot, plot.width / 2, y).commit();
            drag(plot, Qt.point(plot.width / 2, y), Qt.point(plot.width / 2 + 8, y - 60));
            verify(Math.abs(rows.contentY - begin - 60) <= 2 * Application.styleHints.startDragDistance, rows.contentY - begin);
            compare(years.year.cursorDay, day);
        }

        function test_edgeOfAStayIsPinned(): void {
            const plot = openYear();
            const rows = named(yearPage, "plantRows") as ListView;
            const bands = named(yearPage, "bands") as YearBands;
            let row = -1;
            for (let at = 0; at < rows.count && row < 0; ++at) {
                if (years.goesOut(at) > 30)
                    row = at;
            }
            verify(row >= 0);
            rows.positionViewAtIndex(row, ListView.Contain);
            const day = years.goesOut(row);
            const bar = rows.itemAtIndex(row);
            const y = bar.mapToItem(plot, 0, bar.height / 2).y;
            const xOf = day => bands.xOf(day) - (bands.width - plot.width);
            // A finger is not as sharp as a pointer.
            drag(plot, Qt.point(xOf(day) + 8, y), Qt.point(xOf(day + 12), y));
            tryCompare(years.year.edge, "row", -1, 20000);
            tryVerify(() => {
                const at = rows.itemAtIndex(years.year.currentRow) as PlantRow;
                return at !== null && at.pinned !== "";
            });
            verify(Math.abs(years.goesOut(years.year.currentRow) - day - 12) <= 1);
        }

        function test_dateTabIsDrawnByAFinger(): void {
            openYear();
            years.year.cursorDay = 60;
            const tab = named(yearPage, "dateTab");
            const chart = named(yearPage, "yearChart");
            verify(tab.width >= 44 && tab.height >= 44);
            const at = tab.mapToItem(chart, tab.width / 2, tab.height - 6);
            drag(chart, at, Qt.point(at.x + 90, at.y));
            verify(years.year.cursorDay > 75, years.year.cursorDay);
        }

        function test_riskIsChosen(): void {
            openYear();
            const slider = named(yearPage, "riskSlider");
            const stop = years.year.riskStop;
            tap(slider, slider.width - 12, slider.height / 2);
            verify(years.year.riskStop !== stop);
        }

        function test_taskIsTicked(): void {
            const list = openRound();
            const row = list.itemAtIndex(1) as RoundRow;
            verify(!row.done);
            const target = findChild(row, "tickTarget") as Item;
            verify(target.width >= 44 && target.height >= 44);
            tap(target, target.width / 2, target.height / 2);
            tryCompare(household.round, "working", false, 30000);
            compare((list.itemAtIndex(1) as RoundRow).done, true);
        }

        function test_roundIsPulledUp(): void {
            root.height = 420;
            const list = openRound();
            verify(list.contentHeight > list.height + 100);
            const before = household.round.doneLine;
            tryVerify(() => !isPolishScheduled(list) && list.contentY === list.originY); // It begins at its top.
            wait(100);
            drag(list, Qt.point(300, list.height - 20), Qt.point(300, list.height - 140));
            tryVerify(() => list.contentY - list.originY > 60);
            compare(household.round.doneLine, before);
        }

        /// An act of the menu, once it stands where it stays.
        function act(acts: Item, name: string): Item {
            const found = findChild(acts, "act_" + name) as Item;
            verify(found !== null, name);
            tryVerify(() => found.y > 0);
            return found;
        }

        function longPress(item: Item, x: real, y: real): void {
            touchEvent(item).press(1, item, x, y).commit();
            wait(Application.styleHints.mousePressAndHoldInterval + 200);
            touchEvent(item).release(1, item, x, y).commit();
        }

        function test_tapOpensAPlantAndALongOneListsItsActs(): void {
            openPlants();
            const plant = named(plantsPage, "shelfPlant");
            longPress(plant, 40, 40);
            const acts = named(plantsPage, "plantActs");
            verify(acts.visible);
            const mark = act(acts, "mark") as SpokenButton;
            verify(mark.height >= 44);
            tap(mark, 30, 20);
            verify(!acts.visible);
            compare(household.plants.markedCount, 1);
            compare(household.plants.opened, 0);
            household.plants.clearMarks();
            tap(plant, 40, 40);
            verify(household.plants.opened > 0);
            tryCompare(household.plant, "working", false, 30000);
            compare(household.plants.markedCount, 0);
        }

        function test_longPressOnATaskListsItsActs(): void {
            const list = openRound();
            const row = list.itemAtIndex(1) as RoundRow;
            longPress(row, row.width / 2, row.height - 20);
            const acts = named(roundPage, "roundActs");
            verify(acts.visible);
            compare(household.round.currentRow, 1);
            tap(act(acts, "tick"), 30, 20);
            tryCompare(household.round, "working", false, 30000);
            compare((list.itemAtIndex(1) as RoundRow).done, true);
        }

        function test_longPressOnABarListsTheActsOfItsPlant(): void {
            const plot = openYear();
            const rows = named(yearPage, "plantRows") as ListView;
            const row = rows.itemAtIndex(2) as PlantRow;
            const at = row.mapToItem(plot, 0, row.height / 2);
            longPress(plot, plot.width / 2 + 3, at.y);
            const acts = named(yearPage, "yearActs") as YearActs;
            verify(acts.visible);
            compare(acts.title, row.name);
            tap(acts, 4, 4);
            verify(!acts.visible);
        }

        function test_reasonOfAFactIsShown(): void {
            openPlants();
            household.plants.openId(3);
            tryCompare(household.plant, "working", false, 30000);
            let chip = null;
            tryVerify(() => {
                chip = findChild(plantsPage, "factChip") as FactChip;
                return chip !== null && chip.reason !== "";
            });
            let at = chip.mapToItem(root, 0, 0);
            tryVerify(() => { // Photographs and words below the name are laid out one after another.
                const before = at;
                wait(100);
                at = chip.mapToItem(root, 0, 0);
                return at.y === before.y && at.x === before.x;
            });
            const hint = findChild(chip, "reasonHint");
            verify(!hint.visible);
            tap(chip, chip.width / 2, chip.height / 2);
            verify(hint.visible);
            tap(chip, chip.width / 2, chip.height / 2);
            verify(!hint.visible);
        }
    }
}
