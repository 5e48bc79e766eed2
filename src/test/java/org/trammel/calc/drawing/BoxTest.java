package org.trammel.calc.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Whether texts and lines meet, against the geometry of java.awt, a general-purpose library. */
class BoxTest {

    private static final int TIMES = 20_000;

    private final Random random = new Random(20260317);

    @Test
    void aLineMeetsATextWhereTheLibrarySaysSo() throws NoninvertibleTransformException {
        int met = 0;
        for (int i = 0; i < TIMES; i++) {
            Box text = text();
            Stretch line = new Stretch(place(), place(), Stretch.Kind.THIN);
            Line2D turned = turnedBack(text, line);
            boolean meets = level(text, 0).intersectsLine(turned);
            // Where it touches the edge to within rounding either answer will do.
            if (meets == level(text, 1e-9).intersectsLine(turned)
                    && meets == level(text, -1e-9).intersectsLine(turned)) {
                assertThat(text.meets(line)).as("%s %s", text, line).isEqualTo(meets);
                met += meets ? 1 : 0;
            }
        }
        assertThat(met).isBetween(TIMES / 20, TIMES * 19 / 20);
    }

    @Test
    void twoTextsMeetWhereTheirAreasDo() {
        int met = 0;
        for (int i = 0; i < TIMES / 10; i++) {
            Box one = text();
            Box two = text();
            Area both = area(one, -1e-6);
            both.intersect(area(two, -1e-6));
            Area nearly = area(one, 1e-6);
            nearly.intersect(area(two, 1e-6));
            if (both.isEmpty() == nearly.isEmpty()) {
                assertThat(one.meets(two)).as("%s %s", one, two).isEqualTo(!both.isEmpty());
                met += both.isEmpty() ? 0 : 1;
            }
        }
        assertThat(met).isBetween(TIMES / 200, TIMES * 19 / 200);
    }

    private Box text() {
        return new Box(
                place(),
                At.towards(random.nextDouble() * 7),
                1 + random.nextDouble() * 20,
                1 + random.nextDouble() * 4);
    }

    private At place() {
        return new At(random.nextDouble() * 60, random.nextDouble() * 60);
    }

    private static Rectangle2D level(Box text, double wider) {
        double length = text.halfLength() + wider;
        double height = text.halfHeight() + wider;
        return new Rectangle2D.Double(-length, -height, 2 * length, 2 * height);
    }

    private static AffineTransform turn(Box text) {
        AffineTransform turn = AffineTransform.getTranslateInstance(
                text.centre().x(), text.centre().y());
        turn.rotate(text.along().x(), text.along().y());
        return turn;
    }

    private static Line2D turnedBack(Box text, Stretch line) throws NoninvertibleTransformException {
        double[] ends = {
            line.from().x(), line.from().y(), line.to().x(), line.to().y()
        };
        turn(text).inverseTransform(ends, 0, ends, 0, 2);
        return new Line2D.Double(ends[0], ends[1], ends[2], ends[3]);
    }

    private static Area area(Box text, double wider) {
        return new Area(level(text, wider)).createTransformedArea(turn(text));
    }
}
