import QtQuick
import QtQuick.Dialogs
import Lathhouse.Models

// The desktop's own dialog for where a sheet is kept. Opens as soon as it is loaded, which is when somebody asks for it.
Item {
    id: root

    required property SheetPrinter printer
    required property string page
    required property int plant
    required property string plantName

    readonly property bool drawing: root.page === "card"

    Component.onCompleted: {
        keys.remember();
        dialog.currentFolder = root.printer.suggestedFolder();
        dialog.selectedFile = root.printer.suggestedFile(root.page, root.plantName);
        dialog.open();
    }

    DialogReturn {}
    DialogKeys {
        id: keys
        open: dialog.visible
    }
    FileDialog {
        id: dialog
        fileMode: FileDialog.SaveFile
        defaultSuffix: root.drawing ? "svg" : "pdf"
        title: root.drawing ? qsTr("Keep the card as") : qsTr("Keep the sheet as")
        acceptLabel: qsTr("Keep it")
        nameFilters: root.drawing ? [qsTr("Drawings (*.svg)")] : [qsTr("PDF (*.pdf)")]
        onAccepted: root.printer.print(root.page, root.plant, keys.fileOf(dialog.selectedFile))
    }
}
