import QtQuick
import QtQuick.Dialogs
import Lathhouse.Models

// The desktop's own chooser of files; loaded when it is asked for, and open once it is there.
Item {
    id: root

    required property PhotoImportModel coming
    required property int plant

    DialogKeys {
        id: keys
        open: dialog.visible
    }
    FileDialog {
        id: dialog
        title: qsTr("Add photographs")
        fileMode: FileDialog.OpenFiles
        nameFilters: [qsTr("Photographs (*.jpg *.jpeg *.png *.webp *.heic *.heif *.JPG *.JPEG *.PNG *.HEIC)"), qsTr("All files (*)")]
        onAccepted: root.coming.add(dialog.selectedFiles, root.plant)
    }
    Component.onCompleted: {
        keys.remember();
        dialog.open();
    }
}
