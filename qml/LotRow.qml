import QtQuick
import Lathhouse.Models

// A lot of seed: how much of it comes up, and what is next.
Rectangle {
    id: root

    required property int index
    required property string name
    required property string botanical
    required property string year
    required property string seedsLeft
    required property real mean
    required property real low
    required property real high
    required property bool counted
    required property string share
    required property string basis
    required property string next
    required property string sentence
    property bool narrow: false
    property bool chosen: false
    property bool focused: false
    readonly property LotColumns columns: LotColumns {
        width: root.width
        narrow: root.narrow
    }

    /// The columns stand beside the name, or below it.
    readonly property real middle: root.columns.stacked ? (names.y + names.height) / 2 : 0

    signal pressed

    implicitHeight: Math.max(Theme.target(0), (root.columns.stacked ? names.height + Math.max(germination.height, comes.height) : Math.max(names.height, germination.height, comes.height)) + Theme.px(12))
    color: root.chosen ? Theme.select : pointer.containsMouse ? Theme.well : "transparent"
    border.width: root.focused ? 2 : Theme.contrast && root.chosen ? 1 : 0
    border.color: root.focused ? Theme.focus : Theme.edge
    Accessible.role: Accessible.ListItem
    Accessible.name: root.sentence
    Accessible.selected: root.chosen
    Accessible.focusable: true
    Accessible.focused: root.focused
    Accessible.onPressAction: root.pressed()

    Rectangle {
        visible: root.chosen
        width: 4
        height: parent.height
        color: Theme.action
    }
    MouseArea {
        id: pointer
        anchors.fill: parent
        hoverEnabled: true
        onClicked: root.pressed()
    }
    Column {
        id: names
        x: Theme.px(10)
        y: Theme.px(6)
        width: (root.columns.stacked ? root.width : root.columns.yearX) - x - Theme.px(8)

        Words {
            width: parent.width
            text: root.name
            strong: true
            Accessible.ignored: true
        }
        Text {
            textFormat: Text.PlainText
            width: parent.width
            text: root.botanical
            color: Theme.ink2
            wrapMode: Text.WordWrap
            font.family: Theme.titleFamily
            font.italic: true
            font.pixelSize: Theme.rowSize
            Accessible.ignored: true
        }
    }
    Words {
        visible: root.columns.withYear
        x: root.columns.yearX
        width: root.columns.yearWidth
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: root.middle
        horizontalAlignment: Text.AlignRight
        text: root.year
        Accessible.ignored: true
    }
    Words {
        x: root.columns.seedsX
        width: root.columns.seedsWidth
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: root.middle
        horizontalAlignment: Text.AlignRight
        text: root.seedsLeft
        Accessible.ignored: true
    }
    Column {
        id: germination
        x: root.columns.shareX
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: root.middle
        width: root.columns.shareWidth

        GerminationLine {
            width: parent.width
            height: Theme.px(18)
            theme: Theme
            scheme: Theme.look
            mean: root.mean
            low: root.low
            high: root.high
            counted: root.counted
        }
        Words {
            width: parent.width
            textFormat: Text.StyledText
            text: qsTr("<b>%1</b> %2").arg(root.share).arg(root.basis)
            color: root.chosen ? Theme.ink : Theme.ink2
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
    }
    Words {
        id: comes
        x: root.columns.nextX
        width: root.width - x - Theme.px(6)
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: root.middle
        text: root.next
        font.pixelSize: Theme.rowSize
        Accessible.ignored: true
    }
    Rectangle {
        anchors.bottom: parent.bottom
        visible: !root.focused
        width: parent.width
        height: 1
        color: Theme.rule
    }
}
