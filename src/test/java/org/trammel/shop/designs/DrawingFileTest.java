package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletResponse;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Signed;

/**
 * The drawing measured on the file that is printed, which another library reads than the one that wrote it, and compared
 * with the frame's corners from its inputs by plain trigonometry in this test alone.
 */
class DrawingFileTest extends AtTheTemplates {

    /** What a print is measured to. */
    private static final double PAPER_MM = 0.05;

    /** To be looked at. */
    private static final Path KEPT = Path.of("target", "printed");

    private static final double HEAD = Math.toRadians(65.5);
    private static final double STACK = 58 + (110 + 12 + 541) * Math.sin(HEAD) - 44 * Math.cos(HEAD);
    private static final double FRONT_AXLE = 458 + (110 + 12 + 541) * Math.cos(HEAD) + 44 * Math.sin(HEAD);
    private static final double REAR_AXLE = Math.sqrt(432 * 432 - 58 * 58);

    private long whole() {
        return revision(
                TrailFrame.inputs(),
                Map.of(
                        GeometryInput.SHELL_WIDTH, "73",
                        GeometryInput.SHELL_BORE, "33.5",
                        GeometryInput.REAR_TYRE_WIDTH, "40"));
    }

    private byte[] drawing(long id, String query) throws Exception {
        MockHttpServletResponse answer = answer(id, query);
        assertThat(answer.getStatus()).as(answer.getErrorMessage()).isEqualTo(200);
        assertThat(answer.getContentType()).isEqualTo("application/pdf");
        return answer.getContentAsByteArray();
    }

    private MockHttpServletResponse answer(long id, String query) throws Exception {
        return mvc.perform(
                        get("/designs/" + id + "/sheets" + query).with(Signed.on(crew.byId(hands.hire(Role.WELDER)))))
                .andReturn()
                .getResponse();
    }

    /** ISO 216 and ANSI/ASME Y14.1, lying across; the frame of the sheet by ISO 5457, from memory. */
    @Test
    void theSheetsAreThoseThatWereAskedFor() throws Exception {
        Files.createDirectories(KEPT);
        for (Map.Entry<String, double[]> paper : Map.of(
                        "A4", new double[] {297, 210}, "US_LETTER", new double[] {279.4, 215.9})
                .entrySet()) {
            byte[] file = drawing(whole(), "?paper=" + paper.getKey());
            Files.write(KEPT.resolve("drawing-" + paper.getKey() + ".pdf"), file);
            List<PrintedLines.Page> pages = PrintedLines.of(file);
            assertThat(pages).hasSize(3);
            for (PrintedLines.Page page : pages) {
                assertThat(page.width_mm()).isCloseTo(paper.getValue()[0], within(PAPER_MM));
                assertThat(page.height_mm()).isCloseTo(paper.getValue()[1], within(PAPER_MM));
                assertThat(page.fontsInside()).isNotEmpty().doesNotContain(false);
                PrintedLines.Stroke edge = page.strokes().get(0);
                assertThat(edge.points().get(0)[0]).isCloseTo(20, within(PAPER_MM));
                assertThat(edge.points().get(2)[0]).isCloseTo(page.width_mm() - 10, within(PAPER_MM));
                assertThat(edge.width_mm()).isCloseTo(0.5, within(0.01));
            }
        }
    }

    private static void measures(PrintedLines.Page page, String what, double length_mm) {
        assertThat(page.strokes().stream()
                        .filter(PrintedLines.Stroke::straight)
                        .filter(line -> Math.abs(line.width_mm() - 0.25) < 0.01 && !line.broken())
                        .map(PrintedLines.Stroke::length_mm))
                .as("a dimension line for %s", what)
                .anySatisfy(length -> assertThat(length).isCloseTo(length_mm, within(PAPER_MM)));
    }

    @Test
    void dimensionLinesAreAsLongAsTheScaleSays() throws Exception {
        byte[] file = drawing(whole(), "?paper=A4");
        List<PrintedLines.Page> pages = PrintedLines.of(file);
        PrintedLines.Page side = pages.get(0);
        assertThat(side.words()).contains("1 : 5", "643,1", "1201,1", "775,2");
        measures(side, "wheelbase", (FRONT_AXLE + REAR_AXLE) / 5);
        measures(side, "reach", 458 / 5.0);
        measures(side, "stack", STACK / 5);
        measures(side, "front centre", Math.hypot(FRONT_AXLE, 58) / 5);
        measures(side, "chainstay", 432 / 5.0);
        measures(side, "seat tube", 430 / 5.0);
        measures(side, "head tube", 110 / 5.0);
        measures(side, "fork", 541 / 5.0);
        PrintedLines.Page plan = pages.get(1);
        assertThat(plan.words()).contains("1 : 2", "148,0", "73,0", "428,1", "tyre 40,0 wide");
        measures(plan, "axle", 148 / 2.0);
        measures(plan, "shell", 73 / 2.0);
        measures(plan, "axle behind the shell", REAR_AXLE / 2);
    }

    /** Outlines of the side view: the two long edges of each tube. */
    @Test
    void tubesAreAsWideAsTheScaleSays() throws Exception {
        PrintedLines.Page side = PrintedLines.of(drawing(whole(), "?paper=A4")).get(0);
        List<Double> widths = side.strokes().stream()
                .filter(line ->
                        Math.abs(line.width_mm() - 0.5) < 0.01 && line.points().size() == 5)
                .skip(1)
                .map(line -> Math.hypot(
                        line.points().get(3)[0] - line.points().get(0)[0],
                        line.points().get(3)[1] - line.points().get(0)[1]))
                .toList();
        for (double outside : new double[] {18, 22, 34.9, 42, 34.9, 54}) {
            assertThat(widths).anySatisfy(width -> assertThat(width).isCloseTo(outside / 5, within(PAPER_MM)));
        }
    }

    @Test
    void theTitleBlockSaysWhatTheRevisionIsAndWhoAnswersForIt() throws Exception {
        long checked = frame.checked();
        String owner = crew.byId(frame.owner).name();
        String qa = crew.byId(frame.qa).name();
        jdbc.sql("insert into design_geometry (revision_id, input, amount)"
                        + " select ?, input, amount from design_geometry where revision_id = ?")
                .params(checked, whole())
                .update();
        for (PrintedLines.Page page : PrintedLines.of(drawing(checked, ""))) {
            assertThat(page.words())
                    .contains(
                            "Owner",
                            "Hardtail 29",
                            "aluminium 6061",
                            "checked",
                            "Drawn by",
                            owner + ", ",
                            qa + ", ",
                            "18 Mar 2026, entered by " + owner,
                            "Third angle projection",
                            "Lengths in mm",
                            "not released: not for work");
        }
    }

    @Test
    void theLastSheetHoldsTheMainDimensionsAndTheCutList() throws Exception {
        List<PrintedLines.Page> pages = PrintedLines.of(drawing(whole(), ""));
        assertThat(pages.get(2).words())
                .contains(
                        "Main dimensions and cut list",
                        "Trail",
                        "120,3",
                        "down tube",
                        "42,0 × 1,40",
                        "741,2",
                        "608,8",
                        "to the head tube: saw 54,0, 114,7°",
                        "3 of 3",
                        "feather edge");
    }

    /** The strokes of the file and those of the picture on the page are the same, point by point. */
    @Test
    void thePictureOnThePageIsThePrintedOne() throws Exception {
        long id = whole();
        List<PrintedLines.Page> pages = PrintedLines.of(drawing(id, ""));
        String page = mvc.perform(get("/designs/{id}/frame", id).with(Signed.on(crew.byId(frame.owner))))
                .andReturn()
                .getResponse()
                .getContentAsString();
        Matcher pictures =
                Pattern.compile("(?s)<svg class=\"frame-sheet\".*?</svg>").matcher(page);
        for (int sheet = 0; sheet < 2; sheet++) {
            assertThat(pictures.find()).isTrue();
            double height = pages.get(sheet).height_mm();
            List<List<double[]>> drawn = paths(pictures.group(), height);
            List<List<double[]>> printed = pages.get(sheet).strokes().stream()
                    .map(PrintedLines.Stroke::points)
                    .filter(points -> points.size() < 100)
                    .toList();
            assertThat(drawn).hasSameSizeAs(printed).hasSizeGreaterThan(40);
            for (int i = 0; i < drawn.size(); i++) {
                assertThat(drawn.get(i)).hasSameSizeAs(printed.get(i));
                for (int k = 0; k < drawn.get(i).size(); k++) {
                    assertThat(drawn.get(i).get(k)[0]).isCloseTo(printed.get(i).get(k)[0], within(0.02));
                    assertThat(drawn.get(i).get(k)[1]).isCloseTo(printed.get(i).get(k)[1], within(0.02));
                }
            }
        }
        assertThat(pictures.find())
                .as("the numbers stand in the page's own tables")
                .isFalse();
    }

    private static List<List<double[]>> paths(String svg, double height) {
        List<List<double[]>> paths = new ArrayList<>();
        Matcher stroked = Pattern.compile("<path d=\"M([^\"]*)\"[^>]* stroke=").matcher(svg);
        while (stroked.find()) {
            String d = stroked.group(1);
            List<double[]> points = new ArrayList<>(Stream.of(d.replace("z", "").split("L"))
                    .map(place -> place.split(" "))
                    .map(at -> new double[] {Double.parseDouble(at[0]) / 10, height - Double.parseDouble(at[1]) / 10})
                    .toList());
            if (d.endsWith("z")) {
                points.add(points.get(0));
            }
            paths.add(points);
        }
        return paths;
    }

    @Test
    void withoutWhatTheRearEndWantsTheRestIsDrawnAndThePageSaysWhy() throws Exception {
        long id = revision(Map.of());
        assertThat(PrintedLines.of(drawing(id, ""))).hasSize(2);
        String page = mvc.perform(get("/designs/{id}/frame", id).with(Signed.on(crew.byId(frame.owner))))
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(page)
                .contains("The rear end is not drawn from above.", "Shell width is not given.")
                .contains("/designs/" + id + "/sheets?paper=US_LETTER");
    }

    @Test
    void aDraftWithoutNumbersIsNotPrintedAndSaysWhatItNeeds() throws Exception {
        MockHttpServletResponse answer = answer(frame.begin(), "");
        assertThat(answer.getStatus()).isEqualTo(409);
        assertThat(answer.getContentAsString()).contains("No drawing was made.", "Head angle is not given.");
    }

    @Test
    void aPaperNobodyHasIsRefused() throws Exception {
        MockHttpServletResponse answer = answer(whole(), "?paper=A0");
        assertThat(answer.getStatus()).isBetween(400, 499);
        assertThat(answer.getContentAsString()).contains("No drawing was made.", "Choose A4 or US_LETTER.");
    }

    @Test
    void aWithdrawnRevisionSaysOnEverySheetThatNobodyWorksByIt() throws Exception {
        long id = whole();
        office.withdraw(hands.act(frame.owner), id, "The rider wants another frame.");
        assertThat(PrintedLines.of(drawing(id, "")))
                .allSatisfy(page -> assertThat(page.words()).contains("withdrawn: not for work"));
    }

    @Test
    void aTyreThatDoesNotFitItsWheelIsSaid() throws Exception {
        Map<GeometryInput, BigDecimal> given = TrailFrame.inputs();
        given.put(GeometryInput.REAR_WHEEL_RADIUS, new BigDecimal("100"));
        given.put(GeometryInput.FRONT_WHEEL_RADIUS, new BigDecimal("100"));
        long id = revision(given, Map.of(GeometryInput.SHELL_WIDTH, "73", GeometryInput.REAR_TYRE_WIDTH, "120"));
        assertThat(mvc.perform(get("/designs/{id}/frame", id).with(Signed.on(crew.byId(frame.owner))))
                        .andReturn()
                        .getResponse()
                        .getContentAsString())
                .contains("The rear tyre&#39;s width of 120 mm does not fit its wheel of 100 mm radius.");
    }
}
