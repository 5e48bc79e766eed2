package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

/** The test families of the shop, kept by the QA lead: each with its report and its history. */
@Service
public class TestFamilies {

    private static final int NAME = 60;
    private static final int LINE = 200;
    private static final Band FORK = band("Longest fork", "mm", "100", "800");
    private static final Band RIDER = band("Heaviest rider", "kg", "20", "300");
    private static final Band STACK = band("Stack", "mm", "200", "1200");

    private final TestFamilyRepository rows;
    private final ActLog log;
    private final Crew crew;
    private final Words words;

    TestFamilies(TestFamilyRepository rows, ActLog log, Crew crew, Words words) {
        this.rows = rows;
        this.log = log;
        this.crew = crew;
        this.words = words;
    }

    /** What is entered about a family; a number that is left out is not compared. */
    public record Covered(
            String code,
            String covers,
            @Nullable BigDecimal longestFork_mm,
            @Nullable BigDecimal heaviestRider_kg,
            @Nullable BigDecimal leastStack_mm,
            @Nullable BigDecimal mostStack_mm,
            String source) {}

    /** Every family as it is in force. */
    @Transactional(readOnly = true)
    public List<TestFamily> inForce() {
        return rows.inForce().stream().map(TestFamilyRow::family).toList();
    }

    /** A family as it is in force; empty if none of that name is kept. */
    @Transactional(readOnly = true)
    public Optional<TestFamily> named(String code) {
        return rows.findFirstByCodeOrderByIdDesc(code).map(TestFamilyRow::family);
    }

    /** All that a family ever covered, newest first. */
    @Transactional(readOnly = true)
    public List<TestFamily> history(String code) {
        List<TestFamily> history = rows.findByCodeOrderByIdDesc(code).stream()
                .map(TestFamilyRow::family)
                .toList();
        if (history.isEmpty()) {
            throw Refusal.missing(
                    "There is no test family " + code + ".", "None of that name is kept.", "Choose one from the list.");
        }
        return history;
    }

    /**
     * Enters a family, or what it covers from now on. For the QA lead and the owner.
     *
     * @param seen id of the numbers the person had on the page; null for a new family or to skip the comparison
     */
    @Transactional
    public TestFamily enter(Act act, Covered typed, @Nullable Long seen) {
        String deed = "The test family was not entered.";
        String code = TypedText.line("code", "Name of the family", deed, typed.code(), NAME);
        boolean opened = log.opens(act, "enter-test-family", "test-family:" + code, Chains.SHOP);
        Optional<TestFamily> before = named(code);
        if (!opened) {
            return before.orElseThrow();
        }
        crew.require(act.by(), deed, Role.QA_LEAD, Role.OWNER);
        if (seen != null && before.isPresent() && seen != before.get().id()) {
            throw Refusal.stale(
                    deed,
                    "Somebody changed " + code + " after this page was loaded.",
                    "Open it as it is now beside this page, compare, and enter there what is still wanted.");
        }
        FORK.checkIfGiven("longestFork", deed, typed.longestFork_mm());
        RIDER.checkIfGiven("heaviestRider", deed, typed.heaviestRider_kg());
        STACK.checkIfGiven("leastStack", deed, typed.leastStack_mm());
        STACK.checkIfGiven("mostStack", deed, typed.mostStack_mm());
        if (typed.leastStack_mm() != null
                && typed.mostStack_mm() != null
                && typed.leastStack_mm().compareTo(typed.mostStack_mm()) > 0) {
            throw Refusal.input(
                    "mostStack",
                    deed,
                    "The greatest stack, " + typed.mostStack_mm().toPlainString() + " mm, is less than the least, "
                            + typed.leastStack_mm().toPlainString() + " mm.",
                    "Look whether the two were exchanged.");
        }
        Covered checked = new Covered(
                code,
                TypedText.line("covers", "What it covers", deed, typed.covers(), LINE),
                typed.longestFork_mm(),
                typed.heaviestRider_kg(),
                typed.leastStack_mm(),
                typed.mostStack_mm(),
                TypedText.words("source", "The report", deed, typed.source()));
        TestFamilyRow row = rows.save(new TestFamilyRow(checked, act));
        WordsRef said = words.keep(checked.covers() + "\n" + checked.source());
        log.event(
                Chains.SHOP,
                "test-family-entered",
                Map.of("family", code, "row", row.id(), "words", said.id(), "sha256", said.sha256()));
        return row.family();
    }

    private static Band band(String label, String unit, String least, String most) {
        BigDecimal from = new BigDecimal(least);
        BigDecimal to = new BigDecimal(most);
        return new Band(label, unit, from, to, from, to);
    }
}
