package org.trammel.shop.designs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.RouteBook;

@ShopTest
class DesignRolesTest {

    @Autowired
    private DrawnFrame.DesignDesk desk;

    @Autowired
    private JdbcClient jdbc;

    @Autowired
    private TestCrew crew;

    @Autowired
    private Designs designs;

    @Autowired
    private DrawingOffice office;

    @Autowired
    private DesignGate gate;

    @Autowired
    private RouteBook routes;

    private DrawnFrame frame;

    @BeforeEach
    void draw() {
        frame = new DrawnFrame(desk);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/states/design-roles.csv", numLinesToSkip = 1)
    void onlyThoseOfTheTableMay(ArgumentsAccessor row) {
        String verb = row.getString(0);
        long revision = ready(verb);
        DesignSheet before = designs.revision(revision);
        for (int i = 0; i < Role.values().length; i++) {
            Role role = Role.values()[i];
            long person = crew.hire(role);
            if (row.getString(i + 1).equals("refused")) {
                Refusal refused = catchThrowableOfType(Refusal.class, () -> carryOut(verb, revision, person, role));
                assertThat(refused).as(verb + " by " + role).isNotNull();
                assertThat(refused.kind()).as(verb + " by " + role).isEqualTo(Refusal.Kind.PERSON);
                assertThat(designs.revision(revision)).isEqualTo(before);
            } else {
                carryOut(verb, ready(verb), person, role);
            }
        }
    }

    private long ready(String verb) {
        return switch (verb) {
            case "approve" -> frame.sent();
            case "sign" -> {
                long approved = frame.approved();
                frame.answerAll(approved);
                yield approved;
            }
            case "release" -> frame.checked();
            case "revise" -> frame.sent();
            default -> frame.draft();
        };
    }

    private void carryOut(String verb, long revision, long person, Role role) {
        switch (verb) {
            case "change" -> office.change(crew.act(person), revision, null, frame.draft(Map.of()));
            case "draw" -> office.draw(crew.act(person), revision, DrawnFrame.PDF, "application/pdf", "frame.pdf");
            case "nominal" ->
                office.give(crew.act(person), revision, null, Map.of("080-2", Nominal.of(BigDecimal.ZERO)), Set.of());
            case "send" -> office.send(crew.act(person), revision);
            case "approve" ->
                gate.approve(
                        crew.act(person),
                        revision,
                        new Approval("A", DrawnFrame.FILE, "Rider One", LocalDate.of(2026, 3, 18)));
            case "answer" -> gate.answer(crew.act(person), revision, GateCheck.DEPOSIT, GateAnswer.MEETS, null);
            case "sign" -> {
                frame.givePin(person);
                gate.sign(crew.act(person), revision, person, role, DrawnFrame.PIN);
            }
            case "release" -> designs.release(crew.act(person), revision, routes.revision(frame.route));
            case "withdraw" -> office.withdraw(crew.act(person), revision, "not wanted");
            case "revise" -> office.revise(crew.act(person), revision, "a wish");
            case "note" -> office.note(crew.act(person), revision, "thin wall at the seat tube");
            default -> throw new IllegalArgumentException(verb);
        }
    }
}
