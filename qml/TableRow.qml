pragma ComponentBehavior: Bound

import QtQuick

// One date of the table.
Rectangle {
    id: root

    required property int index
    required property string date
    required property string low
    required property string spread
    required property string strip
    required property string frostAfter
    required property string dayLength
    required property string sentence
    required property real column
    required property bool chosen
    required property bool focused
    signal pressed

    height: Theme.target(25)
    color: root.chosen ? Theme.select : pointer.containsMouse ? Theme.well : Theme.sheet
    border.width: root.focused ? 2 : 0
    border.color: Theme.focus
    Accessible.role: Accessible.Row
    Accessible.name: root.sentence
    Accessible.selected: root.chosen
    Accessible.focused: root.focused
    Accessible.onPressAction: root.pressed()

    Row {
        anchors.verticalCenter: parent.verticalCenter

        Repeater {
            model: [root.date, root.low, root.spread, root.strip, root.frostAfter, root.dayLength]

            Text {
                textFormat: Text.PlainText
                required property string modelData
                required property int index
                width: root.column
                leftPadding: 8
                text: modelData
                color: Theme.ink
                font.family: Theme.textFamily
                font.pixelSize: Theme.rowSize
                font.weight: index === 0 ? Font.DemiBold : Font.Normal
                Accessible.role: index === 0 ? Accessible.RowHeader : Accessible.Cell
                Accessible.name: modelData
            }
        }
    }
    Rectangle {
        visible: !root.focused
        y: parent.height - 1
        width: parent.width
        height: 1
        color: Theme.rule
    }
    MouseArea {
        id: pointer
        anchors.fill: parent
        hoverEnabled: true
        onPressed: root.pressed()
    }
}
