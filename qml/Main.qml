import QtQuick
import QtQuick.Window
import Lathhouse.Models

// The window: a sheet on a desk, with the tabs of its places joined to the sheet.
Window {
    id: root

    required property YearModel year
    required property string scheme

    readonly property bool narrow: root.width < 1000
    readonly property bool wide: root.width >= 1600

    width: 1280
    height: 800
    minimumWidth: 520
    minimumHeight: 480
    visible: true
    color: Theme.desk
    title: qsTr("Lathhouse · %1").arg(root.year.household)

    Component.onCompleted: {
        Theme.scheme = root.scheme;
        page.forceActiveFocus();
    }

    Masthead {
        id: masthead
        objectName: "masthead"
        year: root.year
        narrow: root.narrow
        wide: root.wide
        anchors.left: parent.left
        anchors.right: parent.right
        height: 44
    }
    Rectangle {
        id: sheet
        x: 12
        y: 44
        width: root.width - 24
        height: root.height - 44 - 12
        radius: Theme.sheetRadius
        color: Theme.sheet
        border.width: Theme.contrast || Theme.dark ? 1 : 1
        border.color: Theme.contrast ? Theme.edge : Theme.rule
    }
    // The tab is open towards the sheet.
    Rectangle {
        x: masthead.tabX + 1
        y: 43
        width: masthead.tabWidth - 2
        height: 3
        color: Theme.sheet
    }
    YearPage {
        id: page
        objectName: "yearPage"
        year: root.year
        narrow: root.narrow
        wide: root.wide
        anchors.fill: sheet
        anchors.margins: 1
        focus: true
    }
}
