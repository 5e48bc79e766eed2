package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

class DesignStatesTest {

    private static final Act ACT = new Act(UUID.randomUUID(), 1, null, Instant.parse("2026-03-18T07:30:00Z"), null);
    private static final String FILE = "cd".repeat(32);

    @ParameterizedTest(name = "{0}: {1} → {2}")
    @CsvFileSource(resources = "/states/design.csv", numLinesToSkip = 1)
    void goesWhereTheTableSaysOrRefusesNamingItsState(DesignState state, String verb, String after) {
        DesignRevision revision = in(state);
        if (after.equals("refused")) {
            assertThatThrownBy(() -> carryOut(revision, verb))
                    .isInstanceOfSatisfying(
                            Refusal.class, refused -> assertThat(refused.why()).contains(state.word()));
            assertThat(revision.state()).isEqualTo(state);
        } else {
            carryOut(revision, verb);
            assertThat(revision.state()).isEqualTo(DesignState.valueOf(after));
        }
    }

    private static DesignRevision in(DesignState state) {
        DesignRevision revision = new DesignRevision(
                new Design("O-1"), new NewDesign("O-1", "AL6061", "HARDTAIL", "Hardtail", List.of()), ACT);
        revision.draw(FILE, "frame.pdf");
        if (state == DesignState.DRAFT) {
            return revision;
        }
        if (state == DesignState.WITHDRAWN) {
            revision.withdraw(ACT, 5);
            return revision;
        }
        revision.send(ACT);
        if (state == DesignState.SENT) {
            return revision;
        }
        if (state == DesignState.SUPERSEDED) {
            revision.supersede(ACT.at());
            return revision;
        }
        revision.approve(ACT, FILE, LocalDate.of(2026, 3, 18), 5);
        if (state == DesignState.APPROVED) {
            return revision;
        }
        revision.checked(ACT);
        if (state == DesignState.CHECKED) {
            return revision;
        }
        revision.release(ACT, 7);
        return revision;
    }

    private static void carryOut(DesignRevision revision, String verb) {
        switch (verb) {
            case "change" ->
                revision.change(
                        new DesignDraft("Hardtail", "AL6061", "HARDTAIL", null, null, List.of(), Map.of(), false));
            case "draw" -> revision.draw(FILE, "again.pdf");
            case "nominal" -> revision.give(Map.of("080-7", Nominal.of(BigDecimal.ONE)));
            case "send" -> revision.send(ACT);
            case "approve" -> revision.approve(ACT, FILE, LocalDate.of(2026, 3, 18), 5);
            case "sign-twice" -> revision.checked(ACT);
            case "release" -> revision.release(ACT, 7);
            case "withdraw" -> revision.withdraw(ACT, 5);
            case "answer" -> revision.unchecked();
            case "note" -> DesignVerb.NOTE.refuseUnless(revision.letter(), revision.state());
            case "revise" -> {
                DesignVerb.REVISE.refuseUnless(revision.letter(), revision.state());
                assertThat(revision.next(2, 5, ACT).state()).isEqualTo(DesignState.DRAFT);
            }
            default -> throw new IllegalArgumentException(verb);
        }
    }
}
