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
    readonly property bool asked: logPanel.visible || movePanel.visible

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
        else if (plantActs.isAsked(event) && collection.visible && !root.asked)
            collection.askActs();
        else if (event.key === Qt.Key_L && !root.asked)
            root.log();
        else if (event.key === Qt.Key_M && !control && !root.asked)
            root.move();
        else if (event.key === Qt.Key_K && !control && !logPanel.visible)
            root.keep();
        else if (event.key === Qt.Key_F6 && !root.asked && !root.comparing)
            (root.plants.opened !== 0 ? plantPage.parts : collection.parts).go((event.modifiers & Qt.ShiftModifier) !== 0 ? -1 : 1);
        else if (event.key === Qt.Key_F && control && root.plants.opened === 0)
            collection.find();
        else if (event.key === Qt.Key_F5)
            root.plants.reload();
        else if (event.key === Qt.Key_Escape && root.plants.opened !== 0)
            root.plants.close();
        else
            event.accepted = false;
    }

    function find(): void {
        root.plants.close();
        collection.find();
    }
    /// With what is logged chosen already.
    function logThat(what: int): void {
        logPanel.choose(what);
        root.log();
    }
    function log(): void {
        root.plants.forgive();
        movePanel.visible = false;
        if (root.plants.target !== "")
            logPanel.open();
    }
    /// As log, once the plants are read.
    function logWhenRead(): void {
        root.logAwaited = root.plants.target === "";
        if (!root.logAwaited)
            root.log();
    }
    function move(): void {
        root.plants.forgive();
        logPanel.visible = false;
        if (root.plants.targetGone)
            return;
        movePanel.canKeep = root.oneTarget() !== 0;
        if (root.plants.target !== "")
            movePanel.open();
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
    function make(page: Loader, file: string, name: string): void {
        if (page.visible && page.status === Loader.Null)
            page.setSource(file, {
                objectName: name,
                plant: Qt.binding(() => root.plant),
                narrow: Qt.binding(() => root.narrow),
                side: Qt.binding(() => root.side)
            });
    }
    function back(): void {
        logPanel.visible = false;
        movePanel.visible = false;
        root.plants.forgive();
        if (root.inPhoto)
            ((root.plant.album.view === PhotosModel.Measuring ? measuring : looking).item as FocusScope).forceActiveFocus();
        else if (root.comparing)
            comparison.forceActiveFocus();
        else if (root.plants.opened !== 0)
            plantPage.forceActiveFocus();
        else
            collection.forceActiveFocus();
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
            plantPage.choosePhotos();
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
    readonly property real leastHeight: collection.visible ? collection.leastHeight + collection.anchors.bottomMargin : 0
    PlantCollection {
        id: collection
        objectName: "plantCollection"
        anchors.fill: parent
        anchors.bottomMargin: (undoBar.visible ? undoBar.height + 6 : 0) + (comingToShelf.visible ? comingToShelf.height + 6 : 0)
        visible: root.plants.opened === 0 && !root.comparing
        enabled: !root.asked
        focus: root.plants.opened === 0 && !root.comparing
        plants: root.plants
        narrow: root.narrow
        side: root.side
        canAdd: root.mend !== null
        onAdd: root.mend.addPlants()
        onLog: root.log()
        onMove: root.move()
        onCompare: root.plant.comparison.open()
        onActsAsked: (shown, name, marked, at) => plantActs.ask(shown, name, marked, at)
        onDroppedOn: (urls, shown) => root.plant.coming.addToShown(urls, shown)
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
    PlantPage {
        id: plantPage
        objectName: "plantPage"
        anchors.fill: parent
        anchors.bottomMargin: undoBar.visible ? undoBar.height + 6 : 0
        visible: root.plants.opened !== 0 && !root.inPhoto
        enabled: !root.asked
        focus: root.plants.opened !== 0 && !root.inPhoto
        plant: root.plant
        dose: root.dose
        ask: root.ask
        narrow: root.narrow
        wide: root.wide
        side: root.side
        trouble: root.asked ? "" : root.plants.error
        canChange: root.mend !== null
        onChange: root.mend.editPlant(root.plants.opened)
        onBack: root.plants.close()
        onLog: root.log()
        onMove: root.move()
        onPrintAsked: root.printAsked()
    }
    PlantComparison {
        id: comparison
        objectName: "plantComparison"
        anchors.fill: parent
        anchors.bottomMargin: undoBar.visible ? undoBar.height + 6 : 0
        visible: root.comparing
        focus: root.comparing
        comparison: root.plant.comparison
        narrow: root.narrow
        side: root.side
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
    LogPanel {
        id: logPanel
        objectName: "logPanel"
        visible: false
        anchors.horizontalCenter: parent.horizontalCenter
        y: Theme.px(root.narrow ? 20 : 90)
        width: Math.min(root.width - 2 * root.side, Theme.px(620))
        height: Math.min(implicitHeight, root.height - y - Theme.px(8))
        plants: root.plants
        onClosed: root.back()
    }
    MovePanel {
        id: movePanel
        objectName: "movePanel"
        visible: false
        anchors.horizontalCenter: parent.horizontalCenter
        y: Theme.px(root.narrow ? 20 : 90)
        width: Math.min(root.width - 2 * root.side, Theme.px(620))
        height: implicitHeight
        plants: root.plants
        onClosed: root.back()
        onKeep: root.keep()
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
