pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// A look through the folder, and what it found.
Column {
    id: root

    required property HomeDataModel keeping

    spacing: Theme.px(8)

    SheetButton {
        objectName: "checkButton"
        visible: root.keeping.keeps
        text: qsTr("Look through the folder")
        reason: qsTr("The journal, its references, every photograph against its digest; changes nothing")
        onClicked: root.keeping.check()
    }
    HomeActSaid {
        width: root.width
        keeping: root.keeping
        act: HomeDataModel.Check
    }
    Repeater {
        model: root.keeping.findings

        Column {
            id: finding
            required property string what
            required property string where
            required property string todo
            required property bool fault
            required property string sentence
            required property int index

            objectName: "finding" + index
            width: root.width
            spacing: Theme.px(2)
            Accessible.role: Accessible.ListItem
            Accessible.name: finding.sentence

            Row {
                spacing: Theme.px(8)

                Lozenge {
                    visible: finding.fault
                    anchors.verticalCenter: parent.verticalCenter
                }
                Words {
                    width: Math.min(implicitWidth, finding.width - Theme.px(20))
                    text: finding.what
                    strong: true
                    color: finding.fault ? Theme.caution : Theme.ink
                    Accessible.ignored: true
                }
            }
            Words {
                width: finding.width
                text: finding.where
                quiet: true
                wrapMode: Text.WrapAtWordBoundaryOrAnywhere
                font.pixelSize: Theme.smallSize
                Accessible.ignored: true
            }
            Words {
                width: finding.width
                bottomPadding: Theme.px(6)
                text: finding.todo
                font.pixelSize: Theme.rowSize
                Accessible.ignored: true
            }
        }
    }
}
