import QtQuick

// Plants of one kind that were picked: how many, and where they stand.
Item {
    id: root

    required property string words
    required property string second
    required property int number
    required property string where
    required property string trouble
    required property string sentence
    required property bool on

    signal more
    signal fewer
    signal chosen

    implicitHeight: row.height

    FoundRow {
        id: row
        width: root.width - buttons.width - Theme.px(8)
        words: root.words
        detail: qsTr("%1 · %2").arg(root.second).arg(root.where)
        sentence: root.sentence
        trouble: root.trouble
        on: root.on
        onClicked: root.chosen()
    }
    Row {
        id: buttons
        anchors.right: parent.right
        y: Theme.px(4)
        spacing: Theme.px(4)

        SheetButton {
            objectName: root.objectName + "Fewer"
            width: Theme.target(28)
            height: Theme.target(28)
            text: "−"
            Accessible.name: root.number > 1 ? qsTr("One %1 fewer").arg(root.words) : qsTr("Take %1 off the list").arg(root.words)
            onClicked: root.fewer()
        }
        Words {
            width: Theme.px(26)
            height: Theme.target(28)
            text: root.number
            strong: true
            horizontalAlignment: Text.AlignHCenter
            verticalAlignment: Text.AlignVCenter
            Accessible.ignored: true
        }
        SheetButton {
            objectName: root.objectName + "More"
            width: Theme.target(28)
            height: Theme.target(28)
            text: "+"
            Accessible.name: qsTr("One more %1").arg(root.words)
            onClicked: root.more()
        }
    }
}
