import QtQuick
import QtTest
import Lathhouse.Models
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
        tonight: household.tonight
        dose: household.dose
        narrow: false
        focus: true
    }
    Loader {
        id: dosing
        anchors.fill: parent
    }
    Connections {
        target: dosing.item
        ignoreUnknownSignals: true
        function onClosed(): void {
            page.forceActiveFocus();
        }
    }
    SignalSpy {
        id: asked
        target: page
        signalName: "plantAsked"
    }
    SignalSpy {
        id: logged
        target: page
        signalName: "logAsked"
    }
    SignalSpy {
        id: adding
        target: page
        signalName: "addAsked"
    }
    TestCase {
        id: tests
        name: "Round"
        when: windowShown

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            open("");
            verify(household.round.count > 5);
        }

        function open(kind: string): void {
            compare(household.error, "");
            household.renew(kind);
            household.round.start();
            household.tonight.start();
            tryCompare(household.round, "working", false, 30000);
            tryCompare(household.tonight, "working", false, 30000);
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

        function test_theWeekHasAColumnOfItsOwnInAWideWindow() {
            tryVerify(() => household.tonight.known);
            const week = findChild(page, "week") as Item;
            const tonight = findChild(page, "tonightSide") as Item;
            verify(week.mapToItem(page, 0, 0).x < tonight.x + tonight.width);
            const before = tonight.x;
            page.wide = true;
            const side = findChild(page, "weekSide") as Item;
            verify(side.visible);
            verify(tonight.x < before, "the tasks make room");
            verify(side.x >= tonight.x + tonight.width, "beside tonight");
            verify(week.mapToItem(page, 0, 0).x >= side.x);
            verify(week.mapToItem(page, week.width, 0).x <= page.width);
            page.wide = false;
            verify(!side.visible);
            verify(week.mapToItem(page, 0, 0).x < tonight.x + tonight.width);
            compare(tonight.x, before);
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

        function test_whatWasDoneStaysInWordsWhenOneComesBack() {
            keyClick(Qt.Key_Space);
            settle();
            const words = (named("said") as Text).text;
            page.visible = false;
            page.visible = true;
            page.forceActiveFocus();
            verify(named("undoBar").visible);
            compare((named("said") as Text).text, words);
            mouseClick(named("undoButton"));
            settle();
            compare(household.isDone(0), false);
        }

        /// An act of the menu, once it stands where it stays.
        function act(acts: Item, name: string): Item {
            const found = findChild(acts, "act_" + name) as Item;
            verify(found !== null, name);
            tryVerify(() => found.y > 0);
            return found;
        }

        function test_menuKeyListsTheActsOfATask() {
            const acts = named("roundActs") as RoundActs;
            keyClick(Qt.Key_Down);
            keyClick(Qt.Key_Menu);
            verify(acts.visible);
            compare(acts.Accessible.role, Accessible.PopupMenu);
            const first = findChild(acts, "act_tick") as SpokenButton;
            compare(first.Accessible.role, Accessible.MenuItem);
            verify(first.activeFocus && first.Accessible.name !== "");
            keyClick(Qt.Key_Escape);
            verify(!acts.visible);
            verify(named("roundRows").activeFocus);
            compare(household.isDone(1), false);
            keyClick(Qt.Key_F10, Qt.ShiftModifier);
            keyClick(Qt.Key_Up);
            verify((findChild(acts, "act_leave") as Item).activeFocus, "the last one");
            keyClick(Qt.Key_Return);
            verify(!acts.visible);
            verify(named("whyField").activeFocus);
            keyClick(Qt.Key_Escape);
            keyClick(Qt.Key_Menu);
            keyClick(Qt.Key_Space);
            settle();
            compare(household.isDone(1), true);
            keyClick(Qt.Key_Menu); // What is done is not put off.
            verify(findChild(acts, "act_tick") === null && findChild(acts, "act_day") === null);
            keyClick(Qt.Key_Escape);
        }

        function test_rightClickListsTheActsOfATask() {
            const acts = named("roundActs") as RoundActs;
            const task = row(2);
            mouseClick(task, task.width / 2, task.height - 20, Qt.RightButton);
            verify(acts.visible);
            compare(household.round.currentRow, 2);
            asked.clear();
            mouseClick(act(acts, "open"));
            compare(asked.count, 1);
            compare(asked.signalArguments[0][0], household.round.plantOf(2));
            mouseClick(task, task.width / 2, task.height - 20, Qt.RightButton);
            mouseClick(acts, 3, 3);
            verify(!acts.visible);
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

        function test_pagesOfTasksUpAndDown() {
            keyClick(Qt.Key_Home);
            keyClick(Qt.Key_PageDown);
            verify(household.round.currentRow > 0);
            keyClick(Qt.Key_PageUp);
            compare(household.round.currentRow, 0);
            for (let press = 0; press < household.round.count; ++press)
                keyClick(Qt.Key_PageDown);
            compare(household.round.currentRow, household.round.count - 1);
        }

        function test_clickOnTheBoxTicksAndOnTheRowOnlyChooses() {
            const second = row(1);
            const body = findChild(second, "roundBody") as Item;
            mouseClick(body, 400, body.height / 2);
            compare(household.round.currentRow, 1);
            compare(household.isDone(1), false);
            const box = findChild(second, "tickTarget") as Item;
            verify(box.width >= 44 && box.height >= 44);
            verify(!findChild(second, "tick").visible);
            mouseClick(box, box.width / 2, box.height / 2);
            compare(household.isDone(1), true);
            tryVerify(() => findChild(row(1), "tick").visible);
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

        function test_aTaskIsPutOffForSoManyDaysByKeyboardAndByMouse() {
            const before = household.round.count;
            keyClick(Qt.Key_Down);
            keyClick(Qt.Key_P, Qt.ShiftModifier);
            verify(named("later").visible);
            verify(named("laterField").activeFocus);
            for (const letter of "61")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            verify((named("failureText") as Text).text.includes("1 to 60 days"), (named("failureText") as Text).text);
            verify(named("laterField").activeFocus);
            for (const letter of "12") // What was wrong is chosen whole.
                keyClick(letter);
            keyClick(Qt.Key_Return);
            settle();
            verify(!named("later").visible);
            compare(household.round.count, before - 1);
            verify((named("said") as Text).text.startsWith("Put off to Thu 28 May: "), (named("said") as Text).text);
            keyClick(Qt.Key_U);
            settle();
            compare(household.round.count, before);
            mouseClick(named("longerButton"));
            verify(named("later").visible);
            keyClick(Qt.Key_Escape);
            verify(!named("later").visible);
            mouseClick(named("longerButton"));
            (named("laterField") as SheetField).text = "1 Mar 2027";
            keyClick(Qt.Key_Return);
            settle();
            compare(household.round.count, before - 1);
            verify((named("said") as Text).text.includes("2027"), (named("said") as Text).text);
            keyClick(Qt.Key_U);
            settle();
            mouseClick(named("longerButton"));
            keyClick("2");
            mouseClick(named("laterKeep"));
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

        function test_wTicksTheNextWashingStep() {
            const washing = [];
            for (let index = 0; index < household.round.count; ++index) {
                if (row(index).isHygiene)
                    washing.push(index);
            }
            verify(washing.length > 0);
            household.round.currentRow = 0;
            keyClick(Qt.Key_W);
            settle();
            compare(household.isDone(washing[0]), true);
            compare(household.round.currentRow, washing[0]);
            if (washing.length > 1)
                compare(household.isDone(washing[1]), false);
        }

        function test_enterAsksForThePlantAndControlLToLogForIt() {
            let first = 0;
            while (household.round.plantOf(first) === 0)
                ++first;
            household.round.currentRow = first;
            asked.clear();
            logged.clear();
            keyClick(Qt.Key_Return);
            compare(asked.count, 1);
            compare(asked.signalArguments[0][0], household.round.plantOf(first));
            keyClick(Qt.Key_L, Qt.ControlModifier);
            compare(logged.count, 1);
        }

        function test_f6GoesFromTheTasksToTonightAndBack() {
            const within = (item, part) => {
                while (item !== null && item !== part)
                    item = item.parent;
                return item === part;
            };
            verify(named("roundRows").activeFocus);
            keyClick(Qt.Key_F6);
            verify(within(root.Window.activeFocusItem, named("laterButton").parent), root.Window.activeFocusItem.objectName);
            keyClick(Qt.Key_F6);
            verify(within(root.Window.activeFocusItem, named("tonightSide")), root.Window.activeFocusItem.objectName);
            keyClick(Qt.Key_F6);
            verify(named("roundRows").activeFocus);
            keyClick(Qt.Key_F6, Qt.ShiftModifier);
            verify(within(root.Window.activeFocusItem, named("tonightSide")));
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
            const act = named("roundEmptyAct") as SheetButton;
            compare(act.text, "Add plants");
            adding.clear();
            for (let step = 0; step < 20 && !act.activeFocus; ++step)
                keyClick(Qt.Key_Tab);
            verify(act.activeFocus);
            keyClick(Qt.Key_Return);
            compare(adding.count, 1);
            named("roundRows").forceActiveFocus();
            verify(!household.round.note.includes("forecast"), "no plant waits for one");
            compare(household.tonight.missing, ""); // Without a spot outdoors no low is asked for.
            compare(named("laterButton").visible, false);
            keyClick(Qt.Key_Space);
            keyClick(Qt.Key_Down);
            open("broken");
            verify(!named("roundEmpty").visible);
            verify(named("failure").visible);
            compare((named("failureText") as Text).text, "The folder is gone.");
        }

        function test_leavingOutAsksWhyAndIsTakenBackAndDoneAgain() {
            const before = household.round.count;
            const task = household.taskOf(0);
            keyClick(Qt.Key_S);
            const field = named("whyField");
            verify(field.activeFocus);
            keyClick(Qt.Key_Return);
            verify(named("failure").visible);
            compare(household.round.count, before);
            for (const letter of "still wet")
                keyClick(letter);
            compare((field as SheetField).text, "still wet");
            keyClick(Qt.Key_Return);
            settle();
            verify(!named("leaving").visible);
            verify(!named("failure").visible);
            compare(household.round.count, before - 1);
            verify((named("said") as Text).text.startsWith("Left out: "));
            verify(named("roundRows").activeFocus);
            keyClick(Qt.Key_Z, Qt.ControlModifier);
            settle();
            compare(household.round.count, before);
            compare(household.taskOf(0), task);
            verify(named("redoButton").visible);
            keyClick(Qt.Key_Z, Qt.ControlModifier | Qt.ShiftModifier);
            settle();
            compare(household.round.count, before - 1);
            verify(!named("redoButton").visible);
            mouseClick(named("undoButton"));
            settle();
            compare(household.round.count, before);
            keyClick(Qt.Key_S);
            keyClick(Qt.Key_Escape);
            verify(!named("leaving").visible);
            verify(named("roundRows").activeFocus);
        }

        function test_withoutForecastTonightSaysHowToGiveOne() {
            verify((named("missing") as Text).text.includes("a file with ten nights"));
            verify(named("forecastFile").visible);
            (named("forecastFileTake") as SheetButton).clicked();
            verify(household.tonight.error.includes("which file"));
            const made = named("forecastMade") as SheetField;
            made.forceActiveFocus();
            keyClick("x");
            compare(household.tonight.error, "");
            (named("forecastFileTake") as SheetButton).clicked();
            verify(household.tonight.error.startsWith("Write how many days ago"));
            made.clear();
            const columns = named("forecastColumns") as SheetField;
            verify(columns.visible && columns.Accessible.name !== "");
            household.tonight.forgive();
            verify((named("carryWords") as Text).Accessible.name.startsWith("No forecast for tonight."));
            compare(findChild(page, "carryWords").plain("<b>Fig</b> & Lime"), "&lt;b>Fig&lt;/b> &amp; Lime");
            verify(!named("coldBand").visible);
            const line = named("forecastLine") as ForecastLine;
            verify(line.visible);
            const calm = findChild(line, "calmChip") as Item;
            const cloud = findChild(line, "windyChip") as Item;
            tryVerify(() => calm.mapToItem(line, 0, 0).y === cloud.mapToItem(line, 0, 0).y, 5000, "the two kinds of wind stand side by side");
            const field = findChild(line, "lowField") as SheetField;
            mouseClick(field);
            for (const letter of "62")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            verify(household.tonight.error.includes("Did you mean 6.2?"));
            verify(field.wrong);
            const instead = findChild(line, "insteadButton") as SheetButton;
            tryVerify(() => instead.visible);
            compare(instead.text, "Write 6.2");
            instead.forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Space);
            compare(field.text, "6.2");
            verify(!field.wrong && field.activeFocus && !instead.visible);
            verify(!household.tonight.hasForecast); // Nothing is kept by that.
            keyClick(Qt.Key_A, Qt.ControlModifier);
            for (const letter of "6,2")
                keyClick(letter);
            verify(!field.wrong);
            const dew = findChild(line, "dewField") as SheetField;
            dew.text = "damp";
            mouseClick(findChild(line, "clearChip"));
            mouseClick(findChild(line, "calmChip"));
            verify((findChild(line, "clearChip") as Chip).on && (findChild(line, "calmChip") as Chip).on);
            mouseClick(findChild(line, "keepButton"));
            verify(household.tonight.error.startsWith("The dew point: "));
            dew.forceActiveFocus();
            dew.selectAll();
            keyClick("1");
            compare(household.tonight.error, "");
            mouseClick(findChild(line, "keepButton"));
            tryCompare(household.tonight, "working", false, 30000);
            compare(household.tonight.hasForecast, true);
            verify(!line.visible);
            verify((named("tonightSaid") as Text).text.startsWith("Kept: a forecast of 6.2"));
            verify(household.tonight.why.includes("clear and calm"));
            // What was typed wrongly is typed again.
            const other = named("otherLowButton") as SheetButton;
            tryVerify(() => other.visible);
            other.clicked();
            tryVerify(() => field.activeFocus);
            verify(!other.visible);
            for (const letter of "4,1")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            tryCompare(household.tonight, "working", false, 30000);
            verify(!line.visible);
            verify(other.visible);
            verify(household.tonight.why.includes("4.1"), household.tonight.why);
        }

        function test_aButtonBesideTheTasksGoesToTheFieldForTonight() {
            const button = named("typeLowButton");
            verify(button.visible);
            tryVerify(() => { // The buttons take their places with the next frame only.
                mouseClick(button);
                return findChild(named("forecastLine"), "lowField").activeFocus;
            });
            for (const letter of "6,2")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            tryCompare(household.tonight, "working", false, 30000);
            tryCompare(household.round, "working", false, 30000); // It is read anew with tonight's low in it.
            // The field is gone, and with it its claim on digits and arrows.
            verify(!findChild(named("forecastLine"), "lowField").activeFocus);
            const row = household.round.currentRow;
            keyClick(Qt.Key_Down);
            compare(household.round.currentRow, row + 1);
            open("cold");
            verify(!button.visible);
        }

        function test_whatCannotBePutOffSaysWhyBeforeAndAfterThePress() {
            const later = named("laterButton") as SheetButton;
            const leave = named("skipButton") as SheetButton;
            const wash = rowOf("Wash hands");
            household.round.currentRow = wash;
            verify(later.notNow.startsWith("Washing cannot be put off"));
            compare(later.Accessible.description, later.notNow);
            verify(leave.notNow.startsWith("Washing cannot be left out"));
            mouseClick(later);
            compare(household.round.error, later.notNow);
            household.round.currentRow = rowOf("Feed");
            compare(later.notNow, "");
            verify(later.Accessible.description.startsWith("Key P."));
            keyClick(Qt.Key_Space);
            settle();
            verify(leave.notNow.startsWith("That is done already"));
        }

        function rowOf(start: string): int {
            for (let at = 0; at < household.round.count; ++at)
                if (household.taskOf(at).startsWith(start))
                    return at;
            fail(start);
            return -1;
        }

        function test_tickingASowingAsksForItsSeeds() {
            open("seeds");
            const sown = rowOf("Sow ");
            household.round.currentRow = sown;
            keyClick(Qt.Key_Space);
            verify(!household.isDone(sown));
            const field = named("sownSeedsField");
            tryVerify(() => field.activeFocus);
            keyClick(Qt.Key_Return);
            verify(household.round.error.includes("how many seeds"));
            keyClick(Qt.Key_8);
            keyClick(Qt.Key_Return);
            verify(!named("sowing").visible);
            verify(household.isDone(sown));
            settle();
            verify(household.round.said.includes("8 seeds"));
            tryVerify(() => named("roundRows").activeFocus);
            keyClick(Qt.Key_Space); // Done already.
            household.round.currentRow = rowOf("Sow ");
            keyClick(Qt.Key_Z, Qt.ControlModifier);
            settle();
            verify(!household.isDone(rowOf("Sow ")));
            keyClick(Qt.Key_Space);
            tryVerify(() => field.activeFocus);
            keyClick(Qt.Key_Escape);
            verify(!named("sowing").visible);
            verify(!household.isDone(rowOf("Sow ")));
        }

        function test_aFeedSaysItsDoseOnceFeedAndCanAreKnown() {
            dosing.setSource("qrc:/qt/qml/Lathhouse/Ui/DoseSheet.qml", { objectName: "doseSheet", dose: household.dose });
            const fed = rowOf("Feed");
            household.round.currentRow = fed;
            const button = findChild(row(fed), "doseButton") as SheetButton;
            compare(button.text, "How much?");
            keyClick(Qt.Key_D);
            verify(household.dose.open);
            const sheet = findChild(root, "doseSheet");
            tryVerify(() => findChild(sheet, "doseFeedField").activeFocus);
            for (const letter of "24-8-16")
                keyClick(letter);
            mouseClick(findChild(sheet, "can2")); // 5 L
            verify(findChild(sheet, "doseAnswer").text.includes("24-8-16 into 5"));
            keyClick(Qt.Key_Return, Qt.ControlModifier);
            verify(!household.dose.open);
            verify((findChild(row(fed), "doseWords") as Text).text.includes("24-8-16 into 5"));
            tryVerify(() => page.activeFocus);
            dosing.source = ""; // The form goes with the household that it asks.
        }

        function test_aTreatmentAsksWhetherToSpray() {
            const treated = rowOf("Treat it");
            household.round.currentRow = treated;
            keyClick(Qt.Key_B);
            verify(household.ask.open);
            compare(household.ask.what, AskModel.Spray);
            tryVerify(() => household.ask.questions.count > 10, 30000);
            verify(household.ask.title.includes("Angel's trumpet"), household.ask.title);
            verify(!household.ask.canWrite);
            household.ask.leave();
            mouseClick(findChild(row(treated), "sprayButton"));
            verify(household.ask.open);
            household.ask.leave();
            household.round.currentRow = rowOf("Feed");
            keyClick(Qt.Key_B);
            verify(!household.ask.open);
            tryCompare(household.ask, "working", false, 30000);
        }

        function test_tenNightsStandAsChartAndAsTable() {
            open("cold");
            compare(household.tonight.nights.count, 10);
            verify(named("tenNights").visible);
            keyClick(Qt.Key_T);
            verify(!named("tenNights").visible);
            verify(named("tenNightsTable").visible);
            keyClick(Qt.Key_T);
            verify(named("tenNights").visible);
            verify(household.tonight.nights.at(0, "sentence").includes("middle low"));
        }

        function test_daysToComeAndTheRiskOfTonightAreChosen() {
            open("cold");
            const week = household.tonight.week.count;
            const sixty = findChild(page, "days60") as Chip;
            verify(sixty.Accessible.name !== "" && sixty.Accessible.role === Accessible.RadioButton);
            sixty.forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Space);
            tryCompare(household.tonight, "working", false, 30000);
            compare(household.tonight.days, 60);
            verify(household.tonight.week.count > week);
            verify(!(findChild(page, "days7") as Chip).on);
            const risk = findChild(page, "tonightRisk4") as Chip;
            risk.forceActiveFocus(Qt.TabFocusReason);
            keyClick(Qt.Key_Return);
            tryCompare(household.tonight, "working", false, 30000);
            compare(household.tonight.riskStop, 4);
            verify(risk.on);
        }

        function test_rowsBeyondSixAreFoldedUntilTheyAreAskedFor() {
            const list = named("roundRows") as ListView;
            let more = null;
            for (let at = 0; at < household.round.count && more === null; ++at) {
                if (row(at).more !== "")
                    more = row(at);
            }
            verify(more !== null, "the demonstration household has a long class");
            let next = 0;
            while (next < household.round.count && !row(next).folded)
                ++next;
            verify(row(next).folded && !row(next).visible);
            compare(row(next).height, 0);
            let last = 0;
            while (row(last).more === "")
                ++last;
            const button = findChild(row(last), "moreButton") as SheetButton;
            list.positionViewAtIndex(last, ListView.End);
            verify(button.text.includes(" more"), button.text);
            mouseClick(button);
            verify(!row(next).folded && row(next).visible);
            verify(!button.visible);
        }

        function test_narrowPutsTonightAboveAndTheNightsBelow() {
            open("cold");
            page.narrow = true;
            verify(!named("tonightSide").visible);
            const list = named("roundRows") as ListView;
            list.positionViewAtBeginning();
            tryVerify(() => (named("tonightLine") as Text).text.startsWith("Tonight "));
            list.positionViewAtEnd();
            tryVerify(() => named("tenNights").visible);
            page.narrow = false;
        }
    }
}
