import QtQuick
import Lathhouse.Models

// Nights of a thermometer's log from a file, all of them or none.
Column {
    id: root

    required property HomeModel home

    spacing: Theme.px(8)

    function keep(): void {
        if (!root.home.logFile(file.text, columns.text))
            file.focusField();
    }

    Heading {
        width: parent.width
        text: qsTr("Nights from a file")
    }
    Words {
        width: parent.width
        text: qsTr("A table with the columns date and low_c (or low_f); where known also spot, high_c, station_low_c, sky, wind and note. Rows that name no spot are of the one shown here.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    PathField {
        id: file
        width: parent.width
        label: qsTr("The file with the readings")
        kind: PathField.Open
        filters: [qsTr("Tables (*.csv *.txt *.json)"), qsTr("All files (*)")]
        part: "readings"
        wrong: root.home.known && root.home.aboutFile && root.home.error !== ""
        onEdited: root.home.forgive()
        onAccepted: root.keep()
        onPicked: address => file.text = address
    }
    Flow {
        width: parent.width
        spacing: Theme.px(8)

        SheetField {
            id: columns
            objectName: "readingsColumns"
            least: Theme.px(340)
            most: parent.width
            label: qsTr("What it calls the columns, where otherwise; may be left blank")
            placeholderText: qsTr("its own names: date=Day,low_c=Min")
            onTextEdited: root.home.forgive()
            onAccepted: root.keep()
        }
        SheetButton {
            objectName: "readingsButton"
            text: qsTr("Keep the nights")
            onClicked: root.keep()
        }
    }
    Trouble {
        objectName: "readingsTrouble"
        width: parent.width
        words: root.home.known && root.home.aboutFile ? root.home.error : ""
    }
    Words {
        objectName: "readingsSaid"
        visible: text !== ""
        width: parent.width
        text: root.home.aboutFile ? root.home.said : ""
        strong: true
    }
}
