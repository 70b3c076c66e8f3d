import QtQuick
import QtTest
import Lathhouse.Testing
import Lathhouse.Ui

// The page Year where seasons are the other way round, and where there are none.
Item {
    id: root
    width: 1280
    height: 744

    DemonstrationYear {
        id: household
    }
    YearPage {
        id: page
        anchors.fill: parent
        year: household.year
        narrow: false
        wide: false
        focus: true
    }
    TestCase {
        id: tests
        name: "YearPlaces"
        when: windowShown

        function at(where: string): void {
            failOnWarning(/^(?!QUnifiedTimer)/); // Which is of Qt alone, where its render loop is late.
            household.where = where;
            compare(household.error, "");
            tryCompare(household.year, "planning", false);
            waitForRendering(page, 200);
        }

        /// The labels of the chart, shown or not; a list of QML's own cannot be walked with `of`.
        function written(): var {
            const children = (findChild(page, "labels") as Item).children;
            const labels = [];
            for (let child = 0; child < children.length; ++child)
                labels.push(children[child]);
            return labels;
        }

        function words(): var {
            const said = [];
            for (const child of written())
                said.push(child["words"]);
            return said;
        }

        function says(begin: string): bool {
            return words().some(said => said.startsWith(begin));
        }

        function test_frostHasItsStripAndItsLine() {
            at("north");
            compare(household.year.stripHead, "Frost nights");
            compare(household.year.stripLabel, "Frost this night");
            verify(says("frost line"));
            verify(says("last frost"));
            verify(says("first frost"));
        }

        function test_longestDayFallsInTheSouthernSummer() {
            at("south");
            verify(words().some(said => said.includes("21 December") || said.includes("22 December")), words());
            verify(words().some(said => said.includes("20 June") || said.includes("21 June")), words());
        }

        function test_withoutFrostTheStripShowsWhatDecides() {
            at("equator");
            verify(household.year.stripHead !== "Frost nights", household.year.stripHead);
            verify(!says("frost line"));
            verify(!says("last frost"));
            const named = findChild(page, "readout") as Item;
            verify(named !== null);
            verify(household.year.cursor.sentence.includes(household.year.stripLabel), household.year.cursor.sentence);
        }

        function test_tableNamesWhatTheStripShows() {
            at("equator");
            keyClick(Qt.Key_T);
            page.asTable = true;
            const table = findChild(page, "yearTable") as YearTable;
            verify(table !== null);
            verify(table.heads.includes(household.year.stripLabel), table.heads);
            page.asTable = false;
        }
    }
}
