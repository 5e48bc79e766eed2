package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** Keeps pushes the shop noted elsewhere. */
@Service
public class PushesNoted {

    private static final String NOT_NOTED = "The push is not noted.";
    static final List<String> METALS = List.of("AL6061", "AL7005", "STEEL", "TI");

    private final PushNotedRepository rows;
    private final Crew crew;
    private final ActLog log;

    PushesNoted(PushNotedRepository rows, Crew crew, ActLog log) {
        this.rows = rows;
        this.crew = crew;
        this.log = log;
    }

    /** All of them, oldest first. */
    @Transactional(readOnly = true)
    public List<PushNoted> all() {
        return rows.findAllByOrderById().stream().map(PushNotedRow::noted).toList();
    }

    /**
     * Notes a push. For the QA lead and authorised aligners.
     *
     * @throws Refusal if it cannot have been: a tube comes back by some of what it was pushed
     */
    @Transactional
    public void note(Act act, PushNoted typed) {
        if (!log.opens(act, "push-noted", "pushes", Chains.SHOP)) {
            return;
        }
        crew.require(act.by(), NOT_NOTED, Role.ALIGNER, Role.QA_LEAD);
        if (!METALS.contains(typed.metal())) {
            throw Refusal.input(
                    "metal",
                    NOT_NOTED,
                    "“" + typed.metal() + "” is no metal of the routes.",
                    "Choose one of the list.");
        }
        if (!typed.deviation().settable()) {
            throw Refusal.input(
                    "deviation",
                    NOT_NOTED,
                    "The " + typed.deviation().words() + " is not set right by pushing.",
                    "Choose one of the list.");
        }
        within("outside", "Outside", typed.outside_mm(), "5", "100");
        within("wall", "Wall", typed.wall_mm(), "0.2", "10");
        within("push", "Push", typed.push_mm(), "0.1", "100");
        within("set", "Set", typed.set_mm(), "0", "100");
        if (typed.set_mm().compareTo(typed.push_mm()) >= 0) {
            throw Refusal.input(
                    "set",
                    NOT_NOTED,
                    "A set of " + typed.set_mm().toPlainString() + " mm after a push of "
                            + typed.push_mm().toPlainString() + " mm cannot be: a tube comes back.",
                    "Look at the note again; both count from where the tube rested.");
        }
        String source = TypedText.line("source", "The source", NOT_NOTED, typed.source(), 400);
        PushNotedRow row = rows.save(new PushNotedRow(act, typed, source));
        log.event(Chains.SHOP, "push-noted", Map.of("row", row.id()));
    }

    private static void within(String field, String name, BigDecimal mm, String least, String most) {
        if (mm.compareTo(new BigDecimal(least)) < 0 || mm.compareTo(new BigDecimal(most)) > 0 || mm.scale() > 3) {
            throw Refusal.input(
                    field,
                    NOT_NOTED,
                    name + " " + mm.toPlainString() + " mm is not between " + least + " and " + most
                            + " with three decimals at most.",
                    "Enter it in millimetres.");
        }
    }
}
