import QtQuick
import QtQuick.Controls.Basic

// The bar of what scrolls up and down: there while something is out of sight.
ScrollBar {
    policy: size < 1 ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
    width: 8
    Accessible.ignored: true
}
