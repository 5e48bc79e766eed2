package org.trammel.shop.drift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.calc.statistics.Capability;
import org.trammel.calc.statistics.Histogram;
import org.trammel.calc.statistics.Shape;
import org.trammel.calc.units.Answer;
import org.trammel.shop.people.Signed;

class CapabilityPageTest extends WatchedJigs {

    /** Rear axles of a jig that stands still, mm; invented. */
    private static final List<String> STANDS = List.of(
            "0.3", "-0.1", "0.2", "0.4", "0.1", "0.6", "0.5", "-0.3", "0.0", "0.2", "-0.2", "0.4", "0.3", "0.1", "-0.1",
            "0.5", "0.2", "0.0", "0.3", "-0.2", "0.1", "0.4", "0.2", "0.3", "0.0");

    @Autowired
    private AxisFits fits;

    private Series watchedWith(List<EarlierReading> readings) {
        Series series = watch(one);
        book.takeOver(hands.act(qa), series.id(), readings, "notebook");
        return series;
    }

    private static AxisFits.Asked asked(Shape shape, String limits) {
        return new AxisFits.Asked(shape, new BigDecimal("1.33"), limits, null, null);
    }

    /**
     * Moments by a library of statistics; Ppk of a normal shape and its interval by the formula of A. F. Bissell (1990) as
     * the NIST/SEMATECH e-Handbook, 6.1.6, gives it, reckoned here again.
     */
    @Test
    void anIndexHasItsIntervalAndSaysWhatIsNotProven() throws Exception {
        Series series = watchedWith(daily(STANDS));
        DescriptiveStatistics of = new DescriptiveStatistics();
        STANDS.forEach(each -> of.addValue(Double.parseDouble(each)));
        double ppk = (1 - of.getMean()) / 3 / of.getStandardDeviation();
        double half = 1.959964 * Math.sqrt(1 / 225.0 + ppk * ppk / 48);
        AxisFit fit = fits.of(series.id(), asked(Shape.NORMAL, ""));
        Capability capability = ((Answer.Determined<Capability>) fit.capability()).value();
        assertThat(capability.ppk().value()).isCloseTo(ppk, within(1e-9));
        assertThat(capability.ppk().interval().low()).isCloseTo(ppk - half, within(1e-6));
        assertThat(page(series))
                .contains("Ppk 1,16, at 95 % between 0,81 and 1,51: not proven to be 1,33 or more")
                .contains("moving the mean by", "would raise it to 1,39")
                .contains("<svg class=\"errors\"", "Histogram of 25 readings")
                .contains("No base was taken")
                .doesNotContain("Every reading a dot");
        mvc.perform(get("/api/v1/drift/" + series.id() + "/capability").with(Signed.on(crew.byId(qa))))
                .andExpect(jsonPath("$.indices.ppk.value").value(closeTo(ppk, 1e-9)))
                .andExpect(jsonPath("$.limits.readings").value(25))
                .andExpect(jsonPath("$.histogram.length()").value(fitClasses(fit)));
    }

    private static int fitClasses(AxisFit fit) {
        return ((Answer.Determined<Histogram>) fit.histogram())
                .value()
                .classes()
                .size();
    }

    @Test
    void belowTwentyThereIsNoIndexAndEveryReadingIsADot() throws Exception {
        Series series = watchedWith(daily(STANDS.subList(0, 19)));
        assertThat(page(series))
                .contains("19 readings are too few for an index")
                .contains("Every reading a dot", "19 readings as dots", "+0,6")
                .doesNotContain("Ppk", "Histogram");
        mvc.perform(get("/api/v1/drift/" + series.id() + "/capability").with(Signed.on(crew.byId(qa))))
                .andExpect(jsonPath("$.indices").doesNotExist())
                .andExpect(jsonPath("$.why[0]").value(containsString("too few")));
    }

    @Test
    void framesOfOtherLimitsAreLeftOutAndCanBeChosen() throws Exception {
        List<EarlierReading> lines = new ArrayList<>(daily(STANDS));
        lines.add(new EarlierReading(
                LocalDate.parse("2026-02-01"),
                "swing arm",
                new BigDecimal("0.1"),
                BigDecimal.ZERO,
                new BigDecimal("-0.5"),
                new BigDecimal("0.5"),
                null,
                null));
        Series series = watchedWith(lines);
        assertThat(page(series)).contains("1 with other limits", "\u22121 to +1 mm, 25 readings");
        AxisFit other = fits.of(series.id(), asked(Shape.NORMAL, "-0.5..0.5"));
        assertThat(other.values()).containsExactly(0.1);
        assertThat(other.left()).isEqualTo(25);
    }

    @Test
    void ofAnotherShapeTheOuterPercentilesAreTaken() throws Exception {
        List<EarlierReading> lines = new ArrayList<>();
        for (int i = 1; i <= 30; i++) {
            lines.add(new EarlierReading(
                    LocalDate.parse("2026-01-01").plusDays(i),
                    "frame " + i,
                    BigDecimal.valueOf(i * i, 4),
                    BigDecimal.ZERO,
                    new BigDecimal("-0.3"),
                    new BigDecimal("0.3"),
                    null,
                    null));
        }
        Series series = watchedWith(lines);
        AxisFit normal = fits.of(series.id(), asked(Shape.NORMAL, ""));
        AxisFit skewed = fits.of(series.id(), asked(Shape.WEIBULL, ""));
        Capability of = ((Answer.Determined<Capability>) skewed.capability()).value();
        assertThat(of.percentiles().low()).isGreaterThan(0);
        assertThat(of.ppk().value())
                .isNotCloseTo(
                        ((Answer.Determined<Capability>) normal.capability())
                                .value()
                                .ppk()
                                .value(),
                        within(0.01));
        String page = body("/qa/drift/" + series.id() + "/capability?shape=WEIBULL&wanted=1,0");
        assertThat(page).contains("or more").contains("Shape: ");
        mvc.perform(get("/qa/drift/" + series.id() + "/capability?wanted=0").with(Signed.on(crew.byId(qa))))
                .andExpect(status().is4xxClientError());
    }

    private String page(Series series) throws Exception {
        return body("/qa/drift/" + series.id() + "/capability");
    }

    private String body(String address) throws Exception {
        return mvc.perform(get(address).with(Signed.on(crew.byId(qa))))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }
}
