import QtQuick

// The edge of what cannot be done now.
Canvas {
    id: root

    Accessible.ignored: true

    onPaint: {
        const pen = root.getContext("2d");
        pen.reset();
        pen.strokeStyle = Theme.edge;
        pen.lineWidth = 1;
        pen.setLineDash([4, 3]);
        pen.strokeRect(0.5, 0.5, root.width - 1, root.height - 1);
    }
}
