pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// How the window looks and in which units it speaks. Everything is in force at once and kept.
Column {
    id: root

    required property SettingsModel settings
    readonly property list<int> sizes: [85, 100, 115, 130, 150, 175, 200]
    readonly property real side: Math.min(root.width, Theme.px(760))

    spacing: Theme.px(20)

    /// Of a size among those to choose from; -1 for another one, which the surroundings may ask for.
    function placeOf(size: int): int {
        for (let place = 0; place < root.sizes.length; ++place) {
            if (root.sizes[place] === size)
                return place;
        }
        return -1;
    }

    Heading {
        width: root.width
        text: qsTr("Settings")
    }
    ChoiceChips {
        width: root.side
        title: qsTr("Degrees")
        part: "degrees"
        choices: [qsTr("°C"), qsTr("°F")]
        chosen: root.settings.degrees
        standing: root.settings.unitsFixed
        onChoose: index => root.settings.degrees = index
    }
    ChoiceChips {
        width: root.side
        title: qsTr("Lengths, volumes, weights")
        part: "units"
        choices: [qsTr("Centimetres, litres, millilitres"), qsTr("Inches, US cups and gallons")]
        chosen: root.settings.units
        note: root.settings.unitsExample
        standing: root.settings.unitsFixed
        onChoose: index => root.settings.units = index
    }
    ChoiceChips {
        width: root.side
        title: qsTr("Language")
        part: "language"
        choices: root.settings.languages
        chosen: root.settings.language
        note: root.settings.languageNote
        standing: root.settings.languageFixed
        onChoose: index => root.settings.language = index
    }
    ChoiceChips {
        width: root.side
        title: qsTr("Light and dark")
        part: "theme"
        choices: [qsTr("As the desktop"), qsTr("Light"), qsTr("Dark"), qsTr("High contrast")]
        chosen: root.settings.theme
        note: root.settings.theme === 0 ? qsTr("Follows the desktop while the window is open.") : ""
        standing: root.settings.themeFixed
        onChoose: index => root.settings.theme = index
    }
    ChoiceChips {
        width: root.side
        title: qsTr("Size of the text")
        part: "text"
        choices: [qsTr("85 %"), qsTr("100 %"), qsTr("115 %"), qsTr("130 %"), qsTr("150 %"), qsTr("175 %"), qsTr("200 %")]
        chosen: root.placeOf(root.settings.textPercent)
        note: qsTr("Rows, buttons and charts grow with it.")
        standing: root.settings.textFixed
        onChoose: index => root.settings.textPercent = root.sizes[index]
    }
    ChoiceChips {
        width: root.side
        title: qsTr("Fingers")
        part: "touch"
        choices: [qsTr("From the first touch on"), qsTr("Always"), qsTr("Never")]
        chosen: root.settings.touchFrom
        note: qsTr("Buttons, chips and rows are large enough for fingers then, and further apart.")
        standing: root.settings.touchFixed
        onChoose: index => root.settings.touchFrom = index
    }
    ChoiceChips {
        width: root.side
        title: qsTr("Motion")
        part: "motion"
        choices: [qsTr("Bars move to a new plan"), qsTr("Nothing moves")]
        chosen: root.settings.reducedMotion ? 1 : 0
        standing: root.settings.motionFixed
        onChoose: index => root.settings.reducedMotion = index === 1
    }
    ChoiceChips {
        id: notices
        visible: root.settings.notice !== null
        width: root.side
        title: qsTr("A word from the desktop")
        part: "notice"
        choices: [qsTr("None"), qsTr("Once in the evening, where a plant must come in")]
        chosen: root.settings.notice !== null && root.settings.notice.wanted ? 1 : 0
        note: qsTr("From 16:00 on, while the window is open, and never twice in an evening. It says what the window’s title says.")
        standing: root.settings.notice !== null ? root.settings.notice.standing : ""
        onChoose: index => root.settings.notice.wanted = index === 1
        onVisibleChanged: notices.look()
        Component.onCompleted: notices.look()

        function look(): void {
            if (notices.visible && root.settings.notice !== null)
                root.settings.notice.look();
        }
    }
    Column {
        width: root.side
        spacing: Theme.px(6)

        Words {
            width: parent.width
            text: qsTr("Dates, numbers, weeks")
            strong: true
        }
        Words {
            objectName: "settingsDates"
            width: Math.min(parent.width, Theme.px(620))
            text: root.settings.dates
            quiet: true
            font.pixelSize: Theme.smallSize
        }
        Words {
            objectName: "settingsKeys"
            width: Math.min(parent.width, Theme.px(620))
            text: qsTr("Every key of the page that is open is shown with F1.")
            quiet: true
            font.pixelSize: Theme.smallSize
        }
    }
    Trouble {
        width: root.side
        words: root.settings.trouble
    }
    Words {
        visible: root.settings.place !== ""
        width: Math.min(root.side, Theme.px(620))
        text: qsTr("Of you and this machine, not of the household: kept in %1.").arg(root.settings.place)
        quiet: true
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
        font.pixelSize: Theme.smallSize
    }
}
