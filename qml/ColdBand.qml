import QtQuick
import Lathhouse.Models

// Something must come in tonight: the act is the title. It goes with the last plant.
Rectangle {
    id: root

    required property RoundModel round
    required property TonightModel tonight
    required property bool narrow

    implicitHeight: words.height + Theme.px(24) + (root.narrow ? allIn.height + Theme.px(8) : 0)
    color: Theme.cautionWash
    border.width: Theme.contrast ? 1 : 0
    border.color: Theme.caution
    Accessible.role: Accessible.AlertMessage
    Accessible.name: qsTr("%1: %2. %3").arg(root.round.coldTitle).arg(root.round.carryNames).arg(numbers.text)

    Rectangle {
        width: 8
        height: parent.height
        color: Theme.caution
    }
    Rectangle {
        anchors.bottom: parent.bottom
        width: parent.width
        height: 1.5
        color: Theme.caution
    }
    Column {
        id: words
        x: Theme.px(27)
        y: Theme.px(10)
        width: (root.narrow ? root.width : allIn.x) - x - Theme.px(16)
        spacing: Theme.px(4)

        Heading {
            objectName: "coldTitle"
            width: parent.width
            text: root.round.coldTitle
            font.pixelSize: Theme.px(Theme.fallbackFonts || root.narrow ? 26 : 34)
        }
        Words {
            objectName: "carryNames"
            visible: !root.tonight.known // The list below names them.
            width: parent.width
            text: root.round.carryNames
            strong: true
        }
        Words {
            id: numbers
            width: parent.width
            text: root.tonight.known ? qsTr("Tonight it may fall to %1 %2; %3.").arg(root.tonight.low).arg(root.tonight.where).arg(root.tonight.spread) : ""
            Accessible.ignored: true
        }
        Words {
            visible: text !== "" && !root.narrow // There it stands below the tasks.
            width: parent.width
            text: root.tonight.why
            font.pixelSize: Theme.smallSize
        }
    }
    ActButton {
        id: allIn
        objectName: "allInButton"
        x: root.narrow ? words.x : root.width - width - Theme.px(19)
        y: root.narrow ? words.y + words.height + Theme.px(8) : Theme.px(20)
        implicitHeight: Theme.target(40)
        text: root.round.carriesLeft === 1 ? qsTr("It is in") : qsTr("All of them are in")
        reason: qsTr("Ticks every plant that must come in tonight; one Undo takes all of it back")
        onClicked: root.round.tickCarries()
    }
}
