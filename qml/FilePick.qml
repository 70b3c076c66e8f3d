import QtQuick
import QtQuick.Dialogs

// The desktop's own dialogs for a file or a folder; Qt's where it has none. Opens as soon as it is loaded, which is
// when somebody asks for it: a machine without them loses nothing else.
Item {
    id: root

    required property PathField asker
    readonly property bool folders: root.asker.kind === PathField.Folder
    readonly property bool saves: root.asker.kind === PathField.Save

    Component.onCompleted: {
        keys.remember();
        if (root.folders) {
            folder.open();
        } else {
            file.nameFilters = root.asker.filters;
            // Qt's own dialog tells no name that was typed where none stood.
            if (root.saves && root.asker.text !== "")
                file.selectedFile = "file://" + root.asker.text.split("/").map(encodeURIComponent).join("/"); // "#" and "?" are parts of names here.
            file.open();
        }
    }

    Loader {
        active: root.saves
        sourceComponent: DialogReturn {}
    }
    DialogKeys {
        id: keys
        open: file.visible || folder.visible
    }
    FileDialog {
        id: file
        title: root.asker.label
        fileMode: root.saves ? FileDialog.SaveFile : FileDialog.OpenFile
        acceptLabel: root.saves ? qsTr("Take this name") : qsTr("Open")
        // Qt's own dialog may tell no name; what stood in the field is better than nothing.
        onAccepted: if (String(file.selectedFile) !== "")
            root.asker.picked(keys.fileOf(file.selectedFile))
    }
    FolderDialog {
        id: folder
        title: root.asker.label
        onAccepted: root.asker.picked(folder.selectedFolder)
    }
}
