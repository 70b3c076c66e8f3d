import QtQuick
import QtTest
import Lathhouse.Ui

// The sheet that shows the keys of a place.
Item {
    id: root
    width: 1280
    height: 744

    KeysSheet {
        id: sheet
        anchors.fill: parent
        page: "round"
        focus: true
    }
    SignalSpy {
        id: closed
        target: sheet
        signalName: "closed"
    }
    TestCase {
        name: "Keys"
        when: windowShown

        function init() {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            closed.clear();
            sheet.forceActiveFocus();
        }

        /// What a screen reader finds of it, as it stands.
        function said(from: Item): var {
            let found = [];
            for (let place = 0; place < from.children.length; ++place) {
                const part = from.children[place];
                if (!part.visible)
                    continue;
                if (part.Accessible.name !== "" && !part.Accessible.ignored)
                    found.push(part.Accessible.name);
                found = found.concat(said(part));
            }
            return found;
        }

        function test_eachPlaceHasItsOwn_data() {
            return [
                {tag: "round", own: ["Round", "B: what to look at before a spray"]},
                {tag: "year", own: ["Year", "Enter: the plant’s page", "O: the rows by the date out, by spot, or by name"]},
                {tag: "plants", own: ["Plants", "A plant’s page", "A photo", "Adding plants", "C: compare the two that are marked"]},
                {tag: "seeds", own: ["Seeds", "N: lots by name, or by their dates"]},
                {tag: "home", own: ["Home", "Ctrl+L: under Thermometer: type last night’s low; under Journal: log something at a spot"]}
            ];
        }
        function test_eachPlaceHasItsOwn(row) {
            sheet.page = row.tag;
            const found = said(sheet);
            for (const words of row.own.concat(["Everywhere", "F1: these keys", "F6: the next part of the page; with Shift the one before"]))
                verify(found.includes(words), words);
            const others = ["Round", "Year", "Plants", "Seeds", "Home"].filter(place => !row.own.includes(place));
            for (const other of others)
                verify(!found.includes(other), other);
        }

        function test_escapeAndTheButtonCloseIt() {
            keyClick(Qt.Key_Escape);
            compare(closed.count, 1);
            const button = findChild(sheet, "keysClose") as Item;
            waitForRendering(sheet, 300);
            mouseClick(button);
            compare(closed.count, 2);
        }

        function test_arrowsScrollWhatHasNoRoom() {
            root.height = 420;
            sheet.page = "plants";
            waitForRendering(sheet, 300);
            keyClick(Qt.Key_Down);
            tryVerify(() => sheet.scrolled > 0);
            sheet.toTop();
            root.height = 744;
        }
    }
}
