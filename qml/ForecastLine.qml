pragma ComponentBehavior: Bound

import QtQuick

// Tonight as a forecast tells it: the low, and where it is known the dew point, the sky and the wind, each by itself.
Item {
    id: root

    required property string unit
    required property string trouble
    property string instead: ""
    property int sky: 0 ///< 0 not said, 1 clear, 2 cloudy.
    property int wind: 0 ///< 0 not said, 1 calm, 2 windy.
    /// Whether its button is the main act of the page.
    property bool filled: true

    signal kept(low: string, sky: int, wind: int, dewPoint: string)
    signal mended

    implicitHeight: flow.height + (problem.visible ? problem.implicitHeight + Theme.px(6) : 0)

    function empty(): void {
        field.clear();
        dew.clear();
        root.sky = 0;
        root.wind = 0;
    }
    function focusField(): void {
        field.forceActiveFocus();
    }
    function keep(): void {
        root.kept(field.text, root.sky, root.wind, dew.text);
    }

    // One of two, or neither.
    component Kind: Chip {
        spokenRole: Accessible.CheckBox
        height: Theme.target(32)
    }

    Flow {
        id: flow
        width: root.width
        spacing: Theme.px(8)

        Words {
            height: Theme.target(32)
            verticalAlignment: Text.AlignVCenter
            text: qsTr("Forecast low tonight")
            strong: true
        }
        SheetField {
            id: field
            objectName: "lowField"
            label: qsTr("Forecast low tonight")
            unit: root.unit
            wrong: root.trouble !== ""
            inputMethodHints: Qt.ImhPreferNumbers
            onTextEdited: root.mended()
            onAccepted: root.keep()
        }
        SheetField {
            id: dew
            objectName: "dewField"
            least: Theme.px(150)
            most: root.width
            label: qsTr("Dew point tonight, where it is told")
            placeholderText: qsTr("Dew point")
            unit: dew.text === "" ? "" : root.unit
            inputMethodHints: Qt.ImhPreferNumbers
            onTextEdited: root.mended()
            onAccepted: root.keep()
        }
        Flow {
            objectName: "skyChips"
            width: Math.min(root.width, clear.implicitWidth + spacing + cloudy.implicitWidth)
            spacing: flow.spacing

            Kind {
                id: clear
                objectName: "clearChip"
                text: qsTr("clear sky")
                on: root.sky === 1
                onClicked: root.sky = root.sky === 1 ? 0 : 1
            }
            Kind {
                id: cloudy
                objectName: "cloudyChip"
                text: qsTr("cloudy")
                on: root.sky === 2
                onClicked: root.sky = root.sky === 2 ? 0 : 2
            }
        }
        Flow {
            objectName: "windChips"
            width: Math.min(root.width, calm.implicitWidth + spacing + windy.implicitWidth)
            spacing: flow.spacing

            Kind {
                id: calm
                objectName: "calmChip"
                text: qsTr("calm air")
                on: root.wind === 1
                onClicked: root.wind = root.wind === 1 ? 0 : 1
            }
            Kind {
                id: windy
                objectName: "windyChip"
                text: qsTr("windy")
                on: root.wind === 2
                onClicked: root.wind = root.wind === 2 ? 0 : 2
            }
        }
        ActButton {
            objectName: "keepButton"
            filled: root.filled
            text: qsTr("Keep")
            reason: qsTr("Keeps it as tonight’s forecast, so that its errors here are learned")
            onClicked: root.keep()
        }
    }
    Trouble {
        id: problem
        anchors.bottom: parent.bottom
        width: root.width
        words: root.trouble
        instead: root.instead
        onTaken: words => {
            field.text = words;
            root.mended();
            field.forceActiveFocus();
        }
    }
}
