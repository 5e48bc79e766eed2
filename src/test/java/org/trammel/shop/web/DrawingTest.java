package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.support.DefaultListableBeanFactory;
import org.trammel.shop.TestClock;
import org.trammel.shop.web.RouteView.Progress;
import org.trammel.shop.web.RouteView.Stop;

class DrawingTest {

    private final Formats formats = new Formats(Face.house(), new TestClock());
    private final Draw draw = new Draw(formats, new DefaultListableBeanFactory().getBeanProvider(ScribeMarks.class));

    @Test
    void aScaleSaysItsFindingToThoseWhoHearIt() {
        String svg = draw.scale(Samples.TWIST.reading(Samples.exact("-0.344"), "not-conforming"));
        assertThat(svg)
                .contains("role=\"img\"")
                .contains(
                        "aria-label=\"Limits \u22120,30° to 0,30°, guard band 0,033°, reading \u22120,344°, not conforming\"")
                .contains(
                        ">\u22120,30</text>", ">+0,30</text>", ">0\u00a0°</text>", ">drive</text>", ">non-drive</text>")
                .contains("url(#h-amber)", "var(--green-wash)");
    }

    @Test
    void thePointStandsWhereTheReadingLies() {
        double low = point(draw.scale(Samples.TWIST.reading(Samples.exact("-0.30"), "undecided")));
        double middle = point(draw.scale(Samples.TWIST.reading(Samples.exact("0"), "conforming")));
        double high = point(draw.scale(Samples.TWIST.reading(Samples.exact("0.30"), "undecided")));
        assertThat(middle).isEqualTo(350);
        assertThat(high - middle).isCloseTo(middle - low, org.assertj.core.data.Offset.offset(0.2));
        assertThat(draw.scale(Samples.TWIST.reading(Samples.exact("0.30"), "undecided")))
                .contains("M" + Svg.n(high) + " 22L" + Svg.n(high) + " 63");
    }

    @Test
    void aReadingFarOutStandsAtTheEndBehindTwoCuts() {
        String near = draw.scale(Samples.TWIST.reading(Samples.exact("-0.344"), "not-conforming"));
        String far = draw.scale(Samples.TWIST.reading(Samples.exact("-30"), "not-conforming"));
        assertThat(point(far)).isEqualTo(26);
        assertThat(far.split("stroke-width=\"1.5\"", -1).length - near.split("stroke-width=\"1.5\"", -1).length)
                .isEqualTo(2);
    }

    @Test
    void anOpenSideHasNoTickAndNoFigure() {
        String svg = draw.scale(ScaleView.limits(null, Samples.exact("0.30"), null, "mm", 2));
        assertThat(svg.split("stroke-width=\"2.5\"", -1)).hasSize(2);
        assertThat(svg).contains("aria-label=\"Limits at most 0,30\u00a0mm, nothing read\"");
    }

    @Test
    void figuresUnderAScaleNeverLieOnEachOther() {
        String svg = draw.scale(
                ScaleView.limits(Samples.exact("43.95"), Samples.exact("43.98"), Samples.exact("43.95"), "mm", 2));
        assertThat(svg.split("<text", -1)).hasSize(4);
        assertThat(svg).contains(">mm</text>");
    }

    @Test
    void aRouteNamesTheStationNowAndTheNextHoldPointOnly() {
        String svg = draw.route(Samples.route());
        assertThat(svg.split("<text", -1)).hasSize(3);
        assertThat(svg)
                .contains(">Alignment table</text>", ">next hold point: A2</text>")
                .contains("aria-label=\"Route: now at Alignment table; next hold point: A2\"");
    }

    @Test
    void whatPeopleNamedIsTextInADrawing() {
        String svg = draw.route(new RouteView(List.of(new Stop("<script>\"&'", Progress.IN_WORK, 0.5, null, false))));
        assertThat(svg).doesNotContain("<script").contains("&lt;script&gt;&quot;&amp;&#39;");
    }

    @Test
    void theCrewsPunchesDiffer() {
        Set<String> punches = new HashSet<>();
        for (long person = 1; person <= 50; person++) {
            punches.add(draw.punch(person));
        }
        assertThat(punches).hasSize(50);
    }

    @Test
    void aScribeMarkIsReadOutCutByCut() {
        assertThat(draw.scribe("AV26101H", "UT-D")).contains("aria-label=\"scribe mark: up, through, none, down\"");
        assertThat(draw.scribe("AV26101H", null)).isEmpty();
    }

    private static double point(String svg) {
        Matcher point = Pattern.compile("M([0-9.]+) 52l-11 -27h22z").matcher(svg);
        assertThat(point.find()).isTrue();
        return Double.parseDouble(point.group(1));
    }

    /** Widths are those of the letters of the page: no line of a name reaches into the drawing, and no word is cut. */
    @Test
    void aLongNameOfAGateGoesOnInTheNextLine() {
        String name = "100 Alignment after the quench and cold-set inside its window";
        String drawn = draw.shares(new SharesView("found", List.of(new SharesView.Row(name, 0.9, 0.6, 0.97))));
        List<String> lines = Pattern.compile("text-anchor=\"end\"[^>]*>([^<]*)<")
                .matcher(drawn)
                .results()
                .map(found -> found.group(1))
                .filter(line -> !line.equals("of 100 frames"))
                .toList();
        assertThat(String.join(" ", lines)).isEqualTo(name);
        assertThat(lines).hasSizeGreaterThan(1).allMatch(line -> Svg.wide(line, 15) <= 226);
    }
}
