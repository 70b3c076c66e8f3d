import QtQuick
import Lathhouse.Models

// Which kinds are listed, behind a button that says what is chosen.
Column {
    id: root

    required property KindFilter filter
    property bool open: false

    spacing: Theme.px(8)

    SheetButton {
        objectName: "kindNarrow"
        text: root.open ? qsTr("By name alone") : qsTr("By group and evidence")
        reason: root.open ? qsTr("Lists all kinds again") : qsTr("Lists the kinds of one group, or those whose cold lines rest on one sort of evidence")
        onClicked: {
            root.open = !root.open;
            if (!root.open)
                root.filter.clear();
        }
    }
    ChoiceChips {
        visible: root.open
        width: parent.width
        title: qsTr("Of which group")
        part: "kindGroup"
        choices: root.filter.groups
        chosen: root.filter.group
        onChoose: index => root.filter.group = index
    }
    ChoiceChips {
        visible: root.open
        width: parent.width
        title: qsTr("What their cold lines rest on")
        part: "kindEvidence"
        choices: root.filter.evidences
        chosen: root.filter.evidence
        note: root.filter.meaning
        onChoose: index => root.filter.evidence = index
    }
}
