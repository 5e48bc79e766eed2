package org.trammel.shop.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.trammel.calc.drawing.DrawnSheet;
import org.trammel.calc.drawing.Mark;
import org.trammel.calc.drawing.Mark.Fill;
import org.trammel.calc.drawing.Pen;
import org.trammel.calc.geometry.PaperShape.Spot;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A drawn sheet read back as a picture's text. */
class SheetPictureTest {

    private static DrawnSheet sheet(Mark... marks) {
        return new DrawnSheet("A finding.", 297, 210, 5, List.of(marks));
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void whatPeopleWroteIsNeverMarkup() throws Exception {
        String svg = SheetPicture.of(
                "frame-sheet",
                "O&1 \"<b>\".",
                sheet(new Mark.Words(new Spot(20, 30), 0, "<script>x</script>", 3, Mark.Anchor.START, Mark.Hand.BOLD)));
        assertThat(svg).doesNotContain("<script", "<b>").contains("&lt;script&gt;");
        assertThat(parsed(svg).getDocumentElement().getAttribute("aria-label")).isEqualTo("O&1 \"<b>\". A finding.");
    }

    @Test
    void upIsUpAndEachPenHasItsWidthAndStrokes() throws Exception {
        for (Pen pen : Pen.values()) {
            Element path = (Element) parsed(SheetPicture.of(
                            "frame-sheet",
                            "",
                            sheet(new Mark.Path(List.of(new Spot(20, 30), new Spot(120, 180)), false, pen, Fill.NONE))))
                    .getElementsByTagName("path")
                    .item(0);
            assertThat(path.getAttribute("d")).isEqualTo("M200 1800L1200 300");
            assertThat(Double.parseDouble(path.getAttribute("stroke-width")) / 10)
                    .isEqualTo(pen.width_mm());
            assertThat(path.getAttribute("stroke-dasharray").isEmpty())
                    .isEqualTo(pen.strokes_mm().isEmpty());
        }
    }

    /** Two widths, 2 : 1 (ISO 128-2, from memory); what is at hand is told by its width, not by its colour alone. */
    @Test
    void widthsTellLinesApart() {
        assertThat(Pen.OUTLINE.width_mm()).isEqualTo(2 * Pen.NARROW.width_mm());
        assertThat(Pen.EMPHASIS.width_mm()).isGreaterThanOrEqualTo(2 * Pen.OUTLINE.width_mm());
    }
}
