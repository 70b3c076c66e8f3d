import QtQuick

// Where the columns of the list of lots stand, for its head and its rows.
QtObject {
    id: root

    required property real width
    required property bool narrow

    /// The name has a line of its own, the columns stand below it.
    readonly property bool stacked: root.width < Theme.px(420)
    /// Names come before years.
    readonly property bool withYear: !root.narrow && root.width >= Theme.px(560)
    readonly property real yearWidth: root.withYear ? Theme.px(44) : 0
    readonly property real seedsWidth: Theme.px(root.narrow ? 40 : 52)
    readonly property real shareWidth: root.stacked ? root.nextX - root.shareX - Theme.px(10) : Theme.px(root.withYear ? 166 : root.width >= Theme.px(460) ? 140 : 120)
    readonly property real nextX: root.width - (root.stacked ? Math.round(root.width * 0.36) : Math.max(Theme.px(96), Math.min(Theme.px(150), root.width * 0.3)))
    readonly property real shareX: root.stacked ? root.seedsX + root.seedsWidth + Theme.px(14) : root.nextX - root.shareWidth - Theme.px(14)
    readonly property real seedsX: root.stacked ? Theme.px(6) : root.shareX - root.seedsWidth - Theme.px(18)
    readonly property real yearX: root.seedsX - root.yearWidth - (root.withYear ? Theme.px(10) : 0)
}
