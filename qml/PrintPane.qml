import QtQuick
import Lathhouse.Models

// Asks where the sheet of the page is to be kept, and says in place where it was or why not.
Rectangle {
    id: root

    required property SheetPrinter printer
    required property string page
    /// The plant that is open; 0 where none is.
    required property int plant
    required property string plantName
    readonly property bool able: root.printer !== null && root.printer.hasSheet(root.page, root.plant)
    readonly property string words: root.printer === null ? "" : root.printer.working ? (root.printer.late ? qsTr("The sheet is being drawn.") : "") : root.printer.said

    function ask(): void {
        if (root.able)
            root.keep(root.page);
    }
    /// The card that is photographed beside a plant.
    function askCard(): void {
        if (root.printer !== null)
            root.keep("card");
    }
    function keep(what: string): void {
        keeper.source = "";
        keeper.setSource("SheetKeeper.qml", {
            printer: root.printer,
            page: what,
            plant: root.plant,
            plantName: root.plantName
        });
    }

    visible: root.words !== "" || trouble.words !== ""
    implicitHeight: content.height + Theme.px(16)
    radius: Theme.controlRadius
    color: Theme.sheet
    border.width: 1
    border.color: trouble.words !== "" ? Theme.caution : Theme.edge
    Accessible.role: Accessible.StatusBar
    Accessible.name: root.words

    Shortcut {
        sequence: "Ctrl+P"
        enabled: root.able
        onActivated: root.ask()
    }
    Loader {
        id: keeper
    }
    Item {
        id: content
        x: Theme.px(12)
        width: root.width - 2 * x
        height: Math.max(close.height, said.visible ? said.height : trouble.height)
        anchors.verticalCenter: parent.verticalCenter

        Words {
            id: said
            objectName: "printed"
            visible: root.words !== ""
            width: close.x - Theme.px(12)
            anchors.verticalCenter: parent.verticalCenter
            text: root.words
            wrapMode: Text.WrapAnywhere
            Accessible.ignored: true
        }
        Trouble {
            id: trouble
            visible: !said.visible && words !== ""
            width: close.x - Theme.px(12)
            anchors.verticalCenter: parent.verticalCenter
            words: root.printer !== null ? root.printer.error : ""
        }
        SheetButton {
            id: close
            objectName: "printClose"
            visible: root.printer !== null && !root.printer.working
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("Close")
            reason: qsTr("Takes this word away.")
            onClicked: root.printer.dismiss()
        }
    }
}
