pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Photographs of a plant, spread over time, the newest framed; what to do where there is none.
Item {
    id: root

    required property PlantModel plant
    readonly property bool empty: root.plant.photos.count === 0
    readonly property real noteWidth: Theme.px(150)
    readonly property real photoWidth: Math.max(Theme.px(96), Math.floor((root.width - root.noteWidth) / root.plant.photosShown) - Theme.px(10))
    readonly property real photoHeight: Math.round(root.photoWidth * 0.75)

    implicitHeight: root.empty ? nothing.height : root.photoHeight + Theme.px(24)

    Row {
        id: nothing
        objectName: "noPhotos"
        visible: root.empty
        spacing: Theme.px(14)

        EmptyPot {
            width: Theme.px(46)
            height: Theme.px(40)
        }
        Words {
            width: Math.min(root.width - Theme.px(70), Theme.px(720))
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("No photograph yet. One a month, from the same place, shows what the eye forgets. Bring a folder in with: lathhouse add photos FOLDER --plant %1").arg(root.plant.name.indexOf(" ") < 0 ? root.plant.name : "'" + root.plant.name + "'")
            quiet: true
        }
    }
    Row {
        visible: !root.empty
        spacing: Theme.px(10)

        Repeater {
            model: root.plant.photos

            Item {
                id: photo

                required property url source
                required property string date
                required property string words
                required property bool newest
                required property string sentence
                width: root.photoWidth
                height: root.photoHeight + Theme.px(22)
                Accessible.role: Accessible.Graphic
                Accessible.name: photo.sentence

                Rectangle {
                    width: root.photoWidth
                    height: root.photoHeight
                    color: Theme.well
                    border.width: photo.newest ? 2 : 1
                    border.color: photo.newest ? Theme.action : Theme.edge

                    Image {
                        anchors.fill: parent
                        anchors.margins: parent.border.width
                        source: photo.source
                        asynchronous: true
                        fillMode: Image.PreserveAspectCrop
                        sourceSize.width: Math.round(width * 2)
                    }
                }
                Words {
                    y: root.photoHeight + Theme.px(4)
                    width: parent.width
                    textFormat: Text.StyledText
                    text: photo.newest ? qsTr("<b>%1</b> %2").arg(photo.date).arg(photo.words) : qsTr("%1 %2").arg(photo.date).arg(photo.words)
                    elide: Text.ElideRight
                    wrapMode: Text.NoWrap
                    font.pixelSize: Theme.smallSize
                    Accessible.ignored: true
                }
            }
        }
        Column {
            width: root.noteWidth
            spacing: Theme.px(4)

            Words {
                width: parent.width
                text: root.plant.photosHead
                strong: true
                font.pixelSize: Theme.smallSize
            }
            Words {
                width: parent.width
                text: root.plant.photosNote
                quiet: true
                font.pixelSize: Theme.smallSize
            }
            Words {
                width: parent.width
                text: qsTr("More with: lathhouse add photos")
                quiet: true
                font.pixelSize: Theme.smallSize
            }
        }
    }
}
