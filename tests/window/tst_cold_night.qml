import QtQuick
import QtTest
import Lathhouse.Testing
import Lathhouse.Ui

// The page Round on an evening on which plants must come in.
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
        narrow: root.width < 1000
        focus: true
    }
    TestCase {
        id: tests
        name: "ColdNight"
        when: windowShown

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            root.width = 1280;
            compare(household.error, "");
            household.renew("cold");
            household.round.start();
            household.tonight.start();
            settle();
            verify(household.round.carriesLeft > 1);
            // Rows take their places with the next frame only; before that a press meets the last of them.
            tryVerify(() => rows().length > 1 && rows().every((row, at, all) => at === 0 || row.y >= all[at - 1].y + all[at - 1].height));
            page.forceActiveFocus();
        }
        function settle(): void {
            tryCompare(household.round, "working", false, 30000);
            tryCompare(household.tonight, "working", false, 30000);
            tryVerify(() => named("roundRows").count === household.round.count, 30000);
        }
        function named(name: string): var {
            return findChild(page, name);
        }
        function rows(): var {
            return Array.from(named("coldList").children).filter(item => item instanceof ColdRow);
        }

        function test_anotherLowIsNoSecondMainAct() {
            const keep = named("keepButton") as ActButton;
            verify(!keep.visible);
            mouseClick(named("otherLowButton"));
            tryVerify(() => keep.visible);
            verify((named("allInButton") as ActButton).filled);
            verify(!keep.filled, "one filled button a page");
            mouseClick(named("allInButton"));
            settle();
            compare(household.round.carriesLeft, 0);
            verify(keep.filled);
        }

        function test_theBandIsTheTitleAndGoesWithTheLastPlant() {
            const carries = household.round.carriesLeft;
            const band = named("coldBand");
            verify(band.visible);
            const title = named("coldTitle") as Text;
            verify(title.text.startsWith("Carry "));
            verify(title.text.endsWith(" plants in this evening"));
            compare(household.tonight.plants.count >= carries, true);
            compare(household.tonight.plants.at(0, "carry"), true);
            verify(named("coldList").visible);
            verify(!named("tonightPlants").visible); // They stand above the tasks.
            mouseClick(named("allInButton"));
            settle();
            compare(household.round.carriesLeft, 0);
            verify(!band.visible);
            verify(!named("coldList").visible);
            verify(named("tonightPlants").visible);
            verify(named("roundRows").activeFocus); // The keys do not go with the button.
            const carry = named("carryWords") as Text;
            verify(carry.text.startsWith("<b>What must come in tonight is in.</b>"), carry.text);
            keyClick(Qt.Key_U);
            settle();
            verify(carry.text.startsWith("<b>Carry in "), carry.text);
            compare(household.round.carriesLeft, carries); // One press, one undo.
            verify(band.visible);
            verify(title.text.endsWith(" plants in this evening"));
            keyClick(Qt.Key_Z, Qt.ControlModifier | Qt.ShiftModifier);
            settle();
            compare(household.round.carriesLeft, 0);
        }

        function test_everyPlantOutdoorsIsARowAndThoseToCarryComeFirstByTheirChance() {
            const all = rows();
            compare(all.length, household.tonight.plants.count);
            const carries = household.round.carriesLeft;
            for (let at = 0; at < all.length; ++at) {
                compare(all[at].inside, at < carries ? 1 : 0, all[at].sentence);
                compare(findChild(all[at], "coldTickBox").visible, at < carries);
                compare(all[at].firstToStay, at === carries);
            }
            // Where each goes is the round's own word, and a spot indoors.
            for (let at = 0; at < carries; ++at) {
                verify(all[at].shelter !== "", all[at].plant);
                const task = [...Array(household.round.count).keys()].find(row => household.taskOf(row).startsWith("Carry it in") && household.taskOf(row).endsWith(": " + all[at].shelter));
                verify(task !== undefined, all[at].shelter);
                verify(all[at].Accessible.name.includes("It goes to: " + all[at].shelter));
                verify(all[at].Accessible.name.endsWith("Not yet in."));
            }
            verify(named("nightCurves").Accessible.description.includes("middle"));
        }

        function test_aPressTicksOnePlantAndItsTaskInTheRound() {
            const carries = household.round.carriesLeft;
            const first = rows()[0] as ColdRow;
            mouseClick(findChild(first, "coldTick"));
            settle();
            compare(household.round.carriesLeft, carries - 1);
            compare(first.inside, 2);
            verify(first.Accessible.checked);
            verify(first.Accessible.name.endsWith("It is in."));
            compare(named("coldDone").text, "1 of " + carries + " done");
            verify((findChild(first, "coldTickBox") as TickBox).ticked);
            mouseClick(findChild(first, "coldTick")); // It is in already.
            settle();
            compare(household.round.carriesLeft, carries - 1);
            keyClick(Qt.Key_U);
            settle();
            compare(first.inside, 1);
        }

        function test_keysWalkThePlantsToCarry() {
            const all = rows();
            const carries = household.round.carriesLeft;
            all[0].forceActiveFocus();
            for (let at = 1; at < carries; ++at)
                keyClick(Qt.Key_Down);
            verify(all[carries - 1].activeFocus);
            keyClick(Qt.Key_Down); // What may stay is not ticked.
            verify(all[carries - 1].activeFocus);
            keyClick(Qt.Key_Space);
            settle();
            compare(all[carries - 1].inside, 2);
            keyClick(Qt.Key_Up);
            verify(all[carries - 2].activeFocus);
            keyClick(Qt.Key_F6);
            verify(named("roundRows").activeFocus);
        }

        function test_inLittleRoomTheRulerStandsBelowEachName() {
            root.width = 700;
            tryVerify(() => named("coldList").narrow);
            verify(!named("headLine").visible); // The band is the title.
            const first = rows()[0] as ColdRow;
            tryVerify(() => first.height > 60);
            tryVerify(() => named("roundRows").contentY < named("roundRows").originY); // From its beginning.
            tryVerify(() => { // The rows take their places with the next frame only; what is in is left as it is.
                mouseClick(findChild(first, "coldTick"));
                return first.inside === 2;
            });
            settle();
            compare(first.inside, 2);
        }
    }
}
