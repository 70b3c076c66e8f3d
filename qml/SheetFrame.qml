import QtQuick
import QtQuick.Controls.Basic

// A second sheet over the page: a title, what always stays in sight, a body that scrolls, acts at its foot.
FocusScope {
    id: root

    required property string title
    /// Name of its parts for tests.
    required property string part
    property real most: Theme.px(700)
    readonly property bool narrow: root.width < 1000 * Theme.textScale
    readonly property real side: Theme.px(root.narrow ? 14 : 28)
    readonly property Item focused: Window.activeFocusItem
    /// Room for the body.
    readonly property real room: contents.width
    readonly property real scrolled: body.contentY
    property alias lead: leading.data
    property alias acts: foot.data
    default property alias body: contents.data

    signal escaped

    Accessible.role: Accessible.Dialog
    Accessible.name: root.title

    onFocusedChanged: if (root.visible)
        root.reveal(root.focused)
    Keys.onEscapePressed: root.escaped()
    // Numbers and letters are not for the window while this is open.
    Keys.onShortcutOverride: event => {
        event.accepted = event.key !== Qt.Key_Return && event.key !== Qt.Key_Enter && event.key !== Qt.Key_PageDown && event.key !== Qt.Key_PageUp;
    }
    Keys.onPressed: event => {
        if (event.key === Qt.Key_Down)
            root.scroll(Theme.px(48));
        else if (event.key === Qt.Key_Up)
            root.scroll(-Theme.px(48));
        event.accepted = event.key !== Qt.Key_Tab && event.key !== Qt.Key_Backtab;
    }

    function toTop(): void {
        body.contentY = 0;
    }
    function scroll(by: real): void {
        body.contentY = Math.max(0, Math.min(Math.max(0, body.contentHeight - body.height), body.contentY + by));
    }
    /// What has the keys is always to be seen.
    function reveal(item: Item): void {
        let within = item;
        while (within !== null && within !== body.contentItem)
            within = within.parent;
        if (within === null)
            return;
        const top = item.mapToItem(body.contentItem, 0, 0).y;
        if (top < body.contentY + Theme.px(30)) // Its label stands above it.
            body.contentY = Math.max(0, top - Theme.px(30));
        else if (top + item.height > body.contentY + body.height - 16)
            body.contentY = Math.min(Math.max(0, body.contentHeight - body.height), top + item.height - body.height + 16);
    }

    Shortcut {
        sequences: ["PgDown"]
        enabled: root.visible
        onActivated: root.scroll(0.8 * body.height)
    }
    Shortcut {
        sequences: ["PgUp"]
        enabled: root.visible
        onActivated: root.scroll(-0.8 * body.height)
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

        Heading {
            id: head
            objectName: root.part + "Title"
            x: root.side
            y: Theme.px(18)
            width: parent.width - 2 * x
            text: root.title
            font.pixelSize: Theme.nameSize
        }
        Column {
            id: leading
            x: root.side
            y: head.y + head.height + Theme.px(6)
            width: parent.width - 2 * x
        }
        Flickable {
            id: body
            objectName: root.part + "Body"
            x: root.side - 6
            y: leading.y + leading.height + Theme.px(6)
            width: sheet.width - x - Theme.px(10)
            height: rule.y - y - Theme.px(6)
            contentHeight: contents.height + Theme.px(8)
            clip: true
            boundsBehavior: Flickable.StopAtBounds
            onHeightChanged: root.reveal(root.focused)

            ScrollBar.vertical: ScrollBar {
                policy: body.contentHeight > body.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
                width: 8
                Accessible.ignored: true
            }
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
            y: sheet.height - height - Theme.px(16)
            width: sheet.width - 2 * x
            spacing: Theme.px(8)
        }
    }
}
