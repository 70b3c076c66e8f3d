import QtQuick
import Lathhouse.Models

// A folder into which a phone copies its photographs: what is new there comes in by itself.
Column {
    id: root

    /// null where no photographs can be taken.
    required property PhotoImportModel coming
    readonly property bool watching: root.coming !== null && root.coming.watched !== ""

    spacing: Theme.px(8)

    Heading {
        width: parent.width
        text: qsTr("A folder that is watched")
    }
    Words {
        width: parent.width
        text: qsTr("What a phone copies there comes in by itself as long as this window is open. A photograph goes to the plant with whose name its own begins, or after which its folder is called; the files stay where they are.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    PathField {
        id: folder
        visible: !root.watching
        width: parent.width
        label: qsTr("The folder of photographs")
        kind: PathField.Folder
        part: "watch"
        wrong: root.coming !== null && root.coming.error !== ""
        onEdited: root.coming.forgive()
        onAccepted: root.coming.watch(folder.text)
        onPicked: address => folder.text = address
    }
    SheetButton {
        objectName: "watchButton"
        visible: !root.watching
        text: qsTr("Watch it")
        onClicked: root.coming.watch(folder.text)
    }
    Words {
        objectName: "watchWords"
        visible: root.watching
        width: parent.width
        text: root.watching ? qsTr("%1 is watched. %2").arg(root.coming.watched).arg(root.coming.watchWords) : ""
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
    }
    SheetButton {
        objectName: "unwatchButton"
        visible: root.watching
        text: qsTr("Watch it no longer")
        reason: qsTr("What came in stays.")
        onClicked: root.coming.unwatch()
    }
    Loader {
        id: refused
        width: parent.width
        Component.onCompleted: if (root.coming !== null)
            refused.setSource("PhotoImportPanel.qml", { coming: root.coming })
    }
}
