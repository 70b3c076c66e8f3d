import QtQuick

// One of the window's places, made when it is first gone to: what is not looked at costs nothing at the start.
Loader {
    id: root

    required property string file
    /// Its properties, bound where they change.
    required property var given
    readonly property var page: root.item
    /// With less than that it cannot be used.
    readonly property real leastHeight: root.page?.leastHeight ?? 0
    /// What the page is made of, compiled beside the window's own thread before anybody goes there.
    property Component ready: null
    readonly property bool compiling: root.ready !== null && root.ready.status === Component.Loading
    /// Whether any page is being compiled: none is made meanwhile, for which the window would have to stand still.
    required property bool busy
    /// Gone to meanwhile.
    property bool waiting: false
    signal printAsked
    signal cardAsked
    signal plantAsked(plant: int)
    signal logAsked(plant: int)
    signal addAsked
    signal keepAsked(plant: int)
    signal yearAsked
    signal lotAsked(lot: string, what: string)

    /// Hands the keys to the page, as soon as all is compiled, or `now`, where something is asked of it at once.
    function open(now: bool): void {
        root.waiting = !now && root.busy && root.status === Loader.Null;
        if (!root.waiting)
            root.make();
        (root.page ?? root).forceActiveFocus();
    }
    function make(): void {
        if (root.status === Loader.Null)
            root.setSource(root.file, root.given);
    }
    onBusyChanged: if (root.waiting && !root.busy)
        compiled.start()

    // The keys are the page's where they wait for it, and stay in a form that was opened meanwhile.
    onLoaded: if (root.activeFocus)
        root.page.forceActiveFocus()

    Timer { // Not while it is told that the last one is compiled.
        id: compiled
        interval: 0
        onTriggered: if (root.waiting) {
            root.waiting = false;
            root.make();
        }
    }
    Timer { // Not before the first picture.
        interval: 400
        running: true
        onTriggered: if (root.status === Loader.Null)
            root.ready = Qt.createComponent(root.file, Component.Asynchronous)
    }
    Connections {
        target: root.item
        ignoreUnknownSignals: true
        function onPrintAsked(): void {
            root.printAsked();
        }
        function onCardAsked(): void {
            root.cardAsked();
        }
        function onPlantAsked(plant: int): void {
            root.plantAsked(plant);
        }
        function onLogAsked(plant: int): void {
            root.logAsked(plant);
        }
        function onAddAsked(): void {
            root.addAsked();
        }
        function onKeepAsked(plant: int): void {
            root.keepAsked(plant);
        }
        function onYearAsked(): void {
            root.yearAsked();
        }
        function onLotAsked(lot: string, what: string): void {
            root.lotAsked(lot, what);
        }
    }
}
