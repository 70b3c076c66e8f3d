import QtQuick

// Where the columns of the table of plants stand.
QtObject {
    id: root

    required property real width
    required property bool narrow

    readonly property real nameX: Theme.px(root.narrow ? 34 : 36)
    readonly property real spotX: Math.round(root.width * (root.narrow ? 0.42 : 0.30))
    readonly property real stateX: Math.round(root.width * (root.narrow ? 0.70 : 0.47))
    readonly property real nextX: root.narrow ? root.width - Theme.px(24) : Math.round(root.width * 0.62)
    readonly property real hazardX: root.narrow ? root.width - Theme.px(20) : Math.round(root.width * 0.78)
}
