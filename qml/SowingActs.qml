import QtQuick

// What can be done with a lot that can be sown, of the page Year.
ActsMenu {
    id: root

    property string lot: ""

    signal lotAsked(lot: string, what: string)

    function ask(lot: string, at: point): void {
        root.lot = lot;
        root.open(lot, [
            { name: "open", words: qsTr("Open the lot in Seeds"), key: qsTr("Enter") },
            { name: "sow", words: qsTr("Write down a sowing") },
            { name: "can", words: qsTr("What can be sown now") }
        ], at);
    }

    onChosen: name => root.lotAsked(root.lot, name)
}
