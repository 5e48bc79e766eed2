package org.trammel.shop.alignment;

import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.JointPlaces;
import org.trammel.calc.geometry.Layout;
import org.trammel.calc.geometry.SideView;
import org.trammel.calc.geometry.TubeAxes;
import org.trammel.calc.units.Answer;

/** A frame in proportion, drawn where the drawing of a frame computes none. It stands for no frame. */
final class PlainFrame {

    static final SideView SIDE = side();

    private PlainFrame() {}

    private static SideView side() {
        Layout layout =
                new Layout(Math.toRadians(68), Math.toRadians(74), 440, 120, 10, 480, 45, 60, 430, 450, 0, 350, 350);
        Answer<SideView> side = FrameGeometry.of(layout)
                .then(geometry -> TubeAxes.of(geometry, new JointPlaces(35, 45, 50)))
                .then(axes -> Answer.of(SideView.rigid(
                        axes, axes.geometry().onSeatTube(60), new SideView.Outsides(44, 38, 34, 34, 22, 16, 42, 33))));
        return ((Answer.Determined<SideView>) side).value();
    }
}
