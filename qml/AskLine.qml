import QtQuick
import Lathhouse.Models

// A line of an answer: a head, words, a caution, or what comes on a day.
Item {
    id: root

    required property int kind
    required property string words
    required property string date
    required property string sentence
    readonly property bool dated: root.kind === AskModel.Dated || root.kind === AskModel.Past
    readonly property bool caution: root.kind === AskModel.Caution
    readonly property bool head: root.kind === AskModel.Head
    readonly property real dayWidth: Theme.px(112)
    /// The day stands above its words where both have no room beside each other.
    readonly property bool stacked: root.dated && root.width < Theme.px(330)

    implicitHeight: Math.max(body.y + body.height, root.dated ? day.height : 0)
    Accessible.role: root.caution ? Accessible.AlertMessage : root.head ? Accessible.Heading : Accessible.StaticText
    Accessible.name: root.kind === AskModel.Past ? qsTr("%1, past").arg(root.sentence) : root.sentence

    Lozenge {
        visible: root.caution
        y: body.y + Theme.px(3)
        Accessible.ignored: true
    }
    Words {
        id: day
        objectName: "askDay"
        visible: root.dated
        width: root.stacked ? root.width : root.dayWidth
        text: root.kind === AskModel.Past ? qsTr("%1, past").arg(root.date) : root.date
        strong: root.kind === AskModel.Dated
        quiet: root.kind === AskModel.Past
        font.pixelSize: Theme.rowSize
        Accessible.ignored: true
    }
    Words {
        id: body
        x: root.caution ? Theme.px(20) : root.dated && !root.stacked ? root.dayWidth + Theme.px(10) : 0
        y: root.head ? Theme.px(8) : root.stacked ? day.height : 0
        width: root.width - x
        text: root.words
        strong: root.head || root.kind === AskModel.Strong
        quiet: root.kind === AskModel.Quiet || root.kind === AskModel.Past
        color: root.caution ? Theme.caution : quiet ? Theme.ink2 : Theme.ink
        font.pixelSize: root.kind === AskModel.Quiet || root.kind === AskModel.Caution ? Theme.smallSize : Theme.rowSize
        Accessible.ignored: true
    }
}
