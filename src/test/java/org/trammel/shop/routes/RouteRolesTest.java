package org.trammel.shop.routes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

@ShopTest
class RouteRolesTest {

    @Autowired
    private RouteShop shop;

    @Autowired
    private RouteDrafts drafts;

    @Autowired
    private RouteBook book;

    @Autowired
    private TestCrew crew;

    private long qa;

    @BeforeEach
    void hire() {
        qa = shop.qaLead();
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/states/route-roles.csv", useHeadersInDisplayName = false, numLinesToSkip = 1)
    void onlyThoseOfTheTableMayDoIt(ArgumentsAccessor row) {
        String verb = row.getString(0);
        Map<Role, String> said = new EnumMap<>(Role.class);
        Role[] columns = {
            Role.OWNER,
            Role.QA_LEAD,
            Role.ALIGNER,
            Role.WELDER,
            Role.HEAT_TREATER,
            Role.STATION_WORKER,
            Role.APPRENTICE,
            Role.AUDITOR
        };
        for (int i = 0; i < columns.length; i++) {
            said.put(columns[i], row.getString(i + 1));
        }
        said.forEach((role, wanted) -> {
            Act act = shop.act(crew.hire(role));
            String code = shop.small(qa);
            if (verb.equals("draw-up")) {
                shop.release(code, qa);
            }
            Throwable outcome = catchThrowable(() -> carryOut(verb, act, code));
            if (wanted.equals("may")) {
                assertThat(outcome).as(verb + " by " + role).isNull();
            } else {
                assertThat(outcome)
                        .as(verb + " by " + role)
                        .isInstanceOfSatisfying(
                                Refusal.class,
                                refused -> assertThat(refused.kind()).isEqualTo(Refusal.Kind.PERSON));
            }
        });
    }

    private void carryOut(String verb, Act act, String code) {
        switch (verb) {
            case "lay-out" -> drafts.layOut(act, new NewRoute(shop.code(), "Route", "STEEL", "HARDTAIL", null));
            case "draw-up" -> drafts.drawUp(act, code);
            case "edit" ->
                drafts.edit(act, code, drafts.draft(code).version(), new StepEdit.Add("030", RouteShop.step("Wipe")));
            case "release" -> drafts.release(act, code, drafts.draft(code).version(), "Fits");
            case "withdraw" -> drafts.withdraw(act, code, "Not wanted");
            case "read" -> book.history(code);
            default -> throw new IllegalArgumentException(verb);
        }
    }

    /** Who stands in while no QA lead is here, with a crew of its own, since tests share one shop. */
    @Test
    void whileNoQaLeadIsHereTheOneWhoStandsInKeepsTheRoutes() {
        Person lead = new Person(1, "QL", "Lead", Set.of(Role.QA_LEAD), true);
        Person deputy = new Person(2, "DD", "Deputy", Set.of(Role.ALIGNER), true);
        Person owner = new Person(3, "OO", "Owner", Set.of(Role.OWNER), true);
        Person gone = new Person(4, "GG", "Gone", Set.of(Role.QA_LEAD), false);
        Crew people = mock(Crew.class);
        Settings settings = mock(Settings.class);
        when(settings.today()).thenReturn(LocalDate.of(2026, 3, 18));
        List.of(lead, deputy, owner, gone)
                .forEach(person -> when(people.byId(person.id())).thenReturn(person));
        when(people.active()).thenReturn(List.of(lead, deputy, owner));
        when(people.deputyOf(Role.QA_LEAD)).thenReturn(Optional.of(deputy));
        Keepers keepers = new Keepers(people, settings);

        assertThat(allowed(keepers)).containsExactly(true, false, false, false);
        when(people.away(eq(1L), any())).thenReturn(true);
        assertThat(allowed(keepers)).containsExactly(true, true, false, false);
        when(people.deputyOf(Role.QA_LEAD)).thenReturn(Optional.of(owner));
        assertThat(allowed(keepers)).containsExactly(true, false, true, false);
        when(people.away(anyLong(), any())).thenReturn(false);
        when(people.active()).thenReturn(List.of(deputy, owner));
        assertThat(allowed(keepers)).containsExactly(true, false, true, false);
    }

    private static List<Boolean> allowed(Keepers keepers) {
        return List.of(keepers.allows(1), keepers.allows(2), keepers.allows(3), keepers.allows(4));
    }
}
