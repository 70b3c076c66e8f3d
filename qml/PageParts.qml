import QtQuick

// The parts of a page between which F6 goes: each a control that takes the keys itself, or what holds some.
Item {
    id: root

    required property list<Item> parts

    visible: false

    function holds(part: Item, item: Item): bool {
        let within = item;
        while (within !== null && within !== part)
            within = within.parent;
        return within === part;
    }
    /// What takes the keys first in a part; null where nothing does.
    function door(part: Item): Item {
        if (part.activeFocusOnTab || !part.visible)
            return part.visible ? part : null;
        const first = part.nextItemInFocusChain(true);
        return first !== null && root.holds(part, first) ? first : null;
    }
    /// Hands the keys to the next part, or with -1 to the one before.
    function go(step: int): void {
        const holder = root.Window.activeFocusItem;
        let at = step > 0 ? -1 : 0;
        let innermost = null;
        for (let part = 0; part < root.parts.length; ++part) {
            if (root.holds(root.parts[part], holder) && (innermost === null || root.holds(innermost, root.parts[part]))) {
                at = part;
                innermost = root.parts[part];
            }
        }
        for (let tries = 0; tries < root.parts.length; ++tries) {
            at = (at + step + root.parts.length) % root.parts.length;
            const to = root.door(root.parts[at]);
            if (to !== null) {
                to.forceActiveFocus(step > 0 ? Qt.TabFocusReason : Qt.BacktabFocusReason);
                return;
            }
        }
    }
}
