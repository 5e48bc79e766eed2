package org.trammel.shop.routes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.test.util.ReflectionTestUtils;
import org.trammel.shop.records.Refusal;

class RouteStatesTest {

    private static final Instant NOW = Instant.parse("2026-03-18T07:30:00Z");
    private static final RouteSheet CONTENT =
            Sheets.route(Sheets.operation("020").sheet());

    @ParameterizedTest(name = "{0}: {1} → {2}")
    @CsvFileSource(resources = "/states/route-revision.csv", useHeadersInDisplayName = false, numLinesToSkip = 1)
    void goesWhereTheTableSaysOrRefusesNamingItsState(RevisionState state, String verb, String after) {
        RouteRevision revision = in(state);
        if (after.equals("refused")) {
            assertThatThrownBy(() -> carryOut(revision, verb))
                    .isInstanceOfSatisfying(
                            Refusal.class, refused -> assertThat(refused.why()).contains(state.word()));
            assertThat(revision.state()).isEqualTo(state);
        } else {
            carryOut(revision, verb);
            assertThat(revision.state()).isEqualTo(RevisionState.valueOf(after));
        }
    }

    @Test
    void onlyADraftLetsItsRowsBeWritten() {
        in(RevisionState.DRAFT).guardContent();
        for (RevisionState state : List.of(RevisionState.RELEASED, RevisionState.SUPERSEDED, RevisionState.WITHDRAWN)) {
            RouteRevision revision = in(state);
            assertThatThrownBy(revision::guardContent).hasMessageContaining("never changed");
        }
    }

    @ParameterizedTest
    @CsvSource({"1,A", "2,B", "26,Z", "27,AA", "52,AZ", "53,BA", "702,ZZ", "703,AAA"})
    void revisionsAreLetteredLikeTheColumnsOfASheet(int ordinal, String letter) {
        assertThat(Letters.of(ordinal)).isEqualTo(letter);
    }

    private static RouteRevision in(RevisionState state) {
        RouteRow route = new RouteRow("R-1", "Route", "STEEL", "HARDTAIL");
        ReflectionTestUtils.setField(route, "id", 7L);
        RouteRevision revision = new RouteRevision(route, 1, "drawn up empty", 1, NOW);
        ReflectionTestUtils.setField(revision, "id", 70L);
        if (state == RevisionState.WITHDRAWN) {
            revision.withdraw(1);
        } else if (state != RevisionState.DRAFT) {
            revision.release(1, NOW, 1, "0".repeat(64));
            if (state == RevisionState.SUPERSEDED) {
                revision.supersede(NOW);
            }
        }
        return revision;
    }

    private static void carryOut(RouteRevision revision, String verb) {
        switch (verb) {
            case "redraw" -> revision.redraw(CONTENT, List.of());
            case "pin" -> revision.pin(new ChildRow(), 1);
            case "release" -> revision.release(1, NOW, 1, "0".repeat(64));
            case "supersede" -> revision.supersede(NOW);
            case "withdraw" -> revision.withdraw(1);
            default -> throw new IllegalArgumentException(verb);
        }
    }
}
