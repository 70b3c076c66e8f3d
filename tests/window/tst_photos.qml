import QtQuick
import QtTest
import Lathhouse.Models
import Lathhouse.Testing
import Lathhouse.Ui

// Photographs of a plant by mouse and by keyboard: walking, side by side, measuring.
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
        narrow: false
        wide: false
        focus: true
    }
    TestCase {
        name: "Photos"
        when: windowShown

        readonly property int lemon: 3

        function init(): void {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            root.width = 1256;
            root.height = 744;
            page.narrow = false;
            Theme.textPercent = 100;
            Theme.scheme = "light";
            household.renew("photos");
            household.plants.start();
            household.plants.openId(lemon);
            settle();
            named("plantPage").forceActiveFocus();
        }
        function cleanup(): void {
            Theme.scheme = "light";
            Theme.textPercent = 100;
        }
        function named(name: string): Item {
            const found = findChild(page, name) as Item;
            verify(found !== null, name);
            return found;
        }
        /// What stands below the edge of the panel is moved into sight: the panel follows the keys.
        function reach(name: string): Item {
            const item = named(name);
            item.forceActiveFocus();
            wait(50); // Rows that are laid out anew stand where they stay.
            return item;
        }
        function settle(): void {
            tryCompare(household.plants, "working", false, 30000);
            tryCompare(household.plant, "working", false, 30000);
            tryCompare(household.plant.album, "working", false, 30000);
            tryCompare(household.plant.measure, "working", false, 30000);
        }
        // Where pictures are written to be looked at; nowhere in the usual run.
        readonly property string pictureFolder: ""
        function picture(name: string): void {
            if (pictureFolder !== "")
                grabImage(page).save(pictureFolder + "/" + name + ".png");
        }
        function openMeasuring(): void {
            keyClick(Qt.Key_Return);
            settle();
            tryCompare(named("photoPage"), "activeFocus", true);
            keyClick(Qt.Key_M);
            settle();
            verify(named("measurePage").visible);
            tryCompare(named("measurePicture"), "activeFocus", true);
        }

        function test_stripIsWalkedAndAPhotographOpened(): void {
            const strip = named("photoStrip") as PhotoStrip;
            const last = household.plant.photos.count - 1;
            verify(last > 2);
            compare(strip.current, last);
            keyClick(Qt.Key_Left);
            compare(strip.current, last - 1);
            keyClick(Qt.Key_Right);
            keyClick(Qt.Key_Right);
            compare(strip.current, last);
            picture("strip");
            keyClick(Qt.Key_Return);
            settle();
            verify(named("photoPage").visible);
            verify(!named("plantPage").visible);
            tryCompare(named("photoPage"), "activeFocus", true);
            compare(household.plant.album.current, household.plant.album.count - 1);
            keyClick(Qt.Key_Left);
            settle();
            compare(household.plant.album.current, household.plant.album.count - 2);
            picture("photo");
            keyClick(Qt.Key_Escape);
            verify(named("plantPage").visible);
            tryCompare(named("plantPage"), "activeFocus", true);
            mouseClick(named("stripPhoto0"));
            settle();
            verify(named("photoPage").visible);
            compare(household.plant.album.current, 0);
        }

        function test_stripScrollsSidewaysInANarrowPage(): void {
            root.width = 776;
            page.narrow = true;
            settle();
            const strip = named("stripPhotos") as Flickable;
            const count = household.plant.photos.count;
            verify(count > 6, count);
            tryVerify(() => strip.contentWidth > strip.width + 100);
            const seen = place => {
                const photo = named("stripPhoto" + place);
                return photo.x >= strip.contentX - 1 && photo.x + photo.width <= strip.contentX + strip.width + 1;
            };
            tryVerify(() => seen(count - 1), 5000, "the newest");
            verify(!seen(0));
            named("plantPage").forceActiveFocus();
            for (let step = 1; step < count; ++step)
                keyClick(Qt.Key_Left);
            compare((named("photoStrip") as PhotoStrip).current, 0);
            verify(seen(0));
            const at = named("stripPhoto1");
            mouseDrag(at, 100, 40, -90, 0);
            verify(strip.contentX > 0, strip.contentX);
            verify(named("plantPage").visible, "what is drawn along is not opened");
        }

        function test_aPhotographGoesOutOfTheListsAndComesBack(): void {
            keyClick(Qt.Key_Return);
            settle();
            const count = household.plant.album.count;
            mouseClick(named("withdrawPhoto"));
            settle();
            tryCompare(household.plant.album, "count", count - 1);
            verify(household.plants.said.includes("out of the lists"));
            household.plants.undo();
            settle();
            tryCompare(household.plant.album, "count", count);
            named("withdrawPhoto").forceActiveFocus();
            keyClick(Qt.Key_Space);
            settle();
            tryCompare(household.plant.album, "count", count - 1);
        }

        function test_aPhotographIsDatedByHand(): void {
            keyClick(Qt.Key_Return);
            settle();
            const place = household.plant.album.current;
            verify(place > 1);
            mouseClick(named("datePhoto"));
            verify(named("takenField").activeFocus);
            for (const letter of "soon")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            verify(household.plant.album.error.includes("soon"));
            keyClick(Qt.Key_A, Qt.ControlModifier);
            for (const letter of "2001-02-03 8:05")
                keyClick(letter);
            mouseClick(named("keepTaken"));
            settle();
            compare(household.plant.album.date, "3 February 2001");
            compare(household.plant.album.current, 0);
            verify(!named("takenField").visible);
            keyClick(Qt.Key_Z, Qt.ControlModifier);
            settle();
            compare(household.plant.album.current, place);
        }

        function test_photographsAreWrittenOut(): void {
            keyClick(Qt.Key_B);
            settle();
            mouseClick(named("writePhotos"));
            verify(named("photoExport").visible);
            const form = named("photoExport") as PhotoExport;
            compare(form.what, PhotoExportModel.Comparison);
            mouseClick(reach("writeOutButton"));
            verify((household.plant.leaving as PhotoExportModel).error.includes("which picture"));
            compare((named("writeToField") as SheetField).wrong, true);
            mouseClick(reach("writeOut0"));
            compare(household.plant.leaving.error, "");
            tryVerify(() => named("writePlace0").visible);
            named("writeToField").forceActiveFocus();
            for (const letter of "/no/such/place")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            tryCompare(household.plant.leaving, "working", false, 30000);
            verify(household.plant.leaving.error !== ""); // The demonstration has no folder.
        }

        function test_twoLieSideBySideWithWhatChanged(): void {
            keyClick(Qt.Key_B);
            settle();
            verify(named("otherPhoto").visible);
            verify(household.plant.album.changes.count > 0);
            tryCompare(named("photoPage"), "activeFocus", true);
            const before = household.plant.album.other;
            keyClick(Qt.Key_Right, Qt.ShiftModifier);
            settle();
            compare(household.plant.album.other, before + 1);
            picture("side-by-side");
            const other = named("otherPhoto");
            const looked = named("photo");
            verify(household.plant.album.other < household.plant.album.current ? other.x < looked.x : looked.x < other.x);
            const place = household.plant.album.current;
            household.plant.album.current = 0; // The oldest: it is the other that is newer now.
            settle();
            verify(household.plant.album.other > household.plant.album.current);
            verify(looked.x < other.x);
            household.plant.album.current = place;
            settle();
            keyClick(Qt.Key_B);
            verify(!named("otherPhoto").visible);
            keyClick(Qt.Key_Escape);
            verify(named("plantPage").visible);
        }

        function test_aPhotographStandsForItsPlantAndIsTakenOff(): void {
            keyClick(Qt.Key_Return);
            settle();
            const count = household.plant.album.count;
            mouseClick(named("choosePicture"));
            settle();
            verify(household.plant.album.isPicture);
            mouseClick(named("takeOffPhoto"));
            settle();
            compare(household.plant.album.count, count - 1);
            keyClick(Qt.Key_Z, Qt.ControlModifier);
            settle();
            compare(household.plant.album.count, count);
        }

        function test_lengthIsMeasuredByMouse(): void {
            openMeasuring();
            const field = named("knownSize") as SheetField;
            mouseClick(field);
            keyClick(Qt.Key_4);
            keyClick(Qt.Key_0);
            keyClick(Qt.Key_Return);
            verify(named("measurePicture").activeFocus);
            const pointer = named("measurePointer");
            const pane = named("measurePane") as PhotoPane;
            const scale = pane.place.width / 640;
            // Ends of the ruler, the pot's rim and the highest leaf, as pixels of the drawn photograph.
            for (const of of [[351, 450], [351, 312], [281, 374], [281, 71]])
                mouseClick(pointer, pane.x + pane.place.x + of[0] * scale, pane.y + pane.place.y + of[1] * scale);
            const measure = household.plant.measure;
            verify(measure.canKeep);
            fuzzyCompare(parseFloat(measure.result), 88, 4); // What the story tells of the lemon that day.
            verify(named("glass").visible);
            picture("measure-light");
            const result = measure.result;
            const top = Qt.point(pane.x + pane.place.x + 281 * scale, pane.y + pane.place.y + 71 * scale);
            mousePress(pointer, top.x, top.y);
            mouseMove(pointer, top.x, top.y + 60);
            mouseRelease(pointer, top.x, top.y + 60);
            verify(measure.result !== result);
            Theme.scheme = "dark";
            picture("measure-dark");
            mouseClick(named("keepReading"));
            settle();
            verify(!named("measurePage").visible);
            verify(household.plants.said.indexOf("in the photograph of") > 0);
        }

        function test_lengthIsMeasuredByKeysAlone(): void {
            openMeasuring();
            const measure = household.plant.measure;
            measure.knownSize = "10";
            keyClick(Qt.Key_Left, Qt.ShiftModifier);
            compare(measure.at(0).x, 310);
            keyClick(Qt.Key_Up);
            compare(measure.at(0).y, 239);
            keyClick(Qt.Key_Tab);
            compare(measure.chosen, 1);
            keyClick(Qt.Key_Right, Qt.ShiftModifier);
            keyClick(Qt.Key_Tab);
            keyClick(Qt.Key_Up, Qt.ShiftModifier);
            keyClick(Qt.Key_Tab);
            keyClick(Qt.Key_Down, Qt.ShiftModifier);
            verify(measure.canKeep);
            keyClick(Qt.Key_Backspace);
            verify(!measure.canKeep);
            keyClick(Qt.Key_Tab);
            verify(!named("measurePicture").activeFocus); // Tab leaves the picture after the last point.
            keyClick(Qt.Key_Escape);
            verify(named("photoPage").visible);
        }

        function test_greenShareOfAnOutline(): void {
            openMeasuring();
            mouseClick(named("modeGreen"));
            const pointer = named("measurePointer");
            for (const of of [[0.25, 0.2], [0.6, 0.2], [0.6, 0.6], [0.25, 0.6]])
                mouseClick(pointer, pointer.width * of[0], pointer.height * of[1]);
            settle();
            compare(household.plant.measure.corners, 4);
            verify(household.plant.measure.result.indexOf("green") > 0);
            picture("measure-green");
        }

        function test_aGreyPatchIsMarkedByMouse(): void {
            openMeasuring();
            mouseClick(named("modeGrey"));
            verify(!named("typedRow").visible); // Of a patch there is nothing to type, nor to keep.
            verify(!named("keepReading").visible);
            const pointer = named("measurePointer");
            for (const of of [[0.02, 0.02], [0.1, 0.02], [0.1, 0.1]])
                mouseClick(pointer, pointer.width * of[0], pointer.height * of[1]);
            settle();
            compare(household.plant.measure.corners, 3);
            verify(named("glass").visible);
            verify(household.plant.measure.advice.includes("Under Green share"));
            mouseClick(named("modeGreen"));
            verify(named("typedRow").visible);
            for (const of of [[0.25, 0.2], [0.6, 0.2], [0.6, 0.6], [0.25, 0.6]])
                mouseClick(pointer, pointer.width * of[0], pointer.height * of[1]);
            settle();
            verify((named("measureRange") as Text).text.includes("grey patch"));
            picture("measure-grey");
        }

        function test_whatIsTypedWronglyIsSaidInPlace(): void {
            openMeasuring();
            const typed = named("typedValue") as SheetField;
            typed.forceActiveFocus();
            keyClick(Qt.Key_T);
            keyClick(Qt.Key_Return);
            verify(household.plant.measure.error !== "");
            verify(typed.activeFocus);
            compare(typed.text, "t");
        }

        function test_everythingFitsWhenNarrowAndLarge(): void {
            root.width = 420;
            page.narrow = true;
            keyClick(Qt.Key_Return);
            settle();
            picture("photo-narrow");
            keyClick(Qt.Key_M);
            settle();
            picture("measure-narrow");
            verify(named("measurePicture").width <= 420);
            root.width = 1256;
            page.narrow = false;
            Theme.textPercent = 200;
            picture("measure-200");
            verify(named("measurePicture").width > 0);
        }

        function bringUndated(): void {
            household.renew("undated");
            household.plants.start();
            household.plants.openId(lemon);
            settle();
            named("plantPage").forceActiveFocus();
            verify(household.plant.coming.add(["file:///some.jpg"], lemon));
            tryCompare(household.plant.coming, "asking", true, 30000);
        }

        function test_aDateIsAskedBeforePhotographsWithoutOneComeIn(): void {
            bringUndated();
            const panel = named("importPanel");
            const field = findChild(panel, "askTaken") as SheetField;
            tryVerify(() => field.activeFocus);
            verify((findChild(panel, "askTakenWords") as Text).text.includes("2 photographs do not say when"));
            picture("undated");
            for (const letter of "soon")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            verify(household.plant.coming.asking);
            verify(field.wrong);
            verify(field.activeFocus);
            keyClick(Qt.Key_A, Qt.ControlModifier);
            for (const letter of "20.4.2026 9:05")
                keyClick(letter);
            compare(household.plant.coming.error, "");
            mouseClick(findChild(panel, "askTakenTake"));
            verify(!household.plant.coming.asking);
            tryCompare(household.plant.coming, "working", false, 30000);
            verify(household.plant.coming.error.includes("by 2026-04-20T09:05"), household.plant.coming.error);
            verify(!field.visible);
        }

        function test_photographsWithoutADateComeInByTheirFilesOrNotAtAll(): void {
            bringUndated();
            const panel = named("importPanel");
            tryVerify(() => (findChild(panel, "askTaken") as SheetField).activeFocus);
            keyClick(Qt.Key_Escape);
            verify(!household.plant.coming.asking);
            verify(named("plantPage").activeFocus);
            verify(household.plant.coming.add(["file:///some.jpg"], lemon));
            tryCompare(household.plant.coming, "asking", true, 30000);
            tryVerify(() => (findChild(panel, "askTaken") as SheetField).activeFocus);
            keyClick(Qt.Key_Return);
            tryCompare(household.plant.coming, "working", false, 30000);
            verify(household.plant.coming.error.includes("by their files"), household.plant.coming.error);
        }

        function test_aStripIsAsHighAndAsManyAsIsTyped(): void {
            keyClick(Qt.Key_Return);
            settle();
            mouseClick(named("writePhotos"));
            verify(!named("stripHeight").visible);
            mouseClick(reach("writeOut1"));
            verify(named("stripCount").visible);
            mouseClick(reach("stripCountField"));
            for (const letter of "0")
                keyClick(letter);
            keyClick(Qt.Key_Tab);
            verify(named("stripColumnsField").activeFocus);
            keyClick("3");
            keyClick(Qt.Key_Tab);
            verify(named("stripHeightField").activeFocus);
            for (const letter of "120")
                keyClick(letter);
            picture("strip-form");
            named("writeToField").forceActiveFocus();
            for (const letter of "/no/such/place.jpg")
                keyClick(letter);
            keyClick(Qt.Key_Return);
            compare(household.plant.leaving.wrong, PhotoExportModel.Count);
            verify((named("stripCountField") as SheetField).wrong);
            verify((named("stripCountField") as SheetField).activeFocus);
            verify(!(named("writeOutTrouble") as Item).visible);
            keyClick(Qt.Key_Backspace);
            keyClick("2");
            compare(household.plant.leaving.error, "");
            mouseClick(reach("writeOutButton"));
            tryCompare(household.plant.leaving, "working", false, 30000);
            verify(household.plant.leaving.error !== ""); // There is no such place.
            compare(household.plant.leaving.wrong, PhotoExportModel.Target);
            verify((named("writeOutTrouble") as Item).visible);
            for (const field of ["stripCountField", "stripColumnsField", "stripHeightField", "writeToField"]) { // For whoever writes next.
                named(field).forceActiveFocus();
                keyClick(Qt.Key_A, Qt.ControlModifier);
                keyClick(Qt.Key_Delete);
            }
        }

        function test_aHouseholdInMemoryTakesNoPhotographs(): void {
            verify(household.plant.coming.add(["file:///nowhere.jpg"], lemon));
            tryCompare(household.plant.coming, "working", false, 30000);
            verify(household.plant.coming.error.indexOf("invented") > 0);
            verify((findChild(named("importPanel"), "importTrouble") as Item).visible);
            household.plant.coming.clear();
            compare(household.plant.coming.error, "");
        }
    }
}
