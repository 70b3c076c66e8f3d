pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// What a light meter reads at a spot as a day's light, and how long a lamp burns there for a day's light that is wanted.
Column {
    id: root

    required property LightReadingModel meter

    spacing: Theme.px(8)

    Heading {
        width: parent.width
        text: qsTr("A light meter’s reading")
    }
    ChoiceChips {
        width: parent.width
        title: qsTr("What is known")
        part: "meterUnit"
        choices: root.meter.units
        chosen: root.meter.unit
        onChoose: index => root.meter.unit = index
    }
    ChoiceChips {
        visible: root.meter.bySource
        width: parent.width
        title: qsTr("In the light of")
        part: "meterSource"
        choices: root.meter.sources
        chosen: root.meter.source
        note: qsTr("The same lux are more light for a plant from the sky than from a lamp. Hold the meter at the leaves, facing up.")
        onChoose: index => root.meter.source = index
    }
    Flow {
        width: parent.width
        spacing: Theme.px(12)

        LabelledField {
            objectName: "meterReading"
            width: Math.min(root.width, Theme.px(260))
            label: root.meter.unit === LightReadingModel.Moles ? qsTr("A day’s light") : qsTr("Reading")
            unit: root.meter.units[root.meter.unit]
            number: true
            value: root.meter.reading
            trouble: root.meter.readingTrouble
            onEdited: words => root.meter.reading = words
        }
        LabelledField {
            objectName: "meterHours"
            width: Math.min(root.width, Theme.px(200))
            label: qsTr("For how long a day")
            unit: qsTr("h")
            example: "8"
            number: true
            value: root.meter.hours
            trouble: root.meter.hoursTrouble
            note: qsTr("Blank: 8 h")
            onEdited: words => root.meter.hours = words
        }
    }
    Words {
        objectName: "meterDaily"
        visible: text !== ""
        width: parent.width
        text: root.meter.daily
        strong: true
    }
    Words {
        objectName: "meterAgainst"
        visible: text !== ""
        width: parent.width
        text: root.meter.against
    }
    Heading {
        width: parent.width
        topPadding: Theme.px(6)
        text: qsTr("Hours of a lamp")
    }
    Flow {
        width: parent.width
        spacing: Theme.px(12)

        LabelledField {
            objectName: "lampTarget"
            width: Math.min(root.width, Theme.px(260))
            label: qsTr("Day’s light that is wanted")
            unit: qsTr("mol")
            number: true
            value: root.meter.target
            trouble: root.meter.targetTrouble
            onEdited: words => root.meter.target = words
        }
        LabelledField {
            objectName: "lampLight"
            width: Math.min(root.width, Theme.px(260))
            label: qsTr("The lamp’s light at the leaves")
            unit: qsTr("µmol")
            number: true
            value: root.meter.lamp
            trouble: root.meter.lampTrouble
            note: qsTr("µmol per m² and s")
            onEdited: words => root.meter.lamp = words
        }
    }
    Words {
        objectName: "lampNow"
        visible: text !== ""
        width: parent.width
        text: root.meter.lampNow
        strong: true
    }
    Column {
        objectName: "lampMonths"
        visible: root.meter.months.count > 0
        width: parent.width
        Accessible.role: Accessible.Table
        Accessible.name: qsTr("Hours of a lamp")

        TwinRow {
            width: parent.width
            head: true
            cells: [qsTr("Month"), qsTr("moles a day"), qsTr("the lamp burns")]
            sentence: qsTr("Month, moles a day, the lamp burns")
        }
        Repeater {
            model: root.meter.months

            TwinRow {
                required property string month
                required property string moles
                required property string hours
                width: root.width
                cells: [month, moles, hours]
            }
        }
    }
    Trouble {
        objectName: "lampTooLong"
        width: parent.width
        words: root.meter.tooLong
    }
    Words {
        objectName: "lampCaution"
        width: parent.width
        text: root.meter.caution
        strong: true
        font.pixelSize: Theme.smallSize
    }
}
