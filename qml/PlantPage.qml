pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// One plant: photographs, growth and what it means, needs, hazards, what happened.
FocusScope {
    id: root

    readonly property alias parts: pageParts

    required property PlantModel plant
    /// How much feed goes into the water; null where none is told.
    property DoseModel dose: null
    /// What is asked of the plant by hand; null where nothing is.
    property AskModel ask: null
    required property bool narrow
    required property bool wide
    required property real side
    property string trouble: ""
    readonly property real listWidth: root.width - 2 * root.side - 10
    readonly property real verdictWidth: root.narrow ? root.listWidth : Theme.px(root.wide ? 480 : 324)
    readonly property real mainWidth: root.narrow ? root.listWidth : root.listWidth - root.verdictWidth - Theme.px(46)

    /// It died, was given away or taken off the list.
    readonly property bool gone: root.plant !== null && root.plant.left !== ""

    /// Whether its name, pot and lines can be changed here.
    property bool canChange: false

    signal change
    signal back
    signal log
    signal move
    signal printAsked

    Accessible.role: Accessible.Pane
    Accessible.name: root.plant.name

    onVisibleChanged: {
        sheet.contentY = 0;
        if (root.plant !== null) // It is given after the page is made.
            root.plant.showNewestHistory();
    }
    Binding {
        target: root.plant
        property: "photosShown"
        value: root.wide || root.narrow ? 9 : Math.max(2, Math.min(6, Math.floor((root.listWidth - Theme.px(150)) / Theme.px(130))))
    }

    Keys.onPressed: event => {
        event.accepted = true;
        if (event.key === Qt.Key_T && event.modifiers === Qt.NoModifier && root.plant.hasChart)
            growth.asTable = !growth.asTable;
        else if (event.key === Qt.Key_PageDown)
            sheet.page(1);
        else if (event.key === Qt.Key_PageUp)
            sheet.page(-1);
        else if (event.key === Qt.Key_Down)
            sheet.scroll(Theme.px(48));
        else if (event.key === Qt.Key_Up)
            sheet.scroll(-Theme.px(48));
        else if (event.key === Qt.Key_Left && event.modifiers === Qt.NoModifier)
            strip.walk(-1);
        else if (event.key === Qt.Key_Right && event.modifiers === Qt.NoModifier)
            strip.walk(1);
        else if ((event.key === Qt.Key_Return || event.key === Qt.Key_Enter) && !strip.empty)
            root.plant.album.open(strip.photoAt(strip.current));
        else if (event.key === Qt.Key_B && event.modifiers === Qt.NoModifier)
            root.sideBySide();
        else if (event.key === Qt.Key_D && event.modifiers === Qt.NoModifier && feeding.visible)
            root.plant.askDose();
        else if (root.ask !== null && !root.gone && event.modifiers === Qt.NoModifier && root.askOf(event.key) !== AskModel.None)
            root.ask.ask(root.askOf(event.key));
        else if (event.key === Qt.Key_Home)
            sheet.contentY = 0;
        else if (event.key === Qt.Key_End)
            sheet.scroll(sheet.contentHeight);
        else
            event.accepted = false;
    }


    function askOf(key: int): int {
        switch (key) {
        case Qt.Key_C:
            return AskModel.AfterCold;
        case Qt.Key_H:
            return AskModel.Damage;
        case Qt.Key_S:
            return AskModel.Spray;
        case Qt.Key_P:
            return AskModel.Course;
        case Qt.Key_W:
            return AskModel.Water;
        case Qt.Key_O:
            return AskModel.Harden;
        }
        return AskModel.None;
    }
    function sideBySide(): void {
        root.plant.album.openTwo();
    }
    function choosePhotos(): void {
        chooser.source = "";
        chooser.setSource("PhotoChooser.qml", {
            "coming": root.plant.coming,
            "plant": root.plant.plantId
        });
    }

    Rectangle { // Where they may be let go.
        visible: dropArea.containsDrag
        anchors.fill: parent
        anchors.margins: 4
        color: "transparent"
        border.width: 2
        border.color: Theme.action
        z: 1
    }
    // Files are dropped anywhere on the page.
    DropArea {
        id: dropArea
        objectName: "photoDrop"
        anchors.fill: parent
        keys: ["text/uri-list"]
        onDropped: drop => {
            if (drop.hasUrls) {
                drop.accept(Qt.CopyAction);
                root.plant.coming.add(drop.urls, root.plant.plantId);
            }
        }
    }
    Loader {
        id: chooser
    }
    SheetScroll {
        id: sheet
        objectName: "plantSheet"
        anchors.fill: parent
        contentHeight: body.height + Theme.px(20)
        focus: true

        Column {
            id: body
            x: root.side
            y: 10
            width: root.listWidth
            spacing: Theme.px(12)

            Item {
                width: parent.width
                height: acts.below ? names.height + acts.height + Theme.px(8) : Math.max(names.height, acts.height)

                Flow {
                    id: names
                    width: parent.width - (acts.below ? 0 : acts.width + Theme.px(16))
                    spacing: Theme.px(14)

                    /// As high as the name that it stands beside; a name of several lines has a row of its own.
                    function beside(own: real): real {
                        return Math.max(nameText.lineCount > 1 ? Theme.px(26) : nameText.height, own);
                    }

                    Heading {
                        id: nameText
                        objectName: "plantName"
                        width: Math.min(implicitWidth, names.width)
                        text: root.plant.name
                        font.pixelSize: Theme.titleSize
                    }
                    Text {
                        objectName: "plantBotanical"
                        textFormat: Text.PlainText
                        width: Math.min(implicitWidth, names.width)
                        height: names.beside(implicitHeight)
                        verticalAlignment: Text.AlignVCenter
                        text: root.plant.botanical
                        color: Theme.ink2
                        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
                        font.family: Theme.titleFamily
                        font.italic: true
                        font.pixelSize: Theme.px(17)
                        Accessible.role: Accessible.StaticText
                        Accessible.name: text
                    }
                    Words {
                        width: Math.min(implicitWidth, names.width)
                        height: names.beside(implicitHeight)
                        verticalAlignment: Text.AlignVCenter
                        text: root.plant.since
                        quiet: true
                        font.pixelSize: Theme.smallSize
                    }
                }
                Flow {
                    id: acts
                    readonly property bool below: root.narrow
                    width: acts.below ? parent.width : backAct.implicitWidth + (changeAct.visible ? changeAct.implicitWidth + spacing : 0) + (root.gone ? 0 : moveAct.implicitWidth + printAct.implicitWidth + 2 * spacing) + logAct.implicitWidth + spacing + 1
                    x: acts.below ? 0 : parent.width - width
                    y: acts.below ? names.height + Theme.px(8) : 2
                    spacing: Theme.px(8)

                    SheetButton {
                        id: backAct
                        objectName: "backButton"
                        text: qsTr("All plants")
                        reason: qsTr("Escape")
                        onClicked: root.back()
                    }
                    SheetButton {
                        id: moveAct
                        objectName: "plantMoveButton"
                        visible: !root.gone
                        text: qsTr("Move")
                        reason: qsTr("Key M, then the number of the spot")
                        onClicked: root.move()
                    }
                    SheetButton {
                        id: printAct
                        objectName: "plantPrintButton"
                        visible: !root.gone
                        text: qsTr("Print sheet")
                        reason: qsTr("Control and P. Its history, photographs and growth as a PDF.")
                        onClicked: root.printAsked()
                    }
                    SheetButton {
                        id: changeAct
                        objectName: "plantChangeButton"
                        visible: root.canChange && !root.gone
                        text: qsTr("Change")
                        reason: qsTr("Name, pot, its own lines, where it is kept")
                        onClicked: root.change()
                    }
                    ActButton {
                        id: logAct
                        objectName: "plantLogButton"
                        filled: root.enabled // Else the panel over the page has the main act.
                        text: root.gone ? qsTr("Add a note") : qsTr("Log something")
                        reason: qsTr("Control and L")
                        onClicked: root.log()
                    }
                }
            }
            Rectangle {
                objectName: "plantGone"
                visible: root.gone
                width: parent.width
                height: left.height + Theme.px(16)
                color: Theme.well
                border.width: Theme.contrast ? 1 : 0
                border.color: Theme.edge
                Accessible.role: Accessible.StaticText
                Accessible.name: root.plant.left

                Rectangle {
                    width: 4
                    height: parent.height
                    color: Theme.ink2
                }
                Words {
                    id: left
                    x: Theme.px(14)
                    anchors.verticalCenter: parent.verticalCenter
                    width: parent.width - x - Theme.px(10)
                    text: root.plant.left
                    strong: true
                    Accessible.ignored: true
                }
            }
            HazardRow {
                objectName: "plantWarning"
                visible: root.plant.warning !== ""
                width: parent.width
                strong: root.plant.warning
                rest: root.plant.warningWhy
                rust: true
            }
            Flow {
                visible: !root.gone
                width: parent.width
                spacing: Theme.px(8)

                Repeater {
                    model: root.plant.chips

                    FactChip {}
                }
            }
            Column {
                id: feeding
                objectName: "plantFeed"
                visible: root.dose !== null && root.plant.canAskDose
                width: Math.min(parent.width, Theme.px(760))
                spacing: Theme.px(4)

                Words {
                    width: parent.width
                    text: root.plant.feedLine
                }
                DoseLine {
                    width: parent.width
                    part: "plantDose"
                    dose: root.dose
                    ppm: root.plant.feedPpm
                    onAsked: root.plant.askDose()
                }
            }
            PlantAsks {
                visible: root.ask !== null && !root.gone
                width: parent.width
                ask: root.ask
            }
            Trouble {
                width: parent.width
                words: root.trouble
            }
            PhotoStrip {
                id: strip
                objectName: "photoStrip"
                scrolls: root.narrow
                width: parent.width
                plant: root.plant
                onOpened: photo => root.plant.album.open(photo)
                onSideBySide: root.sideBySide()
                onMeasure: {
                    root.plant.album.open(strip.photoAt(strip.current));
                    root.plant.album.openMeasuring();
                }
                onAdd: root.choosePhotos()
            }
            Trouble {
                width: parent.width
                words: chooser.status === Loader.Error ? qsTr("The chooser of files is not installed (qml6-module-qtquick-dialogs). Drag the files onto this page instead.") : root.plant.album.error
            }
            PhotoImportPanel {
                objectName: "importPanel"
                width: parent.width
                coming: root.plant.coming
                onAnswered: sheet.forceActiveFocus()
            }
            Item {
                width: parent.width
                height: root.narrow ? verdict.height + Theme.px(20) + mainColumn.height : Math.max(mainColumn.height, verdict.height)

                VerdictPane {
                    id: verdict
                    objectName: "verdictPane"
                    x: root.narrow ? 0 : parent.width - width
                    width: root.verdictWidth
                    plant: root.plant
                }
                Rectangle {
                    visible: !root.narrow
                    x: verdict.x - Theme.px(23)
                    width: 1
                    height: parent.height
                    color: Theme.rule
                }
                Column {
                    id: mainColumn
                    y: root.narrow ? verdict.height + Theme.px(20) : 0
                    width: root.mainWidth
                    spacing: Theme.px(14)

                    GrowthPane {
                        id: growth
                        objectName: "growthPane"
                        width: parent.width
                        plant: root.plant
                        chartHeight: Theme.px(root.wide ? 420 : 310)
                    }
                    Rectangle {
                        width: parent.width
                        height: 1
                        color: Theme.rule
                    }
                    Column {
                        objectName: "hazards"
                        width: parent.width
                        spacing: Theme.px(6)

                        Repeater {
                            model: root.plant.hazards

                            HazardRow {
                                width: mainColumn.width
                            }
                        }
                    }
                }
            }
            PlantFeeding {
                objectName: "plantFeeding"
                visible: !root.gone
                width: parent.width
                feeding: root.plant.feedingAsked
            }
            Heading {
                visible: root.plant.history.count > 0
                text: qsTr("What happened")
            }
            Column {
                id: history
                objectName: "history"
                /// Wide enough for every date that was shown so far: months have names of many lengths.
                property real dateWidth: Theme.px(100)
                width: parent.width

                Repeater {
                    model: root.plant.history

                    Item {
                        id: line

                        required property string date
                        required property string what
                        required property string note
                        required property string sentence
                        width: body.width
                        height: Math.max(whatText.height, Theme.px(16)) + Theme.px(9)
                        Accessible.role: Accessible.ListItem
                        Accessible.name: line.sentence

                        TableCell {
                            id: lineDate
                            width: history.dateWidth
                            height: parent.height
                            text: line.date
                            strong: true
                            wrapMode: Text.NoWrap
                            onImplicitWidthChanged: history.dateWidth = Math.max(history.dateWidth, Math.ceil(implicitWidth) + 1)
                        }
                        Words {
                            id: whatText
                            x: lineDate.width + Theme.px(8)
                            width: parent.width - x
                            anchors.verticalCenter: parent.verticalCenter
                            textFormat: Text.PlainText
                            text: line.note === "" ? line.what : qsTr("%1: %2").arg(line.what).arg(line.note)
                            font.pixelSize: Theme.rowSize
                            Accessible.ignored: true
                        }
                        Rectangle {
                            anchors.bottom: parent.bottom
                            width: parent.width
                            height: 1
                            color: Theme.rule
                        }
                    }
                }
            }
            SheetButton {
                objectName: "allHistoryButton"
                visible: root.plant.history.count < root.plant.historyCount
                text: qsTr("Show more of %1 lines").arg(root.plant.historyCount)
                onClicked: root.plant.showMoreHistory()
            }
            Repeater {
                model: root.plant.notes

                Words {
                    required property string modelData
                    width: Math.min(body.width, Theme.px(760))
                    text: modelData
                    quiet: true
                    font.pixelSize: Theme.smallSize
                }
            }
        }
    }
    KeysRule {
        of: sheet
        inside: true
    }
    PageParts {
        id: pageParts
        parts: [acts, sheet]
    }
}
