pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Window
import Lathhouse.Models

// The place, the light of its spots, and what their thermometers have taught.
FocusScope {
    id: root

    required property HomeModel home
    /// Changes of the household itself; null where it cannot be changed.
    property MendModel mend: null
    /// Photographs on their way in; null where none can be taken.
    property PhotoImportModel coming: null
    required property bool narrow
    readonly property real side: root.narrow ? 11 : 19
    /// Less than that is scrolled as a whole.
    readonly property real leastHeight: sheet.y + Theme.px(170)
    /// In the order of HomeModel.Section.
    readonly property list<string> sections: [qsTr("Place"), qsTr("Spots"), qsTr("Thermometer"), qsTr("Own record"), qsTr("People and animals"), qsTr("Journal"), qsTr("Data and backup"), qsTr("Settings")]
    readonly property bool placeShown: root.home.section === HomeModel.Place
    readonly property bool spotsShown: root.home.section === HomeModel.Spots
    readonly property bool nightsShown: root.home.section === HomeModel.Thermometer
    readonly property bool journalShown: root.home.section === HomeModel.Journal
    readonly property bool ownShown: root.placeShown || root.spotsShown || root.nightsShown
    readonly property string overdue: root.home.keeping !== null && root.home.section !== HomeModel.Data ? root.home.keeping.overdue : ""

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Home")

    signal plantAsked(plant: int)

    Keys.onPressed: event => {
        const control = (event.modifiers & Qt.ControlModifier) !== 0;
        event.accepted = true;
        if (event.key === Qt.Key_Right && !control)
            root.home.step(1);
        else if (event.key === Qt.Key_Left && !control)
            root.home.step(-1);
        else if (event.key === Qt.Key_T && !control)
            root.turn();
        else if (event.key === Qt.Key_Down && !control)
            root.step(1);
        else if (event.key === Qt.Key_Up && !control)
            root.step(-1);
        else if (event.key === Qt.Key_PageDown)
            root.page(1);
        else if (event.key === Qt.Key_PageUp)
            root.page(-1);
        else if (event.key === Qt.Key_L && control && root.nightsShown)
            nights.focusField();
        else if (event.key === Qt.Key_L && control && root.journalShown)
            (more.item as HomeJournal).openLog();
        else if (event.key === Qt.Key_F6)
            parts.go((event.modifiers & Qt.ShiftModifier) !== 0 ? -1 : 1);
        else if (event.key === Qt.Key_F5)
            root.home.reload();
        else
            event.accepted = false;
    }

    /// Chart or table, where the section has both.
    function turn(): void {
        if (root.placeShown)
            place.asTable = !place.asTable;
        else if (root.spotsShown)
            spots.asTable = !spots.asTable;
        else if (root.nightsShown)
            nights.asTable = !nights.asTable;
    }
    /// The next or last spot of the section.
    function step(by: int): void {
        if (root.spotsShown)
            root.home.spot += by;
        else if (root.nightsShown)
            root.home.outdoor += by;
        else if (root.journalShown && sheet.activeFocus)
            (more.item as HomeJournal).focusRows();
        else
            sheet.scroll(by * 0.1 * sheet.height);
    }
    function page(by: int): void {
        if (root.journalShown && sheet.activeFocus)
            (more.item as HomeJournal).focusRows();
        else
            sheet.page(by);
    }
    Connections {
        target: more.item
        ignoreUnknownSignals: true
        function onPlantAsked(plant: int): void {
            root.plantAsked(plant);
        }
    }
    onHomeChanged: root.fill()
    Component.onCompleted: root.fill()

    function fill(): void {
        const narrow = Qt.binding(() => root.narrow);
        more.source = "";
        more.asynchronous = root.home.section === HomeModel.Data; // Has most parts: they are made between the pictures.
        if (root.home.section === HomeModel.Record) {
            more.setSource("HomeRecord.qml", { objectName: "homeRecord", record: root.home.record, narrow: narrow });
            root.home.record.start();
        } else if (root.home.section === HomeModel.People) {
            more.setSource("HomePeople.qml", { objectName: "homePeople", people: root.home.people, narrow: narrow });
            root.home.people.start();
        } else if (root.home.section === HomeModel.Journal) {
            more.setSource("HomeJournal.qml", { objectName: "homeJournal", journal: root.home.journal, narrow: narrow, room: Qt.binding(() => sheet.height - Theme.px(12)) });
            root.home.journal.look();
        } else if (root.home.section === HomeModel.Data) {
            more.setSource("HomeData.qml", { objectName: "homeData", keeping: root.home.keeping, calendar: root.home.calendar, leaving: root.home.leaving, coming: root.coming, aside: root.home.aside, narrow: narrow });
            root.home.keeping.look();
            if (root.home.aside !== null)
                root.home.aside.look();
        } else if (root.home.section === HomeModel.Settings) {
            more.setSource("HomeSettings.qml", { objectName: "homeSettings", settings: root.home.settings });
        }
    }

    PageParts {
        id: parts
        parts: [head, sheet]
    }
    Flow {
        id: head
        x: root.side
        y: 10
        width: root.width - 2 * root.side
        spacing: Theme.px(8)

        Heading {
            height: Theme.target(36)
            rightPadding: Theme.px(20)
            text: qsTr("Home")
            font.pixelSize: Theme.titleSize
        }
        Repeater {
            model: root.sections

            Chip {
                required property string modelData
                required property int index
                objectName: "section" + index
                spokenRole: Accessible.PageTab
                visible: root.home.has(index)
                height: Theme.target(32)
                text: modelData
                reason: qsTr("Left and Right go through the sections")
                on: root.home.section === index
                onClicked: {
                    root.home.section = index;
                    sheet.contentY = 0;
                }
            }
        }
        Words {
            objectName: "backupLine"
            visible: root.overdue !== ""
            height: Theme.target(32)
            width: Math.min(implicitWidth, head.width)
            verticalAlignment: Text.AlignVCenter
            leftPadding: Theme.px(12)
            text: root.overdue
            quiet: true
            font.pixelSize: Theme.smallSize
        }
    }
    ReadAgain {
        objectName: "homeFailure"
        x: root.side
        y: head.y + head.height + Theme.px(10)
        width: root.width - 2 * root.side
        error: root.home.known || !root.ownShown ? "" : root.home.error
        onAgain: root.home.reload()
    }
    Words {
        visible: !root.home.known && root.home.late && root.ownShown
        x: root.side
        y: head.y + head.height + Theme.px(24)
        text: qsTr("The place is being worked out.")
        quiet: true
    }
    SheetScroll {
        id: sheet
        objectName: "homeSheet"
        visible: root.home.known || !root.ownShown
        x: root.side - sheet.ringRoom
        y: head.y + head.height + Theme.px(10)
        width: root.width - x - 8
        height: root.height - y - 4
        contentHeight: (root.placeShown ? place.height : root.spotsShown ? spots.height : root.nightsShown ? nights.height : more.height) + Theme.px(12)
        focus: true
        activeFocusOnTab: true
        Accessible.role: Accessible.Pane
        Accessible.name: root.sections[root.home.section]

        HomePlace {
            id: place
            objectName: "homePlace"
            mend: root.mend
            visible: root.placeShown
            x: sheet.ringRoom
            width: sheet.width - x - 12
            home: root.home
            narrow: root.narrow
        }
        HomeSpots {
            id: spots
            objectName: "homeSpots"
            mend: root.mend
            visible: root.spotsShown
            x: sheet.ringRoom
            width: sheet.width - x - 12
            home: root.home
            narrow: root.narrow
        }
        HomeNights {
            id: nights
            objectName: "homeNights"
            visible: root.nightsShown
            x: sheet.ringRoom
            width: sheet.width - x - 12
            home: root.home
            narrow: root.narrow
        }
        // A section that is rarely looked at is made when it is opened.
        Loader {
            id: more
            objectName: "homeMore"
            visible: !root.ownShown
            x: sheet.ringRoom
            width: sheet.width - x - 12
        }
    }
    KeysRule {
        of: sheet
        away: 8 - sheet.ringRoom
    }
    Connections {
        target: root.home
        function onSectionChanged(): void {
            root.fill();
        }
    }
}
