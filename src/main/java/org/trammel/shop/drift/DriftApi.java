package org.trammel.shop.drift;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.calc.statistics.CumulativeSumSetting;
import org.trammel.calc.statistics.WeightedMeanSetting;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@RestController
@RequestMapping("/api/v1/drift")
@Tag(
        name = "Drift",
        description =
                "Watched axes on control charts over frozen bases, what a shift hangs on, and how it all fits between"
                        + " its limits. Welders are named to the QA lead alone, by their initials.")
class DriftApi {

    private static final int MOST_EARLIER = 2000;

    private final DriftCharts charts;
    private final DriftBook book;
    private final ShiftTraces traces;
    private final AxisFits fits;
    private final EarlierWelders welders;

    DriftApi(DriftCharts charts, DriftBook book, ShiftTraces traces, AxisFits fits, EarlierWelders welders) {
        this.charts = charts;
        this.book = book;
        this.traces = traces;
        this.fits = fits;
        this.welders = welders;
    }

    @GetMapping
    @Operation(summary = "Watched axes, those that drift first")
    List<SeriesAnswer> all(SignedOn who) {
        Welders welders = Welders.seenBy(who.person());
        return charts.all().stream().map(of -> SeriesAnswer.of(of, welders)).toList();
    }

    @GetMapping("/{id}")
    @Operation(
            summary = "One of them with its newest 200 readings, charts and bases; figures in the unit of the chart",
            description = "until is the number of the last reading that is wanted; alarms and sums are those over all"
                    + " readings whichever are shown.")
    ChartsAnswer one(@PathVariable long id, @RequestParam(required = false) @Nullable Integer until, SignedOn who) {
        Charted of = charts.of(id, until);
        return ChartsAnswer.of(of, charts.bases(id), charts.struck(of.series()), Welders.seenBy(who.person()));
    }

    /**
     * @param by what it follows; JIG if left out
     * @param of a jig's code, a welder's initials, or the lots of a tube set in order with + between
     */
    record Watched(
            @Nullable Factor by,
            String of,
            String code,
            String name,
            String unit,
            @Nullable Boolean scaled) {}

    @PostMapping
    @Operation(summary = "Begins to watch an axis")
    @ResponseStatus(HttpStatus.CREATED)
    SeriesAnswer watch(Act act, SignedOn who, @RequestBody Watched body) {
        Series kept = book.watch(
                act,
                new NewSeries(
                        Objects.requireNonNullElse(body.by(), Factor.JIG),
                        body.of(),
                        body.code(),
                        body.name(),
                        body.unit(),
                        Boolean.TRUE.equals(body.scaled())));
        return SeriesAnswer.of(charts.standing(kept.id()), Welders.seenBy(who.person()));
    }

    /**
     * @param first how many readings, of FIRST
     * @param centre and sigma in the unit of the chart, of GIVEN
     * @param weight 0.2 if left out; width 2.7, slack 0.5 σ, decision 4.77 σ
     * @param seen id of the base in force where it was chosen; left out if there was none
     */
    record BaseTaken(
            Base.Kind kind,
            @Nullable Integer first,
            @Nullable LocalDate from,
            @Nullable LocalDate until,
            @Nullable BigDecimal centre,
            @Nullable BigDecimal sigma,
            @Nullable BigDecimal weight,
            @Nullable BigDecimal width,
            @Nullable BigDecimal slack,
            @Nullable BigDecimal decision,
            @Nullable Boolean stopsJig,
            String source,
            String reason,
            @Nullable Long seen) {

        private static BigDecimal or(@Nullable BigDecimal sent, double usual) {
            return sent == null ? BigDecimal.valueOf(usual) : sent;
        }

        NewBase base() {
            return new NewBase(
                    kind,
                    first,
                    from,
                    until,
                    centre,
                    sigma,
                    or(weight, WeightedMeanSetting.USUAL.weight()),
                    or(width, WeightedMeanSetting.USUAL.width()),
                    or(slack, CumulativeSumSetting.USUAL.slack()),
                    or(decision, CumulativeSumSetting.USUAL.decision()),
                    Boolean.TRUE.equals(stopsJig),
                    source,
                    reason,
                    seen);
        }
    }

    @PostMapping("/{id}/bases")
    @Operation(summary = "Takes a base and freezes the limits made of it; the one before stays on record")
    ChartsAnswer base(Act act, SignedOn who, @PathVariable long id, @RequestBody BaseTaken body) {
        book.base(act, id, body.base());
        return one(id, null, who);
    }

    record Earlier(List<EarlierReading> readings, String source) {}

    @PostMapping("/{id}/earlier")
    @Operation(summary = "Takes over what was read before this program on a jig, the oldest first")
    ChartsAnswer takeOver(Act act, SignedOn who, @PathVariable long id, @RequestBody Earlier body) {
        if (body.readings().size() > MOST_EARLIER) {
            throw Refusal.input(
                    "readings",
                    "The earlier readings were not taken over.",
                    "More than " + MOST_EARLIER + " came at once.",
                    "Send them in parts.");
        }
        book.takeOver(act, id, body.readings(), body.source());
        return one(id, null, who);
    }

    record Name(String name) {}

    @PostMapping("/welder-names/erase")
    @Operation(
            summary = "Erases a welder's name that was written down with readings from before this program",
            description = "Only names of nobody in the crew are written down. The readings stay and name no welder.")
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void erase(Act act, @RequestBody Name body) {
        welders.erase(act, body.name());
    }

    record Because(String reason) {}

    @PostMapping("/{id}/earlier/{reading}/strike-out")
    @Operation(summary = "Strikes out a reading from before this program; it stays on record with the reason")
    ChartsAnswer strike(
            Act act, SignedOn who, @PathVariable long id, @PathVariable long reading, @RequestBody Because body) {
        book.strike(act, id, reading, body.reason());
        return one(id, null, who);
    }

    @GetMapping("/{id}/capability")
    @Operation(
            summary = "Pp and Ppk with their intervals, or why there are none",
            description =
                    "Parameters as on the page: shape (NORMAL, LOG_NORMAL, WEIBULL, AS_READ), wanted, limits (the key"
                            + " of one of the choices in the answer), from, until.")
    FitAnswer capability(@PathVariable long id, @RequestParam Map<String, String> fields, SignedOn who) {
        return FitAnswer.of(fits.of(id, CapabilityPages.asked(fields)), Welders.seenBy(who.person()));
    }

    @GetMapping("/causes")
    @Operation(
            summary = "What a shift of an axis hangs on, over all jigs",
            description =
                    "Parameters as on the page: code, from, until, scaled, and JIG, WELDER, TUBE_SET each true for what"
                            + " is compared; all three if none is named. 404 if no jig is watched for the code.")
    CausesAnswer causes(@RequestParam Map<String, String> fields, SignedOn who) {
        return CausesAnswer.of(traces.of(CausesPages.asked(fields, ""), Welders.seenBy(who.person())));
    }
}
