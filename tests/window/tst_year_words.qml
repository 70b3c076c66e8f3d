import QtQuick
import QtTest
import Lathhouse.Models
import Lathhouse.Testing
import Lathhouse.Ui

// What the page Year says: to a screen reader, and beside the cursor; and how its bars reach a new plan.
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
    // As in Spanish.
    RiskSlider {
        id: longWords
        visible: false
        stops: ["1 de cada 50", "1 de cada 20", "1 de cada 10", "1 de cada 5", "1 de cada 3"]
        spoken: ""
        stop: 2
    }
    SignalSpy {
        id: movement
        signalName: "movingChanged"
    }
    TestCase {
        id: tests
        name: "YearWords"
        when: windowShown

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            compare(household.error, "");
            Theme.reducedMotion = false;
            household.renew();
            page.asTable = false;
            tryCompare(household.year, "planning", false);
            page.forceActiveFocus();
        }

        function cleanup() {
            Theme.reducedMotion = false;
        }

        /// What is spoken of the plants at the cursor, from the rows beside the chart.
        function spokenOfPlants(of: Item): string {
            const row = of as HarmRow;
            let said = row === null ? "" : row.Accessible.name + "\n";
            for (let at = 0; at < of.children.length; ++at)
                said += spokenOfPlants(of.children[at] as Item);
            return said;
        }
        function test_aStepOfHardeningIsToldWithItsHoursAndLight() {
            const step = /: step \d of 5: (1 hour|\d+ hours), (full shade|morning sun|where it shall stand)$/;
            keyClick(Qt.Key_Home);
            verify(spokenOfPlants(page).length > 0);
            let told = [];
            for (let day = 0; day < 200 && told.length === 0; ++day) {
                keyClick(Qt.Key_Right);
                told = spokenOfPlants(page).split("\n").filter(said => step.test(said));
            }
            verify(told.length > 0);
        }

        function named(name: string): Item {
            const found = findChild(page, name) as Item;
            verify(found !== null, name);
            return found;
        }

        /// The labels of the chart, shown or not; a list of QML's own cannot be walked with `of`.
        function written(): var {
            const children = (findChild(page, "labels") as Item).children;
            const labels = [];
            for (let child = 0; child < children.length; ++child)
                labels.push(children[child]);
            return labels;
        }

        function bar(row: int): YearBar {
            return findChild((named("plantRows") as ListView).itemAtIndex(row), "bar") as YearBar;
        }

        /// The label that begins so, whether shown or not.
        function label(begin: string): Item {
            for (const child of written()) {
                if (child["words"].startsWith(begin))
                    return child;
            }
            fail("no label " + begin);
            return null;
        }

        function test_wordsOfTheRiskDoNotTouch() {
            verify(longWords.implicitWidth > Theme.px(300));
            verify(longWords.allNamed);
            longWords.width = Theme.px(300);
            verify(!longWords.allNamed);
            verify(longWords.availableWidth >= 2 * longWords.widest + Theme.px(4), "every other one has room");
        }

        function test_controlsHaveNames_data() {
            return [
                { tag: "riskSlider", role: Accessible.Slider },
                { tag: "tableButton", role: Accessible.Button },
                { tag: "bands", role: Accessible.Chart },
                { tag: "plantRows", role: Accessible.List },
                { tag: "readout", role: Accessible.Grouping }
            ];
        }
        function test_controlsHaveNames(data: var) {
            const control = named(data.tag);
            compare(control.Accessible.role, data.role);
            verify(control.Accessible.name.length > 4);
        }

        function test_everyRowIsASentence() {
            const list = named("plantRows") as ListView;
            verify(list.count >= 14);
            for (let row = 0; row < list.count; ++row) {
                list.positionViewAtIndex(row, ListView.Contain);
                const item = list.itemAtIndex(row) as PlantRow;
                compare(item.Accessible.role, Accessible.ListItem);
                verify(item.Accessible.name.startsWith(item.name), item.Accessible.name);
                verify(item.Accessible.name.endsWith("."), item.Accessible.name);
            }
        }

        function test_whatIsReadAloudFollowsThePause() {
            const chart = named("bands");
            keyClick(Qt.Key_Right);
            verify(chart.Accessible.description !== household.year.cursor.sentence);
            tryCompare(chart.Accessible, "description", household.year.cursor.sentence);
        }

        function test_wordsStepAsideForTheCursor() {
            const bands = named("bands") as YearBands;
            const words = label("last frost");
            compare(words.visible, true);
            const home = words.x;
            const middle = words.x + words.width / 2;
            let reached = 0;
            for (let day = 0; day < household.year.dayCount; day += 4) {
                household.year.cursorDay = day;
                waitForRendering(bands, 20);
                const at = bands.cursorX;
                for (const child of written()) {
                    if (child.visible)
                        tryVerify(() => !child.visible || at <= child.x || at >= child.x + child.width, 5000, child["words"] + " under the cursor");
                }
                if (Math.abs(at - middle) < 20)
                    reached += words.x !== home ? 1 : 0;
            }
            verify(reached > 0);
            household.year.cursorDay = 0;
            tryCompare(words, "x", home);
        }

        function test_wordsNeverMeet() {
            const shown = [];
            for (const child of written()) {
                if (child.visible)
                    shown.push(child);
            }
            verify(shown.length >= 6);
            // Halos may touch: three pixels around each, and what rounding adds.
            const halos = 8;
            for (const one of shown) {
                for (const other of shown) {
                    const apart = one === other || one.x + one.width <= other.x + halos || other.x + other.width <= one.x + halos
                        || one.y + one.height <= other.y + halos || other.y + other.height <= one.y + halos;
                    verify(apart, one["words"] + " | " + other["words"]);
                }
            }
        }

        /// The words on either frost end before the date of the other, in a smaller window too.
        function test_frostDatesDoNotStrikeEachOther_data() {
            return [{ tag: "1280", less: 0 }, { tag: "1100", less: 180 }, { tag: "1024", less: 256 }];
        }
        function test_frostDatesDoNotStrikeEachOther(data: var) {
            page.anchors.rightMargin = data.less;
            const near = 16;
            const apart = () => {
                const last = label("last frost");
                const first = label("first frost");
                return last.visible && first.visible && last.x + last.width <= first.x + first.width + near && first.x >= last.x - near;
            };
            waitForRendering(named("bands"), 200);
            tryVerify(apart, 5000);
            page.anchors.rightMargin = 0;
        }

        function test_barsMoveToANewPlan() {
            const first = bar(0);
            compare(first.moving, false);
            const before = household.goesOut(0);
            movement.target = first;
            movement.clear();
            household.year.riskStop = 4;
            // It sets out and arrives.
            tryCompare(movement, "count", 2);
            compare(first.moving, false);
            verify(household.goesOut(0) < before);
            compare(first.marked, false);
        }

        function test_withReducedMotionBarsAreMarkedInstead() {
            Theme.reducedMotion = true;
            const first = bar(0);
            compare(first.marked, false);
            household.year.riskStop = 4;
            tryCompare(first, "marked", true);
            compare(first.moving, false);
            tryCompare(first, "marked", false);
        }
    }
}
