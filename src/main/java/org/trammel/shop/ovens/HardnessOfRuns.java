package org.trammel.shop.ovens;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.thermal.HardnessMethod;
import org.trammel.shop.gauges.Gauge;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.settings.Settings;

/**
 * Hardness and conductivity of the coupon of a run and of its frames. They are kept beside the run and release nothing: the
 * run is judged by its record, and operations by their own characteristics.
 */
@Service
public class HardnessOfRuns {

    private static final BigDecimal GREATEST = BigDecimal.valueOf(10_000);

    private final HardnessRepository rows;
    private final Runs runs;
    private final LoadTurn turn;
    private final Gauges gauges;
    private final Settings settings;
    private final ActLog log;

    HardnessOfRuns(HardnessRepository rows, Runs runs, LoadTurn turn, Gauges gauges, Settings settings, ActLog log) {
        this.rows = rows;
        this.runs = runs;
        this.turn = turn;
        this.gauges = gauges;
        this.settings = settings;
        this.log = log;
    }

    /** What was found of a run's coupon and frames, in the order it was entered. */
    @Transactional(readOnly = true)
    public List<Hardness> of(String code) {
        Run run = runs.byCode(code);
        Map<Long, String> marks =
                run.frames().stream().collect(Collectors.toMap(Run.Loaded::travellerId, Run.Loaded::mark));
        return rows.findByRunIdOrderById(run.id()).stream()
                .map(row -> row.hardness(
                        row.travellerId() == null ? "coupon" : Objects.requireNonNull(marks.get(row.travellerId()))))
                .toList();
    }

    /** Whether a reading that decides shows it of a frame, or of the coupon of its run. */
    boolean shows(String code, long travellerId) {
        return of(code).stream()
                .filter(Hardness::shows)
                .anyMatch(one -> one.travellerId() == null || one.travellerId() == travellerId);
    }

    /** Enters what was found, once the run is stopped. */
    @Transactional
    public Run enter(Act act, String code, Hardness.Entry entry) {
        String deed = "The hardness was not entered.";
        if (!turn.opens(act, "enter-hardness", code, List.of())) {
            return runs.byCode(code);
        }
        turn.maySign(act.by(), deed);
        RunRow row = runs.row(code);
        row.requireAt("entered for", RunState.STOPPED, RunState.DECIDED);
        Run run = runs.run(row);
        Long travellerId = entry.travellerId();
        if (travellerId != null && run.in().stream().noneMatch(one -> one.travellerId() == travellerId)) {
            throw Refusal.input("traveller", deed, "That frame was not in the run.", "Choose the coupon or one of it.");
        }
        HardnessMethod method = entry.method();
        if (method == null) {
            throw Refusal.input("method", deed, "It is not said how it was found.", "Choose from the list.");
        }
        String report = TypedText.lineOrNone("report", "The report", deed, entry.report(), 60);
        BigDecimal figure = within("figure", "The figure", deed, entry.figure());
        String gauge = report == null ? gauge(entry.gauge(), method, figure, entry.scale(), deed) : "";
        HardnessRow kept = rows.save(new HardnessRow(
                row.id(),
                travellerId,
                method,
                figure,
                TypedText.line("scale", "The scale", deed, entry.scale(), 60),
                limit("least", "The least", deed, entry.least()),
                limit("most", "The most", deed, requireOrder(entry, deed)),
                TypedText.line("place", "The place", deed, entry.place(), 60),
                gauge,
                report,
                act));
        log.event(
                Chains.SHOP,
                "hardness-entered",
                Map.of(
                        "run",
                        row.id(),
                        "method",
                        method.name(),
                        "met",
                        kept.hardness("").shows()));
        return run;
    }

    /**
     * In date, of the kind, on its own scale and within its range there; or refused. The scale may say more than the
     * register does, as HBW 2,5/62,5 does of HB.
     */
    private String gauge(
            @Nullable String code, HardnessMethod method, BigDecimal figure, @Nullable String scale, String deed) {
        if (code == null || code.isBlank()) {
            throw Refusal.input(
                    "gauge",
                    deed,
                    "It is not said what it was read with.",
                    "Choose the gauge in your hand, or enter the report of the laboratory that read it.");
        }
        String kind = Hardness.kind(method);
        List<String> units = gauges.byCode(code.strip()).map(Gauge::ranges).orElse(List.of()).stream()
                .filter(range -> range.kind().equals(kind))
                .map(GaugeRange::unit)
                .toList();
        String typed = plain(scale == null ? "" : scale);
        String unit = units.stream()
                .filter(own -> typed.startsWith(plain(own)))
                .findFirst()
                .orElse("");
        if (unit.isEmpty() && !units.isEmpty()) {
            throw Refusal.input(
                    "scale",
                    deed,
                    code.strip() + " reads " + String.join(" and ", units) + ", and no "
                            + (typed.isEmpty() ? "scale is said" : scale.strip()) + ".",
                    "Enter the scale it shows, or take the gauge that reads this one.");
        }
        gauges.keep(List.of(code.strip()));
        return gauges.require(code.strip(), kind, unit, List.of(figure), settings.today())
                .code();
    }

    private static String plain(String unit) {
        return unit.replaceAll("\\s", "").toUpperCase(Locale.ROOT);
    }

    /** Those of the register that read hardness or conductivity today, by number. */
    @Transactional(readOnly = true)
    public Map<String, String> usable() {
        Map<String, String> usable = new LinkedHashMap<>();
        usable.put("", "choose the one in your hand");
        for (String kind : List.of("HARDNESS", "CONDUCTIVITY")) {
            gauges.all().stream()
                    .flatMap(gauge -> gauge.ranges().stream())
                    .filter(range -> range.kind().equals(kind))
                    .map(GaugeRange::unit)
                    .distinct()
                    .flatMap(unit -> gauges.usableFor(kind, unit, settings.today()).stream())
                    .forEach(means -> usable.putIfAbsent(means.code(), means.code() + ", " + means.what()));
        }
        return usable;
    }

    private static @Nullable BigDecimal requireOrder(Hardness.Entry entry, String deed) {
        if (entry.least() != null && entry.most() != null && entry.least().compareTo(entry.most()) > 0) {
            throw Refusal.input(
                    "most",
                    deed,
                    "The most, " + entry.most().toPlainString() + ", is below the least, "
                            + entry.least().toPlainString() + ".",
                    "Enter the window the other way round.");
        }
        return entry.most();
    }

    private static @Nullable BigDecimal limit(String field, String what, String deed, @Nullable BigDecimal value) {
        return value == null ? null : within(field, what, deed, value);
    }

    private static BigDecimal within(String field, String what, String deed, @Nullable BigDecimal value) {
        if (value == null || value.signum() <= 0 || value.compareTo(GREATEST) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    value == null
                            ? what + " is missing."
                            : what + ", " + value.toPlainString() + ", is not above 0 and at most " + GREATEST + ".",
                    "Enter it as the gauge shows it; nothing is converted.");
        }
        return value;
    }
}
