pragma ComponentBehavior: Bound

import QtQuick
import QtQuick.Controls.Basic
import Lathhouse.Models

// Photographs of a plant, spread over time, the newest framed; what to do where there is none.
FocusScope {
    id: root

    required property PlantModel plant
    /// Place of the framed photograph among those shown.
    property int current: root.plant.photos.count - 1
    readonly property bool empty: root.plant.photos.count === 0
    readonly property real noteWidth: Theme.px(150)
    /// In a narrow page the photographs keep their size and the strip scrolls sideways.
    property bool scrolls: false
    readonly property real photoWidth: root.scrolls ? Theme.px(132) : Math.max(Theme.px(96), Math.floor((root.width - root.noteWidth) / root.plant.photosShown) - Theme.px(10))
    readonly property real photoHeight: Math.round(root.photoWidth * 0.75)

    readonly property int shownPlant: root.plant.plantId

    signal opened(photo: int)
    signal sideBySide
    signal measure
    signal add

    function walk(by: int): void {
        root.current = Math.max(0, Math.min(root.plant.photos.count - 1, root.current + by));
    }
    function photoAt(place: int): int {
        return Number(root.plant.photos.at(place, "photo"));
    }

    onCurrentChanged: root.reveal()
    onPhotoWidthChanged: root.reveal()

    /// The framed photograph is in sight.
    function reveal(): void {
        const left = root.current * (root.photoWidth + photos.spacing);
        const most = Math.max(0, strip.contentWidth - strip.width);
        if (left < strip.contentX || left + root.photoWidth > strip.contentX + strip.width)
            strip.contentX = Math.max(0, Math.min(most, left - (strip.width - root.photoWidth) / 2));
    }

    onShownPlantChanged: root.current = root.plant.photos.count - 1
    Connections {
        target: root.plant.photos
        function onCountChanged(): void {
            root.current = root.plant.photos.count - 1;
        }
    }

    implicitHeight: root.empty ? nothing.height : Math.max(root.scrolls ? photos.height + Theme.px(12) : root.photoHeight + Theme.px(24), noteColumn.height)

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
            width: Math.min(root.width - addFirst.width - Theme.px(90), Theme.px(560))
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("No photograph yet. One a month, from the same place, shows what the eye forgets. Drag files or a folder here, or choose them.")
            quiet: true
        }
        SheetButton {
            id: addFirst
            objectName: "addFirstPhotos"
            anchors.verticalCenter: parent.verticalCenter
            text: qsTr("Add photos")
            reason: qsTr("Chooses files. They are copied into the household, unaltered.")
            onClicked: root.add()
        }
    }
    Flickable {
        id: strip
        objectName: "stripPhotos"
        visible: !root.empty
        width: root.width - root.noteWidth - photos.spacing
        height: root.height
        clip: root.scrolls
        contentWidth: photos.width
        contentHeight: height
        interactive: contentWidth > width
        flickableDirection: Flickable.HorizontalFlick
        boundsBehavior: Flickable.StopAtBounds
        onContentWidthChanged: root.reveal()
        onWidthChanged: root.reveal()

        ScrollBar.horizontal: ScrollBar {
            policy: strip.interactive ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
            height: 8
            Accessible.ignored: true
        }

        Row {
            id: photos
            spacing: Theme.px(10)

            Repeater {
                model: root.plant.photos

                Item {
                    id: photo

                    required property int index
                    required property int photo
                    readonly property bool framed: photo.index === root.current
                    objectName: "stripPhoto" + photo.index
                    required property url source
                    required property string date
                    required property string words
                    required property bool newest
                    required property string sentence
                    width: root.photoWidth
                    height: root.photoHeight + Theme.px(5) + caption.height
                    Accessible.role: Accessible.Button
                    Accessible.name: photo.sentence
                    Accessible.description: qsTr("Opens it; Left and Right walk the photographs")
                    Accessible.onPressAction: root.opened(photo.photo)

                    Rectangle {
                        width: root.photoWidth
                        height: root.photoHeight
                        color: Theme.well
                        border.width: photo.framed ? 2 : 1
                        border.color: photo.framed ? Theme.action : Theme.edge

                        Image {
                            anchors.fill: parent
                            anchors.margins: parent.border.width
                            source: photo.source
                            asynchronous: true
                            fillMode: Image.PreserveAspectCrop
                            sourceSize.width: Math.round(width * 2)
                        }
                    }
                    MouseArea {
                        width: root.photoWidth
                        height: root.photoHeight
                        onClicked: {
                            root.current = photo.index;
                            root.opened(photo.photo);
                        }
                    }
                    Words {
                        id: caption
                        y: root.photoHeight + Theme.px(4)
                        width: parent.width
                        textFormat: Text.StyledText
                        text: photo.newest ? qsTr("<b>%1</b> %2").arg(photo.date).arg(photo.words) : qsTr("%1 %2").arg(photo.date).arg(photo.words)
                        font.pixelSize: Theme.smallSize
                        Accessible.ignored: true
                    }
                }
            }
        }
    }
    Column {
        id: noteColumn
        visible: !root.empty
        x: root.scrolls ? root.width - width : Math.min(photos.width, strip.width) + photos.spacing
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
        SheetButton {
            objectName: "stripMeasure"
            height: Theme.target(28)
            text: qsTr("Measure")
            reason: qsTr("Measures in the framed photograph.")
            onClicked: root.measure()
        }
        SheetButton {
            objectName: "stripSideBySide"
            visible: root.plant.photos.count > 1
            height: Theme.target(28)
            text: qsTr("Side by side")
            reason: qsTr("Key B. Two dates beside each other, with what changed.")
            onClicked: root.sideBySide()
        }
        SheetButton {
            objectName: "addPhotos"
            height: Theme.target(28)
            text: qsTr("Add photos")
            reason: qsTr("Chooses files; they can be dragged here too.")
            onClicked: root.add()
        }
    }
}
