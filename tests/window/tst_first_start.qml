import QtQuick
import QtTest
import Lathhouse.Testing
import Lathhouse.Ui

// The first start from nothing to a household, by keyboard and by mouse.
Item {
    id: root
    width: 1280
    height: 800

    StartingHousehold {
        id: household
    }
    FirstStart {
        id: page
        anchors.fill: parent
        start: household.start
        focus: true
    }
    SignalSpy {
        id: made
        target: household.start
        signalName: "made"
    }
    SignalSpy {
        id: example
        target: household.start
        signalName: "exampleAsked"
    }
    TestCase {
        name: "FirstStart"
        when: windowShown

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            page.width = Qt.binding(() => root.width);
            household.renew();
            made.clear();
            example.clear();
            settle();
            page.forceActiveFocus();
            named("placeFindField").forceActiveFocus();
        }

        function settle(): void {
            tryCompare(household.start.place, "working", false, 30000);
            tryCompare(household.start, "working", false, 30000);
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

        /// Presses Tab until that part has the keys.
        function tabTo(name: string): void {
            for (let step = 0; step < 80; ++step) {
                if (named(name).activeFocus)
                    return;
                keyClick(Qt.Key_Tab);
            }
            fail("Tab does not reach " + name);
        }

        function press(name: string): void {
            tabTo(name);
            keyClick(Qt.Key_Space);
        }

        function test_keyboardAloneMakesAHousehold() {
            verify(named("placeFindField").activeFocus);
            type("Graz");
            settle();
            verify(household.start.place.found.count > 0);
            keyClick(Qt.Key_Down);
            verify(named("town0").activeFocus);
            keyClick(Qt.Key_Return);
            settle();
            compare(household.start.place.zone, "Europe/Vienna");
            verify(household.start.place.figures.count >= 4);
            keyClick(Qt.Key_Return, Qt.ControlModifier);
            compare(household.start.step, 1);
            verify(named("ready0").activeFocus);
            keyClick(Qt.Key_Space);
            press("ready5");
            compare(household.start.spots.spots.count, 2);
            press("spotReach");
            verify(household.start.spots.inReach);
            keyClick(Qt.Key_Return, Qt.ControlModifier);
            compare(household.start.step, 2);
            verify(named("plantFindField").activeFocus);
            type("lemon");
            keyClick(Qt.Key_Down);
            verify(named("kinds").activeFocus);
            keyClick(Qt.Key_Return);
            keyClick(Qt.Key_Return);
            compare(household.start.plants.total, 2);
            press("picked0More");
            compare(household.start.plants.total, 3);
            keyClick(Qt.Key_Return, Qt.ControlModifier);
            tryCompare(made, "count", 1, 30000);
            compare(household.written(), "Home: 2 spots, 3 plants");
        }

        /// A sill has a window; a roofed balcony has an open side.
        function test_whatIsMeasuredIsCalledWhatItIs() {
            household.start.step = 1;
            mouseClick(named("ready0"));
            compare((named("measuredButton") as SheetButton).text, "Measured at the window");
            mouseClick(named("ready5"));
            compare(household.start.spots.kind, 2);
            compare((named("measuredButton") as SheetButton).text, "Measured at its opening");
            mouseClick(named("measuredButton"));
            const width = named("measure0") as LabelledField;
            compare(width.label, "Opening, width");
            compare(width.example, "400");
            compare((named("measure1") as LabelledField).label, "Opening, height");
            width.focusField();
            keyClick(Qt.Key_2);
            compare(household.start.spots.measuresTrouble, "Opening, width: This lies from 5 to 3,000 cm.");
            compare(width.trouble, "This lies from 5 to 3,000 cm.");
            keyClick(Qt.Key_5);
            keyClick(Qt.Key_0);
            compare(width.value, "250");
            compare(width.trouble, "");
            compare(household.start.spots.windowMeasures.count, 8); // A porch has no panes, and no wall behind.
            household.start.spots.measuring = false;
        }
        function test_whatIsMeasuredInTheOpenIsWhatIsRoundIt() {
            household.start.step = 1;
            mouseClick(named("ready6"));
            const button = named("measuredButton") as SheetButton;
            compare(button.text, "Measured there");
            mouseClick(button);
            compare(household.start.spots.windowMeasures.count, 2); // What stands opposite, and what lets light through.
            compare((named("measure9") as LabelledField).example, "100");
            compare((named("measure12") as LabelledField).example, "0.5");
            mouseClick(button);
        }

        function test_inLargeTextTheHeadingIsInSightWithTheFirstField() {
            Theme.textPercent = 200;
            household.start.step = 1;
            household.start.step = 0;
            const body = named("startBody") as SheetScroll;
            const field = named("placeFindField");
            tryVerify(() => field.activeFocus && body.contentY < Theme.px(6) && field.mapToItem(body, 0, field.height).y <= body.height, 5000, "heading and field");
            Theme.textPercent = 100;
        }

        function test_mouseAloneMakesAHousehold() {
            mouseClick(named("latitudeField"));
            type("48.2");
            mouseClick(named("longitudeField"));
            type("16.4");
            settle();
            verify(named("placeFormNights").visible);
            mouseClick(named("nextStep"));
            compare(household.start.step, 1);
            mouseClick(named("ready1"));
            mouseClick(named("kind2"));
            compare(household.start.spots.kind, 2);
            mouseClick(named("facing6"));
            compare(household.start.spots.facing, 6);
            verify(household.start.spots.light !== "");
            mouseClick(named("nextStep"));
            compare(household.start.step, 2);
            mouseClick(named("kindRow0"));
            mouseClick(named("kindRow1"));
            mouseClick(named("picked0More"));
            mouseClick(named("place0"));
            compare(household.start.plants.total, 3);
            mouseClick(named("nextStep"));
            tryCompare(made, "count", 1, 30000);
            compare(household.written(), "Home: 1 spots, 3 plants");
        }

        function test_stepsCanBeLeftOutAndComeBackTo() {
            type("48.2, 16.4");
            settle();
            mouseClick(named("nextStep"));
            mouseClick(named("ready0"));
            mouseClick(named("leaveOut"));
            compare(household.start.step, 2);
            mouseClick(named("backStep"));
            compare(household.start.spots.spots.count, 1);
            mouseClick(named("step0"));
            compare(household.start.place.placed, true);
            verify(household.written() === "");
        }

        function test_whatIsWrongStandsInPlaceAndHasTheKeys() {
            mouseClick(named("nextStep"));
            compare(household.start.step, 0);
            verify(named("positionTrouble").visible);
            verify(named("latitudeField").activeFocus);
            type("95");
            mouseClick(named("longitudeField"));
            type("16");
            verify(household.start.place.positionTrouble.includes("exchanged"));
        }

        function test_theExampleIsOnePressAway() {
            press("exampleButton");
            compare(example.count, 1);
            compare(household.written(), "");
        }

        function test_narrowEverythingIsReached() {
            page.width = 560;
            type("48.2, 16.4");
            settle();
            tabTo("zoneField");
            tabTo("nextStep");
            keyClick(Qt.Key_Space);
            compare(household.start.step, 1);
            press("ready3");
            tabTo("spotWindy");
        }

        function test_everyPartHasAName() {
            for (const name of ["placeFindField", "latitudeField", "heightField", "zoneField", "step0", "step2", "nextStep", "leaveOut"])
                verify(named(name).Accessible.name !== "", name);
        }
    }
}
