package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.records.Words;
import org.trammel.shop.records.WordsRef;

/** The tolerance classes of the shop, kept by the QA lead: each with source and history. */
@Service
public class Tolerances {

    private static final int DECIMALS = 4;
    private static final BigDecimal MOST = BigDecimal.valueOf(100);

    private final ToleranceClassRepository classes;
    private final ToleranceRepository rows;
    private final ActLog log;
    private final Crew crew;
    private final Words words;

    Tolerances(ToleranceClassRepository classes, ToleranceRepository rows, ActLog log, Crew crew, Words words) {
        this.classes = classes;
        this.rows = rows;
        this.log = log;
        this.crew = crew;
        this.words = words;
    }

    /** Every class with the deviations in force, by code, in the order of the page. */
    @Transactional(readOnly = true)
    public Map<String, Tolerance> inForce() {
        Map<String, Tolerance> all = new LinkedHashMap<>();
        rows.inForce().forEach(one -> all.put(one.kind().code(), one.row().of(one.kind())));
        return all;
    }

    /** All deviations a class ever had, newest first. */
    @Transactional(readOnly = true)
    public List<Tolerance> history(String code) {
        ToleranceClass kind = kind(code);
        return rows.findByClassCodeOrderByIdDesc(code).stream()
                .map(row -> row.of(kind))
                .toList();
    }

    /**
     * Puts other deviations in force. For the QA lead and the owner. Drafts take them up when they are changed next.
     *
     * @param lower null for an open side
     * @param upper null for an open side
     * @param seen id of the deviations the person had on the page; null to skip the comparison
     */
    @Transactional
    public Tolerance change(
            Act act,
            String code,
            @Nullable BigDecimal lower,
            @Nullable BigDecimal upper,
            String source,
            String reason,
            @Nullable Long seen) {
        ToleranceClass kind = kind(code);
        String deed = "The tolerance of " + kind.name() + " was not changed.";
        boolean opened = log.opens(act, "change-tolerance", "tolerance:" + code, Chains.SHOP);
        Tolerance before = history(code).get(0);
        if (!opened) {
            return before;
        }
        crew.require(act.by(), deed, Role.QA_LEAD, Role.OWNER);
        if (seen != null && seen != before.id()) {
            throw Refusal.stale(
                    deed,
                    "It was changed meanwhile to " + written(before.lower()) + " and " + written(before.upper()) + " ("
                            + before.source() + ").",
                    "Look at the deviations now in force and change them again if they are still wrong.");
        }
        check(deed, kind, lower, upper);
        String from = TypedText.words("source", "Source", deed, source);
        String why = TypedText.words("reason", "Reason", deed, reason);
        if (same(lower, before.lower()) && same(upper, before.upper()) && from.equals(before.source())) {
            throw Refusal.input(
                    "lower",
                    deed,
                    "These deviations with this source are in force already.",
                    "Enter others, or the same with a better source.");
        }
        ToleranceRow row = rows.save(new ToleranceRow(code, lower, upper, from, why, act));
        WordsRef said = words.keep(from + "\n" + why);
        log.event(
                Chains.SHOP,
                "tolerance-changed",
                Map.of(
                        "class", code,
                        "tolerance", row.id(),
                        "before", before.id(),
                        "deviations", written(lower) + ";" + written(upper),
                        "words", said.id(),
                        "sha256", said.sha256()));
        return row.of(kind);
    }

    private static void check(
            String deed, ToleranceClass kind, @Nullable BigDecimal lower, @Nullable BigDecimal upper) {
        range(deed, kind, "lower", lower);
        range(deed, kind, "upper", upper);
        if (lower == null && upper == null) {
            throw Refusal.input(
                    "lower",
                    deed,
                    "Both sides would be open, so nothing could be judged.",
                    "Give one of the two deviations.");
        }
        if (lower != null && lower.signum() > 0 || upper != null && upper.signum() < 0) {
            throw Refusal.input(
                    lower != null && lower.signum() > 0 ? "lower" : "upper",
                    deed,
                    "The nominal itself would lie outside: " + written(lower) + " to " + written(upper) + ".",
                    "The lower deviation is 0 or carries a minus, the upper is 0 or more.");
        }
        if (lower != null && upper != null && lower.compareTo(upper) >= 0) {
            throw Refusal.input(
                    "upper",
                    deed,
                    "Nothing is left between " + written(lower) + " and " + written(upper) + ".",
                    "Leave room for what can be made.");
        }
    }

    private static void range(String deed, ToleranceClass kind, String field, @Nullable BigDecimal deviation) {
        if (deviation != null && Nominal.plain(deviation).scale() > DECIMALS) {
            throw Refusal.input(
                    field,
                    deed,
                    "The deviation has more than " + DECIMALS + " decimals: " + deviation.toPlainString() + ".",
                    "Round it to what can be measured.");
        }
        if (deviation != null && deviation.abs().compareTo(MOST) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    "A deviation of " + deviation.toPlainString() + " " + kind.unit() + " is no tolerance of a frame.",
                    "Look at its unit and its decimal sign, and type it again.");
        }
    }

    private static boolean same(@Nullable BigDecimal one, @Nullable BigDecimal other) {
        return one == null || other == null ? one == other : one.compareTo(other) == 0;
    }

    private static String written(@Nullable BigDecimal deviation) {
        return deviation == null ? "open" : Nominal.plain(deviation).toPlainString();
    }

    private ToleranceClass kind(String code) {
        return classes.findById(code)
                .orElseThrow(() -> Refusal.missing(
                        "There is no tolerance class " + code + ".",
                        "No class carries this code.",
                        "Choose one from the list."));
    }
}
