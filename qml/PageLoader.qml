import QtQuick

// One of the window's places, made when it is first gone to: what is not looked at costs nothing at the start.
Loader {
    id: root

    required property string file
    /// Its properties, bound where they change.
    required property var given
    readonly property var page: root.item
    signal printAsked
    signal cardAsked
    signal plantOpened(plant: int)

    /// Hands the keys to the page.
    function open(): void {
        if (root.status === Loader.Null)
            root.setSource(root.file, root.given);
        if (root.page !== null)
            root.page.forceActiveFocus();
    }

    Connections {
        target: root.item
        ignoreUnknownSignals: true
        function onPrintAsked(): void {
            root.printAsked();
        }
        function onPlantOpened(plant: int): void {
            root.plantOpened(plant);
        }
        function onCardAsked(): void {
            root.cardAsked();
        }
    }
}
