import QtQuick
import QtQuick.Templates as T

// Something that is pressed, and that says what it is for who cannot see it: a box to tick, one of several, a tab. The
// templates of Qt 6.4 answer for each of their buttons that it is a button, whatever QML says (told_items.h asks
// `spokenRole` instead), and write that it cannot be ticked as soon as a screen reader comes. So what is true is said
// once more whenever something else was written.
T.AbstractButton {
    id: root

    property int spokenRole: Accessible.Button
    /// Ticked, chosen or open.
    property bool on: false
    property string reason: ""
    readonly property bool ticks: root.spokenRole === Accessible.CheckBox || root.spokenRole === Accessible.RadioButton

    focusPolicy: Qt.StrongFocus
    hoverEnabled: true
    Accessible.name: root.text
    Accessible.description: root.reason
    Accessible.onPressAction: root.clicked()
    Accessible.onToggleAction: root.clicked()
    Accessible.onRoleChanged: root.speak()
    Accessible.onCheckableChanged: root.speak()
    Accessible.onCheckedChanged: root.speak()
    onSpokenRoleChanged: root.speak()
    onOnChanged: root.speak()
    Component.onCompleted: root.speak()
    Keys.onReturnPressed: root.clicked()
    Keys.onEnterPressed: root.clicked()

    function speak(): void {
        root.Accessible.role = root.spokenRole;
        root.Accessible.checkable = root.ticks;
        root.Accessible.checked = root.ticks && root.on;
        root.Accessible.selectable = root.spokenRole === Accessible.PageTab;
        root.Accessible.selected = root.spokenRole === Accessible.PageTab && root.on;
    }
}
