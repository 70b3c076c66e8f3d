import QtQuick

// Where nothing stands yet: a dashed pot on a lath.
Canvas {
    id: root

    implicitWidth: Theme.px(64)
    implicitHeight: Theme.px(56)
    Accessible.ignored: true

    onPaint: {
        const pen = root.getContext("2d");
        pen.reset();
        pen.scale(root.width / 64, root.height / 56);
        pen.strokeStyle = Theme.ink2;
        pen.lineWidth = 1.5;
        pen.setLineDash([4, 3]);
        pen.strokeRect(14, 8, 36, 8);
        pen.beginPath();
        pen.moveTo(18, 16);
        pen.lineTo(23, 46);
        pen.lineTo(41, 46);
        pen.lineTo(46, 16);
        pen.stroke();
        pen.fillStyle = Theme.edge;
        pen.fillRect(0, 48, 64, 4);
    }
}
