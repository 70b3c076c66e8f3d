pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// A line of a shelf: the spot at its left where it begins, a lath with plants on it, free places as dashed pots.
Item {
    id: root

    required property int index
    required property int first
    required property int shelf
    required property string spot
    required property int hand
    required property string places
    required property string spoken
    required property int free
    required property list<string> names
    required property list<string> states
    required property list<string> hazards
    required property list<int> habits
    required property list<bool> fruits
    required property list<int> clays
    required property list<string> pictures
    required property list<bool> marks
    required property list<string> sentences
    required property int columns
    required property int current
    required property bool hasFocus
    required property bool narrow
    readonly property real labelWidth: root.narrow ? 0 : Theme.px(184)
    readonly property real headHeight: root.narrow && root.spot !== "" ? Theme.px(40) : 0
    readonly property real cellWidth: Math.floor((root.width - root.labelWidth) / root.columns)
    readonly property real lathY: root.headHeight + Theme.px(116)

    signal pressed(shown: int, shift: bool)
    signal opened(shown: int)
    /// A plant is carried by the pointer, which is at that place of this line; and let go.
    signal carried(shown: int, marked: bool, x: real, y: real)
    signal letGo
    /// What can be done with a plant is asked at that place of this line.
    signal actsAsked(shown: int, name: string, marked: bool, x: real, y: real)

    /// The words of one plant may take two lines.
    property real needs: 0
    implicitHeight: root.headHeight + Math.max(Theme.px(164), root.needs + Theme.px(4))

    function measure(): void {
        let most = 0;
        for (let cell = 0; cell < plants.count; ++cell) {
            const at = plants.itemAt(cell) as ShelfPlant;
            if (at !== null)
                most = Math.max(most, at.needs);
        }
        root.needs = most;
    }
    /// Place among the shown plants of the one at that x; -1 where none stands.
    function shownAt(x: real): int {
        const cell = Math.floor((x - root.labelWidth) / root.cellWidth);
        return cell >= 0 && cell < root.names.length ? root.first + cell : -1;
    }

    /// As if it was asked at the plant with the keys.
    function askActs(shown: int): void {
        const cell = shown - root.first;
        root.actsAsked(shown, root.names[cell] ?? "", root.marks[cell] ?? false, root.labelWidth + (cell + 0.5) * root.cellWidth, root.lathY);
    }

    Column {
        visible: root.spot !== ""
        y: root.narrow ? 0 : Theme.px(44)
        width: root.narrow ? root.width : root.labelWidth - Theme.px(12)
        spacing: Theme.px(2)
        Accessible.role: Accessible.Heading
        Accessible.name: root.spoken

        SpotSwatch {
            visible: root.hand >= 0 && !root.narrow
            width: Theme.px(34)
            height: Theme.px(18)
            theme: Theme
            scheme: Theme.look
            colour: root.hand
            Accessible.ignored: true
        }
        Words {
            width: parent.width
            topPadding: Theme.px(root.narrow ? 0 : 4)
            text: root.spot
            strong: true
            Accessible.ignored: true
        }
        Words {
            width: parent.width
            text: root.places
            quiet: true
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
    }
    Lath {
        x: root.labelWidth
        y: root.lathY
        width: root.width - x
        height: Theme.px(8)
        theme: Theme
        scheme: Theme.look
        Accessible.ignored: true
    }
    Repeater {
        id: plants
        model: root.columns

        ShelfPlant {
            id: plant

            required property int index
            readonly property bool there: plant.index < root.names.length

            // The lists of a line change one after the other.
            visible: plant.index < root.names.length + root.free
            onNeedsChanged: root.measure()
            x: root.labelWidth + plant.index * root.cellWidth
            y: root.headHeight
            width: root.cellWidth
            height: root.height - root.headHeight - Theme.px(4)
            lathY: root.lathY - root.headHeight
            name: root.names[plant.index] ?? ""
            words: root.states[plant.index] ?? ""
            hazard: root.hazards[plant.index] ?? ""
            sentence: root.sentences[plant.index] ?? ""
            habit: root.habits[plant.index] ?? -1
            fruit: root.fruits[plant.index] ?? false
            clay: root.clays[plant.index] ?? 0
            picture: root.pictures[plant.index] ?? ""
            marked: root.marks[plant.index] ?? false
            chosen: plant.there && root.first + plant.index === root.current
            focused: plant.chosen && root.hasFocus
            onPressed: shift => root.pressed(root.first + plant.index, shift)
            onOpened: root.opened(root.first + plant.index)
            onCarried: (x, y) => root.carried(root.first + plant.index, plant.marked, plant.x + x, plant.y + y)
            onLetGo: root.letGo()
            onActsAsked: (x, y) => root.actsAsked(root.first + plant.index, plant.name, plant.marked, plant.x + x, plant.y + y)
        }
    }
}
