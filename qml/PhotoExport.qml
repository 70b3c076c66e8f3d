import QtQuick
import Lathhouse.Models

// Photographs written out for others. Of a plant: all of them, a strip over time, or the two side by side; of the household: all.
Column {
    id: root

    required property PhotoExportModel leaving
    /// Whether two lie side by side.
    required property bool two
    /// Whether they are of the whole household.
    property bool ofAll: false
    property int what: PhotoExportModel.AllOfIt
    property bool withPlace: false
    readonly property bool files: root.what === PhotoExportModel.AllOfIt
    readonly property int wrong: root.leaving.error === "" ? -1 : root.leaving.wrong

    spacing: Theme.px(8)
    onTwoChanged: root.what = root.two ? PhotoExportModel.Comparison : PhotoExportModel.AllOfIt

    function focusField(): void {
        path.focusField();
    }
    function write(replace: bool): void {
        root.leaving.write(root.what, path.text, root.withPlace, replace, pixels.value, columns.value, count.value);
        if (root.wrong === PhotoExportModel.Count)
            count.focusField();
        else if (root.wrong === PhotoExportModel.Columns)
            columns.focusField();
        else if (root.wrong === PhotoExportModel.Height)
            pixels.focusField();
    }

    function change(field: LabelledField, words: string): void {
        field.value = words;
        root.leaving.clear();
    }

    ChoiceChips {
        visible: !root.ofAll
        width: parent.width
        title: qsTr("Write out")
        part: "writeOut"
        choices: root.two ? [qsTr("all of this plant"), qsTr("a strip over time"), qsTr("these two side by side")] : [qsTr("all of this plant"), qsTr("a strip over time")]
        chosen: root.what
        onChoose: index => {
            root.what = index;
            root.leaving.clear();
        }
    }
    ChoiceChips {
        visible: root.files
        width: parent.width
        title: qsTr("Where they were taken")
        part: "writePlace"
        choices: [qsTr("is taken out"), qsTr("stays in them")]
        chosen: root.withPlace ? 1 : 0
        note: root.withPlace ? qsTr("Give these to nobody who need not know where you live.") : ""
        onChoose: index => root.withPlace = index === 1
    }
    Flow {
        id: form
        readonly property real cell: form.width < Theme.px(480) ? form.width : Math.floor((form.width - 2 * form.spacing) / 3)
        visible: !root.files
        width: parent.width
        spacing: Theme.px(12)

        LabelledField {
            id: count
            objectName: "stripCount"
            visible: root.what === PhotoExportModel.Strip
            width: form.cell
            label: qsTr("How many at most")
            note: qsTr("Spread evenly over its time")
            example: qsTr("%1, as usual").arg(root.leaving.usual(PhotoExportModel.Count))
            number: true
            trouble: root.wrong === PhotoExportModel.Count ? root.leaving.error : ""
            onEdited: words => root.change(count, words)
            onEntered: root.write(false)
        }
        LabelledField {
            id: columns
            objectName: "stripColumns"
            visible: root.what === PhotoExportModel.Strip
            width: form.cell
            label: qsTr("How many in a row")
            example: qsTr("%1, as usual").arg(root.leaving.usual(PhotoExportModel.Columns))
            number: true
            trouble: root.wrong === PhotoExportModel.Columns ? root.leaving.error : ""
            onEdited: words => root.change(columns, words)
            onEntered: root.write(false)
        }
        LabelledField {
            id: pixels
            objectName: "stripHeight"
            width: form.cell
            label: qsTr("Height of each")
            unit: qsTr("pixels")
            example: qsTr("%1, as usual").arg(root.leaving.usual(PhotoExportModel.Height))
            number: true
            trouble: root.wrong === PhotoExportModel.Height ? root.leaving.error : ""
            onEdited: words => root.change(pixels, words)
            onEntered: root.write(false)
        }
    }
    PathField {
        id: path
        width: parent.width
        label: root.files ? qsTr("The folder to write them to") : qsTr("The picture to write, .jpg or .png")
        kind: root.files ? PathField.Folder : PathField.Save
        filters: [qsTr("Pictures (*.jpg *.png)")]
        part: "writeTo"
        wrong: root.wrong === PhotoExportModel.Target
        onEdited: root.leaving.clear()
        onAccepted: root.write(false)
        onPicked: address => path.text = root.leaving.pathOf(address)
    }
    Flow {
        width: parent.width
        spacing: Theme.px(8)

        SheetButton {
            objectName: "writeOutButton"
            text: root.files ? qsTr("Write the photographs") : qsTr("Write the picture")
            onClicked: root.write(false)
        }
        SheetButton {
            objectName: "writeOutReplace"
            visible: root.leaving.fileIsThere
            text: qsTr("Replace it")
            onClicked: root.write(true)
        }
    }
    LathProgress {
        visible: root.leaving.running && root.leaving.late
        width: parent.width
        share: root.leaving.share
        words: root.leaving.words
        stopping: root.leaving.stopping
        onStop: root.leaving.stop()
    }
    Trouble {
        objectName: "writeOutTrouble"
        width: parent.width
        words: root.wrong === PhotoExportModel.Target ? root.leaving.error : ""
    }
    Words {
        objectName: "writeOutSaid"
        visible: text !== ""
        width: parent.width
        text: root.leaving.said
        strong: true
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
    }
}
