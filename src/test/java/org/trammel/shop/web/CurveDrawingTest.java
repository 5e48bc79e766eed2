package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.ShopTest;

/** A curve is drawn to the scale of its own axes: places are read back from the figures written along them. */
@ShopTest
class CurveDrawingTest {

    private static final Pattern TEXT = Pattern.compile(
            "<text x=\"([0-9.]+)\" y=\"([0-9.]+)\"[^>]* text-anchor=\"(middle|end)\"[^>]*>(−?[0-9.,]+)</text>");

    @Autowired
    private Draw draw;

    /** A figure written along an axis, and where. */
    private record Written(double value, double at) {}

    @Test
    void everyPointLiesWhereTheFiguresOfTheAxesSay() {
        List<CurveView.Point> points = new ArrayList<>();
        for (int i = 0; i <= 20; i++) {
            points.add(new CurveView.Point(7.0 * i, 2.5 + 0.11 * Math.sin(i / 4.0)));
        }
        String svg = draw.curve(new CurveView(
                "found <it>", "travel, mm", "ratio", points, List.of(new CurveView.Mark("sag", 42, 2.6))));
        assertThat(svg).contains("role=\"img\" aria-label=\"found &lt;it&gt;\"", ">travel, mm<", ">ratio<", ">sag<");
        List<Written> across = axis(svg, "middle", 1);
        List<Written> upward = axis(svg, "end", 2);
        assertThat(across.size()).isBetween(4, 9);
        assertThat(upward.size()).isBetween(4, 9);
        Matcher path = Pattern.compile("d=\"M([0-9. L]+)\" fill=\"none\"").matcher(svg);
        assertThat(path.find()).isTrue();
        String[] drawn = path.group(1).split("L");
        assertThat(drawn).hasSameSizeAs(points);
        for (int i = 0; i < drawn.length; i++) {
            String[] place = drawn[i].split(" ");
            assertThat(Double.parseDouble(place[0]))
                    .isCloseTo(at(across, points.get(i).x()), within(0.2));
            // The figures stand 5 below their lines.
            assertThat(Double.parseDouble(place[1]))
                    .isCloseTo(at(upward, points.get(i).y()) - 5, within(0.2));
        }
    }

    @Test
    void aLevelCurveIsNotBlownUpAndHasAxesNevertheless() {
        String svg = draw.curve(new CurveView(
                "level",
                "travel, mm",
                "ratio",
                List.of(new CurveView.Point(0, 2.5), new CurveView.Point(140, 2.5)),
                List.of()));
        List<Written> upward = axis(svg, "end", 2);
        assertThat(upward.get(upward.size() - 1).value() - upward.get(0).value())
                .isGreaterThanOrEqualTo(0.24);
        assertThat(svg).doesNotContain("NaN", "Infinity");
    }

    private static List<Written> axis(String svg, String anchor, int place) {
        List<Written> written = new ArrayList<>();
        Matcher texts = TEXT.matcher(svg);
        while (texts.find()) {
            if (texts.group(3).equals(anchor)) {
                double value =
                        Double.parseDouble(texts.group(4).replace('−', '-').replace(',', '.'));
                written.add(new Written(value, Double.parseDouble(texts.group(place))));
            }
        }
        return written;
    }

    /** By the first and the last figure of an axis. */
    private static double at(List<Written> axis, double value) {
        Written first = axis.get(0);
        Written last = axis.get(axis.size() - 1);
        return first.at() + (value - first.value()) / (last.value() - first.value()) * (last.at() - first.at());
    }
}
