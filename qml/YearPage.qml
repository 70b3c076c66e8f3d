import QtQuick
import Lathhouse.Models

// The year from today: bands of nights over a row for each plant, with a cursor that reads a date.
FocusScope {
    id: root

    required property YearModel year
    /// What is to be carried today is said at its plant; null where nothing tells it.
    property RoundModel round: null
    required property bool narrow
    required property bool wide
    /// Whether a plant can be kept at a spot here.
    property bool canKeep: false
    property bool asTable: false
    property bool allNumbers: false

    /// Little height beside little width: the title goes and the foot is one line, so that rows stay in sight.
    readonly property bool low: root.narrow && root.height < Theme.px(430)
    readonly property real footHeight: root.narrow ? foot.implicitHeight : 0
    /// The slider has no room beside its words and the buttons: it stands below them.
    readonly property bool tight: root.narrow && root.riskRoom < risk.leastWidth
    readonly property real riskX: Math.max(Theme.px(142), root.side + riskWords.width + Theme.px(6))
    readonly property real riskRoom: (root.low ? (printButton.visible ? printButton.x : tableButton.x) - Theme.px(4) : root.width - root.side) - root.riskX
    readonly property real chartY: Theme.px((root.narrow && !root.low ? 98 : 57) + (root.tight ? 44 : 0))
    /// Less than that is scrolled as a whole. It is that of the low page, whose foot has two lines in little width.
    readonly property real leastHeight: !root.narrow ? 0 : chart.leastHeight + 4 + Theme.px((root.width < 360 * Theme.textScale ? 88 : 44) + 57 + (tableButton.x - Theme.px(4) - root.riskX < risk.leastWidth ? 44 : 0))
    readonly property real side: root.narrow ? 15 : 19

    signal printAsked
    signal plantAsked(plant: int)
    /// Something is to be logged for a plant.
    signal logAsked(plant: int)
    /// Plants are to be added, on the page that has them.
    signal addAsked
    /// A plant is to be kept at a spot.
    signal keepAsked(plant: int)
    /// A lot of seed is looked at, on the page that has them: "open" it, "sow" it, or what "can" be sown now.
    signal lotAsked(lot: string, what: string)

    Accessible.role: Accessible.Pane
    Accessible.name: root.year.begin.title

    Keys.onPressed: event => {
        const control = (event.modifiers & Qt.ControlModifier) !== 0;
        const shift = (event.modifiers & Qt.ShiftModifier) !== 0;
        event.accepted = true;
        if (yearActs.isAsked(event) && !root.asTable)
            chart.askActs();
        else if (event.key === Qt.Key_Left && shift && !root.asTable)
            root.year.edge.nudge(control ? -7 : -1);
        else if (event.key === Qt.Key_Right && shift && !root.asTable)
            root.year.edge.nudge(control ? 7 : 1);
        else if (event.key === Qt.Key_Escape && root.year.edge.row >= 0)
            root.year.edge.leave();
        else if ((event.key === Qt.Key_Return || event.key === Qt.Key_Enter) && root.year.edge.row >= 0)
            root.year.edge.drop();
        else if ((event.key === Qt.Key_Return || event.key === Qt.Key_Enter) && !root.asTable && root.year.plants.idAt(root.year.currentRow) !== 0)
            root.plantAsked(root.year.plants.idAt(root.year.currentRow));
        else if (event.key === Qt.Key_L && control && root.year.plants.idAt(root.year.currentRow) !== 0)
            root.logAsked(root.year.plants.idAt(root.year.currentRow));
        else if (event.key === Qt.Key_O && !control && !root.asTable)
            chart.turnOrder();
        else if (event.key === Qt.Key_P && !control)
            root.year.unpin(root.year.currentRow);
        else if (event.key === Qt.Key_Left)
            root.year.cursorDay -= control ? 7 : 1;
        else if (event.key === Qt.Key_Right)
            root.year.cursorDay += control ? 7 : 1;
        else if (event.key === Qt.Key_PageUp)
            root.year.stepMonths(-1);
        else if (event.key === Qt.Key_PageDown)
            root.year.stepMonths(1);
        else if (event.key === Qt.Key_Home)
            root.year.cursorDay = 0;
        else if (event.key === Qt.Key_End)
            root.year.cursorDay = root.year.dayCount - 1;
        else if (event.key === Qt.Key_Up && root.asTable)
            root.year.cursorDay -= 1;
        else if (event.key === Qt.Key_Down && root.asTable)
            root.year.cursorDay += 1;
        else if (event.key === Qt.Key_Up)
            root.year.currentRow -= 1;
        else if (event.key === Qt.Key_Down)
            root.year.currentRow += 1;
        else if (event.key === Qt.Key_Plus && !root.asTable)
            root.year.view.zoom(1, root.year.cursorDay);
        else if (event.key === Qt.Key_Minus && !root.asTable)
            root.year.view.zoom(-1, root.year.cursorDay);
        else if (event.key === Qt.Key_F6)
            parts.go((event.modifiers & Qt.ShiftModifier) !== 0 ? -1 : 1);
        else if (event.key === Qt.Key_F && event.modifiers === Qt.NoModifier && root.year.begin.canChange)
            yearFrom.open();
        else if (event.key === Qt.Key_T && !control)
            root.asTable = !root.asTable;
        else if (event.key === Qt.Key_Escape && root.allNumbers)
            root.allNumbers = false;
        else if (event.key === Qt.Key_Escape && root.asTable)
            root.asTable = false;
        else
            event.accepted = false;
    }

    PageParts {
        id: parts
        parts: root.asTable ? [risk, table, readout] : [risk, chart.bandsItem, chart.rows, readout]
    }
    Text {
        id: title
        textFormat: Text.PlainText
        visible: !root.low
        x: root.side
        y: 10
        // Beside the words on risk, which other languages need more room for.
        width: Math.min(implicitWidth, (root.narrow ? tableButton.x : riskWords.x) - x - Theme.px(12))
        height: Theme.px(root.narrow ? 36 : 44)
        fontSizeMode: Text.Fit
        wrapMode: Text.WordWrap // The year from another date may take two lines.
        minimumPixelSize: Theme.textSize
        horizontalAlignment: Text.AlignLeft
        text: root.year.begin.title
        color: Theme.ink
        font.family: Theme.titleFamily
        font.pixelSize: root.narrow ? Math.min(Theme.titleSize, Theme.px(25)) : Theme.titleSize
        Accessible.role: Accessible.Heading
        Accessible.name: text
    }
    Column {
        id: riskWords
        x: root.narrow ? root.side : risk.x - width - 8
        y: Theme.px(root.narrow && !root.low ? 52 : 13)
        width: Math.max(riskHead.implicitWidth, riskSmall.implicitWidth)

        Text {
            id: riskHead
            textFormat: Text.PlainText
            anchors.right: root.narrow ? undefined : parent.right
            text: qsTr("Risk you accept")
            color: Theme.ink
            font.family: Theme.textFamily
            font.pixelSize: Theme.textSize
            font.weight: Font.DemiBold
            Accessible.ignored: true
        }
        Text {
            id: riskSmall
            textFormat: Text.PlainText
            anchors.right: root.narrow ? undefined : parent.right
            text: root.narrow ? qsTr("each plant, each way") : qsTr("for each plant, each way")
            color: Theme.ink2
            font.family: Theme.textFamily
            font.pixelSize: Theme.smallSize
            Accessible.ignored: true
        }
    }
    RiskSlider {
        id: risk
        objectName: "riskSlider"
        x: root.tight ? root.side : root.narrow ? root.riskX : Theme.px(root.wide ? 470 : 430)
        y: Theme.px((root.narrow && !root.low ? 48 : 7) + (root.tight ? 44 : 0))
        // In a low window it stands in one line with the buttons.
        width: root.narrow ? Math.min(Theme.px(440), root.tight ? root.width - 2 * root.side : root.riskRoom) : Math.min(implicitWidth, printButton.x - Theme.px(12) - x)
        stops: root.year.riskStops
        stop: root.year.riskStop
        spoken: root.year.riskSpoken
        onChosen: stop => root.year.riskStop = stop
    }
    SheetButton {
        id: fromButton
        objectName: "yearFromButton"
        visible: root.year.begin.canChange && !root.narrow && printButton.x - risk.x - risk.width > width + Theme.px(32)
        anchors.right: printButton.left
        anchors.rightMargin: Theme.px(8)
        y: tableButton.y
        text: qsTr("From another date")
        reason: qsTr("Key F. The year from a date to come, or as of the first of March.")
        onClicked: yearFrom.open()
    }
    SheetButton {
        id: printButton
        objectName: "yearPrintButton"
        visible: !root.narrow || (root.low ? tableButton.x - width - root.riskX > Theme.px(280) : root.width - title.width > Theme.px(330))
        anchors.right: tableButton.left
        anchors.rightMargin: Theme.px(8)
        y: tableButton.y
        text: qsTr("Print sheet")
        reason: qsTr("Control and P. A PDF to hang up.")
        onClicked: root.printAsked()
    }
    SheetButton {
        id: tableButton
        objectName: "tableButton"
        anchors.right: parent.right
        anchors.rightMargin: root.side
        y: Theme.px(13)
        text: root.asTable ? qsTr("As a chart") : qsTr("As a table")
        reason: qsTr("Key T. The same numbers, the same date.")
        onClicked: root.asTable = !root.asTable
    }


    YearChart {
        id: chart
        objectName: "yearChart"
        visible: !root.asTable
        year: root.year
        narrow: root.narrow
        wide: root.wide
        x: root.side
        y: root.chartY
        width: root.narrow ? root.width - x - 12 : root.wide ? Math.min(Theme.px(220) + 1240, root.width - Theme.px(270) - x) : root.width - readout.width - 54 - x
        height: root.height - y - root.footHeight - (root.narrow ? 4 : 12)
        focus: !root.asTable
        onPlantAsked: plant => root.plantAsked(plant)
        onAddAsked: root.addAsked()
        carries: root.round?.carriesDue ?? ({})
        onActsAsked: (row, x, y) => yearActs.ask(row, root.mapFromItem(row, x, y))
        onSowingActsAsked: (sowing, x, y) => sowingActs.ask(root.year.sowings.at(sowing, "name"), root.mapFromItem(chart, x, y))
        onLotAsked: lot => root.lotAsked(lot, "open")
    }
    YearTable {
        id: table
        objectName: "yearTable"
        visible: root.asTable
        year: root.year
        x: chart.x
        y: root.chartY + Theme.px(root.narrow && !root.low ? 6 : 13)
        width: chart.width
        height: root.height - y - root.footHeight - 12
    }
    Trouble {
        objectName: "yearTrouble"
        visible: root.year.error !== ""
        x: chart.x
        y: Theme.px(38)
        z: 2
        width: Math.min(chart.width, risk.x - x - Theme.px(100))
        words: root.year.error
    }
    // What the edge under the hand would mean; it stands in the title's line and covers no data.
    Rectangle {
        objectName: "edgeWords"
        visible: root.year.edge.row >= 0
        x: chart.x
        y: Theme.px(4)
        z: 2
        width: Math.min(root.width - 2 * root.side, edgeText.implicitWidth + Theme.px(24))
        height: edgeText.height + Theme.px(14)
        color: Theme.select
        border.width: 1
        border.color: Theme.action
        Accessible.role: Accessible.AlertMessage
        Accessible.name: edgeText.text

        Text {
            id: edgeText
            textFormat: Text.PlainText
            x: Theme.px(12)
            y: Theme.px(7)
            width: parent.width - 2 * x
            text: root.year.edge.told
            color: Theme.ink
            wrapMode: Text.WordWrap
            font.family: Theme.textFamily
            font.pixelSize: Theme.textSize
            Accessible.ignored: true
        }
    }
    Rectangle {
        visible: !root.narrow
        x: readout.x - 17
        y: Theme.px(61)
        width: 1
        height: root.height - y - 22
        color: Theme.rule
    }
    YearReadout {
        id: readout
        objectName: "readout"
        visible: !root.narrow
        year: root.year
        x: root.wide ? chart.x + chart.width + 34 : root.width - root.side - width
        y: Theme.px(57)
        width: root.wide ? Math.min(Theme.px(380), root.width - chart.x - chart.width - 34 - root.side) : Theme.px(Theme.wideText ? 232 : 203)
        height: root.height - y - 12
        offersDate: root.year.begin.canChange && !fromButton.visible
        onDateAsked: yearFrom.open()
    }
    YearFoot {
        id: foot
        objectName: "foot"
        visible: root.narrow
        year: root.year
        x: 0
        y: root.height - root.footHeight
        width: root.width
        height: root.footHeight
        low: root.low
        onAllNumbersAsked: root.allNumbers = !root.allNumbers
        opened: root.allNumbers
    }
    // The drawer of the narrow window: a second sheet.
    Rectangle {
        id: drawer
        objectName: "drawer"
        visible: drawer.opacity > 0
        opacity: root.narrow && root.allNumbers ? 1 : 0
        x: root.width - width
        y: 0
        width: Math.min(Theme.px(264), root.width)
        height: root.height - root.footHeight
        color: Theme.sheet
        border.width: 1
        border.color: Theme.edge

        Behavior on opacity {
            NumberAnimation {
                duration: Theme.appearTime
            }
        }
        MouseArea {
            anchors.fill: parent
        }
        YearReadout {
            anchors.fill: parent
            anchors.margins: 16
            year: root.year
            part: "drawer"
            offersDate: root.year.begin.canChange
            onDateAsked: yearFrom.open()
        }
    }
    YearFrom {
        id: yearFrom
        objectName: "yearFrom"
        year: root.year
        anchors.horizontalCenter: parent.horizontalCenter
        y: Theme.px(root.low ? 4 : 48)
        z: 3
        width: Math.min(root.width - 2 * root.side, Theme.px(680))
        onClosed: (root.asTable ? table : chart).forceActiveFocus()
    }
    SowingActs {
        id: sowingActs
        objectName: "sowingActs"
        onLotAsked: (lot, what) => root.lotAsked(lot, what)
    }
    YearActs {
        id: yearActs
        objectName: "yearActs"
        year: root.year
        canKeep: root.canKeep
        onPlantAsked: plant => root.plantAsked(plant)
        onLogAsked: plant => root.logAsked(plant)
        onKeepAsked: plant => root.keepAsked(plant)
    }
}
