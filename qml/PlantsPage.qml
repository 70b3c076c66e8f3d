pragma ComponentBehavior: Bound

import QtQuick
import Lathhouse.Models

// The collection on its shelves or as a table, and the page of the plant that is opened.
FocusScope {
    id: root

    required property PlantsModel plants
    required property PlantModel plant
    /// Changes of the household itself; null where it cannot be changed.
    property MendModel mend: null
    /// How much feed goes into the water; null where none is told.
    property DoseModel dose: null
    /// What is asked of a plant by hand; null where nothing is.
    property AskModel ask: null
    required property bool narrow
    required property bool wide
    readonly property real side: root.narrow ? 11 : 19
    // Its parts, each made when it is first seen.
    readonly property PlantCollection collection: collecting.item as PlantCollection
    readonly property PlantPage plantPage: opening.item as PlantPage
    readonly property LogPanel logPanel: logging.item as LogPanel
    readonly property MovePanel movePanel: moving.item as MovePanel
    readonly property bool collected: root.plants.opened === 0 && !root.comparing
    readonly property bool asked: (root.logPanel?.visible ?? false) || (root.movePanel?.visible ?? false)

    /// Something is to be logged for a plant that is not read yet.
    property bool logAwaited: false

    readonly property bool comparing: root.plants.opened === 0 && root.plant.comparison.shown
    readonly property bool inPhoto: root.plants.opened !== 0 && root.plant.album.view !== PhotosModel.Closed
    /// Plant and spot of a move that is planned once that of today is taken back; else empty.
    property list<int> planned: []

    /// Plant whose photos are chosen once its page is there; 0: none.
    property int photosFor: 0

    signal printAsked
    signal cardAsked

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Plants")
    onVisibleChanged: if (!root.visible)
        root.logAwaited = false

    Keys.onPressed: event => {
        const control = (event.modifiers & Qt.ControlModifier) !== 0;
        event.accepted = true;
        if (event.key === Qt.Key_Z && control && (event.modifiers & Qt.ShiftModifier))
            root.plants.redo();
        else if (event.key === Qt.Key_Z && control)
            root.plants.undo();
        else if (root.inPhoto)
            event.accepted = false;
        else if (plantActs.isAsked(event) && root.collected && !root.asked)
            root.collection.askActs();
        else if (event.key === Qt.Key_L && !root.asked)
            root.log();
        else if (event.key === Qt.Key_M && !control && !root.asked)
            root.move();
        else if (event.key === Qt.Key_K && !control && !(root.logPanel?.visible ?? false))
            root.keep();
        else if (event.key === Qt.Key_F6 && !root.asked && !root.comparing)
            (root.plants.opened !== 0 ? root.plantPage.parts : root.collection.parts).go((event.modifiers & Qt.ShiftModifier) !== 0 ? -1 : 1);
        else if (event.key === Qt.Key_F && control && root.collected)
            root.collection.find();
        else if (event.key === Qt.Key_F5)
            root.plants.reload();
        else if (event.key === Qt.Key_Escape && root.plants.opened !== 0)
            root.plants.close();
        else
            event.accepted = false;
    }

    function find(): void {
        root.plants.close();
        root.collection.find();
    }
    /// With what is logged chosen already.
    function logThat(what: int): void {
        root.makePanel(logging, "LogPanel.qml", "logPanel");
        root.logPanel.choose(what);
        root.log();
    }
    function log(): void {
        root.plants.forgive();
        root.leaveAsked();
        if (root.plants.target === "")
            return;
        root.makePanel(logging, "LogPanel.qml", "logPanel");
        root.logPanel.open();
    }
    /// As log, once the plants are read.
    function logWhenRead(): void {
        root.logAwaited = root.plants.target === "";
        if (!root.logAwaited)
            root.log();
    }
    function move(): void {
        root.plants.forgive();
        root.leaveAsked();
        if (root.plants.targetGone || root.plants.target === "")
            return;
        root.makePanel(moving, "MovePanel.qml", "movePanel");
        root.movePanel.canKeep = root.oneTarget() !== 0;
        root.movePanel.open();
    }
    /// The one plant that can be kept at a spot; 0 where there is none, or several are marked.
    function oneTarget(): int {
        return root.mend === null || root.plants.targetGone ? 0 : root.plants.opened !== 0 ? root.plants.opened : root.plants.markedCount === 0 ? root.plants.shownId(root.plants.current) : 0;
    }
    function keep(): void {
        const plant = root.oneTarget();
        if (plant === 0)
            return;
        root.back();
        root.mend.pinPlant(plant);
    }
    /// What moved today was meant for another day: the move is taken back, and then its evenings are asked.
    function planMove(): void {
        root.planned = [root.plants.movedPlant, root.plants.movedSpot];
        root.plants.undo();
    }
    /// Makes a panel that asks; it is opened by whoever wants it.
    function makePanel(panel: Loader, file: string, name: string): void {
        if (panel.status === Loader.Null)
            panel.setSource(file, {
                objectName: name,
                visible: false,
                plants: Qt.binding(() => root.plants)
            });
    }
    function leaveAsked(): void {
        if (root.logPanel !== null)
            root.logPanel.visible = false;
        if (root.movePanel !== null)
            root.movePanel.visible = false;
    }
    /// Makes what shows photographs.
    function make(page: Loader, file: string, name: string): void {
        if (page.visible && page.status === Loader.Null)
            page.setSource(file, {
                objectName: name,
                plant: Qt.binding(() => root.plant),
                narrow: Qt.binding(() => root.narrow),
                side: Qt.binding(() => root.side)
            });
    }
    function enter(part: Loader): void {
        (part.item as FocusScope)?.forceActiveFocus();
    }
    function back(): void {
        root.leaveAsked();
        root.plants.forgive();
        if (root.inPhoto)
            root.enter(root.plant.album.view === PhotosModel.Measuring ? measuring : looking);
        else
            root.enter(root.comparing ? beside : root.plants.opened !== 0 ? opening : collecting);
    }

    Connections {
        target: root.plants
        function onWritten(): void {
            if (root.planned.length === 0)
                return;
            const plant = root.planned[0];
            const spot = root.planned[1];
            root.planned = [];
            root.mend.planMove(plant, spot);
        }
        function onErrorChanged(): void {
            if (root.plants.error !== "")
                root.planned = [];
        }
        function onOpenedChanged(): void {
            root.back();
        }
        function onPlantsChanged(): void {
            if (root.logAwaited && root.visible)
                root.logWhenRead();
        }
    }
    Connections {
        target: root.plant
        function onPlantChanged(): void {
            if (root.photosFor === 0 || root.plant.plantId !== root.photosFor)
                return;
            root.photosFor = 0;
            root.plantPage.choosePhotos();
        }
    }
    Timer { // The page that is wanted is shown first.
        id: afterView
        interval: 0
        onTriggered: root.back()
    }
    Connections {
        target: root.plant.comparison
        function onShownChanged(): void {
            afterView.start();
        }
    }
    Connections {
        target: root.plant.album
        function onViewChanged(): void {
            afterView.start();
        }
    }
    /// Less than that is scrolled as a whole; a plant's page scrolls by itself.
    readonly property real leastHeight: root.collected ? (root.collection?.leastHeight ?? 0) + collecting.anchors.bottomMargin : 0
    SeldomPart {
        id: collecting
        anchors.fill: parent
        anchors.bottomMargin: (undoBar.visible ? undoBar.height + 6 : 0) + (comingToShelf.visible ? comingToShelf.height + 6 : 0)
        wanted: root.collected
        focus: root.collected
        enabled: !root.asked
        onFirstWanted: collecting.setSource("PlantCollection.qml", {
            objectName: "plantCollection",
            focus: true,
            plants: Qt.binding(() => root.plants),
            narrow: Qt.binding(() => root.narrow),
            side: Qt.binding(() => root.side),
            canAdd: Qt.binding(() => root.mend !== null)
        })
    }
    Connections {
        target: root.collection
        function onAdd(): void {
            root.mend.addPlants();
        }
        function onLog(): void {
            root.log();
        }
        function onMove(): void {
            root.move();
        }
        function onCompare(): void {
            root.plant.comparison.open();
        }
        function onActsAsked(shown: int, name: string, marked: bool, at: point): void {
            plantActs.ask(shown, name, marked, at);
        }
        function onDroppedOn(urls: var, shown: int): void {
            root.plant.coming.addToShown(urls, shown);
        }
    }
    PhotoImportPanel {
        id: comingToShelf
        visible: root.plants.opened === 0 && comingToShelf.wanted
        x: root.side
        y: root.height - height - 4 - (undoBar.visible ? undoBar.height + 6 : 0)
        width: root.width - 2 * root.side
        coming: root.plant.coming
        onAnswered: root.back()
    }
    SeldomPart {
        id: opening
        anchors.fill: parent
        anchors.bottomMargin: undoBar.visible ? undoBar.height + 6 : 0
        wanted: root.plants.opened !== 0 && !root.inPhoto
        focus: opening.wanted
        enabled: !root.asked
        onFirstWanted: opening.setSource("PlantPage.qml", {
            objectName: "plantPage",
            focus: true,
            plant: Qt.binding(() => root.plant),
            dose: Qt.binding(() => root.dose),
            ask: Qt.binding(() => root.ask),
            narrow: Qt.binding(() => root.narrow),
            wide: Qt.binding(() => root.wide),
            side: Qt.binding(() => root.side),
            trouble: Qt.binding(() => root.asked ? "" : root.plants.error),
            canChange: Qt.binding(() => root.mend !== null)
        })
    }
    Connections {
        target: root.plantPage
        function onChange(): void {
            root.mend.editPlant(root.plants.opened);
        }
        function onBack(): void {
            root.plants.close();
        }
        function onLog(): void {
            root.log();
        }
        function onMove(): void {
            root.move();
        }
        function onPrintAsked(): void {
            root.printAsked();
        }
    }
    SeldomPart {
        id: beside
        anchors.fill: parent
        anchors.bottomMargin: undoBar.visible ? undoBar.height + 6 : 0
        wanted: root.comparing
        focus: root.comparing
        onFirstWanted: beside.setSource("PlantComparison.qml", {
            objectName: "plantComparison",
            focus: true,
            comparison: Qt.binding(() => root.plant.comparison),
            narrow: Qt.binding(() => root.narrow),
            side: Qt.binding(() => root.side)
        })
    }
    // Made when a photograph is first looked at, and measured in; kept from then on.
    Loader {
        id: looking
        anchors.fill: parent
        anchors.bottomMargin: undoBar.visible ? undoBar.height + 6 : 0
        visible: root.inPhoto && root.plant.album.view !== PhotosModel.Measuring
        onVisibleChanged: root.make(looking, "PhotoPage.qml", "photoPage")
    }
    Loader {
        id: measuring
        anchors.fill: parent
        anchors.bottomMargin: undoBar.visible ? undoBar.height + 6 : 0
        visible: root.inPhoto && root.plant.album.view === PhotosModel.Measuring
        onVisibleChanged: root.make(measuring, "MeasurePage.qml", "measurePage")
    }
    Connections {
        target: measuring.item
        function onCardAsked(): void {
            root.cardAsked();
        }
    }
    UndoBar {
        id: undoBar
        objectName: "plantsUndoBar"
        x: root.side
        y: root.height - height - 4
        width: root.width - 2 * root.side
        said: root.plants.said
        canUndo: root.plants.canUndo
        canRedo: root.plants.canRedo
        instead: root.mend !== null && root.plants.movedPlant !== 0 ? qsTr("It is planned") : ""
        insteadReason: qsTr("Takes the move of today back and asks from which evening to which it stands there; the plan keeps to it.")
        onInsteadAsked: root.planMove()
        onUndo: root.plants.undo()
        onRedo: root.plants.redo()
    }
    Loader {
        id: logging
        anchors.horizontalCenter: parent.horizontalCenter
        y: Theme.px(root.narrow ? 20 : 90)
        width: Math.min(root.width - 2 * root.side, Theme.px(620))
        height: Math.min(logging.implicitHeight, root.height - logging.y - Theme.px(8))
    }
    Connections {
        target: root.logPanel
        function onClosed(): void {
            root.back();
        }
    }
    Loader {
        id: moving
        anchors.horizontalCenter: parent.horizontalCenter
        y: Theme.px(root.narrow ? 20 : 90)
        width: Math.min(root.width - 2 * root.side, Theme.px(620))
        height: moving.implicitHeight
    }
    Connections {
        target: root.movePanel
        function onClosed(): void {
            root.back();
        }
        function onKeep(): void {
            root.keep();
        }
    }
    PlantActs {
        id: plantActs
        objectName: "plantActs"
        plants: root.plants
        canKeep: root.mend !== null
        onLogAsked: what => root.logThat(what)
        onMoveAsked: root.move()
        onKeepAsked: root.keep()
        onCompareAsked: root.plant.comparison.open()
        onPhotosAsked: {
            root.photosFor = root.plants.shownId(root.plants.current);
            root.plants.open(root.plants.current);
        }
    }
}
