import QtQuick
import Lathhouse.Models

// What can be done with a plant of the collection, or with all that are marked where it is one of them.
ActsMenu {
    id: root

    required property PlantsModel plants
    /// Whether a plant can be kept at a spot here.
    property bool canKeep: false
    property int shown: -1
    property bool marked: false

    signal logAsked(what: int)
    signal moveAsked
    signal keepAsked
    signal compareAsked
    signal photosAsked

    /// Of the plant at that place among those shown.
    function ask(shown: int, name: string, marked: bool, at: point): void {
        root.plants.current = shown;
        root.shown = shown;
        root.marked = marked;
        const alone = root.plants.markedCount === 0;
        const several = marked && root.plants.markedCount > 1;
        const gone = root.plants.filter === PlantsModel.Gone || (alone || marked) && root.plants.targetGone;
        root.open(several ? root.plants.target : name, [
            { name: "mark", words: marked ? qsTr("Take the mark off") : qsTr("Mark"), key: qsTr("Space") },
            { name: "open", words: several ? qsTr("Open the page of %1").arg(name) : qsTr("Open its page"), key: qsTr("Enter") },
            { name: "water", words: qsTr("Watered today"), on: !gone },
            { name: "feed", words: qsTr("Fed today"), on: !gone },
            { name: "measure", words: qsTr("Keep a measurement"), on: !gone },
            { name: "note", words: qsTr("Write a note") },
            { name: "log", words: qsTr("Log something else"), key: qsTr("Ctrl+L"), on: !gone },
            { name: "move", words: qsTr("Move to another spot"), key: "M", on: !gone },
            { name: "keep", words: qsTr("Keep it at a spot"), key: "K", on: !gone && root.canKeep && !several },
            { name: "compare", words: qsTr("Compare the two"), key: "C", on: marked && root.plants.markedCount === 2 },
            { name: "photos", words: qsTr("Add photos"), on: !several }
        ], at);
    }

    onChosen: name => {
        if (name === "mark") {
            root.plants.mark(root.shown);
            return;
        }
        if (name === "open") {
            root.plants.open(root.shown);
            return;
        }
        if (!root.marked || name === "photos" || name === "keep")
            root.plants.clearMarks(); // It is done to the plant that the acts were asked of.
        root.plants.current = root.shown;
        if (name === "water")
            root.plants.log(PlantsModel.Watered, "", 0, "", 0);
        else if (name === "feed")
            root.plants.log(PlantsModel.Fed, "", 0, "", 0);
        else if (name === "measure")
            root.logAsked(PlantsModel.Measured);
        else if (name === "note")
            root.logAsked(PlantsModel.Noted);
        else if (name === "log")
            root.logAsked(PlantsModel.Watered);
        else if (name === "move")
            root.moveAsked();
        else if (name === "keep")
            root.keepAsked();
        else if (name === "compare")
            root.compareAsked();
        else if (name === "photos")
            root.photosAsked();
    }
}
