import QtQuick
import QtTest
import Lathhouse.Models
import Lathhouse.Testing
import Lathhouse.Ui

// Home's settings by mouse and by keyboard: in force at once.
Item {
    id: root
    width: 1280
    height: 744

    DemonstrationRound {
        id: household
    }
    HomePage {
        id: page
        anchors.fill: parent
        home: household.home
        narrow: false
        focus: true
    }
    TestCase {
        name: "HomeSettings"
        when: windowShown

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            page.narrow = false;
            household.renew("cold");
            household.home.start();
            settle();
            household.home.section = HomeModel.Settings;
            named("homeSheet").forceActiveFocus();
        }
        function cleanup() {
            Theme.textPercent = 100;
        }

        function named(name: string): Item {
            const found = findChild(page, name) as Item;
            verify(found !== null, name);
            return found;
        }
        function settle(): void {
            tryCompare(household.home, "working", false, 30000);
            tryCompare(household.home.keeping, "working", false, 30000);
        }

        function test_unitsChangeWhatIsOpen() {
            const before = household.home.figures.at(0, "value");
            verify(before.includes("°C"));
            mouseClick(named("degrees1"));
            settle();
            compare(household.home.settings.degrees, 1);
            compare(household.home.settings.units, 0);
            verify(household.home.figures.at(0, "value").includes("°F"));
            compare(household.home.unit, "°F");
            mouseClick(named("units1"));
            settle();
            compare(household.home.settings.units, 1);
            compare(household.home.unit, "°F");
            mouseClick(named("units0"));
            settle();
            compare(household.home.settings.degrees, 1);
            const first = named("degrees0");
            first.forceActiveFocus();
            keyClick(Qt.Key_Space);
            settle();
            compare(household.home.figures.at(0, "value"), before);
        }

        function test_themeAndMotionAreChosen() {
            mouseClick(named("theme2"));
            compare(household.home.settings.scheme, "dark");
            verify((named("theme2") as Chip).on);
            verify(!(named("theme0") as Chip).on);
            named("theme3").forceActiveFocus();
            keyClick(Qt.Key_Return);
            compare(household.home.settings.scheme, "contrast");
            mouseClick(named("motion1"));
            verify(household.home.settings.reducedMotion);
            mouseClick(named("motion0"));
            verify(!household.home.settings.reducedMotion);
        }

        function test_sizeOfTheTextIsChosen() {
            const sheet = named("homeSheet") as SheetScroll;
            const usual = sheet.contentHeight;
            mouseClick(named("text6"));
            compare(household.home.settings.textPercent, 200);
            Theme.textPercent = household.home.settings.textPercent;
            tryVerify(() => sheet.contentHeight > sheet.height && sheet.contentHeight > 1.5 * usual);
            // Whatever the keyboard comes to is in view.
            for (let step = 0; step < 20; ++step) {
                keyClick(Qt.Key_Tab);
                const item = sheet.focused;
                if (item !== null && item.objectName.startsWith("motion")) {
                    const top = item.mapToItem(sheet, 0, 0).y;
                    verify(top >= -1 && top + item.height <= sheet.height + 1, "in view at " + top);
                    break;
                }
            }
            verify(sheet.focused.objectName.startsWith("motion"));
        }

        function test_pageSaysWhereItIsKeptAndWhatTheRegionIs() {
            verify((named("settingsDates") as Text).text.includes("Sat 30 May"));
            compare(`${household.home.settings.languages}`, "As the desktop,English,Deutsch,Español");
            verify(household.home.settings.place.endsWith("window.ini"));
        }
    }
}
