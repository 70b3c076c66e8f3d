import QtQuick
import QtTest
import Lathhouse.Models
import Lathhouse.Testing
import Lathhouse.Ui

// The page Year of the demonstration household by keyboard alone.
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
        narrow: false
        wide: false
        focus: true
    }
    Masthead {
        id: masthead
        visible: false
        width: root.width
        height: 44
        year: household.year
        narrow: false
        wide: false
        page: "year"
    }
    SignalSpy {
        id: asked
        target: page
        signalName: "plantAsked"
    }
    SignalSpy {
        id: kept
        target: page
        signalName: "keepAsked"
    }
    SignalSpy {
        id: adding
        target: page
        signalName: "addAsked"
    }
    SignalSpy {
        id: pressed
        target: masthead
        signalName: "undoAsked"
    }
    TestCase {
        id: tests
        name: "YearKeys"
        when: windowShown

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            compare(household.error, "");
            household.renew();
            page.asTable = false;
            tryCompare(household.year, "planning", false);
            page.forceActiveFocus();
        }

        function named(name: string): Item {
            const found = findChild(page, name) as Item;
            verify(found !== null, name);
            return found;
        }

        /// Whether the focus is on that part or within it.
        function hasFocus(name: string): bool {
            for (let at = page.Window.activeFocusItem; at !== null; at = at.parent) {
                if (at.objectName === name)
                    return true;
            }
            return false;
        }

        function test_tabGoesThroughTheMastheadAsItStands() {
            masthead.visible = true;
            const undo = findChild(masthead, "mastUndo") as Item;
            const find = findChild(masthead, "findButton") as Item;
            verify(undo.visible && undo.x < find.x);
            compare(undo.nextItemInFocusChain(), find);
            masthead.visible = false;
        }

        function test_wordsOfTheMastheadAreNeitherCutNorSmall_data() {
            const sizes = [[1920, 100], [1280, 100], [1280, 150], [1380, 150], [1430, 150], [800, 100], [800, 200], [640, 100], [520, 100], [520, 150], [520, 200]];
            const all = [];
            for (const [width, percent] of sizes) {
                for (const carries of [0, 3, 12])
                    all.push({ tag: width + ", " + percent + " %, " + carries, width: width, percent: percent, carries: carries });
            }
            return all;
        }
        function test_wordsOfTheMastheadAreNeitherCutNorSmall(shown) {
            Theme.textPercent = shown.percent;
            masthead.narrow = shown.width < 1000 * Theme.textScale;
            masthead.wide = shown.width >= 1600 * Theme.textScale;
            masthead.width = shown.width;
            masthead.height = Theme.px(44);
            masthead.carries = shown.carries;
            masthead.visible = true;
            for (const place of ["round", "year", "plants", "seeds", "home"]) {
                const tab = findChild(masthead, place + "Tab") as Item;
                const label = findChild(masthead, place + "Label") as Text;
                compare(label.fontSizeMode, Text.FixedSize);
                verify(label.font.pixelSize >= 12, place);
                verify(label.contentWidth <= tab.width + 1, place + ": " + label.contentWidth + " in " + tab.width);
            }
            const badge = findChild(masthead, "roundBadge") as Item;
            const label = findChild(masthead, "roundLabel") as Text;
            compare(badge.visible, shown.carries > 0);
            if (badge.visible) {
                const tab = badge.parent;
                verify(badge.x >= 0 && badge.x + badge.width <= tab.width, "within the tab");
                verify(tab.y + badge.y >= 0, "within the window");
                verify(badge.x >= label.x + label.width || badge.y + badge.height <= label.y + 0.3 * label.height, "clear of the words");
            }
            const home = findChild(masthead, "homeName") as Text;
            compare(home.elide, Text.ElideNone);
            verify(!home.visible || !home.truncated);
            verify(home.minimumPixelSize >= Theme.smallSize);
            masthead.visible = false;
            masthead.carries = 0;
            masthead.height = 44;
            masthead.width = root.width;
            masthead.narrow = false;
            masthead.wide = false;
            Theme.textPercent = 100;
        }

        function test_undoAndFindAreReachedHoweverLittleRoom_data() {
            return [
                { tag: "wide", width: 1280, percent: 100, touch: false, drawn: false },
                { tag: "narrow", width: 800, percent: 100, touch: false, drawn: true },
                { tag: "narrow, a finger", width: 800, percent: 100, touch: true, drawn: true },
                { tag: "large", width: 1280, percent: 200, touch: false, drawn: true },
                { tag: "narrow and large", width: 800, percent: 200, touch: true, drawn: true },
                { tag: "least", width: 520, percent: 100, touch: false, drawn: true },
                { tag: "least and largest", width: 520, percent: 200, touch: true, drawn: true },
            ];
        }
        function test_undoAndFindAreReachedHoweverLittleRoom(shown) {
            Theme.textPercent = shown.percent;
            Theme.touch = shown.touch;
            masthead.narrow = shown.width < 1000 * Theme.textScale;
            masthead.width = shown.width;
            masthead.visible = true;
            const last = findChild(masthead, "homeTab") as Item;
            for (const name of ["mastUndo", "findButton"]) {
                const act = findChild(masthead, name) as MastAct;
                verify(act.visible);
                compare(act.drawn, shown.drawn);
                verify(act.x >= last.x + last.width && act.x + act.width <= shown.width, name + " at " + act.x);
                verify(act.height >= (shown.touch ? 44 : 24) && act.width >= (shown.touch ? 44 : 24));
                compare(act.Accessible.name, name === "mastUndo" ? "Undo" : "Find");
                verify(act.activeFocusOnTab);
                pressed.signalName = name === "mastUndo" ? "undoAsked" : "findAsked";
                pressed.clear();
                mouseClick(act);
                compare(pressed.count, 1);
            }
            masthead.visible = false;
            masthead.narrow = false;
            masthead.width = 1280;
            Theme.textPercent = 100;
            Theme.touch = false;
        }

        function test_menuKeyListsTheActsOfAPlant() {
            const acts = named("yearActs") as YearActs;
            keyClick(Qt.Key_Down);
            keyClick(Qt.Key_Menu);
            verify(acts.visible);
            const current = household.year.currentRow;
            compare(acts.title, ((named("plantRows") as ListView).itemAtIndex(current) as PlantRow).name);
            verify(findChild(acts, "act_keep") === null && findChild(acts, "act_unpin") === null);
            asked.clear();
            keyClick(Qt.Key_Return);
            compare(asked.count, 1);
            compare(asked.signalArguments[0][0], household.year.plants.idAt(current));
            verify(!acts.visible);
            page.forceActiveFocus();
            page.canKeep = true;
            const label = (named("plantRows") as ListView).itemAtIndex(2) as PlantRow;
            mouseClick(label, 20, label.height / 2, Qt.RightButton);
            verify(acts.visible);
            kept.clear();
            keyClick(Qt.Key_End);
            keyClick(Qt.Key_Space);
            compare(kept.count, 1);
            compare(kept.signalArguments[0][0], household.year.plants.idAt(2));
            page.canKeep = false;
        }

        function test_withoutAPlantTheYearLeadsToAddingOne() {
            household.where = "bare";
            tryCompare(household.year, "planning", false);
            verify(named("noPlants").visible);
            const act = named("yearEmptyAct") as SheetButton;
            for (let step = 0; step < 30 && !act.activeFocus; ++step)
                keyClick(Qt.Key_Tab);
            verify(act.activeFocus);
            adding.clear();
            keyClick(Qt.Key_Return);
            compare(adding.count, 1);
            mouseClick(act);
            compare(adding.count, 2);
            household.where = "north";
        }

        function test_arrowsMoveADayAndWithControlAWeek() {
            keyClick(Qt.Key_Right);
            compare(household.year.cursorDay, 1);
            keyClick(Qt.Key_Right, Qt.ControlModifier);
            compare(household.year.cursorDay, 8);
            keyClick(Qt.Key_Left);
            compare(household.year.cursorDay, 7);
            keyClick(Qt.Key_Left, Qt.ControlModifier);
            compare(household.year.cursorDay, 0);
        }

        function test_shiftAndArrowsMoveAnEdgeAndEscLeavesIt() {
            let row = 0;
            while (household.goesOut(row) <= 30 && row < 10)
                ++row;
            household.year.currentRow = row;
            household.year.cursorDay = household.goesOut(row);
            const day = household.goesOut(row);
            keyClick(Qt.Key_Right, Qt.ShiftModifier);
            compare(household.year.edge.day, day + 1);
            keyClick(Qt.Key_Right, Qt.ShiftModifier | Qt.ControlModifier);
            compare(household.year.edge.day, day + 8);
            keyClick(Qt.Key_Escape);
            compare(household.year.edge.row, -1);
            compare(household.goesOut(row), day);
            keyClick(Qt.Key_Left, Qt.ShiftModifier);
            keyClick(Qt.Key_Return);
            tryVerify(() => household.year.edge.row === -1 && household.goesOut(household.year.currentRow) === day - 1, 20000);
        }

        function test_cursorStopsAtTheEndsOfTheYear() {
            keyClick(Qt.Key_Left);
            compare(household.year.cursorDay, 0);
            keyClick(Qt.Key_End);
            compare(household.year.cursorDay, household.year.dayCount - 1);
            keyClick(Qt.Key_Right);
            compare(household.year.cursorDay, household.year.dayCount - 1);
            keyClick(Qt.Key_Home);
            compare(household.year.cursorDay, 0);
        }

        function test_pageKeysMoveAMonth() {
            keyClick(Qt.Key_PageDown);
            compare(household.year.cursor.shortDate, "Tue 14 Apr");
            keyClick(Qt.Key_PageUp);
            compare(household.year.cursor.shortDate, "Sat 14 Mar");
        }

        function test_upAndDownChooseARow() {
            keyClick(Qt.Key_Down);
            keyClick(Qt.Key_Down);
            compare(household.year.currentRow, 2);
            keyClick(Qt.Key_Up);
            compare(household.year.currentRow, 1);
        }

        function test_cursorMovesTheMarksAndTheNumbers() {
            const bands = named("bands") as YearBands;
            const before = bands.cursorX;
            const title = named("readoutTitle") as Text;
            compare(title.text, "Saturday 14 March");
            keyClick(Qt.Key_PageDown);
            verify(bands.cursorX > before + 30);
            compare(title.text, "Tuesday 14 April");
        }

        function test_sliderMovesTheDatesAtOnceAndThePlanAfterwards() {
            const slider = named("riskSlider") as RiskSlider;
            slider.forceActiveFocus(Qt.TabFocusReason);
            // The first row is the first to go out.
            const careful = household.mayGoOut(0);
            verify(careful > 0);
            keyClick(Qt.Key_Right);
            compare(household.year.riskStop, 3);
            keyClick(Qt.Key_Right);
            compare(household.year.riskStop, 4);
            verify(household.mayGoOut(0) < careful);
            tryCompare(household.year, "planning", false);
            keyClick(Qt.Key_Right);
            compare(household.year.riskStop, 4);
            for (let press = 0; press < 6; ++press)
                keyClick(Qt.Key_Left);
            compare(household.year.riskStop, 0);
            verify(household.mayGoOut(0) > careful);
            tryCompare(household.year, "planning", false);
            compare(slider.value, 0);
        }

        function test_sliderSpeaksTheRiskAndTheRowReadLast() {
            const slider = named("riskSlider") as RiskSlider;
            slider.forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Left);
            verify(slider.Accessible.name.startsWith("Risk you accept, 1 in 20. "), slider.Accessible.name);
            verify(slider.Accessible.name.includes("out "), slider.Accessible.name);
        }

        function test_tableIsATwinOfTheChart() {
            keyClick(Qt.Key_PageDown);
            const day = household.year.cursorDay;
            keyClick(Qt.Key_T);
            compare(page.asTable, true);
            verify(!named("yearChart").visible);
            const rows = named("tableRows") as ListView;
            compare(rows.count, household.year.dayCount);
            compare(rows.currentIndex, day);
            keyClick(Qt.Key_Down);
            compare(household.year.cursorDay, day + 1);
            compare(rows.currentIndex, day + 1);
            keyClick(Qt.Key_Escape);
            compare(page.asTable, false);
            verify(named("yearChart").visible);
            keyClick(Qt.Key_Right);
            compare(household.year.cursorDay, day + 2);
        }

        function test_tabWalksInTheOrderOfReading() {
            named("riskSlider").forceActiveFocus(Qt.TabFocusReason);
            for (const next of ["yearFromButton", "yearPrintButton", "tableButton", "bands", "rowOrderButton", "plantRows"]) {
                keyClick(Qt.Key_Tab);
                verify(hasFocus(next), next);
            }
            for (const before of ["rowOrderButton", "bands", "tableButton", "yearPrintButton", "yearFromButton", "riskSlider"]) {
                keyClick(Qt.Key_Tab, Qt.ShiftModifier);
                verify(hasFocus(before), before);
            }
        }

        function test_rowsStandBySpotOrByNameByKey() {
            household.year.plants.rowOrder = 0;
            const list = named("plantRows") as ListView;
            const chosen = household.year.plants.idAt(household.year.currentRow);
            const height = list.contentHeight;
            keyClick(Qt.Key_O);
            compare(household.year.plants.rowOrder, 1);
            tryVerify(() => list.contentHeight > height, 5000, "each spot has a heading");
            tryVerify(() => list.itemAtIndex(0) !== null);
            verify(list.currentSection !== "");
            compare(household.year.plants.idAt(household.year.currentRow), chosen);
            const button = named("rowOrderButton") as SpokenButton;
            compare(button.Accessible.name, household.year.plants.line);
            button.forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Return);
            compare(household.year.plants.rowOrder, 2);
            named("bands").forceActiveFocus(Qt.TabFocusReason);
            const names = household.year.plants.names;
            for (let row = 1; row < names.length; ++row)
                verify(names[row - 1].localeCompare(names[row]) <= 0, names[row]);
            keyClick(Qt.Key_O);
            compare(household.year.plants.rowOrder, 0);
            compare(list.contentHeight, height);
        }

        function test_enterOpensThePlantOfTheRow() {
            asked.clear();
            household.year.currentRow = 2;
            keyClick(Qt.Key_Return);
            compare(asked.count, 1);
            compare(asked.signalArguments[0][0], household.year.plants.idAt(2));
            page.asTable = true;
            keyClick(Qt.Key_Return);
            compare(asked.count, 1);
        }

        function test_cursorTakesTheViewWithIt() {
            keyClick(Qt.Key_Plus);
            keyClick(Qt.Key_Plus);
            compare(household.year.view.days, 92);
            compare(household.year.view.first, 0);
            for (let month = 0; month < 5; ++month)
                keyClick(Qt.Key_PageDown);
            verify(household.year.view.first > 30);
            verify(household.year.cursorDay < household.year.view.first + household.year.view.days);
            keyClick(Qt.Key_End);
            compare(household.year.view.first, household.year.dayCount - 92);
            keyClick(Qt.Key_Home);
            compare(household.year.view.first, 0);
            keyClick(Qt.Key_Minus);
            keyClick(Qt.Key_Minus);
            compare(household.year.view.days, household.year.dayCount);
        }

        function test_f6WalksThePartsOfThePage() {
            named("riskSlider").forceActiveFocus(Qt.TabFocusReason);
            for (const next of ["bands", "plantRows", "readout", "riskSlider"]) {
                keyClick(Qt.Key_F6);
                verify(hasFocus(next), next);
            }
            keyClick(Qt.Key_F6, Qt.ShiftModifier);
            verify(hasFocus("readout"));
        }

        function test_buttonAnswersReturnAndSpace() {
            named("tableButton").forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Return);
            compare(page.asTable, true);
            keyClick(Qt.Key_Escape);
            named("tableButton").forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Space);
            compare(page.asTable, true);
        }
    }
}
