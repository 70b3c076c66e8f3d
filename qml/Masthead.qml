import QtQuick
import Lathhouse.Models

// Mark, name, tabs, the household and the date.
Item {
    id: root

    required property YearModel year
    required property bool narrow
    required property bool wide
    readonly property real tabX: tab.x
    readonly property real tabWidth: tab.width

    Mark {
        x: 18
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: 2
    }
    Text {
        x: Theme.px(54)
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: 2
        visible: root.width >= 640 * Theme.textScale
        text: "Lathhouse"
        color: Theme.ink
        font.family: Theme.titleFamily
        font.pixelSize: Theme.nameSize
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Rectangle {
        id: tab
        x: Theme.px(root.wide ? 194 : root.narrow ? (root.width >= 640 * Theme.textScale ? 172 : 54) : 186)
        y: Theme.px(root.wide ? 4 : 8)
        width: Theme.px(root.wide ? 104 : root.narrow ? 76 : 92)
        height: root.height - y + 1
        color: Theme.sheet
        radius: Theme.sheetRadius
        border.width: 1
        border.color: Theme.contrast ? Theme.edge : Theme.rule
        Accessible.role: Accessible.PageTab
        Accessible.name: qsTr("Year")
        Accessible.selected: true

        Text {
            anchors.centerIn: parent
            text: qsTr("Year")
            color: Theme.ink
            font.family: Theme.textFamily
            font.pixelSize: Theme.tabSize
            font.weight: Font.DemiBold
            Accessible.ignored: true
        }
    }
    Text {
        id: home
        objectName: "homeName"
        anchors.left: tab.right
        anchors.leftMargin: 20
        anchors.right: date.left
        anchors.rightMargin: 20
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: 2
        visible: width > 120
        text: root.year.demonstration
              ? (root.narrow ? qsTr("%1 · %2, invented") : qsTr("%1 · %2 · invented, for showing")).arg(root.year.household).arg(root.year.place)
              : qsTr("%1 · %2").arg(root.year.household).arg(root.year.place)
        color: Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.rowSize
        elide: Text.ElideRight
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Text {
        id: date
        anchors.right: parent.right
        anchors.rightMargin: 18
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: 2
        text: root.narrow ? root.year.todayShort : root.year.todayLong
        color: Theme.ink
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
        Accessible.role: Accessible.StaticText
        Accessible.name: qsTr("Today is %1").arg(root.year.todayLong)
    }
}
