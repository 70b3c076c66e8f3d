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

    Component.onCompleted: {
        dialog.currentFolder = root.printer.suggestedFolder();
        dialog.selectedFile = root.printer.suggestedFile(root.page, root.plantName);
        dialog.open();
    }

    FileDialog {
        id: dialog
        fileMode: FileDialog.SaveFile
        defaultSuffix: "pdf"
        title: qsTr("Keep the sheet as")
        acceptLabel: qsTr("Keep it")
        nameFilters: [qsTr("PDF (*.pdf)")]
        onAccepted: root.printer.print(root.page, root.plant, dialog.selectedFile)
    }
}
