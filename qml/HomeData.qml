pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// The household's folder: what it holds, backups, a look through it, what leaves it, and whose figures these are.
Item {
    id: root

    required property HomeDataModel keeping
    /// Writes the tasks of the year; null where that cannot be.
    property CalendarModel calendar: null
    /// Photographs on their way in; null where none can be taken.
    property PhotoImportModel coming: null
    /// Photographs of all plants on their way out.
    required property PhotoExportModel leaving
    /// Photographs that no plant's page shows; null where none are told.
    property PhotosAsideModel aside: null
    required property bool narrow
    readonly property real leftWidth: root.narrow ? root.width : Math.round(root.width * 0.4)
    readonly property real rightX: root.narrow ? 0 : root.leftWidth + Theme.px(36)
    readonly property real rightWidth: root.width - root.rightX

    implicitHeight: credits.y + credits.height

    function describes(act: int): bool {
        return root.keeping.about === act;
    }

    Column {
        id: holds
        width: root.leftWidth
        spacing: Theme.px(6)

        Heading {
            width: parent.width
            text: qsTr("What the household’s folder holds")
        }
        Words {
            objectName: "dataFolder"
            width: parent.width
            bottomPadding: Theme.px(6)
            text: root.keeping.keeps ? root.keeping.folder : qsTr("The demonstration, invented for showing. It lies in memory and is gone when the window is closed.")
            quiet: true
            wrapMode: Text.WrapAtWordBoundaryOrAnywhere
        }
        Words {
            objectName: "dataWarning"
            visible: text !== ""
            width: parent.width
            text: root.keeping.folderWarning
            strong: true
        }
        Repeater {
            model: root.keeping.holdings

            FactRow {
                width: Math.min(holds.width, Theme.px(420))
            }
        }
        Words {
            width: parent.width
            topPadding: Theme.px(4)
            text: qsTr("What was taken back is not counted. Photographs taken out of the lists stay in the folder and in every backup.")
            visible: root.keeping.keeps
            quiet: true
            font.pixelSize: Theme.smallSize
        }
        HomeCheck {
            width: parent.width
            topPadding: Theme.px(14)
            keeping: root.keeping
        }
        Item {
            width: 1
            height: Theme.px(14)
        }
        Heading {
            visible: root.keeping.keeps
            width: parent.width
            text: qsTr("What may leave the folder")
        }
        Words {
            visible: root.keeping.keeps
            width: parent.width
            text: qsTr("A backup is whole or it is none: with your home’s coordinates, and with photographs that may say where they were taken. Tables hold the same. You are asked before the first of each.")
            quiet: true
            font.pixelSize: Theme.smallSize
        }
        ChoiceChips {
            visible: root.keeping.keeps
            width: parent.width
            title: qsTr("Backups")
            part: "leavesBackup"
            choices: [qsTr("Ask first"), qsTr("May be written")]
            chosen: root.keeping.backupLeaves ? 1 : 0
            onChoose: index => root.keeping.setLeaves(HomeDataModel.BackUp, index === 1)
        }
        ChoiceChips {
            visible: root.keeping.keeps
            width: parent.width
            title: qsTr("Tables for other programs")
            part: "leavesTables"
            choices: [qsTr("Ask first"), qsTr("May be written")]
            chosen: root.keeping.tablesLeave ? 1 : 0
            onChoose: index => root.keeping.setLeaves(HomeDataModel.Tables, index === 1)
        }
        HomePhotosAside {
            objectName: "photosAside"
            visible: root.aside !== null
            width: parent.width
            topPadding: Theme.px(14)
            aside: root.aside
        }
    }
    Column {
        id: acts
        x: root.rightX
        y: root.narrow ? holds.height + Theme.px(24) : 0
        width: root.rightWidth
        spacing: Theme.px(8)

        Heading {
            width: parent.width
            text: qsTr("Back up")
        }
        Words {
            objectName: "lastBackup"
            visible: text !== ""
            width: parent.width
            text: root.keeping.lastBackup
            wrapMode: Text.WrapAtWordBoundaryOrAnywhere
        }
        Words {
            visible: !root.keeping.keeps
            width: parent.width
            text: qsTr("There is nothing to back up: the demonstration is made anew at every start.")
        }
        PathField {
            id: backupPath
            visible: root.keeping.keeps
            width: parent.width
            label: qsTr("The file to write, outside the folder")
            kind: PathField.Save
            filters: [qsTr("Backups (*.zip)")]
            part: "backup"
            wrong: root.describes(HomeDataModel.BackUp) && root.keeping.error !== ""
            text: root.keeping.usualBackup
            note: root.keeping.running === HomeDataModel.Nothing ? root.keeping.willMake(backupPath.text) : ""
            onEdited: root.keeping.forgive()
            onAccepted: root.keeping.backUp(backupPath.text)
            onPicked: address => backupPath.text = root.keeping.pathOf(address)
        }
        Flow {
            visible: root.keeping.keeps
            width: parent.width
            spacing: Theme.px(8)

            ActButton {
                objectName: "backupButton"
                height: Theme.target(40)
                text: qsTr("Back up now")
                reason: qsTr("Writes the journal and all photographs into one file, and reads it back")
                onClicked: root.keeping.backUp(backupPath.text)
            }
            SheetButton {
                objectName: "replaceButton"
                visible: root.keeping.fileIsThere
                height: Theme.target(40)
                text: qsTr("Replace it")
                reason: qsTr("The old one stays until the new one is whole")
                onClicked: root.keeping.backUp(backupPath.text, true)
            }
        }
        HomeActSaid {
            width: parent.width
            keeping: root.keeping
            act: HomeDataModel.BackUp
            onAnswered: backupPath.focusField()
        }
        ChoiceChips {
            visible: root.keeping.keeps
            width: parent.width
            title: qsTr("Say so when the last backup is older than")
            part: "remind"
            choices: [qsTr("two weeks"), qsTr("a month"), qsTr("three months"), qsTr("never")]
            chosen: root.keeping.remindDays === 14 ? 0 : root.keeping.remindDays === 30 ? 1 : root.keeping.remindDays === 90 ? 2 : root.keeping.remindDays === 0 ? 3 : -1
            onChoose: index => root.keeping.remindDays = [14, 30, 90, 0][index]
        }
        Item {
            width: 1
            height: Theme.px(10)
        }
        Heading {
            width: parent.width
            text: qsTr("Bring a backup back")
        }
        Words {
            width: parent.width
            text: qsTr("Into a new or an empty folder. The household that is open stays as it is.")
            quiet: true
            font.pixelSize: Theme.smallSize
        }
        PathField {
            id: restoreFrom
            width: parent.width
            label: qsTr("The backup")
            kind: PathField.Open
            filters: [qsTr("Backups (*.zip)"), qsTr("All files (*)")]
            part: "restoreFrom"
            onEdited: root.keeping.forgive()
            onAccepted: restoreTo.focusField()
            onPicked: address => restoreFrom.text = root.keeping.pathOf(address)
        }
        PathField {
            id: restoreTo
            width: parent.width
            label: qsTr("The new or empty folder")
            kind: PathField.Folder
            part: "restoreTo"
            onEdited: root.keeping.forgive()
            onAccepted: root.keeping.restore(restoreFrom.text, restoreTo.text)
            onPicked: address => restoreTo.text = root.keeping.pathOf(address)
        }
        SheetButton {
            objectName: "restoreButton"
            text: qsTr("Bring it back")
            reason: qsTr("Every file is compared with the backup’s list before the folder appears")
            onClicked: root.keeping.restore(restoreFrom.text, restoreTo.text)
        }
        HomeActSaid {
            width: parent.width
            keeping: root.keeping
            act: HomeDataModel.Restore
        }
        Item {
            visible: root.keeping.keeps
            width: 1
            height: Theme.px(10)
        }
        Heading {
            visible: root.keeping.keeps
            width: parent.width
            text: qsTr("Tables for other programs")
        }
        Words {
            visible: root.keeping.keeps
            width: parent.width
            text: qsTr("All that the journal knows as comma-separated tables, the photographs beside them.")
            quiet: true
            font.pixelSize: Theme.smallSize
        }
        PathField {
            id: tablesTo
            visible: root.keeping.keeps
            width: parent.width
            label: qsTr("A new or an empty folder")
            kind: PathField.Folder
            part: "tables"
            text: root.keeping.usualTables
            onEdited: root.keeping.forgive()
            onAccepted: root.keeping.writeTables(tablesTo.text)
            onPicked: address => tablesTo.text = root.keeping.pathOf(address)
        }
        SheetButton {
            objectName: "tablesButton"
            visible: root.keeping.keeps
            text: qsTr("Write the tables")
            onClicked: root.keeping.writeTables(tablesTo.text)
        }
        HomeActSaid {
            width: parent.width
            keeping: root.keeping
            act: HomeDataModel.Tables
            onAnswered: tablesTo.focusField()
        }
        HomeTablesBack {
            width: parent.width
            topPadding: Theme.px(10)
            keeping: root.keeping
        }
        HomeCalendar {
            visible: root.calendar !== null
            width: parent.width
            topPadding: Theme.px(10)
            calendar: root.calendar
        }
        HomeCard {
            width: parent.width
            topPadding: Theme.px(10)
        }
        HomePhotosOut {
            visible: root.keeping.keeps
            width: parent.width
            topPadding: Theme.px(10)
            leaving: root.leaving
        }
        HomeWatch {
            visible: root.keeping.keeps && root.coming !== null
            width: parent.width
            topPadding: Theme.px(10)
            coming: root.coming
        }
    }
    Rectangle {
        visible: !root.narrow
        x: root.leftWidth + Theme.px(17)
        width: 1
        height: Math.max(holds.height, acts.height)
        color: Theme.rule
    }
    HomeCredits {
        id: credits
        y: Math.max(holds.height, acts.y + acts.height) + Theme.px(24)
        width: root.width
        keeping: root.keeping
    }
}
