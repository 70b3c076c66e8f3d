import QtQuick
import Lathhouse.Models

// Tables that were written out made into a household again, in a folder of its own.
Column {
    id: root

    required property HomeDataModel keeping
    property bool leaveOut: false

    spacing: Theme.px(8)

    function read(): void {
        root.keeping.readTables(from.text, to.text, root.leaveOut);
    }

    Heading {
        width: parent.width
        text: qsTr("Read tables back")
    }
    Words {
        width: parent.width
        text: qsTr("Tables that were written here, perhaps edited since, become a household in a new or an empty folder. The one that is open stays as it is.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    PathField {
        id: from
        width: parent.width
        label: qsTr("The folder with the tables")
        kind: PathField.Folder
        part: "tablesFrom"
        onEdited: root.keeping.forgive()
        onAccepted: to.focusField()
        onPicked: address => from.text = root.keeping.pathOf(address)
    }
    PathField {
        id: to
        width: parent.width
        label: qsTr("The new or empty folder")
        kind: PathField.Folder
        part: "tablesInto"
        onEdited: root.keeping.forgive()
        onAccepted: root.read()
        onPicked: address => to.text = root.keeping.pathOf(address)
    }
    ChoiceChips {
        width: parent.width
        title: qsTr("A row that names a plant, spot or lot that is not there")
        part: "brokenRows"
        choices: [qsTr("stops the reading"), qsTr("is left out and named")]
        chosen: root.leaveOut ? 1 : 0
        onChoose: index => root.leaveOut = index === 1
    }
    SheetButton {
        objectName: "readTablesButton"
        text: qsTr("Read them back")
        reason: qsTr("Every row is held against the rules of its table before the folder appears")
        onClicked: root.read()
    }
    HomeActSaid {
        width: parent.width
        keeping: root.keeping
        act: HomeDataModel.ReadTables
    }
}
