pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// What is not done for now: plants that are not fed for what happened to them, each with the reason and its end.
Column {
    id: root

    required property SheetRows waits

    Accessible.role: Accessible.List
    Accessible.name: qsTr("What waits, and why")
    spacing: Theme.px(2)

    Heading {
        text: qsTr("What waits, and why")
    }
    Repeater {
        model: root.waits

        Item {
            id: row
            required property string plant
            required property string spot
            required property string why
            required property string sentence
            width: root.width
            height: words.height + Theme.px(12)
            Accessible.role: Accessible.ListItem
            Accessible.name: row.sentence

            Canvas {
                id: box
                x: Theme.px(12)
                y: Theme.px(6)
                width: Theme.px(20)
                height: width
                Accessible.ignored: true
                onPaint: {
                    const pen = box.getContext("2d");
                    pen.reset();
                    pen.strokeStyle = Theme.edge;
                    pen.lineWidth = 1.5;
                    pen.setLineDash([2, 2]);
                    pen.strokeRect(1, 1, box.width - 2, box.height - 2);
                }
            }
            Column {
                id: words
                x: Theme.px(44)
                y: Theme.px(5)
                width: row.width - x

                Words {
                    width: parent.width
                    text: row.spot === "" ? row.plant : qsTr("%1, %2").arg(row.plant).arg(row.spot)
                    strong: true
                    Accessible.ignored: true
                }
                Words {
                    width: parent.width
                    text: row.why
                    quiet: true
                    font.pixelSize: Theme.smallSize
                    Accessible.ignored: true
                }
            }
        }
    }
}
