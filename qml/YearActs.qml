import QtQuick
import Lathhouse.Models

// What can be done with a plant of the page Year.
ActsMenu {
    id: root

    required property YearModel year
    /// Whether a plant can be kept at a spot here.
    property bool canKeep: false
    property int row: -1

    signal plantAsked(plant: int)
    signal logAsked(plant: int)
    signal keepAsked(plant: int)

    function ask(of: PlantRow, at: point): void {
        root.row = of.index;
        root.year.currentRow = of.index;
        root.open(of.name, [
            { name: "open", words: qsTr("Open its page"), key: qsTr("Enter") },
            { name: "log", words: qsTr("Log something"), key: qsTr("Ctrl+L") },
            { name: "keep", words: qsTr("Keep it at a spot"), on: root.canKeep },
            { name: "unpin", words: qsTr("Take off what is pinned"), key: "P", on: of.pinned !== "" }
        ], at);
    }

    onChosen: name => {
        const plant = root.year.plants.idAt(root.row);
        if (name === "open")
            root.plantAsked(plant);
        else if (name === "log")
            root.logAsked(plant);
        else if (name === "keep")
            root.keepAsked(plant);
        else if (name === "unpin")
            root.year.unpin(root.row);
    }
}
