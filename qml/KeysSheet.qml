pragma ComponentBehavior: Bound

import QtQuick

// The keys of the place that is open, and those that do the same everywhere.
SheetFrame {
    id: root

    /// "round", "year", "plants", "seeds" or "home".
    required property string page

    signal closed

    part: "keys"
    title: qsTr("Keys")
    most: Theme.px(760)

    Component.onCompleted: root.forceActiveFocus()
    onEscaped: root.closed()

    KeyList {
        visible: root.page === "round"
        width: parent.width
        title: qsTr("Round")
        keys: [qsTr("Up, Down"), qsTr("the task before, the next one"),
            qsTr("Space"), qsTr("tick the task"),
            "W", qsTr("the next washing step is done"),
            qsTr("Enter"), qsTr("the plant’s page"),
            qsTr("Ctrl+L"), qsTr("log something for the task’s plant"),
            qsTr("Menu, Shift+F10"), qsTr("all that can be done with the task"),
            "P", qsTr("put it off a day"),
            qsTr("Shift+P"), qsTr("put it off longer, or to a date"),
            "S", qsTr("leave it out, and why"),
            "D", qsTr("how much feed or soap goes into the water"),
            "B", qsTr("what to look at before a spray"),
            "T", qsTr("the ten nights as a table, or drawn"),
            "F5", qsTr("read the household again")]
    }
    KeyList {
        visible: root.page === "year"
        width: parent.width
        title: qsTr("Year")
        keys: [qsTr("Left, Right"), qsTr("a day before, a day on; with Ctrl a week"),
            qsTr("Page up, Page down"), qsTr("a month before, a month on"),
            qsTr("Home, End"), qsTr("the first day, the last day"),
            qsTr("Up, Down"), qsTr("the plant above, the one below"),
            "+, −", qsTr("closer, down to a week, and back"),
            qsTr("Shift with Left, Right"), qsTr("move the edge of the plant’s stay by a day, with Ctrl by a week; Enter keeps it, Escape leaves it"),
            qsTr("Enter"), qsTr("the plant’s page"),
            qsTr("Ctrl+L"), qsTr("log something for the plant"),
            qsTr("Menu, Shift+F10"), qsTr("all that can be done with the plant, or with the lot below the plants"),
            "O", qsTr("the rows by the date out, by spot, or by name"),
            "P", qsTr("take off what is pinned of the plant"),
            "F", qsTr("the year from another date"),
            "T", qsTr("the year as a table, or drawn")]
    }
    KeyList {
        visible: root.page === "plants"
        width: parent.width
        title: qsTr("Plants")
        keys: [qsTr("Arrows"), qsTr("from plant to plant and from shelf to shelf"),
            qsTr("Enter"), qsTr("open the plant"),
            qsTr("Space"), qsTr("mark it, or take the mark off"),
            qsTr("Menu, Shift+F10"), qsTr("all that can be done with the plant"),
            "C", qsTr("compare the two that are marked"),
            "L", qsTr("log something for the plant, or for all that are marked"),
            "M", qsTr("move them"),
            "K", qsTr("keep the plant at a spot, always or from one evening to another"),
            "T", qsTr("all plants as a table, or on their shelves"),
            "F5", qsTr("read the household again")]
    }
    KeyList {
        visible: root.page === "plants"
        width: parent.width
        title: qsTr("A plant’s page")
        keys: [qsTr("Left, Right"), qsTr("from photo to photo; Enter opens it"),
            "B", qsTr("two photos side by side"),
            "T", qsTr("what was measured as a table, or drawn"),
            "D", qsTr("how much feed goes into the water"),
            "C", qsTr("after a cold night"),
            "H", qsTr("hit by a spray"),
            "S", qsTr("before a spray"),
            "P", qsTr("pests and the course"),
            "W", qsTr("water and winter"),
            "O", qsTr("going out and coming in"),
            "K", qsTr("keep the plant at a spot, always or from one evening to another"),
            qsTr("Escape"), qsTr("back to all plants")]
    }
    KeyList {
        visible: root.page === "plants"
        width: parent.width
        title: qsTr("A photo")
        keys: ["M", qsTr("measure in it"),
            qsTr("Tab"), qsTr("measuring: the next point"),
            qsTr("Arrows"), qsTr("measuring: the point by a pixel, with Shift by ten"),
            qsTr("Backspace"), qsTr("measuring: take the last point back")]
    }
    KeyList {
        visible: root.page === "plants"
        width: parent.width
        title: qsTr("Adding plants")
        keys: [qsTr("Down"), qsTr("from the field to the kinds that answer"),
            qsTr("Enter"), qsTr("pick the kind, or one more of it"),
            "L", qsTr("what is known of the kind, before it is picked")]
    }
    KeyList {
        visible: root.page === "seeds"
        width: parent.width
        title: qsTr("Seeds")
        keys: [qsTr("Up, Down"), qsTr("the lot above, the one below"),
            "+, −", qsTr("one more has come up in the lot’s first tray, or one fewer"),
            "N", qsTr("lots by name, or by their dates"),
            qsTr("Page up, Page down"), qsTr("up and down the sheet beside"),
            "F5", qsTr("read the household again")]
    }
    KeyList {
        visible: root.page === "home"
        width: parent.width
        title: qsTr("Home")
        keys: [qsTr("Left, Right"), qsTr("the section before, the next one"),
            qsTr("Up, Down"), qsTr("what is above in the section, what is below"),
            "T", qsTr("what is drawn as a table, and back"),
            qsTr("Ctrl+L"), qsTr("under Thermometer: type last night’s low; under Journal: log something at a spot"),
            "F5", qsTr("read the household again")]
    }
    KeyList {
        width: parent.width
        title: qsTr("Everywhere")
        keys: [qsTr("1 to 5, or with Alt"), qsTr("Round, Year, Plants, Seeds, Home"),
            qsTr("Tab, Shift+Tab"), qsTr("the next thing that takes a key, the one before"),
            "F6", qsTr("the next part of the page; with Shift the one before"),
            qsTr("Ctrl+F"), qsTr("find a plant"),
            qsTr("Ctrl+P"), qsTr("print the page"),
            qsTr("Ctrl+Z, Ctrl+Shift+Z"), qsTr("take back what was done last, do it again"),
            qsTr("Ctrl+,"), qsTr("colours, text, units and language"),
            qsTr("Ctrl+Enter"), qsTr("keep what stands in a form"),
            qsTr("Escape"), qsTr("close what was opened last"),
            "F1", qsTr("these keys")]
    }

    acts: [
        SheetButton {
            objectName: "keysClose"
            text: qsTr("Close")
            reason: qsTr("Escape")
            onClicked: root.closed()
        }
    ]
}
