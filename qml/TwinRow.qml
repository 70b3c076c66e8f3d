pragma ComponentBehavior: Bound

import QtQuick

// A row of the table that says the same as a chart.
Item {
    id: root

    required property list<string> cells
    required property string sentence
    property bool head: false

    implicitHeight: Math.max(Theme.px(24), row.height + Theme.px(6))
    Accessible.role: Accessible.Row
    Accessible.name: root.sentence

    Row {
        id: row
        y: Theme.px(3)

        Repeater {
            model: root.cells

            Words {
                required property string modelData
                required property int index
                width: root.width / root.cells.length
                rightPadding: Theme.px(6)
                text: modelData
                quiet: root.head
                strong: !root.head && index === 0
                font.pixelSize: root.head ? Theme.smallSize : Theme.rowSize
                Accessible.role: root.head ? Accessible.ColumnHeader : index === 0 ? Accessible.RowHeader : Accessible.Cell
            }
        }
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1
        color: root.head ? Theme.edge : Theme.rule
    }
}
