pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Every plant outdoors on one ruler of tonight's low, those that must come in first, each with its tick beside it.
Column {
    id: root

    required property RoundModel round
    required property TonightModel tonight
    required property bool narrow
    readonly property real tickWidth: Theme.px(44)
    readonly property real chanceWidth: Theme.px(104)
    readonly property real whereWidth: Math.round(root.width * 0.18)
    readonly property real nameWidth: root.narrow ? root.width - root.tickWidth : Math.round(root.width * 0.26)
    readonly property real rulerX: root.narrow ? 0 : root.nameWidth + Theme.px(8)
    readonly property real rulerWidth: root.narrow ? root.width - root.tickWidth - Theme.px(8) : root.width - root.rulerX - root.chanceWidth - root.whereWidth - root.tickWidth - Theme.px(16)

    Accessible.role: Accessible.List
    Accessible.name: qsTr("Plants outdoors tonight")

    /// The row that has the keys; null where none has.
    function holder(): Item {
        for (let at = 0; at < rows.count; ++at) {
            const row = rows.itemAt(at); // null while it is being made.
            if (row !== null && row.activeFocus)
                return row;
        }
        return null;
    }
    /// Hands the keys to the next row that can be ticked, if there is one that way.
    function go(from: int, step: int): void {
        for (let at = from + step; at >= 0 && at < rows.count; at += step) {
            const row = rows.itemAt(at) as ColdRow;
            if (row.inside !== 0) {
                row.forceActiveFocus(Qt.TabFocusReason);
                return;
            }
        }
    }

    Item {
        width: root.width
        height: Math.max(curves.height, head.height)

        Column {
            id: head
            width: root.narrow ? root.width : root.nameWidth
            visible: !root.narrow
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.px(4)

            Heading {
                text: qsTr("Carry in")
            }
            Words {
                objectName: "coldDone"
                width: parent.width
                text: qsTr("%1 of %2 done").arg(root.tonight.carries - root.round.carriesLeft).arg(root.tonight.carries)
                quiet: true
                font.pixelSize: Theme.smallSize
            }
        }
        NightCurves {
            id: curves
            objectName: "nightCurves"
            rulerX: Application.layoutDirection === Qt.RightToLeft ? root.width - root.rulerX - root.rulerWidth : root.rulerX
            rulerWidth: root.rulerWidth
            width: root.width
            height: 56 + Theme.px(60)
            theme: Theme
            scheme: Theme.look
            tonight: root.tonight
            Accessible.role: Accessible.Chart
            Accessible.name: qsTr("Tonight’s low at each spot, %1").arg(root.tonight.unit)
            Accessible.description: root.tonight.spotsLine
        }
        Words {
            visible: !root.narrow
            x: root.rulerX + root.rulerWidth + Theme.px(8)
            width: root.chanceWidth - Theme.px(8)
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.px(4)
            horizontalAlignment: Text.AlignRight
            text: qsTr("At or below its line")
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
        Words {
            visible: !root.narrow
            x: root.width - root.tickWidth - root.whereWidth
            width: root.whereWidth
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.px(4)
            text: qsTr("Where to")
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
        Words {
            visible: !root.narrow
            anchors.right: parent.right
            anchors.bottom: parent.bottom
            anchors.bottomMargin: Theme.px(4)
            text: qsTr("Is in")
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
    }
    Words {
        width: root.width
        text: qsTr("striped: the part of tonight’s range that harms the plant")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    Rectangle {
        width: root.width
        height: 1.5
        color: Theme.ink
    }
    Repeater {
        id: rows
        model: root.tonight.plants

        ColdRow {
            id: row
            nameWidth: root.nameWidth
            rulerX: root.rulerX
            rulerWidth: root.rulerWidth
            chanceWidth: root.chanceWidth
            whereWidth: root.whereWidth
            tickWidth: root.tickWidth
            firstToStay: row.index > 0 && !row.carry && root.tonight.plants.at(row.index - 1, "carry") === true
            onWalk: step => root.go(row.index, step)
            round: root.round
            narrow: root.narrow
            zeroAt: root.tonight.rulerZero
            width: root.width
        }
    }
    Words {
        topPadding: Theme.px(8)
        width: root.width
        text: qsTr("Cannot carry one? Wall side, off the floor, a dry sheet to the ground over it, off again in the morning. It gains a degree or two at best (common practice, no source).")
        font.pixelSize: Theme.smallSize
    }
}
