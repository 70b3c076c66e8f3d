pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// How right the forecasts were that were kept, by how far ahead they were made.
Column {
    id: root

    required property SheetRows forecasts

    visible: root.forecasts.count > 0
    spacing: Theme.px(8)

    Heading {
        width: parent.width
        text: qsTr("How right the forecasts were here")
    }
    Column {
        objectName: "forecastTable"
        width: parent.width
        Accessible.role: Accessible.Table
        Accessible.name: qsTr("How right the forecasts were here")

        TwinRow {
            width: parent.width
            head: true
            cells: [qsTr("made"), qsTr("nights"), qsTr("error"), qsTr("missed by"), qsTr("the season alone")]
            sentence: qsTr("Made, nights, error, missed by, the season alone")
        }
        Repeater {
            model: root.forecasts

            TwinRow {
                required property string ahead
                required property string nights
                required property string error
                required property string miss
                required property string season
                width: root.width
                cells: [ahead, nights, error, miss, season]
            }
        }
    }
    Words {
        width: parent.width
        text: qsTr("Nights are those whose low a thermometer outdoors read. A miss is a mean one, with the spread that was stated weighed in: a forecast that misses by no less than the season alone is of no use.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
}
