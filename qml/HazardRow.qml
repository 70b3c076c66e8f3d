import QtQuick

// What a plant can do, and what to do then: in rust, with the lozenge, where it is a hazard.
Item {
    id: root

    required property string strong
    required property string rest
    required property bool rust

    height: Math.max(Theme.px(18), words.height)
    Accessible.role: root.rust ? Accessible.AlertMessage : Accessible.StaticText
    Accessible.name: qsTr("%1 %2").arg(root.strong).arg(root.rest)

    Lozenge {
        visible: root.rust
        y: Theme.px(4)
    }
    Words {
        id: words
        x: root.rust ? Theme.px(20) : 0
        width: Math.min(parent.width - x, Theme.px(620))
        textFormat: Text.StyledText
        text: root.rust ? qsTr("<font color=\"%1\"><b>%2</b></font> %3").arg(Theme.caution).arg(root.strong).arg(root.rest) : qsTr("<b>%1</b> %2").arg(root.strong).arg(root.rest)
        font.pixelSize: Theme.rowSize
        Accessible.ignored: true
    }
}
