import QtQuick
import QtTest
import Lathhouse.Models
import Lathhouse.Testing
import Lathhouse.Ui

// What is asked of a plant by hand, from its page: by keyboard and by mouse.
Item {
    id: root
    width: 1256
    height: 744

    DemonstrationRound {
        id: household
    }
    PlantsPage {
        id: page
        anchors.fill: parent
        plants: household.plants
        plant: household.plant
        ask: household.ask
        narrow: false
        wide: false
        focus: true
    }
    Loader {
        id: asking
        anchors.fill: parent
    }
    Connections {
        target: asking.item
        ignoreUnknownSignals: true
        function onClosed(): void {
            page.back();
        }
    }
    Component {
        id: span

        AskLine {
            kind: AskModel.Dated
            words: "Into deeper shade outdoors"
            date: "Wednesday 30 September to Tuesday 6 October"
            sentence: words
        }
    }
    TestCase {
        name: "Ask"
        when: windowShown

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            root.width = 1256;
            asking.source = "";
            household.renew("harm");
            household.plants.start();
            settle();
            household.plants.openId(household.plants.shownId(2));
            settle();
            asking.setSource("qrc:/qt/qml/Lathhouse/Ui/AskSheet.qml", {
                objectName: "askSheet",
                ask: household.ask
            });
            page.back();
            named("plantPage").forceActiveFocus();
        }
        function cleanup() {
            asking.source = ""; // The form goes with the household that it asks.
        }

        function named(name: string): Item {
            const found = findChild(root, name) as Item;
            verify(found !== null, name);
            return found;
        }
        function settle(): void {
            tryCompare(household.plants, "working", false, 30000);
            tryCompare(household.plant, "working", false, 30000);
            tryCompare(household.ask, "working", false, 30000);
        }
        function headline(): string {
            return (named("askHeadline") as Text).text;
        }
        function type(words: string): void {
            for (const letter of words)
                keyClick(letter);
        }

        function test_aSprayIsAskedOfAnotherKind() {
            keyClick(Qt.Key_S);
            settle();
            const field = named("ask100Field") as SheetField;
            field.forceActiveFocus();
            type("no such");
            verify(field.wrong);
            keyClick(Qt.Key_A, Qt.ControlModifier);
            type("boston fern");
            verify(!field.wrong);
            verify((named("askWhyNot") as Text).text.includes("not among yours"));
        }

        function test_aColdNightIsAskedOfAnotherKind() {
            mouseClick(named("askCold"));
            settle();
            tryVerify(() => named("ask0Field").activeFocus);
            type("4");
            named("ask6Field").forceActiveFocus();
            type("peace lily");
            compare(household.ask.lines.at(0, "words"), "Peace lily");
            verify(!named("askWrite").visible);
            verify((named("askWhyNot") as Text).text.includes("not among yours"));
            keyClick(Qt.Key_A, Qt.ControlModifier);
            type("no such");
            verify((named("ask6Field") as SheetField).wrong);
        }

        function test_aColdNightByKeysAloneIsWrittenAndUndone() {
            keyClick(Qt.Key_C);
            settle();
            compare(household.ask.what, AskModel.AfterCold);
            tryVerify(() => named("ask0Field").activeFocus);
            const events = household.plant.historyCount;
            type("-9");
            verify(headline().includes("Death"), headline());
            keyClick(Qt.Key_Return, Qt.ControlModifier);
            verify(!household.ask.open);
            settle();
            compare(household.plant.historyCount, events + 1);
            verify(household.plants.said.includes("written down"), household.plants.said);
            tryVerify(() => page.activeFocus);
            keyClick(Qt.Key_Z, Qt.ControlModifier);
            settle();
            compare(household.plant.historyCount, events);
        }

        function test_escapeClosesAndLettersStayInTheForm() {
            keyClick(Qt.Key_C);
            settle();
            tryVerify(() => named("ask0Field").activeFocus);
            keyClick(Qt.Key_M); // Not the panel of moves.
            compare(findChild(root, "movePanel"), null);
            keyClick(Qt.Key_Escape);
            verify(!household.ask.open);
            tryVerify(() => page.activeFocus);
            verify(named("plantPage").visible);
        }

        function test_signsByMouseAndTheAnswerStaysInSight() {
            mouseClick(named("askDamage"));
            settle();
            compare(household.ask.what, AskModel.Damage);
            verify(headline() !== "");
            compare((named("askWarning") as Text).text, "Do not eat.");
            const body = named("askBody") as Flickable;
            const tick = named("ask8Tick1") as TickRow;
            verify(!tick.on);
            body.contentY = body.contentHeight - body.height; // Down to the last of the signs.
            waitForRendering(root);
            const answer = named("askAnswer");
            verify(answer.mapToItem(body, 0, 0).y < body.height);
            body.contentY = tick.mapToItem(body.contentItem, 0, 0).y - 40;
            waitForRendering(root);
            mouseClick(tick);
            verify(tick.on);
            mouseClick(named("ask8Tick0"));
            verify(headline().includes("hormone weed-killers"), headline());
            keyClick(Qt.Key_Space);
            verify(!(named("ask8Tick0") as TickRow).on); // The keys stayed with it.
            mouseClick(named("askClose"));
            verify(!household.ask.open);
        }

        function test_yesAndNoByArrows() {
            keyClick(Qt.Key_S);
            settle();
            tryVerify(() => named("ask0Chip0").activeFocus);
            keyClick(Qt.Key_Right);
            tryVerify(() => named("ask0Chip1").activeFocus);
            verify((named("ask0Chip1") as Chip).on);
            keyClick(Qt.Key_Left);
            verify((named("ask0Chip0") as Chip).on);
            keyClick(Qt.Key_Tab); // One stop for all of them.
            tryVerify(() => named("ask1Field").activeFocus);
            verify(!named("askWrite").visible);
            const top = (named("askBody") as Flickable).contentY;
            keyClick(Qt.Key_PageDown);
            verify((named("askBody") as Flickable).contentY > top);
        }

        function test_whatIsWrongHasTheKeys() {
            keyClick(Qt.Key_H);
            settle();
            const pot = household.ask.questions.at(4, "key");
            compare(pot, 4);
            const field = named("ask4Field") as SheetField;
            field.forceActiveFocus();
            field.selectAll();
            type("x");
            verify(field.wrong);
            named("askClose").forceActiveFocus();
            keyClick(Qt.Key_Return, Qt.ControlModifier);
            verify(household.ask.open);
            tryVerify(() => field.activeFocus);
        }

        function test_formsWithoutAnythingToWriteCloseByEscape_data() {
            return [
                {
                    tag: "course",
                    key: Qt.Key_P,
                    button: "askCourse",
                    what: AskModel.Course,
                    head: "Clean: nothing found"
                },
                {
                    tag: "water",
                    key: Qt.Key_W,
                    button: "askWater",
                    what: AskModel.Water,
                    head: "Look at the mix"
                },
                {
                    tag: "harden",
                    key: Qt.Key_O,
                    button: "askHarden",
                    what: AskModel.Harden,
                    head: "Neither goes out nor comes in" // Of the plant that is open here.
                }
            ];
        }
        function test_formsWithoutAnythingToWriteCloseByEscape(row) {
            keyClick(row.key);
            settle();
            compare(household.ask.what, row.what);
            tryVerify(() => headline().startsWith(row.head), 5000, headline());
            verify(!named("askWrite").visible);
            keyClick(Qt.Key_Escape);
            verify(!household.ask.open);
            mouseClick(named(row.button));
            settle();
            compare(household.ask.what, row.what);
        }

        function test_aSpanOfDaysHasItsRoom() {
            for (const width of [360, 900]) {
                const line = createTemporaryObject(span, root, {
                    width: width
                }) as AskLine;
                verify(line.implicitHeight >= line.childrenRect.height, width);
            }
        }

        function test_narrowWindowsHaveTheAnswerBelow() {
            root.width = 620;
            keyClick(Qt.Key_C);
            settle();
            type("2");
            waitForRendering(root);
            compare(named("askAnswer").x, 0);
            verify(named("askAnswer").y > named("ask5").y);
        }
    }
}
