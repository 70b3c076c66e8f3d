import QtQuick

// What went wrong, where it happened, and the way to read the household anew.
Rectangle {
    id: root

    required property string error
    /// Name of the sentence for tests.
    property string part: "readAgainText"

    signal again

    visible: root.error !== ""
    height: visible ? Math.max(sentence.height, button.height) + Theme.px(16) : 0
    color: Theme.cautionWash
    border.width: 1
    border.color: Theme.caution
    Accessible.role: Accessible.AlertMessage
    Accessible.name: root.error

    Words {
        id: sentence
        objectName: root.part
        x: Theme.px(12)
        anchors.verticalCenter: parent.verticalCenter
        width: button.x - x - Theme.px(12)
        text: root.error
        Accessible.ignored: true
    }
    SheetButton {
        id: button
        anchors.right: parent.right
        anchors.rightMargin: Theme.px(8)
        anchors.verticalCenter: parent.verticalCenter
        text: qsTr("Read again")
        reason: qsTr("Key F5. Reads the household anew.")
        onClicked: root.again()
    }
}
