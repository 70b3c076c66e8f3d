import QtQuick
import QtQuick.Window
import Lathhouse.Models

// The window: a sheet on a desk, with the tabs of its places joined to the sheet.
Window {
    id: root

    required property YearModel year
    required property RoundModel round
    required property TonightModel tonight
    required property PlantsModel plants
    required property PlantModel plant
    required property SeedsModel seeds
    required property HomeModel home
    required property ChangesModel changes
    property SheetPrinter printer: null
    /// Changes of the household itself; null where it cannot be changed.
    property MendModel mend: null
    /// How much feed goes into the water; null where none is told.
    property DoseModel dose: null
    /// What is asked of a plant by hand; null where nothing is.
    property AskModel ask: null
    /// Whether the day of the pages is over; null where nobody looks.
    property DayTurn day: null
    /// "round", "year", "plants", "seeds" or "home".
    property string page: "year"
    /// Until then its properties are still being given.
    property bool complete: false
    required property string scheme
    /// Of a hundred, 85 to 200.
    property int textPercent: 100
    property bool reducedMotion: false
    /// What is pressed is large enough for fingers.
    property bool touch: false
    property bool keysShown: false
    /// What was changed last stands below the page, not over it.
    readonly property real barRoom: Math.max(changesBar.visible ? changesBar.height : 0, mendBar.visible ? mendBar.height : 0) + (changesBar.visible || mendBar.visible ? Theme.px(10) : 0) + root.dayRoom
    readonly property real dayRoom: dayBar.visible ? dayBar.height + Theme.px(10) : 0
    /// Whether a form stands over the page.
    readonly property bool asked: root.mend !== null && root.mend.form !== MendModel.None || root.dose !== null && root.dose.open || root.ask !== null && root.ask.open

    readonly property bool compiling: roundPage.compiling || yearPage.compiling || plantsPage.compiling || seedsPage.compiling || homePage.compiling

    readonly property bool narrow: root.width < 1000 * Theme.textScale
    readonly property bool wide: root.width >= 1600 * Theme.textScale
    readonly property int mastHeight: Math.max(Theme.px(44), Theme.touch ? 52 : 0)

    width: 1280
    height: 800
    minimumWidth: 520
    minimumHeight: 480
    visible: true
    color: Theme.desk
    title: root.round.coldTitle !== "" ? qsTr("%1 · Lathhouse").arg(root.round.coldTitle) : qsTr("Lathhouse · %1").arg(root.year.household)

    Component.onCompleted: {
        root.complete = true;
        root.openPage(true);
        root.requestActivate(); // After the first start the keys would stay with its window.
    }
    onPageChanged: if (root.complete) {
        root.keysShown = false; // They are of the page that was left.
        // What went wrong went wrong on another page; what was changed stays in words until the next change.
        root.changes.pass();
        if (root.mend !== null)
            root.mend.forgive();
        if (root.printer !== null && !root.printer.working)
            root.printer.dismiss();
        root.openPage(false);
    }

    /// Hands the focus to the chosen page; what it shows is read when it is first asked for. `now`: it is there at once.
    function openPage(now: bool): void {
        if (root.page === "round") {
            root.tonight.start();
            root.round.start();
            roundPage.open(now);
        } else if (root.page === "plants") {
            root.plants.start();
            plantsPage.open(now);
        } else if (root.page === "seeds") {
            root.seeds.start();
            seedsPage.open(now);
        } else if (root.page === "home") {
            root.home.start();
            homePage.open(now);
        } else {
            yearPage.open(now);
            roundSoon.start();
        }
    }
    Timer { // The year says what is to be carried today; it is shown first.
        id: roundSoon
        interval: 1500
        onTriggered: root.round.start()
    }

    function toPlant(plant: int): void {
        root.plants.openId(plant);
        root.page = "plants";
    }
    /// A lot of seed is opened, sown, or what can be sown is shown.
    function toLot(lot: string, what: string): void {
        seedsPage.open(true);
        root.page = "seeds";
        seedsPage.page.show(lot, what);
    }
    function logFor(plant: int): void {
        plantsPage.open(true);
        root.toPlant(plant);
        plantsPage.page.logWhenRead();
    }
    function addPlants(): void {
        root.page = "plants";
        if (root.mend !== null)
            root.mend.addPlants();
    }
    /// Plants are found among all.
    function find(): void {
        plantsPage.open(true);
        root.page = "plants";
        plantsPage.page.find();
    }

    // They may change while the window is open.
    Binding {
        target: Theme
        property: "scheme"
        value: root.scheme
    }
    Binding {
        target: Theme
        property: "textPercent"
        value: root.textPercent
    }
    Binding {
        target: Theme
        property: "reducedMotion"
        value: root.reducedMotion
    }
    Binding {
        target: Theme
        property: "touch"
        value: root.touch
    }
    Shortcut {
        sequence: "Ctrl+,"
        enabled: root.home.has(HomeModel.Settings)
        onActivated: {
            root.home.section = HomeModel.Settings;
            root.page = "home";
        }
    }
    Shortcut {
        sequences: ["1", "Alt+1"]
        onActivated: root.page = "round"
    }
    Shortcut {
        sequences: ["2", "Alt+2"]
        onActivated: root.page = "year"
    }
    Shortcut {
        sequences: ["3", "Alt+3"]
        onActivated: root.page = "plants"
    }
    Shortcut {
        sequences: ["4", "Alt+4"]
        onActivated: root.page = "seeds"
    }
    Shortcut {
        sequences: ["5", "Alt+5"]
        onActivated: root.page = "home"
    }
    Shortcut {
        sequences: ["Ctrl+Z"]
        onActivated: root.changes.undo()
    }
    Shortcut {
        sequences: ["Ctrl+Shift+Z"]
        onActivated: root.changes.redo()
    }
    Shortcut {
        sequences: ["Ctrl+F"]
        onActivated: root.find()
    }
    Shortcut {
        sequence: "F1"
        enabled: !root.asked
        onActivated: root.keysShown = true
    }
    Masthead {
        id: masthead
        objectName: "masthead"
        year: root.year
        narrow: root.narrow
        wide: root.wide
        page: root.page
        carries: root.round.carriesLeft
        onChosen: page => root.page = page
        onUndoAsked: root.changes.undo()
        onFindAsked: root.find()
        anchors.left: parent.left
        anchors.right: parent.right
        height: root.mastHeight
    }
    Rectangle {
        id: sheet
        x: 12
        y: root.mastHeight
        width: root.width - 24
        height: root.height - root.mastHeight - 12
        radius: Theme.sheetRadius
        color: Theme.sheet
        border.width: 1
        border.color: Theme.contrast ? Theme.edge : Theme.rule
    }
    // The tab is open towards the sheet.
    Rectangle {
        x: masthead.tabX + 1
        y: root.mastHeight - 1
        width: masthead.tabWidth - 2
        height: 3
        color: Theme.sheet
    }
    // A page that has less than its least height, in a small window with large text, scrolls as a whole.
    SheetScroll {
        id: pages
        objectName: "pages"
        readonly property PageLoader opened: root.page === "round" ? roundPage : root.page === "plants" ? plantsPage : root.page === "seeds" ? seedsPage : root.page === "home" ? homePage : yearPage
        anchors.fill: sheet
        anchors.margins: 1
        anchors.bottomMargin: 1 + root.barRoom
        contentHeight: Math.max(height, pages.opened.leastHeight)
        interactive: pages.contentHeight > pages.height
        onOpenedChanged: pages.contentY = 0

        PageLoader {
            id: roundPage
            busy: root.compiling
            file: "RoundPage.qml"
            given: ({ objectName: "roundPage", round: root.round, tonight: root.tonight, dose: root.dose, narrow: Qt.binding(() => root.narrow), wide: Qt.binding(() => root.wide) })
            onPrintAsked: printing.ask()
            onPlantAsked: plant => root.toPlant(plant)
            onLogAsked: plant => root.logFor(plant)
            onAddAsked: root.addPlants()
            onYearAsked: root.page = "year"
            visible: root.page === "round"
            width: pages.width
            height: pages.contentHeight
            focus: root.page === "round"
        }
        PageLoader {
            id: yearPage
            busy: root.compiling
            file: "YearPage.qml"
            given: ({ objectName: "yearPage", year: root.year, round: root.round, canKeep: root.mend !== null, narrow: Qt.binding(() => root.narrow), wide: Qt.binding(() => root.wide) })
            onPrintAsked: printing.ask()
            onPlantAsked: plant => root.toPlant(plant)
            onLogAsked: plant => root.logFor(plant)
            onAddAsked: root.addPlants()
            onKeepAsked: plant => root.mend.pinPlant(plant)
            onLotAsked: (lot, what) => root.toLot(lot, what)
            visible: root.page === "year"
            width: pages.width
            height: pages.contentHeight
            focus: root.page === "year"
        }
        PageLoader {
            id: plantsPage
            busy: root.compiling
            file: "PlantsPage.qml"
            given: ({ objectName: "plantsPage", plants: root.plants, plant: root.plant, mend: root.mend, dose: root.dose, ask: root.ask, narrow: Qt.binding(() => root.narrow), wide: Qt.binding(() => root.wide) })
            onPrintAsked: printing.ask()
            onCardAsked: printing.askCard()
            visible: root.page === "plants"
            width: pages.width
            height: pages.contentHeight
            focus: root.page === "plants"
        }
        PageLoader {
            id: seedsPage
            busy: root.compiling
            file: "SeedsPage.qml"
            given: ({ objectName: "seedsPage", seeds: root.seeds, mend: root.mend, narrow: Qt.binding(() => root.narrow), wide: Qt.binding(() => root.wide) })
            onPrintAsked: printing.ask()
            visible: root.page === "seeds"
            width: pages.width
            height: pages.contentHeight
            focus: root.page === "seeds"
        }
        PageLoader {
            id: homePage
            busy: root.compiling
            file: "HomePage.qml"
            given: ({ objectName: "homePage", home: root.home, mend: root.mend, coming: root.plant.coming, narrow: Qt.binding(() => root.narrow) })
            onPlantAsked: plant => root.toPlant(plant)
            visible: root.page === "home"
            width: pages.width
            height: pages.contentHeight
            focus: root.page === "home"
        }
    }
    DayBar {
        id: dayBar
        objectName: "dayBar"
        day: root.day
        x: sheet.x + Theme.px(20)
        y: sheet.y + sheet.height - height - Theme.px(6)
        width: sheet.width - Theme.px(40)
    }
    // What the whole window took back; it goes once something else is done.
    UndoBar {
        id: changesBar
        objectName: "changesBar"
        said: root.changes.error !== "" ? root.changes.error : root.changes.said
        canUndo: true
        canRedo: root.changes.canRedo
        x: sheet.x + Theme.px(20)
        y: sheet.y + sheet.height - height - Theme.px(6) - root.dayRoom
        width: sheet.width - Theme.px(40)
        height: implicitHeight
        onUndo: root.changes.undo()
        onRedo: root.changes.redo()
    }
    // Changing the household itself lies over every page; what was changed last stands below it.
    UndoBar {
        id: mendBar
        objectName: "mendUndoBar"
        said: root.mend === null ? "" : root.mend.error !== "" && root.mend.form === MendModel.None ? root.mend.error : root.mend.said
        canUndo: root.mend !== null && root.mend.said !== ""
        canRedo: false
        x: sheet.x + Theme.px(20)
        y: sheet.y + sheet.height - height - Theme.px(6) - root.dayRoom
        width: sheet.width - Theme.px(40)
        height: implicitHeight
        onUndo: root.changes.undo()
    }
    FormLoader {
        anchors.fill: sheet
        anchors.margins: 1
        open: root.mend !== null && root.mend.form !== MendModel.None
        file: "MendSheet.qml"
        given: ({ objectName: "mendSheet", mend: root.mend })
        onClosed: root.openPage(false)
    }
    FormLoader {
        anchors.fill: sheet
        anchors.margins: 1
        open: root.dose !== null && root.dose.open
        file: "DoseSheet.qml"
        given: ({ objectName: "doseSheet", dose: root.dose })
        onClosed: root.openPage(false)
    }
    FormLoader {
        anchors.fill: sheet
        anchors.margins: 1
        open: root.ask !== null && root.ask.open
        file: "AskSheet.qml"
        given: ({ objectName: "askSheet", ask: root.ask })
        onClosed: root.openPage(false)
    }
    FormLoader {
        anchors.fill: sheet
        anchors.margins: 1
        open: root.keysShown
        file: "KeysSheet.qml"
        given: ({ objectName: "keysSheet", page: root.page })
        onClosed: {
            root.keysShown = false;
            root.openPage(false);
        }
    }
    PrintPane {
        id: printing
        objectName: "printPane"
        printer: root.printer
        page: root.page
        plant: root.page === "plants" ? root.plants.opened : 0
        plantName: root.plant.name
        width: Math.min(root.width - 60, Theme.px(640))
        anchors.horizontalCenter: sheet.horizontalCenter
        anchors.bottom: sheet.bottom
        anchors.bottomMargin: Theme.px(12)
    }
}
