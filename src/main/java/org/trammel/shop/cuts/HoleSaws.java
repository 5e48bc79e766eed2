package org.trammel.shop.cuts;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.CutTubes;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.records.Words;
import org.trammel.shop.records.WordsRef;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.web.Formats;

/** The register of hole saws: kept by the QA lead and the owner, measured by whoever works here. */
@Service
public class HoleSaws {

    private static final int LONGEST_CODE = 20;
    private static final int LONGEST_REASON = 400;
    private static final BigDecimal LARGEST_MM = BigDecimal.valueOf(300);
    /** What is further off its mark was read from another saw. */
    private static final BigDecimal FAR_MM = BigDecimal.valueOf(2);

    private final HoleSawRepository saws;
    private final SawCheckRepository checks;
    private final CutGauges gauges;
    private final Crew crew;
    private final Settings settings;
    private final Formats formats;
    private final Words words;
    private final ActLog log;

    HoleSaws(
            HoleSawRepository saws,
            SawCheckRepository checks,
            CutGauges gauges,
            Crew crew,
            Settings settings,
            Formats formats,
            Words words,
            ActLog log) {
        this.saws = saws;
        this.checks = checks;
        this.gauges = gauges;
        this.crew = crew;
        this.settings = settings;
        this.formats = formats;
        this.words = words;
        this.log = log;
    }

    @Transactional(readOnly = true)
    public List<HoleSaw> all() {
        Map<String, SawCheckRow> newest =
                checks.newest().stream().collect(Collectors.toMap(SawCheckRow::saw, Function.identity()));
        return saws.findAllByOrderByCode().stream()
                .map(row -> row.saw(
                        newest.containsKey(row.code()) ? newest.get(row.code()).check() : null))
                .toList();
    }

    boolean kept() {
        return saws.existsByRetiredOnIsNull();
    }

    @Transactional
    public HoleSaw register(Act act, @Nullable String code, @Nullable String what, @Nullable BigDecimal diameter_mm) {
        String deed = "The hole saw was not registered.";
        if (!log.opens(act, "register-hole-saw", "hole-saws", Chains.SHOP)) {
            return one(code, deed);
        }
        crew.require(act.by(), deed, Role.QA_LEAD, Role.OWNER);
        String label = label(code, deed);
        if (saws.findByCode(label).isPresent()) {
            throw Refusal.input("code", deed, "There is " + label + " already.", "Give it a label of its own.");
        }
        if (diameter_mm == null || diameter_mm.signum() <= 0 || diameter_mm.compareTo(LARGEST_MM) > 0) {
            throw Refusal.input(
                    "diameter",
                    deed,
                    diameter_mm == null
                            ? "Its diameter is missing."
                            : diameter_mm.toPlainString() + " mm does not lie above 0 and up to 300 mm.",
                    "Read its mark, in mm.");
        }
        CutDigits.require("diameter", deed, "Its diameter", diameter_mm, 3);
        saws.saveAndFlush(
                new HoleSawRow(label, TypedText.line("what", "What it is", deed, what, 100), diameter_mm, act));
        log.event(Chains.SHOP, "hole-saw-registered", Map.of("saw", label, "diameter", diameter_mm.toPlainString()));
        return one(label, deed);
    }

    /** Keeps what a saw measures over its teeth; worn beyond what is allowed too. */
    @Transactional
    public HoleSaw check(Act act, @Nullable String code, @Nullable BigDecimal measured_mm, String gauge) {
        String deed = "The hole saw was not measured.";
        if (!log.opens(act, "check-hole-saw", "hole-saws", Chains.SHOP)) {
            return one(code, deed);
        }
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(deed, "A reader changes nothing.", "Somebody who works here does it.");
        }
        HoleSawRow row = row(code, deed);
        if (measured_mm == null) {
            throw Refusal.input("measured", deed, "What it measures is missing.", "Measure it over the teeth, in mm.");
        }
        CutDigits.require("measured", deed, "What it measures", measured_mm, 3);
        BigDecimal worn = row.diameter_mm().subtract(measured_mm);
        if (worn.abs().compareTo(FAR_MM) > 0) {
            throw Refusal.input(
                    "measured",
                    deed,
                    measured_mm.toPlainString() + " mm is far from its mark, "
                            + row.diameter_mm().toPlainString() + " mm.",
                    "Look which saw it is, and measure it over the teeth.");
        }
        String with =
                gauges.length(gauge, "gauge", CutGauges.OUTSIDE, measured_mm).code();
        LocalDate due = settings.dayOf(act.at()).plusDays(settings.whole("cut.saw.days"));
        HoleSaw.Check check =
                new HoleSaw.Check(measured_mm, worn, settings.number("cut.saw.worn"), due, with, act.by(), act.at());
        checks.saveAndFlush(new SawCheckRow(row.code(), check, act));
        log.event(
                Chains.SHOP,
                "hole-saw-measured",
                Map.of("saw", row.code(), "measured", measured_mm.toPlainString(), "worn", check.worn()));
        return row.saw(check);
    }

    /** @param reason why, such as worn, a lost tooth or a wrong mark */
    @Transactional
    public HoleSaw retire(Act act, @Nullable String code, @Nullable String reason) {
        String deed = "The hole saw was not retired.";
        if (!log.opens(act, "retire-hole-saw", "hole-saws", Chains.SHOP)) {
            return one(code, deed);
        }
        crew.require(act.by(), deed, Role.QA_LEAD, Role.OWNER);
        HoleSawRow row = row(code, deed);
        if (row.retiredOn() != null) {
            throw Refusal.stale(deed, row.code() + " is retired already.", "Load the page again.");
        }
        String because = TypedText.words("reason", "Why", deed, reason, LONGEST_REASON);
        row.retire(settings.dayOf(act.at()), because);
        saws.saveAndFlush(row);
        WordsRef ref = words.keep(because);
        log.event(
                Chains.SHOP, "hole-saw-retired", Map.of("saw", row.code(), "words", ref.id(), "sha256", ref.sha256()));
        return one(row.code(), deed);
    }

    /** The saw, if it may cut that end today. */
    HoleSaw fit(@Nullable String code, CutTubes.End end, String field, String deed) {
        if (code == null || code.isBlank()) {
            throw Refusal.input(
                    field,
                    deed,
                    "It is not said with which hole saw it was cut to the " + end.mate() + ".",
                    "Choose the saw that is in the machine.");
        }
        HoleSaw saw = one(code, deed);
        HoleSaw.Check check = saw.check();
        if (saw.retiredOn() != null) {
            throw Refusal.input(field, deed, saw.code() + " is retired.", "Cut with a saw that is in use.");
        }
        if (check == null || saw.due(settings.today())) {
            throw Refusal.input(
                    field,
                    deed,
                    check == null
                            ? saw.code() + " was never measured."
                            : saw.code() + " was to be measured again by " + formats.date(check.dueOn())
                                    + "; a saw that wore meanwhile leaves a gap.",
                    "Measure it over its teeth and keep that in the register of hole saws; then record the cut.");
        }
        if (check.worn()) {
            throw Refusal.input(
                    field,
                    deed,
                    saw.code() + " is worn by " + bare(check.worn_mm()) + " mm; at most " + bare(check.mostWorn_mm())
                            + " mm are allowed.",
                    "Look at the cut for a gap at its sides, take another saw, and have this one retired.");
        }
        BigDecimal most = end.mate_mm().add(settings.number("saw.oversize"));
        if (saw.diameter_mm().compareTo(end.mate_mm()) < 0 || saw.diameter_mm().compareTo(most) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    saw.code() + " has " + bare(saw.diameter_mm()) + " mm; the " + end.mate() + " has "
                            + bare(end.mate_mm()) + " mm, and a saw from that to " + bare(most) + " mm fits it.",
                    "Read the label of the saw in the machine. If it was this one, the cut is not that of the drawing:"
                            + " stop and call the QA lead.");
        }
        BigDecimal least = end.mate_mm().subtract(settings.number("cut.saw.worn"));
        if (check.measured_mm().compareTo(least) < 0) {
            throw Refusal.input(
                    field,
                    deed,
                    saw.code() + " measures " + bare(check.measured_mm()) + " mm over its teeth; the " + end.mate()
                            + " has " + bare(end.mate_mm()) + " mm, and a saw of at least " + bare(least)
                            + " mm cuts it.",
                    "Take another saw, and have this one retired.");
        }
        if (check.measured_mm().compareTo(most) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    saw.code() + " measures " + bare(check.measured_mm()) + " mm over its teeth; a saw of at most "
                            + bare(most) + " mm fits the " + end.mate() + ".",
                    "Measure it again. If it is so, its mark is wrong: take another saw and have this one retired.");
        }
        return saw;
    }

    private String bare(BigDecimal figure) {
        return formats.number(figure.stripTrailingZeros());
    }

    private HoleSaw one(@Nullable String code, String deed) {
        HoleSawRow row = row(code, deed);
        return row.saw(checks.findFirstBySawOrderByIdDesc(row.code())
                .map(SawCheckRow::check)
                .orElse(null));
    }

    private HoleSawRow row(@Nullable String code, String deed) {
        String label = label(code, deed);
        return saws.findByCode(label)
                .orElseThrow(() -> Refusal.input(
                        "saw",
                        deed,
                        "There is no hole saw " + label + " in the register.",
                        "Read its label again; the QA lead registers what is new."));
    }

    private static String label(@Nullable String code, String deed) {
        return TypedText.line("code", "The label", deed, code, LONGEST_CODE).toUpperCase(Locale.ROOT);
    }
}
