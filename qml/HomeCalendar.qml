import QtQuick
import Lathhouse.Models

// The tasks to come as a file for the grower's own calendar.
Column {
    id: root

    /// null where none can be written.
    required property CalendarModel calendar

    spacing: Theme.px(8)

    function write(replace: bool): void {
        root.calendar.write(file.text, replace);
        if (root.calendar.daysWrong)
            days.focusField();
    }

    Heading {
        width: parent.width
        text: qsTr("The tasks in your own calendar")
    }
    Words {
        width: parent.width
        text: qsTr("Carrying and hardening, feeding and washing out, courses against pests, looks after cold and sprays, and sowings of the days to come, in one file that calendars read. Looks at the water are not in it, since each waits for the one before, nor carrying in for a cold night, which a forecast decides. What the plan drops stays in a calendar that took it in before: take it out there by hand.")
        quiet: true
        font.pixelSize: Theme.smallSize
    }
    PathField {
        id: file
        width: parent.width
        label: qsTr("The calendar file to write")
        kind: PathField.Save
        filters: [qsTr("Calendars (*.ics)")]
        part: "calendar"
        wrong: root.calendar !== null && root.calendar.error !== "" && !root.calendar.daysWrong
        text: root.calendar !== null ? root.calendar.usualFile : ""
        note: root.calendar !== null && root.calendar.said === "" ? root.calendar.willMake(file.text) : ""
        onEdited: root.calendar.forgive()
        onAccepted: root.write(false)
        onPicked: address => file.text = address
    }
    LabelledField {
        id: days
        objectName: "calendarDays"
        width: Math.min(parent.width, Theme.px(320))
        label: qsTr("Days from today, up to 730")
        unit: qsTr("days")
        example: "365"
        number: true
        value: root.calendar !== null ? root.calendar.days : ""
        wrong: root.calendar !== null && root.calendar.daysWrong
        note: qsTr("Blank: a year.")
        onEdited: words => {
            root.calendar.days = words;
            root.calendar.forgive();
        }
        onEntered: root.write(false)
    }
    ChoiceChips {
        width: parent.width
        title: qsTr("An alarm for each day")
        part: "alarm"
        choices: [qsTr("none"), qsTr("at six in the evening before"), qsTr("at noon of the day before"), qsTr("a whole day before")]
        chosen: root.calendar === null ? 0 : root.calendar.alarm === 6 ? 1 : root.calendar.alarm === 12 ? 2 : root.calendar.alarm === 24 ? 3 : 0
        onChoose: index => root.calendar.alarm = [-1, 6, 12, 24][index]
    }
    Flow {
        width: parent.width
        spacing: Theme.px(8)

        SheetButton {
            objectName: "calendarButton"
            text: qsTr("Write the calendar")
            onClicked: root.write(false)
        }
        SheetButton {
            objectName: "calendarReplace"
            visible: root.calendar !== null && root.calendar.fileIsThere
            text: qsTr("Replace it")
            onClicked: root.write(true)
        }
    }
    Trouble {
        objectName: "calendarTrouble"
        width: parent.width
        words: root.calendar !== null ? root.calendar.error : ""
    }
    Words {
        objectName: "calendarSaid"
        visible: text !== ""
        width: parent.width
        text: root.calendar !== null ? root.calendar.said : ""
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
    }
}
