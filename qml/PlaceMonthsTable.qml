pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Twelve months, a row each, under heads that say what their figures are.
Column {
    id: root

    required property SheetRows months
    required property string title
    required property var heads // Lists of words; QML's own type for them has neither map nor join for the linter.
    /// Of the row's figures, in the order of the heads.
    required property var roles

    Accessible.role: Accessible.Table
    Accessible.name: root.title

    Words {
        width: parent.width
        text: root.title
        strong: true
        Accessible.ignored: true
    }
    TwinRow {
        width: parent.width
        head: true
        cells: root.heads
        sentence: root.heads.join(", ")
    }
    Repeater {
        model: root.months

        TwinRow {
            id: month
            required property int index
            objectName: "month" + month.index
            width: root.width
            // Its sentence changes with any of its figures, and a row that leaves has none.
            cells: month.sentence !== "" && month.index >= 0 ? root.roles.map(role => root.months.at(month.index, role)) : []
        }
    }
}
