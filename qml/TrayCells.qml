pragma ComponentBehavior: Bound

import QtQuick

// A tray as its cells, to be pressed where a seedling is up. What is kept is their number alone: which cells they are in is
// remembered for as long as the window is open.
Flow {
    id: root

    required property string head
    required property int emerged
    required property int seeds
    /// Whether a seedling is in each cell, by the head of the tray.
    required property var remembered

    property list<bool> up: []
    property int current: 0

    signal counted(more: int)

    function settle(): void {
        const cells = (root.remembered[root.head] ?? []).slice(0, root.seeds);
        while (cells.length < root.seeds)
            cells.push(false);
        let number = cells.filter(cell => cell).length;
        for (let at = 0; at < cells.length && number < root.emerged; ++at) {
            if (!cells[at]) {
                cells[at] = true;
                ++number;
            }
        }
        for (let at = cells.length - 1; at >= 0 && number > root.emerged; --at) {
            if (cells[at]) {
                cells[at] = false;
                --number;
            }
        }
        root.remembered[root.head] = cells;
        root.up = cells;
    }

    function press(at: int): void {
        root.current = at;
        const cells = root.remembered[root.head].slice();
        cells[at] = !cells[at];
        root.remembered[root.head] = cells;
        root.counted(cells[at] ? 1 : -1);
    }

    spacing: Theme.apart(4)
    activeFocusOnTab: true
    Accessible.role: Accessible.List
    Accessible.name: qsTr("Cells of %1").arg(root.head)
    Component.onCompleted: root.settle()
    onEmergedChanged: root.settle()
    onSeedsChanged: root.settle()

    Keys.onPressed: event => {
        const steps = new Map([[Qt.Key_Left, -1], [Qt.Key_Right, 1], [Qt.Key_Home, -root.seeds], [Qt.Key_End, root.seeds]]);
        if (event.key === Qt.Key_Space)
            root.press(root.current);
        else if (steps.has(event.key))
            root.current = Math.max(0, Math.min(root.seeds - 1, root.current + steps.get(event.key)));
        else
            return;
        event.accepted = true;
    }

    Repeater {
        model: root.up.length

        Rectangle {
            id: cell

            required property int index
            readonly property bool isUp: root.up[cell.index] ?? false

            objectName: "cell" + cell.index
            width: Theme.target(34)
            height: Theme.target(34)
            radius: Theme.sheetRadius
            color: Theme.well
            border.width: 1
            border.color: Theme.edge
            Accessible.role: Accessible.CheckBox
            Accessible.name: cell.isUp ? qsTr("Cell %1 of %2, up").arg(cell.index + 1).arg(root.seeds)
                                       : qsTr("Cell %1 of %2, nothing up").arg(cell.index + 1).arg(root.seeds)
            Accessible.checked: cell.isUp
            Accessible.checkable: true
            Accessible.onToggleAction: root.press(cell.index)
            Accessible.onPressAction: root.press(cell.index)

            // A stem and two seed leaves; a ring where nothing is up.
            Item {
                visible: cell.isUp
                anchors.fill: parent

                Rectangle {
                    x: parent.width / 2 - width / 2
                    y: parent.height * 0.42
                    width: Math.max(2, parent.width * 0.06)
                    height: parent.height * 0.4
                    color: Theme.leaf
                }
                Repeater {
                    model: 2

                    Rectangle {
                        id: seedLeaf

                        required property int index
                        x: cell.width * (seedLeaf.index === 0 ? 0.17 : 0.49)
                        y: cell.height * 0.27
                        width: cell.width * 0.34
                        height: cell.height * 0.19
                        radius: height / 2
                        rotation: seedLeaf.index === 0 ? 28 : -28
                        color: Theme.leaf
                    }
                }
            }
            Rectangle {
                visible: !cell.isUp
                anchors.centerIn: parent
                width: parent.width * 0.22
                height: width
                radius: width / 2
                color: "transparent"
                border.width: 1
                border.color: Theme.ink2
            }
            FocusRing {
                away: -3
                visible: root.activeFocus && root.current === cell.index
            }
            TapHandler {
                onTapped: {
                    root.forceActiveFocus();
                    root.press(cell.index);
                }
            }
        }
    }
}
