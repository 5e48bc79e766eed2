package org.trammel.shop.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.trammel.shop.designs.TubePlace;
import org.trammel.shop.records.Refusal;

/** Which section of a lot is the tube of a drawing. The tolerances are those common for drawn tube, from memory. */
class SectionFitTest {

    private static final String NOT = "It was not read.";

    @ParameterizedTest(name = "{0} asked, {1} there: {2}")
    @CsvSource(
            delimiter = ';',
            value = {
                "35 × 1,4; 35x1.40; SAME",
                "35 × 1,4; 42 × 1,6; OTHER",
                "35 × 1,4; 35 × 1,45; NEAR",
                "35 × 1,4; 35 × 1,351; NEAR",
                "35 × 1,4; 35 × 1,46; OTHER",
                "35 × 1,4; 35,1 × 1,4; NEAR",
                "35 × 1,4; 35,101 × 1,4; OTHER",
                "35 × 1,4; 35 × 1,4/0,9; OTHER",
                "38 × 0,9/0,6; 38 × 0,9; OTHER",
                "38 × 0,9/0,6; 38 × 0,9/0,6/0,9; SAME",
                "38 × 0,9/0,6/0,7; 38 × 0,7/0,6/0,9; SAME",
                "38 × 0,9/0,6/0,7; 38 × 0,9/0,6/0,9; OTHER",
                "38 × 0,9/0,6/0,7; 38 × 0,9/0,62/0,7; NEAR"
            })
    void aTubeIsTheDrawingsOwnOrNearItOrAnother(String asked, String there, SectionFit fit) {
        assertThat(fit(place(asked, false), Section.read(there, NOT).get(0))).isEqualTo(fit);
    }

    @Test
    void whatTheDrawingLeavesOpenIsNotJudged() {
        TubePlace open = new TubePlace("BOOM_TUBE", "boom tube", false, null, null, null, null);
        assertThat(fit(open, null)).isEqualTo(SectionFit.SAME);
        TubePlace outside = new TubePlace("HEAD_TUBE", "head tube", true, new BigDecimal("54"), null, null, null);
        assertThat(fit(outside, new Section(new BigDecimal("54"), new BigDecimal("5"), null, null)))
                .isEqualTo(SectionFit.SAME);
        assertThat(fit(outside, new Section(new BigDecimal("50"), new BigDecimal("5"), null, null)))
                .isEqualTo(SectionFit.OTHER);
        assertThat(fit(outside, null)).as("a fitting of no stated section").isEqualTo(SectionFit.UNDECIDED);
        assertThat(fit(place("42 × 1,4", false), null))
                .as("a tube of no stated section")
                .isEqualTo(SectionFit.OTHER);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "42",
                "42 x",
                "x 1,4",
                "42 x 1,4 x 2",
                "42 x 1/2/3/4",
                "42 x 1e3",
                "forty x 1",
                "42 x 21",
                "42 x 0",
                "-42 x 1",
                "501 x 1",
                "42 x 1,4567"
            })
    void whatIsNoSectionIsRefusedInWords(String typed) {
        assertThatThrownBy(() -> Section.read(typed, NOT).forEach(section -> section.refuseUnlessTube(NOT)))
                .isInstanceOfSatisfying(Refusal.class, refused -> {
                    assertThat(refused.what()).isEqualTo(NOT);
                    assertThat(refused.field()).isEqualTo("sections");
                    assertThat(refused.why()).isNotBlank();
                    assertThat(refused.instead()).isNotBlank();
                });
    }

    @Test
    void aLotMayHoldSeveral() {
        assertThat(Section.read("42 × 1,4\r\n\n 34,9×1,15 mm · 38 * 0,9/0,6/0,9; 35X1.25", NOT))
                .extracting(Section::outside_mm)
                .containsExactly(
                        new BigDecimal("42"), new BigDecimal("34.9"), new BigDecimal("38"), new BigDecimal("35"));
    }

    /** Designations of EN 515, from memory. */
    @ParameterizedTest
    @CsvSource({
        "T6,T6",
        "EN AW-6061 T6,T6",
        "6061-T6,T6",
        "EN AW-6061 T4,T4",
        "EN AW-7005,''",
        "25CrMo4,''",
        "'6061, O',O",
        "5083 H111,H111",
        "t6,T6"
    })
    void theTemperIsReadFromWhatStandsOnTheCertificate(String grade, String temper) {
        assertThat(Tempers.of(grade)).isEqualTo(temper);
    }

    private static SectionFit fit(TubePlace asked, @Nullable Section has) {
        return SectionFit.of(asked, has, new BigDecimal("0.1"), new BigDecimal("0.05"));
    }

    private static TubePlace place(String section, boolean fitting) {
        Section drawn = List.copyOf(Section.read(section, NOT)).get(0);
        return new TubePlace(
                "DOWN_TUBE",
                "down tube",
                fitting,
                drawn.outside_mm(),
                drawn.wall_mm(),
                drawn.middle_mm(),
                drawn.other_mm());
    }
}
