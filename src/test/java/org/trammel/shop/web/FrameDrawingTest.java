package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.trammel.calc.geometry.FrameGeometry;
import org.trammel.calc.geometry.SideView;
import org.trammel.shop.TestClock;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The drawing read back as a picture's text: its outlines are measured on the paper and compared with the frame. */
class FrameDrawingTest {

    private static final double PER_MM = 4;

    private final Formats formats = new Formats(Face.house(), new TestClock());

    static Stream<DrawnFrames.Drawn> frames() {
        return DrawnFrames.all();
    }

    @ParameterizedTest
    @MethodSource("frames")
    void everyTubeIsAsLongAndAsWideOnThePaperAsTheScaleSays(DrawnFrames.Drawn frame) {
        Document sheet = drawn(view(frame.side(), null));
        int scale = scale(sheet);
        List<double[]> outlines = outlines(sheet);
        assertThat(outlines).hasSameSizeAs(frame.side().members());
        for (int i = 0; i < outlines.size(); i++) {
            SideView.Member member = frame.side().members().get(i);
            double[] at = outlines.get(i);
            assertThat(Math.hypot(at[2] - at[0], at[3] - at[1]) / PER_MM * scale)
                    .as("length of %s", member.part())
                    .isCloseTo(
                            Math.hypot(
                                    member.to().x_mm() - member.from().x_mm(),
                                    member.to().y_mm() - member.from().y_mm()),
                            within(0.1 / PER_MM * scale));
            assertThat(Math.hypot(at[6] - at[0], at[7] - at[1]) / PER_MM * scale)
                    .as("width of %s", member.part())
                    .isCloseTo(member.fromWidth_mm(), within(0.1 / PER_MM * scale));
        }
    }

    @ParameterizedTest
    @MethodSource("frames")
    void nothingLiesOutsideTheFrameOfTheSheetOrUnderTheTitleBlock(DrawnFrames.Drawn frame) {
        for (double[] outline : outlines(drawn(view(frame.side(), null)))) {
            for (int i = 0; i < outline.length; i += 2) {
                assertThat(outline[i]).isBetween(80.0, 1148.0);
                assertThat(outline[i + 1]).isBetween(40.0, 800.0 - 88);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("frames")
    void theFiguresOnItAreThoseOfTheFrame(DrawnFrames.Drawn frame) {
        FrameGeometry geometry = frame.side().geometry();
        assertThat(words(drawn(view(frame.side(), null))))
                .contains(
                        formats.number(geometry.stack_mm(), 1),
                        formats.number(geometry.wheelbase_mm(), 1),
                        formats.number(geometry.frontCentre_mm(), 1),
                        formats.number(geometry.layout().reach_mm(), 1),
                        formats.number(geometry.layout().chainstay_mm(), 1),
                        formats.number(geometry.layout().headTube_mm(), 1),
                        formats.with(Math.toDegrees(geometry.layout().headAngle_rad()), 1, "°"),
                        "A",
                        "aluminium 6061");
    }

    @ParameterizedTest
    @CsvSource({"O-101, 5", "O-103, 10", "O-113, 5"})
    void theScaleIsTheLargestStandardOneThatFits(String name, int scale) {
        SideView side = DrawnFrames.all()
                .filter(frame -> frame.name().equals(name))
                .findFirst()
                .orElseThrow()
                .side();
        assertThat(scale(drawn(view(side, null)))).isEqualTo(scale);
    }

    @Test
    void thePartAtHandIsBlueAndNoOther() {
        SideView side = DrawnFrames.all().findFirst().orElseThrow().side();
        Document sheet = drawn(view(side, SideView.Part.DOWN_TUBE));
        List<String> filled = new ArrayList<>();
        for (Element path : elements(sheet, "path")) {
            if (path.getAttribute("fill").equals(Svg.BLUE)) {
                filled.add(path.getAttribute("d"));
            }
        }
        assertThat(filled).hasSize(1);
    }

    @Test
    void whatPeopleWroteIsNeverMarkup() {
        SideView side = DrawnFrames.all().findFirst().orElseThrow().side();
        String svg = FrameDrawing.sheet(
                formats,
                new FrameSheetView(side, null, "<b>", "<script>x</script>", "O&1", "A\"", "al", "draft", "today"));
        assertThat(svg).doesNotContain("<script", "<b>").contains("&lt;script&gt;");
        parsed(svg);
    }

    private static FrameSheetView view(SideView side, SideView.Part lit) {
        return new FrameSheetView(
                side,
                lit,
                "Aldervik Frameworks",
                "Trail frame",
                "O-101",
                "A",
                "aluminium 6061",
                "draft",
                "19 Jan 2026");
    }

    private Document drawn(FrameSheetView view) {
        return parsed(FrameDrawing.sheet(formats, view));
    }

    private static Document parsed(String svg) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        } catch (Exception e) {
            throw new AssertionError(svg, e);
        }
    }

    private static int scale(Document sheet) {
        return words(sheet).stream()
                .filter(said -> said.startsWith("1:"))
                .map(said -> Integer.parseInt(said.substring(2)))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> words(Document sheet) {
        return elements(sheet, "text").stream().map(Element::getTextContent).toList();
    }

    private static final Pattern OUTLINE = Pattern.compile("M[-0-9. ]+L[-0-9. ]+L[-0-9. ]+L[-0-9. ]+z");
    private static final Pattern FIGURE = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

    /** Four corners each, x and y in turn. */
    private static List<double[]> outlines(Document sheet) {
        return elements(sheet, "path").stream()
                .map(path -> path.getAttribute("d"))
                .filter(d -> OUTLINE.matcher(d).matches())
                .map(d -> FIGURE.matcher(d)
                        .results()
                        .map(MatchResult::group)
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toList();
    }

    private static List<Element> elements(Document sheet, String name) {
        NodeList found = sheet.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }
}
