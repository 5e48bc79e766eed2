package org.trammel.shop.gauges;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.statistics.GaugeStudy;
import org.trammel.calc.units.Answer;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/**
 * Studies of gauges: how much of the spread is the gauge's own. Initials of who measured are shown to the QA lead only;
 * everybody else reads letters, because a study looks at a gauge and not at people.
 */
@Service
public class GaugeStudies {

    private static final String NOT = "The study was not entered.";
    private static final int MOST = 2000;
    private static final int DECIMALS = 6;
    private static final BigDecimal GREATEST = new BigDecimal("1e9");
    private static final Pattern MARK = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ._/-]{0,18}");
    private static final Pattern INITIALS = Pattern.compile("\\p{L}[\\p{L}\\p{N}]{0,5}");

    private final StudyRepository studies;
    private final Gauges gauges;
    private final Crew crew;
    private final ActLog log;

    GaugeStudies(StudyRepository studies, Gauges gauges, Crew crew, ActLog log) {
        this.studies = studies;
        this.gauges = gauges;
        this.crew = crew;
        this.log = log;
    }

    /**
     * Enters a study.
     *
     * @return its id
     * @throws Refusal if not every appraiser measured every part equally often, twice or more, or if nothing differs
     */
    @Transactional
    public long enter(Act act, String code, NewStudy typed) {
        Gauge gauge = required(code);
        if (!log.opens(act, "enter-gauge-study", "gauge:" + gauge.code(), Chains.SHOP)) {
            return studies.findByActId(act.id()).orElseThrow().id();
        }
        crew.require(act.by(), NOT, Role.QA_LEAD, Role.OWNER);
        NewStudy entry = read(gauge, typed);
        Answer<GaugeStudy> answer = GaugeStudy.byVariances(figures(entry.readings()), width(entry.tolerance()));
        if (answer instanceof Answer.NotDeterminable<GaugeStudy>) {
            throw refused(
                    "readings", Study.reason(answer), "Every appraiser measures every part the same number of times.");
        }
        StudyRow row = studies.saveAndFlush(new StudyRow(gauge.id(), entry, act));
        log.event(
                Chains.SHOP,
                "gauge-study-entered",
                Map.of(
                        "gauge",
                        gauge.id(),
                        "study",
                        row.id(),
                        "readings",
                        entry.readings().size()));
        return row.id();
    }

    private static NewStudy read(Gauge gauge, NewStudy typed) {
        String what = TypedText.line("what", "What was measured", NOT, typed.what(), 200);
        String unit = Units.plain(typed.unit());
        if (gauge.ranges().stream().noneMatch(range -> range.unit().equals(unit)) || unit.isEmpty()) {
            throw refused(
                    "unit",
                    gauge.code() + " does not read " + (unit.isEmpty() ? "figures" : unit) + ".",
                    "Choose a unit it reads.");
        }
        BigDecimal tolerance = typed.tolerance();
        if (tolerance != null && (tolerance.signum() <= 0 || !kept(tolerance))) {
            throw refused(
                    "tolerance",
                    "The tolerance is " + tolerance.toPlainString() + ".",
                    "Enter the width between its limits, above 0, or leave it empty.");
        }
        if (typed.readings().isEmpty() || typed.readings().size() > MOST) {
            throw refused(
                    "readings",
                    typed.readings().isEmpty()
                            ? "There is no reading."
                            : typed.readings().size() + " readings were given; " + MOST + " are kept at most.",
                    "Enter each part by each appraiser, twice or more.");
        }
        List<StudyReading> readings = new ArrayList<>();
        for (StudyReading reading : typed.readings()) {
            readings.add(read(gauge, unit, reading));
        }
        return new NewStudy(what, unit, tolerance, readings);
    }

    private static StudyReading read(Gauge gauge, String unit, StudyReading reading) {
        String part = reading.part().strip();
        String who = reading.appraiser().strip().toUpperCase(Locale.ROOT);
        if (!MARK.matcher(part).matches()) {
            throw refused(
                    "readings", "A part is called “" + part + "”.", "Mark parts by figures or letters, 19 at most.");
        }
        if (!INITIALS.matcher(who).matches()) {
            throw refused("readings", "An appraiser is called “" + who + "”.", "Name appraisers by their initials.");
        }
        BigDecimal value = reading.value();
        if (!kept(value)) {
            throw refused(
                    "readings",
                    "Part " + part + " by " + who + " reads " + value.toPlainString() + ".",
                    "A figure lies within ±1 000 000 000 and has six decimals at most.");
        }
        if (gauge.ranges().stream().noneMatch(range -> range.unit().equals(unit) && range.covers(value))) {
            throw refused(
                    "readings",
                    gauge.code() + " cannot have read " + value.toPlainString() + " " + unit + " on part " + part + ".",
                    "Look at the figure and its unit again.");
        }
        return new StudyReading(part, who, value);
    }

    private static boolean kept(BigDecimal figure) {
        return figure.abs().compareTo(GREATEST) <= 0
                && figure.stripTrailingZeros().scale() <= DECIMALS;
    }

    /** Studies of a gauge, newest first. */
    @Transactional(readOnly = true)
    public List<StudyLine> of(Gauge gauge) {
        return studies.ofGauge(gauge.id()).stream().map(StudyRow::line).toList();
    }

    /**
     * One study with what it comes to.
     *
     * @param namesShown whether appraisers stand by their initials; else by letters, in the order of their initials
     */
    @Transactional(readOnly = true)
    public Study one(String code, long id, boolean namesShown) {
        Gauge gauge = required(code);
        StudyRow row = studies.withReadings(gauge.id(), id)
                .orElseThrow(() -> Refusal.missing(
                        "The study was not found.",
                        gauge.code() + " has no study with the number " + id + ".",
                        "Choose one on the gauge's sheet."));
        List<StudyReading> readings = namesShown ? row.readings() : lettered(row.readings());
        List<GaugeStudy.Reading> figures = figures(readings);
        Double width = width(row.tolerance());
        Answer<GaugeStudy> byVariances = GaugeStudy.byVariances(figures, width);
        Answer<GaugeStudy> byRanges = GaugeStudy.byRanges(figures, width);
        return new Study(
                row.id(),
                gauge.code(),
                row.what(),
                row.unit(),
                row.tolerance(),
                readings,
                Study.value(byVariances),
                Study.reason(byVariances),
                Study.value(byRanges),
                Study.reason(byRanges),
                row.by(),
                row.at());
    }

    private static List<StudyReading> lettered(List<StudyReading> readings) {
        Map<String, String> letters = new HashMap<>();
        new TreeSet<>(readings.stream().map(StudyReading::appraiser).toList())
                .forEach(who -> letters.put(who, letter(letters.size())));
        return readings.stream()
                .map(reading -> new StudyReading(reading.part(), letters.get(reading.appraiser()), reading.value()))
                .toList();
    }

    private static String letter(int place) {
        String letter = String.valueOf((char) ('A' + place % 26));
        return place < 26 ? letter : letter + place / 26;
    }

    /** The readings as rows of a table: for each part, each appraiser's in their order. */
    static Map<String, Map<String, List<BigDecimal>>> table(List<StudyReading> readings) {
        Map<String, Map<String, List<BigDecimal>>> table = new LinkedHashMap<>();
        readings.forEach(reading -> table.computeIfAbsent(reading.part(), part -> new LinkedHashMap<>())
                .computeIfAbsent(reading.appraiser(), who -> new ArrayList<>())
                .add(reading.value()));
        return table;
    }

    private static List<GaugeStudy.Reading> figures(List<StudyReading> readings) {
        return readings.stream()
                .map(reading -> new GaugeStudy.Reading(
                        reading.part(), reading.appraiser(), reading.value().doubleValue()))
                .toList();
    }

    private static @Nullable Double width(@Nullable BigDecimal tolerance) {
        return tolerance == null ? null : Double.valueOf(tolerance.doubleValue());
    }

    private Gauge required(String code) {
        return gauges.byCode(code)
                .orElseThrow(() -> Refusal.missing(
                        "The gauge was not found.",
                        "No gauge carries the number " + code.strip() + ".",
                        "Choose it from the register."));
    }

    private static Refusal refused(String field, String why, String instead) {
        return Refusal.input(field, NOT, why, instead);
    }
}
