import QtQuick
import Lathhouse.Models

// What the readings say, when to measure again, and what the plant needs beside what its spot gives.
Column {
    id: root

    required property PlantModel plant

    spacing: Theme.px(12)

    Item {
        visible: root.plant.verdict >= 0
        width: root.width
        height: Math.max(ring.height, words.height)
        // The verdict is heard before the chart: it comes before it in the reading.
        Accessible.role: Accessible.StaticText
        Accessible.name: qsTr("%1 %2. %3 %4 %5").arg(root.plant.verdictWord).arg(root.plant.verdictAfter).arg(root.plant.verdictWords).arg(root.plant.nextHead).arg(root.plant.nextRest)

        VerdictRing {
            id: ring
            width: Theme.px(64)
            height: Theme.px(64)
            theme: Theme
            scheme: Theme.look
            plant: root.plant
            Accessible.ignored: true
        }
        Column {
            id: words
            x: Theme.px(78)
            width: parent.width - x
            anchors.verticalCenter: ring.verticalCenter

            Text {
                textFormat: Text.PlainText
                objectName: "verdictWord"
                width: parent.width
                text: root.plant.verdictWord
                color: Theme.ink
                wrapMode: Text.WordWrap
                font.family: Theme.titleFamily
                font.pixelSize: Theme.px(26)
                Accessible.ignored: true
            }
            Words {
                width: parent.width
                text: root.plant.verdictAfter
                quiet: true
                Accessible.ignored: true
            }
        }
    }
    Words {
        visible: root.plant.verdictWords !== ""
        width: root.width
        text: root.plant.verdictWords
        lineHeight: 1.15
        Accessible.ignored: true
    }
    VerdictScale {
        objectName: "verdictScale"
        visible: root.plant.verdict >= 0 && !isNaN(root.plant.share)
        width: root.width
        height: Theme.px(48)
        theme: Theme
        scheme: Theme.look
        plant: root.plant
        Accessible.ignored: true
    }
    Rectangle {
        objectName: "nextReading"
        visible: root.plant.nextHead !== "" || root.plant.nextRest !== ""
        width: root.width
        height: next.height + Theme.px(16)
        color: Theme.well
        border.width: Theme.contrast ? 1 : 0
        border.color: Theme.edge

        Rectangle {
            width: 4
            height: parent.height
            color: Theme.action
        }
        Words {
            id: next
            x: Theme.px(14)
            anchors.verticalCenter: parent.verticalCenter
            width: parent.width - x - Theme.px(10)
            textFormat: Text.StyledText
            text: qsTr("<b>%1</b> %2").arg(root.plant.nextHead).arg(root.plant.nextRest)
            Accessible.ignored: true
        }
    }
    Words {
        visible: root.plant.verdictNote !== ""
        width: root.width
        text: root.plant.verdictNote
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    Rectangle {
        visible: root.plant.hasChart && root.plant.left === ""
        width: root.width
        height: 1
        color: Theme.rule
    }
    Column { // What is gone needs nothing.
        visible: root.plant.left === ""
        width: root.width
        spacing: Theme.px(4)

        Words {
            width: parent.width
            text: qsTr("What it needs")
            strong: true
            Accessible.role: Accessible.Heading
        }
        Words {
            width: parent.width
            text: qsTr("low of a night")
            quiet: true
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
        NeedsRuler {
            objectName: "nightRuler"
            width: parent.width
            height: Theme.px(74)
            theme: Theme
            scheme: Theme.look
            plant: root.plant
            Accessible.role: Accessible.Graphic
            Accessible.name: root.plant.needsSpoken
        }
        Words {
            objectName: "lightWords"
            width: parent.width
            text: root.plant.lightWords
            font.pixelSize: Theme.rowSize
        }
    }
}
