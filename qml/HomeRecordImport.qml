pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Takes a file of daily records in: named, chosen, or dropped here.
Column {
    id: root

    required property HomeRecordModel record
    property int degrees: 0
    property bool more: false

    spacing: Theme.px(8)

    function take(insist: bool): void {
        root.record.take(path.text, root.degrees, columns.text, station.text, heightField.text, insist, positionField.text);
    }

    Connections {
        target: root.record
        function onColumnsAsked(): void {
            root.more = true;
            columns.forceActiveFocus();
        }
    }
    Rectangle {
        objectName: "dropPlace"
        width: root.width
        height: Theme.px(56)
        radius: Theme.controlRadius
        color: drop.containsDrag ? Theme.select : Theme.sheet
        border.width: drop.containsDrag ? 2 : 1
        border.color: drop.containsDrag ? Theme.action : Theme.edge
        Accessible.role: Accessible.StaticText
        Accessible.name: dropWords.text

        Words {
            id: dropWords
            anchors.fill: parent
            anchors.margins: Theme.px(8)
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            text: drop.containsDrag ? qsTr("Let go to take it in") : qsTr("Drop a file of daily lows and highs here, or name it below.")
            quiet: !drop.containsDrag
            Accessible.ignored: true
        }
        DropArea {
            id: drop
            objectName: "dropArea"
            anchors.fill: parent
            keys: ["text/uri-list"]
            onDropped: event => {
                if (event.hasUrls && event.urls.length > 0) {
                    event.accept(Qt.CopyAction);
                    const file = root.record.pathOfDropped(event.urls);
                    if (file !== "") {
                        path.text = file;
                        root.take(false);
                    }
                }
            }
        }
    }
    PathField {
        id: path
        width: root.width
        label: qsTr("File of daily records")
        kind: PathField.Open
        filters: [qsTr("Records (*.csv *.dly *.txt)"), qsTr("All files (*)")]
        part: "record"
        wrong: root.record.error !== ""
        onEdited: root.record.forgive()
        onAccepted: root.take(false)
        onPicked: address => {
            path.text = root.record.pathOf(address);
            root.record.forgive();
        }
    }
    ChoiceChips {
        width: root.width
        title: qsTr("Its numbers are")
        part: "recordDegrees"
        choices: [qsTr("°C and millimetres"), qsTr("°F and inches")]
        chosen: root.degrees
        note: qsTr("Of a table of your own. Files of GHCN-Daily say it themselves.")
        onChoose: index => root.degrees = index
    }
    Chip {
        objectName: "recordMore"
        spokenRole: Accessible.CheckBox
        text: qsTr("Names of columns, station, height, position")
        on: root.more
        onClicked: root.more = !root.more
    }
    Column {
        visible: root.more || !root.record.heightKnown
        width: root.width
        spacing: Theme.px(8)

        SheetField {
            id: columns
            objectName: "recordColumns"
            least: Theme.px(420)
            most: parent.width
            label: qsTr("Columns of date, low, high, rain")
            placeholderText: qsTr("Columns, as Day,Min,Max,Rain")
            onTextEdited: root.record.forgive()
            onAccepted: root.take(false)
        }
        SheetField {
            id: station
            objectName: "recordStation"
            least: Theme.px(420)
            most: parent.width
            label: qsTr("Station, of a file with several")
            placeholderText: label
            onTextEdited: root.record.forgive()
            onAccepted: root.take(false)
        }
        SheetField {
            id: heightField
            objectName: "recordHeight"
            least: Theme.px(420)
            most: parent.width
            label: qsTr("Height where it was kept")
            placeholderText: root.record.heightKnown ? qsTr("Height where it was kept, if not at home") : label
            unit: root.record.feet ? qsTr("ft") : qsTr("m")
            onTextEdited: root.record.forgive()
            onAccepted: root.take(false)
        }
        SheetField {
            id: positionField
            objectName: "recordPosition"
            least: Theme.px(420)
            most: parent.width
            label: qsTr("Where it was kept, if not at home: both coordinates")
            placeholderText: qsTr("Position, if not at home, such as 48.2, 20.5")
            onTextEdited: root.record.forgive()
            onAccepted: root.take(false)
        }
    }
    Flow {
        width: root.width
        spacing: Theme.px(8)

        ActButton {
            objectName: "takeButton"
            height: Theme.target(40)
            text: root.record.isThere ? qsTr("Take it in instead") : qsTr("Take the record in")
            reason: qsTr("Checked and compared with the shipped table first")
            onClicked: root.take(false)
        }
        SheetButton {
            objectName: "insistButton"
            visible: root.record.canInsist
            height: Theme.target(40)
            text: qsTr("Take it in all the same")
            onClicked: root.take(true)
        }
    }
    Words {
        visible: root.record.late
        width: root.width
        text: qsTr("The record is being read.")
        quiet: true
    }
    Trouble {
        width: root.width
        words: root.record.error
    }
}
