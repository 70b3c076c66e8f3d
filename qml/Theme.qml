pragma Singleton

import QtQuick

// All colours, sizes and fonts. Colours are named by their job; the ratios are written down in docs/look.
QtObject {
    id: root

    /// "light", "dark" or "contrast"; set by the window at its start.
    property string scheme: "light"
    readonly property bool dark: root.scheme === "dark"
    readonly property bool contrast: root.scheme === "contrast"
    /// Size of the text, 85 to 200 of a hundred; set by the window at its start.
    property int textPercent: 100
    readonly property real textScale: Math.max(0.85, Math.min(2, root.textPercent / 100))
    /// No movement at all; set by the window at its start.
    property bool reducedMotion: false
    /// Fingers are in use: what is pressed is 44 high at least, and 8 from its neighbours. Set by the window.
    property bool touch: false
    readonly property int moveTime: root.reducedMotion ? 0 : 200
    readonly property int appearTime: root.reducedMotion ? 0 : 120
    /// Changes with anything that a painted chart takes from here.
    readonly property string look: root.scheme + root.textPercent

    readonly property color desk: root.pick("#E7DFCF", "#14161A", "#FFFFFF")
    readonly property color sheet: root.pick("#FCF9F2", "#1E2126", "#FFFFFF")
    readonly property color well: root.pick("#F3ECDF", "#282C33", "#FFFFFF")
    readonly property color rule: root.pick("#D8CDB9", "#3B414A", "#767676")
    readonly property color edge: root.pick("#857B69", "#868D98", "#000000")
    readonly property color ink: root.pick("#26221C", "#EFE8DB", "#000000")
    readonly property color ink2: root.pick("#5A5245", "#BDB5A7", "#000000")
    readonly property color action: root.pick("#2B4A7F", "#A5C1EE", "#00257A")
    readonly property color actionInk: root.pick("#FFFFFF", "#13203A", "#FFFFFF")
    readonly property color select: root.pick("#E2E8F2", "#2C3A52", "#FFF2A8")
    readonly property color caution: root.pick("#9C3810", "#F4A27C", "#8A1C00")
    readonly property color cautionWash: root.pick("#F9E5D9", "#43291F", "#FFFFFF")
    readonly property color cold: root.pick("#2A6596", "#8FC3EA", "#004A80")
    readonly property color coldWash: root.pick("#DCE8F0", "#21333F", "#FFFFFF")
    readonly property color band: root.pick("#CEDFE8", "#344B59", "#CEDFE8")
    readonly property color warm: root.pick("#8A5A00", "#E6B95A", "#5C3A00")
    readonly property color warmWash: root.pick("#F6EACB", "#3C321C", "#FFFFFF")
    readonly property color leaf: root.pick("#44682B", "#A9CC8C", "#1F4A0A")
    readonly property color leafWash: root.pick("#E4ECD8", "#293321", "#FFFFFF")
    readonly property color focus: root.pick("#1456C8", "#FFD36B", "#C4006A")
    readonly property color dusk: root.pick("#B9C7DB", "#2A3A55", "#FFFFFF")
    readonly property color dawn: root.pick("#F0DDD2", "#4A3A40", "#FFFFFF")
    readonly property color straw: root.pick("#F7E6B5", "#5A4C28", "#FFFFFF")
    readonly property color lath: root.pick("#C9BDA9", "#5B5A55", "#767676")
    readonly property bool skyColoured: !root.contrast

    // Spots in their fixed order; each has its own pattern in the charts.
    readonly property list<color> spotColours: root.contrast
        ? ["#927013", "#2856A9", "#3D1F53", "#0E4240", "#45672C", "#91467E", "#737264", "#462311"]
        : root.dark
        ? ["#EDB826", "#4F7DEA", "#CEBDE6", "#49EBB5", "#AAE07B", "#C25BA8", "#8B8B7B", "#E0502B"]
        : ["#B1850E", "#3667C9", "#5C2D76", "#119669", "#6C7F37", "#AF4C8A", "#4B4B48", "#6A371E"]
    readonly property list<color> spotTints: root.contrast
        ? ["#DED4B8", "#BFCCE5", "#C5BCCB", "#B7C6C6", "#C7D1C0", "#DEC8D8", "#D5D5D1", "#C8BDB8"]
        : root.dark
        ? ["#605126", "#2E3E65", "#565363", "#2C6254", "#4B5E41", "#523450", "#414341", "#5C3028"]
        : ["#E5D6AE", "#C1CDE6", "#CCBCCD", "#B5DBC9", "#D1D4BA", "#E5C5D3", "#C7C5BF", "#D0BFB2"]

    readonly property string textFamily: root.family("Open Sans", "DejaVu Sans")
    readonly property string titleFamily: root.family("Gentium Plus", "DejaVu Serif")
    /// The fallback of small text is a fifth wider.
    readonly property bool wideText: root.textFamily !== "Open Sans"
    readonly property bool fallbackFonts: root.titleFamily !== "Gentium Plus"

    readonly property int smallSize: root.px(12)
    readonly property int rowSize: root.px(13)
    readonly property int textSize: root.px(14)
    readonly property int subheadSize: root.px(16)
    readonly property int headSize: root.px(19)
    readonly property int titleSize: root.px(root.fallbackFonts ? 24 : 28)
    readonly property int nameSize: root.px(22)
    readonly property int tabSize: root.px(15)

    readonly property int gap: 4
    readonly property int gap2: 8
    readonly property int sheetRadius: 3
    readonly property int controlRadius: 4

    /// A length that grows with the text.
    function px(length: real): int {
        return Math.round(length * root.textScale);
    }

    /// The height of what is pressed.
    function target(length: real): int {
        return Math.max(root.px(length), root.touch ? 44 : 0);
    }

    /// Between what is pressed.
    function apart(length: real): int {
        return Math.max(root.px(length), root.touch ? 8 : 0);
    }

    function pick(light: color, dark: color, contrast: color): color {
        return root.contrast ? contrast : root.dark ? dark : light;
    }

    function family(first: string, fallback: string): string {
        for (const known of Qt.fontFamilies()) {
            if (known === first)
                return first;
        }
        return fallback;
    }
}
