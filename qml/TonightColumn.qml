pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// Tonight, the ten nights and the week, one below the other.
Column {
    id: root

    /// Of what must come in tonight, how many plants are not ticked yet.
    required property int carriesLeft
    required property TonightModel tonight
    required property bool asTable
    /// Whether the plants outdoors are told here; on a cold night they stand above the tasks.
    property bool plantsShown: true
    /// The week has a column of its own in a wide window.
    property Item weekPlace: null
    readonly property Item week: coming

    signal tableAsked
    /// Tonight's low was kept, and its field is gone.
    signal lowKept
    /// Whether tonight's low can be typed here.
    readonly property bool asksForLow: typed.visible
    /// Where that field stands, from the top.
    readonly property real lowAt: typed.y

    /// Whether it was a file that was taken last, and not a number: what is wrong is told beside it.
    property bool fileAsked: false
    /// Whether another low is typed in place of the one that is kept.
    property bool again: false

    function takeFile(): void {
        root.fileAsked = true;
        root.tonight.keepForecastFile(file.text, columns.text, made.text);
    }
    function typeLow(): void {
        typed.focusField();
    }

    spacing: Theme.px(8)

    Heading {
        text: qsTr("Tonight")
    }
    Words {
        visible: !root.tonight.known && root.tonight.late
        width: root.width
        text: qsTr("Tonight is being worked out.")
        quiet: true
    }
    Trouble {
        visible: words !== "" && !root.tonight.known
        width: root.width
        words: root.tonight.error
    }
    Words {
        visible: root.tonight.known && !root.tonight.hasSpot
        width: root.width
        text: qsTr("No spot outdoors is known, so nights are not followed. Add one under Home, Spots.")
        quiet: true
    }
    Flow {
        visible: root.tonight.hasSpot
        width: root.width
        spacing: Theme.px(14)

        Text {
            textFormat: Text.PlainText
            objectName: "tonightLow"
            text: root.tonight.low
            color: Theme.ink
            font.family: Theme.titleFamily
            font.pixelSize: Theme.px(Theme.fallbackFonts ? 34 : 40)
            Accessible.role: Accessible.StaticText
            Accessible.name: qsTr("Tonight’s low, middle %1").arg(text)
        }
        Column {
            topPadding: Theme.px(8)

            Words {
                text: root.tonight.where
            }
            Words {
                objectName: "tonightSpread"
                text: root.tonight.spread
                quiet: true
                font.pixelSize: Theme.smallSize
            }
        }
    }
    Words {
        visible: root.tonight.why !== ""
        width: root.width
        text: root.tonight.why
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    Rectangle {
        visible: root.tonight.known
        width: root.width
        height: carry.height + Theme.px(16)
        color: Theme.well
        border.width: Theme.contrast ? 1 : 0
        border.color: Theme.edge

        Rectangle {
            width: 4
            height: parent.height
            color: Theme.edge
        }
        Words {
            id: carry
            objectName: "carryWords"
            /// Names of plants are words, whatever signs they have.
            function plain(words: string): string {
                return words.replace(/&/g, "&amp;").replace(/</g, "&lt;");
            }
            x: Theme.px(14)
            y: Theme.px(8)
            width: parent.width - x - Theme.px(8)
            textFormat: Text.StyledText
            readonly property string head: root.tonight.carries > 0 && root.carriesLeft === 0 ? qsTr("What must come in tonight is in.") : root.tonight.carryHead
            text: qsTr("<b>%1</b> %2").arg(carry.plain(carry.head)).arg(carry.plain(root.tonight.closest))
            Accessible.name: qsTr("%1 %2").arg(carry.head).arg(root.tonight.closest)
        }
    }
    Words {
        objectName: "missing"
        visible: text !== ""
        width: root.width
        text: root.tonight.missing
        font.pixelSize: Theme.smallSize
    }
    ForecastLine {
        id: typed
        objectName: "forecastLine"
        visible: root.tonight.known && root.tonight.hasSpot && (!root.tonight.hasForecast || root.again)
        width: root.width
        unit: root.tonight.unit
        filled: root.carriesLeft === 0 // Else the carrying in is.
        trouble: root.fileAsked ? "" : root.tonight.error
        instead: root.fileAsked ? "" : root.tonight.instead
        onMended: root.tonight.forgive()
        onKept: (low, sky, wind, dewPoint) => {
            root.fileAsked = false;
            if (root.tonight.keepForecast(low, sky, wind, dewPoint)) {
                typed.empty();
                root.again = false;
                root.lowKept();
            } else {
                typed.focusField();
            }
        }
    }
    SheetButton {
        objectName: "otherLowButton"
        visible: root.tonight.known && root.tonight.hasSpot && root.tonight.hasForecast && !root.again
        text: qsTr("Type another low for tonight")
        reason: qsTr("It counts instead of the one that is kept.")
        onClicked: {
            root.again = true;
            typed.focusField();
        }
    }
    PathField {
        id: file
        objectName: "forecastFile"
        visible: root.tonight.known && root.tonight.hasSpot && root.tonight.missing !== ""
        width: root.width
        label: qsTr("File with ten nights")
        kind: PathField.Open
        filters: [qsTr("Forecasts (*.csv *.json *.txt)"), qsTr("All files (*)")]
        part: "forecastFile"
        onEdited: root.tonight.forgive()
        wrong: root.fileAsked && root.tonight.error !== ""
        onAccepted: root.takeFile()
        onPicked: address => {
            file.text = root.tonight.pathOf(address);
            root.takeFile();
        }
    }
    Flow {
        visible: file.visible
        width: root.width
        spacing: Theme.px(8)

        SheetField {
            id: columns
            objectName: "forecastColumns"
            least: Theme.px(220)
            most: root.width
            label: qsTr("What it calls the columns, where otherwise; may be left blank")
            placeholderText: qsTr("its own names: date=Day,low_c=Min")
            onTextEdited: root.tonight.forgive()
            onAccepted: root.takeFile()
        }
        SheetField {
            id: made
            objectName: "forecastMade"
            least: Theme.px(150)
            most: root.width
            label: qsTr("How many days ago the forecast was made, blank for today")
            placeholderText: qsTr("made today")
            unit: made.text === "" ? "" : qsTr("days ago")
            inputMethodHints: Qt.ImhDigitsOnly
            onTextEdited: root.tonight.forgive()
            onAccepted: root.takeFile()
        }
        SheetButton {
            objectName: "forecastFileTake"
            text: qsTr("Take it")
            reason: qsTr("Keeps its nights as the forecast")
            onClicked: root.takeFile()
        }
        Words {
            width: Math.max(Theme.px(180), Math.min(root.width, root.width - Theme.px(110)))
            text: qsTr("A table with a line a night: date (the morning after), low_c or low_f; sky, wind and dew_point_c where they are known.")
            quiet: true
            font.pixelSize: Theme.smallSize
        }
    }
    Trouble {
        objectName: "forecastFileTrouble"
        visible: file.visible && file.wrong
        width: root.width
        words: root.tonight.error
    }
    Words {
        objectName: "tonightSaid"
        visible: text !== ""
        width: root.width
        text: root.tonight.said
        font.pixelSize: Theme.smallSize
    }
    Words {
        visible: root.tonight.hasSpot
        width: root.width
        text: root.tonight.chartTitle
        strong: true
        font.pixelSize: Theme.smallSize
    }
    TenNightsChart {
        objectName: "tenNights"
        visible: root.tonight.hasSpot && !root.asTable
        width: root.width
        height: Theme.px(224)
        theme: Theme
        scheme: Theme.look
        tonight: root.tonight
        Accessible.role: Accessible.Chart
        Accessible.name: root.tonight.chartTitle
        Accessible.description: root.tonight.line
    }
    Column {
        objectName: "tenNightsTable"
        visible: root.tonight.hasSpot && root.asTable
        width: root.width
        Accessible.role: Accessible.Table
        Accessible.name: root.tonight.chartTitle

        TwinRow {
            width: root.width
            head: true
            cells: [qsTr("Night to"), qsTr("middle"), qsTr("9 in 10"), qsTr("from")]
            sentence: qsTr("Night to, middle, 9 in 10, from")
        }
        Repeater {
            model: root.tonight.nights

            TwinRow {
                required property string date
                required property string middle
                required property string spread
                required property string basis
                width: root.width
                cells: [date, middle, spread, basis]
            }
        }
    }
    Flow {
        visible: root.tonight.hasSpot
        width: root.width
        spacing: Theme.px(8)

        Words {
            width: Math.min(root.width, Theme.px(300))
            text: root.tonight.chartNote
            quiet: true
            font.pixelSize: Theme.smallSize
        }
        Chip {
            objectName: "tableChip"
            spokenRole: Accessible.CheckBox
            text: qsTr("As a table")
            reason: qsTr("Key T")
            on: root.asTable
            onClicked: root.tableAsked()
        }
    }
    Column {
        objectName: "tonightPlants"
        visible: root.plantsShown && root.tonight.plants.count > 0
        width: root.width
        Accessible.role: Accessible.List
        Accessible.name: qsTr("Plants outdoors tonight")

        Item {
            width: root.width
            height: Theme.px(22)

            Words {
                text: root.tonight.ruler.length > 1 ? root.tonight.ruler[0] : ""
                quiet: true
                font.pixelSize: Theme.smallSize
            }
            Words {
                anchors.horizontalCenter: parent.horizontalCenter
                text: qsTr("tonight’s low at the plant, %1; striped: harms").arg(root.tonight.unit)
                quiet: true
                font.pixelSize: Theme.smallSize
            }
            Words {
                anchors.right: parent.right
                text: root.tonight.ruler.length > 1 ? root.tonight.ruler[1] : ""
                quiet: true
                font.pixelSize: Theme.smallSize
            }
        }
        Repeater {
            model: root.tonight.plants

            TonightPlantRow {
                width: root.width
                zeroAt: root.tonight.rulerZero
            }
        }
    }
    ChoiceChips {
        objectName: "tonightRisk"
        visible: root.tonight.known && root.tonight.hasSpot
        width: root.width
        title: qsTr("Risk you accept in one of these nights")
        choices: root.tonight.riskStops
        chosen: root.tonight.riskStop
        note: root.tonight.riskStop === 2 ? "" : qsTr("For looking at the nights here: the tasks of the round keep to 1 in 10.")
        part: "tonightRisk"
        onChoose: index => root.tonight.riskStop = index
    }
    Rectangle {
        visible: root.tonight.known && root.weekPlace === null
        width: root.width
        height: 1
        color: Theme.rule
    }
    ComingDays {
        id: coming
        parent: root.weekPlace ?? root
        visible: root.tonight.known
        width: root.weekPlace?.width ?? root.width
        tonight: root.tonight
    }
}
