pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Photographs that no plant's page shows: out of the lists, or of no plant that is there; what can be done with each.
Column {
    id: root

    required property PhotosAsideModel aside
    /// The row whose plant is being chosen; -1: none.
    property int giving: -1

    spacing: Theme.px(8)

    /// The buttons that were pressed go with their row; the keys go on from here.
    function act(): void {
        root.giving = -1;
        heading.forceActiveFocus();
    }

    Heading {
        id: heading
        width: parent.width
        text: qsTr("Photographs that no plant’s page shows")
    }
    Words {
        width: parent.width
        text: qsTr("Those that were taken out of the lists, and those of no plant that is there. Their files stay in the folder in any case.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    Words {
        objectName: "asideLine"
        visible: text !== ""
        width: parent.width
        text: root.aside !== null ? root.aside.line : ""
        font.pixelSize: Theme.smallSize
    }
    Words {
        objectName: "asideSaid"
        visible: text !== ""
        width: parent.width
        text: root.aside !== null ? root.aside.said : ""
        strong: true
        Accessible.role: Accessible.StatusBar
    }
    Trouble {
        objectName: "asideTrouble"
        width: parent.width
        words: root.aside !== null ? root.aside.error : ""
    }
    Repeater {
        model: root.aside !== null ? root.aside.rows : null

        Item {
            id: row

            required property int index
            required property url source
            required property string name
            required property string words
            required property bool out
            required property string sentence

            objectName: "aside" + row.index
            width: root.width
            height: Math.max(picture.height, texts.height) + Theme.px(6)
            Accessible.role: Accessible.ListItem
            Accessible.name: row.sentence

            Rectangle {
                id: picture
                width: Theme.px(96)
                height: Theme.px(72)
                color: Theme.well
                border.width: 1
                border.color: Theme.edge

                Image {
                    anchors.fill: parent
                    anchors.margins: 1
                    source: row.source
                    asynchronous: true
                    fillMode: Image.PreserveAspectCrop
                    sourceSize.width: 240
                    Accessible.ignored: true
                }
            }
            Column {
                id: texts
                x: picture.width + Theme.px(12)
                width: row.width - x
                spacing: Theme.px(4)

                Words {
                    width: parent.width
                    text: row.name
                    wrapMode: Text.WrapAtWordBoundaryOrAnywhere
                    Accessible.ignored: true
                }
                Words {
                    width: parent.width
                    text: row.words
                    quiet: true
                    font.pixelSize: Theme.smallSize
                    Accessible.ignored: true
                }
                Flow {
                    width: parent.width
                    spacing: Theme.px(8)

                    SheetButton {
                        objectName: "asideBack" + row.index
                        visible: row.out
                        text: qsTr("Bring it back")
                        reason: qsTr("Into the lists, with the plants that it shows")
                        Accessible.name: qsTr("Bring back %1").arg(row.name)
                        onClicked: {
                            root.act();
                            root.aside.bringBack(row.index);
                        }
                    }
                    SheetButton {
                        objectName: "asideGive" + row.index
                        visible: !row.out && root.aside.plants.length > 0
                        text: qsTr("Shows a plant")
                        reason: qsTr("Choose the plant from a list.")
                        Accessible.name: qsTr("%1 shows a plant").arg(row.name)
                        onClicked: root.giving = root.giving === row.index ? -1 : row.index
                    }
                    SheetButton {
                        objectName: "asideOut" + row.index
                        visible: !row.out
                        text: qsTr("Out of the lists")
                        reason: qsTr("Its file stays; it can be brought back here.")
                        Accessible.name: qsTr("Take %1 out of the lists").arg(row.name)
                        onClicked: {
                            root.act();
                            root.aside.withdraw(row.index);
                        }
                    }
                }
                ChoiceChips {
                    visible: root.giving === row.index
                    width: parent.width
                    title: qsTr("Which plant it shows")
                    part: "asidePlant"
                    choices: root.giving === row.index ? root.aside.plants : []
                    chosen: -1
                    onChoose: plant => {
                        root.act();
                        root.aside.giveTo(row.index, plant);
                    }
                }
            }
        }
    }
}
