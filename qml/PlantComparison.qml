pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Two plants beside each other, line by line.
FocusScope {
    id: root

    required property ComparisonModel comparison
    required property bool narrow
    required property real side
    readonly property real listWidth: Math.min(root.width - 2 * root.side - 10, Theme.px(980))
    readonly property real whatWidth: root.narrow ? 0 : Theme.px(200)
    readonly property real valueWidth: Math.max(40, (root.listWidth - root.whatWidth - 2 * Theme.px(16)) / 2)

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("%1 and %2 beside each other").arg(root.comparison.first).arg(root.comparison.second)
    Accessible.description: root.comparison.summary

    Keys.onPressed: event => {
        event.accepted = true;
        if (event.key === Qt.Key_Escape)
            root.comparison.close();
        else if (event.key === Qt.Key_Down)
            sheet.scroll(Theme.px(48));
        else if (event.key === Qt.Key_Up)
            sheet.scroll(-Theme.px(48));
        else if (event.key === Qt.Key_PageDown)
            sheet.page(1);
        else if (event.key === Qt.Key_PageUp)
            sheet.page(-1);
        else if (event.key === Qt.Key_Home)
            sheet.contentY = 0;
        else if (event.key === Qt.Key_End)
            sheet.scroll(sheet.contentHeight);
        else
            event.accepted = false;
    }


    component Portrait: Column {
        id: portrait

        required property string name
        required property url picture
        readonly property bool pictured: `${portrait.picture}` !== ""
        width: root.valueWidth
        spacing: Theme.px(6)

        Image {
            visible: portrait.pictured
            width: Math.min(parent.width, Theme.px(150))
            height: width
            source: portrait.picture
            fillMode: Image.PreserveAspectCrop
            asynchronous: true
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("Newest photograph of %1").arg(portrait.name)
        }
        Heading {
            width: parent.width
            text: portrait.name
            wrapMode: Text.Wrap
        }
    }

    SheetScroll {
        id: sheet
        objectName: "comparisonSheet"
        anchors.fill: parent
        contentHeight: body.height + Theme.px(20)
        focus: true

        Column {
            id: body
            x: root.side
            y: 10
            width: root.listWidth

            SheetButton {
                objectName: "comparisonBack"
                text: qsTr("All plants")
                reason: qsTr("Escape")
                onClicked: root.comparison.close()
            }
            Item {
                width: parent.width
                height: portraits.height + Theme.px(20)

                Row {
                    id: portraits
                    x: root.whatWidth + (root.narrow ? 0 : Theme.px(16))
                    y: Theme.px(10)
                    spacing: Theme.px(16)

                    Portrait {
                        name: root.comparison.first
                        picture: root.comparison.firstPicture
                    }
                    Portrait {
                        name: root.comparison.second
                        picture: root.comparison.secondPicture
                    }
                }
            }
            Words {
                objectName: "comparisonSummary"
                width: parent.width
                text: root.comparison.summary
                quiet: true
                font.pixelSize: Theme.smallSize
            }
            Repeater {
                model: root.comparison.rows

                Item {
                    id: line

                    required property string group
                    required property string what
                    required property string first
                    required property string second
                    required property bool differs
                    required property string sentence
                    width: root.listWidth
                    height: head.height + asked.height + values.height + Theme.px(root.narrow ? 12 : 10)
                    Accessible.role: Accessible.ListItem
                    Accessible.name: line.sentence

                    Heading {
                        id: head
                        visible: line.group !== ""
                        height: visible ? implicitHeight + Theme.px(14) : 0
                        verticalAlignment: Text.AlignBottom
                        text: line.group
                        Accessible.ignored: true
                    }
                    Rectangle {
                        y: head.height
                        width: parent.width
                        height: 1
                        color: Theme.rule
                    }
                    Words {
                        id: asked
                        y: head.height + Theme.px(5)
                        width: root.narrow ? root.listWidth : 0
                        height: root.narrow ? implicitHeight : 0
                        visible: root.narrow
                        text: line.what
                        quiet: true
                        font.pixelSize: Theme.smallSize
                        Accessible.ignored: true
                    }
                    Row {
                        id: values
                        y: asked.y + asked.height
                        spacing: Theme.px(16)

                        Words {
                            visible: !root.narrow
                            width: root.whatWidth
                            text: line.what
                            quiet: true
                            font.pixelSize: Theme.rowSize
                            Accessible.ignored: true
                        }
                        Words {
                            width: root.valueWidth
                            text: line.first
                            strong: line.differs
                            font.pixelSize: Theme.rowSize
                            Accessible.ignored: true
                        }
                        Words {
                            width: root.valueWidth
                            text: line.second
                            strong: line.differs
                            font.pixelSize: Theme.rowSize
                            Accessible.ignored: true
                        }
                    }
                }
            }
        }
    }
}
