import QtQuick
import QtQuick.Templates as T

// A field on the sheet; its unit stands at its end, what is wrong stands beside it.
T.TextField {
    id: root

    required property string label
    property string unit: ""
    property bool wrong: false
    /// Its width where that has room for the example, which is never cut while there is room.
    property real least: Theme.px(112)
    property real most: Infinity

    implicitWidth: Math.min(root.most, Math.max(root.least, Math.ceil(Math.max(exampleSize.advanceWidth, exampleSize.width)) + 2 + root.leftPadding + root.rightPadding))
    property real exampleHeight: 0
    // An example that has no room in one line wraps.
    implicitHeight: Math.max(Theme.target(32), Math.ceil(root.exampleHeight) + Theme.px(10))
    leftPadding: Theme.px(10)
    rightPadding: Theme.px(10) + (root.unit === "" ? 0 : Math.ceil(unitSize.width) + Theme.px(6))
    verticalAlignment: TextInput.AlignVCenter
    color: Theme.ink
    placeholderTextColor: Theme.ink2
    selectionColor: Theme.action
    selectedTextColor: Theme.actionInk
    selectByMouse: true
    font.family: Theme.textFamily
    font.pixelSize: Theme.textSize
    // What the field does not want is not for the page: its arrows and letters would act there.
    Keys.priority: Keys.AfterItem
    Keys.onPressed: event => {
        const leaves = event.key === Qt.Key_Tab || event.key === Qt.Key_Backtab || event.key === Qt.Key_Escape || event.key === Qt.Key_F5 || event.key === Qt.Key_F6;
        event.accepted = !leaves && (event.modifiers & (Qt.ControlModifier | Qt.AltModifier)) === 0;
    }
    // A field that is gone would go on taking the keys of pages for letters of its own.
    onVisibleChanged: if (!root.visible)
        root.focus = false
    Accessible.role: Accessible.EditableText
    Accessible.name: root.unit === "" ? root.label : qsTr("%1, %2").arg(root.label).arg(root.unit)

    TextMetrics {
        id: exampleSize
        text: root.placeholderText
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
        font.italic: true
    }
    TextMetrics {
        id: unitSize
        text: root.unit
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
    }
    background: Rectangle {
        radius: Theme.controlRadius
        color: Theme.sheet
        border.width: root.activeFocus || root.wrong ? 2 : 1
        border.color: root.wrong ? Theme.caution : root.activeFocus ? Theme.focus : Theme.edge

        Text {
            textFormat: Text.PlainText
            visible: root.unit !== ""
            anchors.right: parent.right
            anchors.rightMargin: Theme.px(10)
            anchors.verticalCenter: parent.verticalCenter
            text: root.unit
            color: Theme.ink2
            font.family: Theme.textFamily
            font.pixelSize: Theme.textSize
            Accessible.ignored: true
        }
        Text {
            textFormat: Text.PlainText
            anchors.left: parent.left
            anchors.leftMargin: Theme.px(10)
            anchors.right: parent.right
            anchors.rightMargin: root.rightPadding
            anchors.verticalCenter: parent.verticalCenter
            visible: root.length === 0 && root.preeditText === ""
            text: root.placeholderText
            color: Theme.ink2
            wrapMode: Text.Wrap
            onHeightChanged: root.exampleHeight = height
            font.family: Theme.textFamily
            font.pixelSize: Theme.textSize
            font.italic: true // Told from what was typed by more than its colour.
            Accessible.ignored: true
        }
    }
}
