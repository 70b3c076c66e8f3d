pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// A part of what may be measured at a spot: a field each, the usual figure in it where nothing is typed.
Column {
    id: root

    required property SpotsForm form
    required property SheetRows measures
    required property string title
    property string about: ""

    visible: root.measures.count > 0
    spacing: Theme.px(6)
    Accessible.role: Accessible.Grouping
    Accessible.name: root.title

    Words {
        width: parent.width
        text: root.title
        strong: true
        font.pixelSize: Theme.rowSize
    }
    Words {
        visible: text !== ""
        width: parent.width
        text: root.about
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    Flow {
        width: parent.width
        spacing: Theme.px(12)

        Repeater {
            model: root.measures

            LabelledField {
                required property int measure
                required property string usual
                required label
                required unit
                required value
                required note
                required trouble
                objectName: "measure" + measure
                width: Math.min(root.width, Theme.px(210))
                number: true
                example: usual
                onEdited: words => root.form.setMeasure(measure, words)
            }
        }
    }
}
