import QtQuick
import Lathhouse.Models

// Photographs of the whole household written out as files.
Column {
    id: root

    required property PhotoExportModel leaving

    spacing: Theme.px(8)

    Heading {
        width: parent.width
        text: qsTr("Photographs as files")
    }
    Words {
        width: parent.width
        text: qsTr("Those of all plants, each under its date and its plant’s name. What is in the household stays as it is.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    PhotoExport {
        objectName: "photosOut"
        width: parent.width
        leaving: root.leaving
        two: false
        ofAll: true
    }
}
