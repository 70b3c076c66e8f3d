import QtQuick
import QtTest
import Lathhouse.Models
import Lathhouse.Testing
import Lathhouse.Ui

// Changing the household itself, by keyboard and by mouse.
Item {
    id: root
    width: 1280
    height: 744

    MendedHousehold {
        id: household
    }
    MendSheet {
        id: sheet
        anchors.fill: parent
        mend: household.mend
        focus: true
    }
    SignalSpy {
        id: closed
        target: sheet
        signalName: "closed"
    }
    TestCase {
        name: "Mend"
        when: windowShown

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            household.renew();
            closed.clear();
        }

        function settle(): void {
            tryCompare(household.mend, "working", false, 30000);
        }

        function named(name: string): Item {
            const found = findChild(sheet, name) as Item;
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

        function test_plantsAreAddedByKeyboard() {
            const before = household.plants();
            household.mend.addPlants();
            settle();
            compare(household.mend.title, "Add plants");
            verify(named("plantFindField").activeFocus);
            type("basil");
            keyClick(Qt.Key_Return);
            keyClick(Qt.Key_Return);
            keyClick(Qt.Key_Return, Qt.ControlModifier);
            settle();
            compare(household.plants(), before + 2);
            compare(household.mend.said, "Added 2 plants.");
            compare(closed.count, 1);
            verify(household.undo());
            compare(household.plants(), before);
        }

        function test_aKindIsLookedAtByKeyboardAndPicked() {
            const before = household.plants();
            household.mend.addPlants();
            settle();
            type("oleander");
            keyClick(Qt.Key_Down);
            verify(named("kinds").activeFocus);
            keyClick(Qt.Key_L);
            tryVerify(() => findChild(sheet, "kindPick") !== null && named("kindPick").activeFocus);
            compare((named("kindTitle") as Text).text, "Oleander");
            verify((named("kindBotanical") as Text).text.includes("Nerium oleander"));
            verify(named("kindHazard").visible);
            compare(household.mend.plants.total, 0);
            keyClick(Qt.Key_Escape);
            verify(!household.mend.plants.looked.open);
            compare(household.mend.form, MendModel.AddPlants);
            tryVerify(() => named("kinds").activeFocus);
            compare(household.mend.plants.total, 0);
            keyClick(Qt.Key_L);
            tryVerify(() => findChild(sheet, "kindPick") !== null && named("kindPick").activeFocus);
            // Control and Enter is for this sheet, not for the form below.
            keyClick(Qt.Key_Tab);
            verify(named("kindClose").activeFocus);
            keyClick(Qt.Key_Return, Qt.ControlModifier);
            compare(household.mend.form, MendModel.AddPlants);
            verify(!household.mend.plants.looked.open);
            tryVerify(() => named("kinds").activeFocus);
            keyClick(Qt.Key_L);
            tryVerify(() => findChild(sheet, "kindPick") !== null && named("kindPick").activeFocus);
            keyClick(Qt.Key_Return);
            compare(household.mend.plants.total, 1);
            tryVerify(() => findChild(sheet, "kindPick") === null);
            verify(named("kinds").activeFocus);
            keyClick(Qt.Key_Return, Qt.ControlModifier);
            settle();
            compare(household.plants(), before + 1);
        }

        function test_kindsAreListedByGroupAndEvidence() {
            household.mend.addPlants();
            settle();
            const kinds = named("kinds") as ListView;
            const all = kinds.count;
            verify(all > 200);
            mouseClick(named("kindNarrow"));
            tryVerify(() => named("kindGroup1").visible);
            const filter = household.mend.plants.filter;
            let ferns = 1;
            while (ferns < filter.groups.length && filter.groups[ferns] !== "ferns")
                ++ferns;
            verify(ferns < filter.groups.length);
            waitForRendering(sheet); // The chips have come between.
            mouseClick(named("kindGroup1"));
            compare(filter.group, 1);
            verify(kinds.count > 0 && kinds.count < all);
            named("kindGroup" + ferns).forceActiveFocus();
            keyClick(Qt.Key_Space);
            const some = kinds.count;
            verify(some > 0 && some < all);
            verify((named("kindGroup" + ferns) as Chip).on);
            named("kindEvidence5").forceActiveFocus();
            keyClick(Qt.Key_Space);
            verify(kinds.count <= some);
            compare(filter.evidence, 5);
            named("kindNarrow").forceActiveFocus();
            keyClick(Qt.Key_Space);
            compare(kinds.count, all);
            verify(!named("kindGroup1").visible);
        }

        function test_aKindIsLookedAtByMouse() {
            household.mend.addPlants();
            settle();
            type("lemon");
            mouseClick(named("kindLook0"));
            tryVerify(() => findChild(sheet, "kindPick") !== null && named("kindPick").visible);
            compare(household.mend.plants.total, 0);
            compare((named("kindTitle") as Text).text, household.mend.plants.found.at(0, "words"));
            // The list below it takes no press.
            mouseClick(named("kindRow0"));
            compare(household.mend.plants.total, 0);
            mouseClick(named("kindPick"));
            compare(household.mend.plants.total, 1);
            verify(!household.mend.plants.looked.open);
            mouseClick(named("kindLook0"));
            tryVerify(() => findChild(sheet, "kindClose") !== null && named("kindClose").visible);
            mouseClick(named("kindClose"));
            compare(household.mend.plants.total, 1);
            tryVerify(() => findChild(sheet, "kindPick") === null);
            // It goes with the form.
            household.mend.plants.look(0);
            verify(household.mend.plants.looked.open);
            household.mend.leave();
            verify(!household.mend.plants.looked.open);
            tryVerify(() => findChild(sheet, "kindPick") === null);
        }

        function test_aSpotIsChangedByMouse() {
            household.mend.editSpot(0);
            settle();
            verify(named("spotNameField").activeFocus);
            keyClick(Qt.Key_A, Qt.ControlModifier);
            keyClick(Qt.Key_Backspace);
            mouseClick(named("mendKeep"));
            compare(household.mend.form, MendModel.EditSpot);
            verify(named("spotNameField").activeFocus);
            type("Bay");
            mouseClick(named("mendKeep"));
            settle();
            compare(household.nameOfSpot(0), "Bay");
            compare(household.mend.form, MendModel.None);
        }

        function test_aPlantIsChangedByKeyboard() {
            household.mend.editPlant(1);
            settle();
            verify(named("plantNameField").activeFocus);
            type("Old fig");
            tabTo("plantDamageField");
            keyClick(Qt.Key_A, Qt.ControlModifier);
            type("99");
            keyClick(Qt.Key_Return, Qt.ControlModifier);
            compare(household.mend.form, MendModel.EditPlant);
            verify(named("linesTrouble").visible);
            keyClick(Qt.Key_Escape);
            compare(household.mend.form, MendModel.None);
            verify(household.nameOfPlant(1) !== "Old fig");
        }

        function test_whatCannotGoSaysWhy() {
            household.mend.editSpot(0);
            settle();
            tabTo("mendRemove");
            keyClick(Qt.Key_Space);
            settle();
            verify(named("mendTrouble").visible);
            verify(household.mend.error.includes("move it first"));
        }

        function test_aLotWithoutACropIsAskedFor() {
            household.mend.addLot();
            settle();
            verify(named("lotCropField").activeFocus);
            keyClick(Qt.Key_Return, Qt.ControlModifier);
            compare(household.mend.lot.troubleField, 0);
            type("zinnia");
            keyClick(Qt.Key_Down);
            keyClick(Qt.Key_Return);
            verify(named("lotNameField").activeFocus);
            keyClick(Qt.Key_Return, Qt.ControlModifier);
            settle();
            compare(household.mend.form, MendModel.None);
        }

        function test_enterTakesTheCropAndThenKeepsTheLot() {
            household.mend.addLot();
            settle();
            type("zinnia");
            keyClick(Qt.Key_Return);
            verify(named("lotNameField").activeFocus);
            keyClick(Qt.Key_Return);
            settle();
            compare(household.mend.form, MendModel.None);
        }

        function test_aPlantIsKeptAtASpotByKeyboard() {
            household.mend.pinPlant(1);
            settle();
            compare(household.mend.form, MendModel.PinPlant);
            const stands = household.mend.pin.spot;
            verify(named("pinSpot" + stands).activeFocus);
            const other = stands === 0 ? 1 : stands - 1;
            keyClick(stands === 0 ? Qt.Key_Tab : Qt.Key_Backtab);
            verify(named("pinSpot" + other).activeFocus);
            keyClick(Qt.Key_Space);
            compare(household.mend.pin.spot, other);
            tabTo("pinFromField");
            type("1.2.2027");
            keyClick(Qt.Key_Return, Qt.ControlModifier);
            compare(household.mend.form, MendModel.PinPlant);
            verify(named("pinToField").activeFocus);
            compare(household.mend.pin.troubleField, 2);
            type("28.2.2027");
            compare(household.mend.pin.troubleField, -1);
            keyClick(Qt.Key_Return, Qt.ControlModifier);
            settle();
            compare(household.mend.form, MendModel.None);
            verify(household.mend.said.includes("is kept at " + household.nameOfSpot(other) + " from 1 February 2027 to 28 February 2027"));
            household.mend.pinPlant(1);
            settle();
            compare(household.mend.pin.kept.length, 1);
            verify(household.undo());
        }

        function test_aPlantIsPinnedAndUnpinnedByMouse() {
            household.mend.pinPlant(2);
            settle();
            verify(!named("mendUnpin").visible);
            mouseClick(named("pinSpot0"));
            mouseClick(named("mendKeep"));
            settle();
            compare(household.mend.form, MendModel.None);
            household.mend.pinPlant(2);
            settle();
            verify(named("pinKept0").visible);
            mouseClick(named("pinSpot0"));
            mouseClick(named("mendKeep"));
            verify(named("pinSpotTrouble").visible);
            mouseClick(named("mendUnpin"));
            settle();
            verify(household.mend.said.includes("pinned no longer"));
            compare(household.mend.form, MendModel.None);
        }
    }
}
