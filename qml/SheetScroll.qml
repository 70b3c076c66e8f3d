import QtQuick
import QtQuick.Controls.Basic

// What scrolls up and down as a whole. What has the keys is always to be seen.
Flickable {
    id: root

    /// Kept in sight above what has the keys, such as its label, and below it.
    property real above: Theme.px(8)
    property real below: Theme.px(8)
    readonly property Item focused: root.visible ? root.Window.activeFocusItem : null
    readonly property real most: Math.max(0, root.contentHeight - root.height)

    /// What stands at the left edge does so that far within, so that its ring is not cut off.
    readonly property real ringRoom: 6

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    onFocusedChanged: root.reveal(root.focused)
    onHeightChanged: root.reveal(root.focused)

    ScrollBar.vertical: SheetScrollBar {}

    function scrollTo(y: real): void {
        root.contentY = Math.max(0, Math.min(root.most, y));
    }
    function scroll(by: real): void {
        root.scrollTo(root.contentY + by);
    }
    /// By four fifths of what is in sight, down or up.
    function page(by: int): void {
        root.scroll(by * 0.8 * root.height);
    }
    function reveal(item: Item): void {
        let within = item;
        while (within !== null && within !== root.contentItem)
            within = within.parent;
        if (within === null || item === root.contentItem)
            return;
        const y = item.mapToItem(root.contentItem, 0, 0).y;
        const top = y - root.above;
        const bottom = y + item.height + root.below;
        if (bottom - top > root.height && bottom > root.contentY && top < root.contentY + root.height)
            return; // Too high to be seen whole, and some of it is.
        if (top < root.contentY)
            root.scrollTo(top);
        else if (bottom > root.contentY + root.height)
            root.scrollTo(Math.min(top, bottom - root.height));
    }
}
