import QtQuick

// Where the columns of the list of lots stand, for its head and its rows.
QtObject {
    id: root

    required property real width
    required property bool narrow

    readonly property real yearWidth: Theme.px(root.narrow ? 0 : 44)
    readonly property real seedsWidth: Theme.px(root.narrow ? 40 : 52)
    readonly property real shareWidth: Theme.px(root.narrow ? 120 : 166)
    readonly property real nextX: root.width - Math.max(Theme.px(96), root.width * 0.22)
    readonly property real shareX: root.nextX - root.shareWidth - Theme.px(14)
    readonly property real seedsX: root.shareX - root.seedsWidth - Theme.px(18)
    readonly property real yearX: root.seedsX - root.yearWidth - (root.narrow ? 0 : Theme.px(10))
}
