import QtQuick

// A second sheet over the page: a title, what always stays in sight, a body that scrolls, acts at its foot.
FocusScope {
    id: root

    required property string title
    /// Name of its parts for tests.
    required property string part
    property real most: Theme.px(700)
    readonly property bool narrow: root.width < 1000 * Theme.textScale
    readonly property real side: Theme.px(root.narrow ? 14 : 28)
    /// Room for the body.
    readonly property real room: contents.width
    readonly property real scrolled: body.contentY
    /// What always stays in sight would leave the body no room: all of it scrolls together.
    readonly property bool together: root.height - 2 * sheet.y - body.y - foot.height - Theme.px(30) < Math.min(Theme.px(110), contents.height)
    readonly property SheetScroll scroller: root.together ? whole : body
    property alias lead: leading.data
    property alias acts: foot.data
    default property alias body: contents.data

    signal escaped

    Accessible.role: Accessible.Dialog
    Accessible.name: root.title

    Keys.onEscapePressed: root.escaped()
    // Numbers and letters are not for the window while this is open.
    Keys.onShortcutOverride: event => {
        event.accepted = event.key !== Qt.Key_Return && event.key !== Qt.Key_Enter && event.key !== Qt.Key_PageDown && event.key !== Qt.Key_PageUp;
    }
    Keys.onPressed: event => {
        if (event.key === Qt.Key_Down)
            root.scroller.scroll(Theme.px(48));
        else if (event.key === Qt.Key_Up)
            root.scroller.scroll(-Theme.px(48));
        event.accepted = event.key !== Qt.Key_Tab && event.key !== Qt.Key_Backtab;
    }

    function toTop(): void {
        body.contentY = 0;
        whole.contentY = 0;
    }

    Shortcut {
        sequences: ["PgDown"]
        enabled: root.visible
        onActivated: root.scroller.page(1)
    }
    Shortcut {
        sequences: ["PgUp"]
        enabled: root.visible
        onActivated: root.scroller.page(-1)
    }
    Rectangle {
        anchors.fill: parent
        color: Theme.desk
        opacity: 0.6
    }
    MouseArea { // What lies below is not for the pointer now.
        anchors.fill: parent
        hoverEnabled: true
        onWheel: wheel => wheel.accepted = true
    }
    Rectangle {
        id: sheet
        anchors.horizontalCenter: parent.horizontalCenter
        y: Theme.px(root.narrow ? 8 : 24)
        width: Math.min(root.width - 24, root.most)
        height: Math.min(root.height - 2 * y, body.y + contents.height + foot.height + Theme.px(52))
        radius: Theme.sheetRadius
        color: Theme.sheet
        border.width: 1
        border.color: Theme.edge

        SheetScroll {
            id: whole
            objectName: root.part + "Whole"
            anchors.fill: parent
            anchors.margins: 1
            contentHeight: root.together ? foot.y + foot.height + Theme.px(16) : height
            interactive: root.together

            Heading {
                id: head
                objectName: root.part + "Title"
                x: root.side
                y: Theme.px(18)
                width: sheet.width - 2 * x
                text: root.title
                font.pixelSize: Theme.nameSize
            }
            Column {
                id: leading
                x: root.side
                y: head.y + head.height + Theme.px(6)
                width: sheet.width - 2 * x
            }
            SheetScroll {
                id: body
                above: Theme.px(30) // Its label stands above it.
                below: 16
                objectName: root.part + "Body"
                x: root.side - 6
                y: leading.y + leading.height + Theme.px(6)
                width: sheet.width - x - Theme.px(10)
                height: root.together ? contents.height + Theme.px(8) : rule.y - y - Theme.px(6)
                interactive: !root.together
                contentHeight: contents.height + Theme.px(8)

                Column {
                    id: contents
                    x: 6
                    y: 4
                    width: body.width - x - Theme.px(20)
                    spacing: Theme.px(12)
                }
            }
            Rectangle {
                id: rule
                x: root.side
                y: foot.y - Theme.px(8)
                width: sheet.width - 2 * x
                height: 1
                color: Theme.rule
            }
            Column {
                id: foot
                x: root.side
                y: (root.together ? body.y + body.height + height + Theme.px(30) : sheet.height) - height - Theme.px(16)
                width: sheet.width - 2 * x
                spacing: Theme.px(8)
            }
        }
    }
}
