import QtQuick

// The mark of a hazard, beside a name or before its words.
Item {
    id: root

    /// What it warns of, read aloud.
    property string words: ""

    implicitWidth: Theme.px(11)
    implicitHeight: Theme.px(11)
    Accessible.role: Accessible.Graphic
    Accessible.name: root.words
    Accessible.ignored: root.words === ""

    Rectangle {
        anchors.centerIn: parent
        width: Math.round(root.width * 0.72)
        height: width
        rotation: 45
        color: Theme.caution
        antialiasing: true
    }
}
