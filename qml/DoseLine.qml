import QtQuick
import Lathhouse.Models

// How much of the grower's feed goes into the grower's can for one feed, and the way to change either.
Column {
    id: root

    required property DoseModel dose
    /// Nitrogen of the feed; 0 where no dose can be told.
    required property real ppm
    /// On the ground of what is chosen.
    property bool chosen: false
    property int focusPolicy: Qt.StrongFocus
    property string part: "dose"
    readonly property string words: root.dose !== null && root.dose.revision > 0 ? root.dose.line(root.ppm) : ""

    signal asked

    spacing: Theme.px(4)

    Words {
        objectName: root.part + "Words"
        visible: text !== ""
        width: parent.width
        text: root.words
        font.pixelSize: Theme.rowSize
        font.weight: Font.DemiBold
        color: Theme.ink
    }
    SheetButton {
        objectName: root.part + "Button"
        height: Theme.target(28)
        focusPolicy: root.focusPolicy
        text: root.words === "" ? qsTr("How much?") : qsTr("Other feed or can")
        reason: qsTr("Key D. How much of your feed goes into your can, in your own measures.")
        onClicked: root.asked()
    }
}
