import QtQuick
import QtQuick.Window
import Lathhouse.Models

// The window of the first start.
Window {
    id: root

    required property FirstStartModel start
    required property string scheme
    /// Of a hundred, 85 to 200.
    property int textPercent: 100
    property bool reducedMotion: false
    /// What is pressed is large enough for fingers.
    property bool touch: false

    width: 1280
    height: 800
    minimumWidth: 520
    minimumHeight: 480
    visible: true
    color: Theme.desk
    title: qsTr("Lathhouse · First start")

    Component.onCompleted: {
        Theme.scheme = root.scheme;
        Theme.textPercent = root.textPercent;
        Theme.reducedMotion = root.reducedMotion;
        Theme.touch = Qt.binding(() => root.touch);
        root.start.start();
    }

    FirstStart {
        anchors.fill: parent
        focus: true
        start: root.start
    }
}
