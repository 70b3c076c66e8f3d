pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// What the place in the form gives, changing as one types.
Column {
    id: root

    required property PlaceForm form

    spacing: Theme.px(6)
    Accessible.role: Accessible.Grouping
    Accessible.name: qsTr("What this place gives")

    Heading {
        width: parent.width
        text: qsTr("What this place gives")
    }
    Words {
        width: parent.width
        text: root.form.hasGiven ? root.form.stations
            : root.form.givenTrouble !== "" ? ""
            : qsTr("Its frost dates, its nights and how sure they are stand here as soon as there is a place.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    Trouble {
        objectName: "givenTrouble"
        width: parent.width
        words: root.form.givenTrouble
    }
    PlaceFormMap {
        objectName: "placeFormMap"
        visible: root.form.hasGiven
        anchors.horizontalCenter: parent.horizontalCenter
        width: Math.min(parent.width, Theme.px(330))
        height: Math.min(width, Theme.px(206))
        theme: Theme
        scheme: Theme.look
        form: root.form
        Accessible.role: Accessible.Chart
        Accessible.name: qsTr("Map of the stations round the place: %1").arg(root.form.stations)
    }
    PlaceFormNights {
        objectName: "placeFormNights"
        visible: root.form.hasGiven
        width: parent.width
        height: Theme.px(136)
        theme: Theme
        scheme: Theme.look
        form: root.form
        Accessible.role: Accessible.Chart
        Accessible.name: root.form.spoken
    }
    Column {
        objectName: "placeFigures"
        visible: root.form.hasGiven
        width: parent.width
        topPadding: Theme.px(4)

        Repeater {
            model: root.form.figures

            FactRow {
                width: root.width
            }
        }
    }
    Words {
        visible: text !== ""
        width: parent.width
        text: root.form.warning
        strong: true
        font.pixelSize: Theme.smallSize
    }
    Words {
        visible: root.form.hasGiven
        width: parent.width
        text: root.form.base
        font.pixelSize: Theme.smallSize
    }
    Words {
        visible: root.form.hasGiven
        width: parent.width
        text: root.form.credits
        quiet: true
        font.pixelSize: Theme.smallSize
    }
}
