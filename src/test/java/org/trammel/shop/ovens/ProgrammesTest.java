package org.trammel.shop.ovens;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;

@ShopTest
class ProgrammesTest {

    private static final AtomicInteger NUMBER = new AtomicInteger();

    @Autowired
    private Programmes programmes;

    @Autowired
    private TestCrew crew;

    private long qa;
    private long heat;

    @BeforeEach
    void hire() {
        qa = crew.hire(Role.QA_LEAD);
        heat = crew.hire(Role.HEAT_TREATER);
    }

    @Test
    void aDraftIsApprovedByTheQaLeadAloneAndSupersedesTheOneBefore() {
        Programme a = draw(Purpose.AGEING, "AL6061", "177", "8");
        assertThat(a.letter()).isEqualTo("A");
        assertThat(a.state()).isEqualTo(ProgrammeState.DRAFT);
        refused(() -> programmes.approve(crew.act(heat), a.revisionId(), a.version()), "QA lead");
        programmes.approve(crew.act(qa), a.revisionId(), a.version());
        Programme b = programmes.draw(crew.act(heat), a.code(), null, content("AL6061", "160", "18"));
        assertThat(programmes.approved(a.code()))
                .get()
                .extracting(Programme::letter)
                .isEqualTo("A");
        programmes.approve(crew.act(qa), b.revisionId(), b.version());
        assertThat(programmes.of(a.code()))
                .extracting(Programme::letter, Programme::state)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("B", ProgrammeState.APPROVED),
                        org.assertj.core.groups.Tuple.tuple("A", ProgrammeState.SUPERSEDED));
    }

    @Test
    void whatIsApprovedIsNeverChanged() {
        Programme a = draw(Purpose.AGEING, "AL6061", "177", "8");
        Programme approved = programmes.approve(crew.act(qa), a.revisionId(), a.version());
        refused(
                () -> programmes.change(
                        crew.act(qa), a.revisionId(), approved.version(), content("AL6061", "177", "9")),
                "never changed");
    }

    @Test
    void aDraftIsChangedAsItWasSeenAndItsStepsWithIt() {
        Programme a = draw(Purpose.AGEING, "AL6061", "177", "8");
        Programme changed =
                programmes.change(crew.act(heat), a.revisionId(), a.version(), content("AL6061", "170", "10"));
        assertThat(changed.content().steps())
                .singleElement()
                .satisfies(step -> assertThat(step.set_degC()).isEqualByComparingTo("170"));
        assertThat(programmes.revision(a.revisionId()).content().steps()).hasSize(1);
        refused(
                () -> programmes.change(crew.act(heat), a.revisionId(), a.version(), content("AL6061", "171", "10")),
                "Somebody else changed it");
        refused(() -> draw(a.code(), Purpose.AGEING, content("AL6061", "177", "8")), "is a draft already");
    }

    /** 24 h at 180 °C by k(T) = exp(−E/R (1/T − 1/T₀)), E = 115 kJ/mol, R of CODATA 2018, reckoned here by hand. */
    @Test
    void aDayAt180IsRefusedFor7005AndTakenFor6061WithTheWordsThatAskForHardness() {
        Programme day = draw(Purpose.AGEING, "AL7005", "180", "24");
        Worth worth = programmes.worth(day).get(0);
        double asked = 24 * Math.exp(-115000 / 8.314462618 * (1 / 453.15 - 1 / 422.15));
        assertThat(asked).isCloseTo(226, within(1.0));
        assertThat(worth.hours().usual_h()).isCloseTo(asked, within(asked * 1e-9));
        assertThat(worth.hours().lowEnergy_h())
                .isCloseTo(24 * Math.exp(-80000 / 8.314462618 * (1 / 453.15 - 1 / 422.15)), within(1e-6));
        assertThat(worth.refusal()).contains("QA lead's rule refuses more than 5");
        refused(() -> programmes.approve(crew.act(qa), day.revisionId(), day.version()), "rule refuses");

        Programme soft = draw(Purpose.AGEING, "AL6061", "180", "24");
        Worth there = programmes.worth(soft).get(0);
        double at177 = 24 * Math.exp(-115000 / 8.314462618 * (1 / 453.15 - 1 / 450.15));
        assertThat(at177).isCloseTo(29.4, within(0.1));
        assertThat(there.hours().usual_h()).isCloseTo(at177, within(1e-6));
        assertThat(there.words()).contains("over-aged").contains("hardness required");
        assertThat(there.published()).hasSizeGreaterThan(3);
        programmes.approve(crew.act(qa), soft.revisionId(), soft.version());
    }

    @Test
    void aBakeIsToldAsAShareOfTheAge() {
        Programme bake = draw(Purpose.CURE, "AL7005", "200", "0.3333");
        Worth worth = programmes.worth(bake).get(0);
        assertThat(worth.hours().usual_h())
                .isCloseTo(0.3333 * Math.exp(-115000 / 8.314462618 * (1 / 473.15 - 1 / 422.15)), within(1e-6));
        assertThat(worth.words()).contains("71").contains("25 % are allowed");
        assertThat(worth.refusal()).isNull();
    }

    @Test
    void whatDoesNotHoldTogetherIsRefusedAtItsField() {
        refused(() -> draw(Purpose.AGEING, "STEEL", "177", "8"), "steel and titanium frames are not aged");
        refused(() -> draw(Purpose.AGEING, "AL6061", "177", "0"), "soak of step 1");
        refused(() -> draw(Purpose.AGEING, "AL6061", "1777", "8"), "is not from");
        assertThatThrownBy(() -> draw(
                        code(),
                        Purpose.AGEING,
                        new NewProgramme(
                                "two bands that touch",
                                List.of("AL7005"),
                                List.of(),
                                List.of(step("107", "8"), step("112", "8")),
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                false,
                                "test")))
                .isInstanceOfSatisfying(
                        Refusal.class, refusal -> assertThat(refusal.field()).isEqualTo("set2"));
        refused(
                () -> draw(code(), Purpose.CURE, withWorth(List.of("AL6061", "AL7005"), new BigDecimal("177"))),
                "counted by one metal, not by 2");
        refused(() -> draw(code(), Purpose.CURE, withWorth(List.of("AL6061"), null)), "at which temperature");
    }

    private Programme draw(Purpose purpose, String metal, String degC, String hours) {
        return draw(code(), purpose, content(metal, degC, hours));
    }

    private Programme draw(String code, Purpose purpose, NewProgramme content) {
        return programmes.draw(crew.act(heat), code, purpose, content);
    }

    private static String code() {
        return "P-T" + NUMBER.incrementAndGet();
    }

    private static NewProgramme content(String metal, String degC, String hours) {
        return new NewProgramme(
                "of a test",
                List.of(metal),
                List.of(),
                List.of(step(degC, hours)),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                false,
                "written for a test");
    }

    private static NewProgramme withWorth(List<String> metals, @Nullable BigDecimal reference) {
        return new NewProgramme(
                "of a test",
                metals,
                List.of(),
                List.of(step("190", "0.3")),
                null,
                reference,
                BigDecimal.ONE,
                null,
                null,
                null,
                null,
                false,
                "written for a test");
    }

    private static ProgrammeStep step(String degC, String hours) {
        return ProgrammeStep.of(new BigDecimal(degC), new BigDecimal("5"), new BigDecimal(hours));
    }

    private static void refused(org.assertj.core.api.ThrowableAssert.ThrowingCallable deed, String says) {
        assertThatThrownBy(deed).isInstanceOf(Refusal.class).hasMessageContaining(says);
    }
}
