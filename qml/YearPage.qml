import QtQuick
import Lathhouse.Models

// The year from today: bands of nights over a row for each plant, with a cursor that reads a date.
FocusScope {
    id: root

    required property YearModel year
    required property bool narrow
    required property bool wide
    property bool asTable: false
    property bool allNumbers: false

    readonly property real footHeight: root.narrow ? 88 : 0
    readonly property real side: root.narrow ? 15 : 19

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("The year from today")

    Keys.onPressed: event => {
        const control = (event.modifiers & Qt.ControlModifier) !== 0;
        event.accepted = true;
        if (event.key === Qt.Key_Left)
            root.year.cursorDay -= control ? 7 : 1;
        else if (event.key === Qt.Key_Right)
            root.year.cursorDay += control ? 7 : 1;
        else if (event.key === Qt.Key_PageUp)
            root.year.stepMonths(-1);
        else if (event.key === Qt.Key_PageDown)
            root.year.stepMonths(1);
        else if (event.key === Qt.Key_Home)
            root.year.cursorDay = 0;
        else if (event.key === Qt.Key_Up && root.asTable)
            root.year.cursorDay -= 1;
        else if (event.key === Qt.Key_Down && root.asTable)
            root.year.cursorDay += 1;
        else if (event.key === Qt.Key_Up)
            root.year.currentRow -= 1;
        else if (event.key === Qt.Key_Down)
            root.year.currentRow += 1;
        else if (event.key === Qt.Key_T && !control)
            root.asTable = !root.asTable;
        else if (event.key === Qt.Key_Escape && root.allNumbers)
            root.allNumbers = false;
        else if (event.key === Qt.Key_Escape && root.asTable)
            root.asTable = false;
        else
            event.accepted = false;
    }

    Text {
        id: title
        x: root.side
        y: 10
        text: qsTr("The year from today")
        color: Theme.ink
        font.family: Theme.titleFamily
        font.pixelSize: root.narrow ? Math.min(Theme.titleSize, 25) : Theme.titleSize
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Column {
        id: riskWords
        x: root.narrow ? root.side : risk.x - width - 8
        y: root.narrow ? 52 : 13
        width: Math.max(riskHead.implicitWidth, riskSmall.implicitWidth)

        Text {
            id: riskHead
            anchors.right: root.narrow ? undefined : parent.right
            text: qsTr("Risk you accept")
            color: Theme.ink
            font.family: Theme.textFamily
            font.pixelSize: Theme.textSize
            font.weight: Font.DemiBold
            Accessible.ignored: true
        }
        Text {
            id: riskSmall
            anchors.right: root.narrow ? undefined : parent.right
            text: root.narrow ? qsTr("each plant, each way") : qsTr("for each plant, each way")
            color: Theme.ink2
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
    }
    RiskSlider {
        id: risk
        objectName: "riskSlider"
        x: root.narrow ? 142 : root.wide ? 470 : 430
        y: root.narrow ? 48 : 7
        width: root.narrow ? Math.min(440, root.width - 142 - root.side) : 300
        stops: root.year.riskStops // qmllint disable
        stop: root.year.riskStop
        spoken: root.year.riskSpoken
        onChosen: stop => root.year.riskStop = stop
    }
    SheetButton {
        objectName: "tableButton"
        anchors.right: parent.right
        anchors.rightMargin: root.side
        y: 13
        text: root.asTable ? qsTr("As a chart") : qsTr("As a table")
        reason: qsTr("Key T. The same numbers, the same date.")
        onClicked: root.asTable = !root.asTable
    }

    YearChart {
        id: chart
        objectName: "yearChart"
        visible: !root.asTable
        year: root.year
        narrow: root.narrow
        wide: root.wide
        x: root.side
        y: root.narrow ? 98 : 57
        width: root.narrow ? root.width - x - 12 : (root.wide ? Math.min(220 + 1240, root.width - 270 - x) : root.width - 257 - x)
        height: root.height - y - root.footHeight - (root.narrow ? 4 : 12)
        focus: !root.asTable
    }
    Loader {
        id: table
        x: chart.x
        y: root.narrow ? 104 : 70
        width: chart.width
        height: root.height - y - root.footHeight - 12
        active: root.asTable
        sourceComponent: YearTable {
            objectName: "yearTable"
            year: root.year
        }
    }
    Rectangle {
        visible: !root.narrow
        x: readout.x - 17
        y: 61
        width: 1
        height: root.height - 61 - 22
        color: Theme.rule
    }
    YearReadout {
        id: readout
        objectName: "readout"
        visible: !root.narrow
        year: root.year
        x: root.wide ? chart.x + chart.width + 34 : root.width - root.side - 203
        y: 57
        width: root.wide ? Math.min(380, root.width - x - root.side) : 203
        height: root.height - y - 12
    }
    YearFoot {
        objectName: "foot"
        visible: root.narrow
        year: root.year
        x: 0
        y: root.height - root.footHeight
        width: root.width
        height: root.footHeight
        onAllNumbersAsked: root.allNumbers = !root.allNumbers
        opened: root.allNumbers
    }
    // The drawer of the narrow window: a second sheet.
    Rectangle {
        objectName: "drawer"
        visible: root.narrow && root.allNumbers
        x: root.width - width
        y: 0
        width: 264
        height: root.height - root.footHeight
        color: Theme.sheet
        border.width: 1
        border.color: Theme.edge

        MouseArea {
            anchors.fill: parent
        }
        YearReadout {
            anchors.fill: parent
            anchors.margins: 16
            year: root.year
        }
    }
}
