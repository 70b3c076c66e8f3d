pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Mark, name, tabs, the household and the date.
Item {
    id: root

    required property YearModel year
    required property bool narrow
    required property bool wide
    /// The place whose tab is joined to the sheet.
    required property string page
    /// Plants that must come in tonight; 0: none.
    property int carries: 0
    readonly property list<string> pages: ["round", "year", "plants", "seeds", "home"]
    readonly property list<string> names: [qsTr("Round"), qsTr("Year"), qsTr("Plants"), qsTr("Seeds"), qsTr("Home")]
    readonly property list<int> keys: [1, 2, 3, 4, 5]
    readonly property bool named: root.width >= 640 * Theme.textScale
    /// The mark goes where the words of the tabs have no room else.
    readonly property bool marked: root.named || Theme.px(54) + root.pages.length * (root.widestTab + Theme.px(8)) + root.leastActs <= root.width
    readonly property real widestTab: {
        let widest = 0;
        for (let at = 0; at < root.names.length && tabWords.height > 0; ++at)
            widest = Math.max(widest, tabWords.advanceWidth(root.names[at]));
        return widest;
    }
    readonly property real tabsX: root.marked ? Theme.px(root.wide ? 194 : root.narrow ? (root.named ? 172 : 54) : 186) : 12
    readonly property real tabWidth: root.narrow ? Math.min(Theme.px(76), Math.floor((root.width - root.tabsX - root.leastActs) / root.pages.length)) : Theme.px(root.wide ? 104 : 92)
    /// Room for Undo and Find at the least, as drawn shapes and without the date.
    readonly property real leastActs: undoButton.drawnWidth + findButton.drawnWidth + Theme.px(16) + 12
    /// Beside the tabs, the short date and what lies between.
    readonly property bool drawn: root.width - root.tabsEnd - shortDate.advanceWidth - Theme.px(34) - 18 < undoButton.wordsWidth + findButton.wordsWidth
    /// Smaller in the smallest window with the largest text, for all alike.
    readonly property int tabSize: root.widestTab > root.tabWidth - 4 ? Math.max(12, Math.floor(Theme.tabSize * (root.tabWidth - 4) / root.widestTab)) : Theme.tabSize
    readonly property real tabX: root.tabsX + root.pages.indexOf(root.page) * root.tabWidth
    /// Household and place would else take two lines between the tabs and the acts.
    readonly property bool dateIsShort: root.narrow || homeWidth.advanceWidth > root.width - root.tabsEnd - longDate.advanceWidth - undoButton.width - findButton.width - Theme.px(34) - 58
    readonly property real tabsEnd: root.tabsX + root.pages.length * root.tabWidth

    signal chosen(page: string)
    signal undoAsked
    signal findAsked

    Mark {
        x: 18
        visible: root.marked
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: 2
    }
    Text {
        textFormat: Text.PlainText
        x: Theme.px(54)
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: 2
        visible: root.named
        text: "Lathhouse"
        color: Theme.ink
        font.family: Theme.titleFamily
        font.pixelSize: Theme.nameSize
        Accessible.role: Accessible.StaticText
        Accessible.name: text
    }
    Repeater {
        model: root.pages

        Rectangle {
            id: tab

            required property int index
            required property string modelData
            readonly property bool open: tab.modelData === root.page
            /// The number stands above the words where it has no room beside them.
            readonly property bool stacked: badge.visible && tabWords.advanceWidth(root.names[tab.index]) * root.tabSize / Theme.tabSize + badge.width + 12 > tab.width

            objectName: tab.modelData + "Tab"
            x: root.tabsX + tab.index * root.tabWidth
            y: Theme.px(root.wide ? 4 : 8)
            width: root.tabWidth
            height: root.height - y + 1
            color: tab.open ? Theme.sheet : pointer.containsMouse ? Theme.well : "transparent"
            radius: Theme.sheetRadius
            border.width: tab.open ? 1 : 0
            border.color: Theme.contrast ? Theme.edge : Theme.rule
            activeFocusOnTab: true
            Accessible.role: Accessible.PageTab
            Accessible.name: badge.visible ? qsTr("%1, %2 to carry in tonight").arg(label.text).arg(root.carries) : label.text
            Accessible.description: qsTr("Key %1").arg(root.keys[tab.index])
            Accessible.selected: tab.open
            Accessible.onPressAction: root.chosen(tab.modelData)
            Keys.onSpacePressed: root.chosen(tab.modelData)
            Keys.onReturnPressed: root.chosen(tab.modelData)
            Keys.onEnterPressed: root.chosen(tab.modelData)

            Text {
                id: label
                objectName: tab.modelData + "Label"
                textFormat: Text.PlainText
                anchors.centerIn: parent
                anchors.horizontalCenterOffset: badge.visible && !tab.stacked ? -Math.round(badge.width / 2) - 2 : 0
                anchors.verticalCenterOffset: tab.stacked ? Theme.px(6) : 0
                text: root.names[tab.index]
                color: tab.open ? Theme.ink : Theme.ink2
                font.family: Theme.textFamily
                font.pixelSize: root.tabSize
                font.weight: tab.open ? Font.DemiBold : Font.Normal
                Accessible.ignored: true
            }
            Rectangle {
                id: badge
                objectName: tab.modelData + "Badge"
                visible: tab.modelData === "round" && root.carries > 0
                x: tab.stacked ? Math.round((tab.width - width) / 2) : label.x + label.width + 4
                y: tab.stacked ? -Theme.px(5) : Math.round(label.y + (label.height - height) / 2)
                width: Math.max(height, number.width + 8)
                height: Theme.px(18)
                radius: height / 2
                color: Theme.caution

                Text {
                    id: number
                    textFormat: Text.PlainText
                    anchors.centerIn: parent
                    text: root.carries
                    color: Theme.sheet
                    font.family: Theme.textFamily
                    font.pixelSize: Theme.smallSize
                    font.weight: Font.DemiBold
                    Accessible.ignored: true
                }
            }
            Rectangle {
                anchors.fill: parent
                anchors.margins: 3
                visible: tab.activeFocus
                color: "transparent"
                radius: Theme.sheetRadius
                border.width: 2
                border.color: Theme.focus
            }
            MouseArea {
                id: pointer
                anchors.fill: parent
                hoverEnabled: true
                onClicked: root.chosen(tab.modelData)
            }
        }
    }
    FontMetrics {
        id: tabWords
        font.family: Theme.textFamily
        font.pixelSize: Theme.tabSize
        font.weight: Font.DemiBold
    }
    TextMetrics {
        id: homeWidth
        text: home.words
        font.family: Theme.textFamily
        font.pixelSize: Theme.rowSize
    }
    TextMetrics {
        id: shortDate
        text: root.year.todayShort
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
    }
    TextMetrics {
        id: longDate
        text: root.year.todayLong
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
    }
    Text {
        id: home
        textFormat: Text.PlainText
        objectName: "homeName"
        anchors.left: parent.left
        anchors.leftMargin: root.tabsEnd + 20
        anchors.right: undoButton.left
        anchors.rightMargin: 20
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: 2
        visible: width > 120 && !home.truncated
        readonly property string words: root.year.demonstration
              ? qsTr("Invented, for showing · %1").arg(root.year.place)
              : qsTr("%1 · %2").arg(root.year.household).arg(root.year.place)
        // What the household is called is said in full by Home; the place alone often has room in one line.
        text: homeWidth.advanceWidth <= home.width ? home.words
              : root.year.demonstration ? qsTr("Invented · %1").arg(root.year.place) : root.year.place
        height: root.height - 8
        verticalAlignment: Text.AlignVCenter
        color: Theme.ink2
        font.family: Theme.textFamily
        font.pixelSize: Theme.rowSize
        // Two lines where one has no room.
        wrapMode: Text.Wrap
        maximumLineCount: 2
        fontSizeMode: Text.Fit
        minimumPixelSize: Theme.smallSize
        Accessible.role: Accessible.StaticText
        Accessible.name: home.words
    }
    Text {
        id: date
        textFormat: Text.PlainText
        anchors.right: parent.right
        anchors.rightMargin: 18
        anchors.verticalCenter: parent.verticalCenter
        anchors.verticalCenterOffset: 2
        visible: x - undoButton.width - findButton.width - Theme.px(34) > root.tabsEnd
        text: root.dateIsShort ? root.year.todayShort : root.year.todayLong
        color: Theme.ink
        font.family: Theme.textFamily
        font.pixelSize: Theme.textSize
        Accessible.role: Accessible.StaticText
        Accessible.name: qsTr("Today is %1").arg(root.year.todayLong)
    }
    MastAct {
        id: undoButton
        objectName: "mastUndo"
        anchors.right: findButton.left
        anchors.rightMargin: Theme.px(8)
        anchors.verticalCenter: date.verticalCenter
        shape: "undo"
        drawn: root.drawn
        text: qsTr("Undo")
        reason: qsTr("Control and Z. Takes back what was entered last, on any page.")
        onClicked: root.undoAsked()
    }
    MastAct {
        id: findButton
        objectName: "findButton"
        anchors.right: date.visible ? date.left : parent.right
        anchors.rightMargin: date.visible ? Theme.px(18) : 12
        anchors.verticalCenter: date.verticalCenter
        shape: "find"
        drawn: root.drawn
        text: qsTr("Find")
        reason: qsTr("Control and F. Finds a plant by its name or kind.")
        onClicked: root.findAsked()
    }
}
