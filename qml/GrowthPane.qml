pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// Growth by one measure: a chart, or the same as a table.
Column {
    id: root

    required property PlantModel plant
    property bool asTable: false
    property real chartHeight: Theme.px(300)

    spacing: Theme.px(8)

    Flow {
        visible: root.plant.hasChart
        width: root.width
        spacing: Theme.px(12)

        Heading {
            id: title
            objectName: "chartTitle"
            text: root.plant.chartTitle
        }
        Words {
            width: root.width - title.width - Theme.px(14) > Theme.px(240) ? root.width - title.width - Theme.px(14) : root.width
            height: Math.max(title.height, implicitHeight)
            verticalAlignment: Text.AlignBottom
            text: root.plant.chartNote
            quiet: true
            font.pixelSize: Theme.smallSize
        }
    }
    GrowthChart {
        objectName: "growthChart"
        visible: root.plant.hasChart && !root.asTable
        width: root.width
        height: root.chartHeight
        theme: Theme
        scheme: Theme.look
        plant: root.plant
        Accessible.role: Accessible.Chart
        Accessible.name: root.plant.chartSpoken
        Accessible.description: qsTr("Key T shows the same as a table")
    }
    ListView {
        id: table
        objectName: "readingsTable"
        visible: root.plant.hasChart && root.asTable
        width: root.width
        height: root.chartHeight
        clip: true
        activeFocusOnTab: true
        boundsBehavior: Flickable.StopAtBounds
        model: root.plant.readings
        Accessible.role: Accessible.Table
        Accessible.name: qsTr("%1, reading by reading").arg(root.plant.chartTitle)

        ScrollBar.vertical: SheetScrollBar {}
        delegate: Item {
            id: reading

            required property string date
            required property string value
            required property string change
            required property string repeats
            required property string sentence
            width: table.width - 12
            height: Math.max(Theme.px(26), Math.max(dateCell.implicitHeight, valueCell.implicitHeight, changeCell.implicitHeight, repeatCell.implicitHeight) + Theme.px(6))
            Accessible.role: Accessible.Row
            Accessible.name: reading.sentence

            TableCell {
                id: dateCell
                x: Theme.px(6)
                width: parent.width * 0.28
                height: parent.height
                text: reading.date
                strong: true
            }
            TableCell {
                id: valueCell
                x: parent.width * 0.3
                width: parent.width * 0.18
                height: parent.height
                horizontalAlignment: Text.AlignRight
                text: reading.value
            }
            TableCell {
                id: changeCell
                x: parent.width * 0.5
                width: parent.width * 0.18
                height: parent.height
                horizontalAlignment: Text.AlignRight
                text: reading.change
            }
            TableCell {
                id: repeatCell
                x: parent.width * 0.72
                width: parent.width * 0.27
                height: parent.height
                text: reading.repeats
            }
            Rectangle {
                anchors.bottom: parent.bottom
                width: parent.width
                height: 1
                color: Theme.rule
            }
        }
    }
    Row {
        objectName: "noReadings"
        visible: !root.plant.hasChart
        spacing: Theme.px(14)

        EmptyPot {
            width: Theme.px(46)
            height: Theme.px(40)
        }
        Words {
            width: Math.min(root.width - Theme.px(70), Theme.px(620))
            anchors.verticalCenter: parent.verticalCenter
            textFormat: Text.StyledText
            text: qsTr("<b>No readings yet.</b> Three before an event and four after it make a verdict. Control and L, then Measured, keeps the first.")
            Accessible.name: text.replace(/<[^>]*>/g, "")
        }
    }
    Flow {
        visible: root.plant.hasChart
        width: root.width
        spacing: Theme.px(8)

        Repeater {
            model: root.plant.kinds

            Chip {
                required property int index
                required property string words
                required property bool shown
                objectName: "kindChip" + index
                text: words
                on: shown
                reason: qsTr("What the chart shows")
                onClicked: root.plant.choose(index)
            }
        }
        Chip {
            objectName: "twinChip"
            spokenRole: Accessible.CheckBox
            text: qsTr("As a table")
            reason: qsTr("Key T")
            on: root.asTable
            onClicked: root.asTable = !root.asTable
        }
        Words {
            objectName: "bandWords"
            visible: !root.asTable && root.plant.hasBand
            height: Theme.target(28)
            verticalAlignment: Text.AlignVCenter
            text: qsTr("Green band: where the fit lies, 9 in 10.")
            quiet: true
            font.pixelSize: Theme.smallSize
        }
    }
    Flow {
        objectName: "judgedAfter"
        visible: root.plant.hasChart && root.plant.judged.count > 1
        width: root.width
        spacing: Theme.px(8)

        Words {
            height: Theme.target(28)
            verticalAlignment: Text.AlignVCenter
            text: qsTr("Judged after")
            quiet: true
        }
        Repeater {
            model: root.plant.judged

            Chip {
                required property int index
                required property string words
                required property bool shown
                objectName: "judgedChip" + index
                text: words
                on: shown
                reason: qsTr("After what growth is judged")
                onClicked: root.plant.judge(index)
            }
        }
    }
    Flow {
        objectName: "sparedBeside"
        visible: root.plant.hasChart && root.plant.judged.count > 0 && root.plant.spared.count > 0
        width: root.width
        spacing: Theme.px(8)

        Words {
            height: Theme.target(28)
            verticalAlignment: Text.AlignVCenter
            text: qsTr("Spared by it, of the same kind")
            quiet: true
        }
        Repeater {
            model: root.plant.spared

            Chip {
                required property int index
                required property string words
                required property bool shown
                objectName: "sparedChip" + index
                spokenRole: Accessible.CheckBox
                text: words
                on: shown
                reason: qsTr("What it grew meanwhile is the clock by which this plant is judged")
                onClicked: root.plant.takeForSpared(index)
            }
        }
    }
}
