package org.trammel.shop.ovens;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.HasCome;

/** One act on a load: its frames locked, its verb carried out, its event told. And who may. */
@Component
class LoadTurn {

    private static final String OVEN = "OVEN";

    private final RunRepository rows;
    private final LoadedRepository frames;
    private final Runs runs;
    private final HasCome hasCome;
    private final Crew crew;
    private final Settings settings;
    private final ActLog log;

    LoadTurn(
            RunRepository rows,
            LoadedRepository frames,
            Runs runs,
            HasCome hasCome,
            Crew crew,
            Settings settings,
            ActLog log) {
        this.rows = rows;
        this.frames = frames;
        this.runs = runs;
        this.hasCome = hasCome;
        this.crew = crew;
        this.settings = settings;
        this.log = log;
    }

    static void requireOpen(Oven oven, Programme programme, String deed) {
        String unfit = oven.unfit(programme);
        if (unfit != null) {
            throw Refusal.state(
                    deed, unfit, "Choose another oven, or have it surveyed at the ends of what it is to be used for.");
        }
        if (!oven.open()) {
            throw Refusal.state(
                    deed,
                    oven.code() + " is locked: " + String.join(" ", oven.locks()),
                    "Leave it empty until that is put right.");
        }
    }

    /** Whoever runs ovens; a coat is cured by anybody at work. */
    void requireLoader(long personId, Programme programme, String deed) {
        Person person = maySign(personId, deed);
        if (programme.purpose().releasedByQa()) {
            crew.requireQualified(person.id(), OVEN, settings.today(), deed);
        }
    }

    Person maySign(long personId, String deed) {
        Person person = crew.byId(personId);
        if (!person.mayWork() || !person.maySign()) {
            throw Refusal.person(
                    deed,
                    person.initials()
                            + " may not sign: an apprentice and a reader do not decide what goes into an oven.",
                    "Call a worker.");
        }
        return person;
    }

    static void refuseWhoTookPart(Run run, long signerId, Person person, String deed) {
        if (run.tookPart().contains(signerId)) {
            throw Refusal.person(
                    deed,
                    person.initials() + " opened, loaded, signed or started it; the second took no part.",
                    "Call somebody who took no part.");
        }
    }

    static void refuseSame(boolean same, Person person, String deed) {
        if (same) {
            throw Refusal.person(
                    deed, person.initials() + " has signed it already.", "The signatures come from different people.");
        }
    }

    /** Locks the frames of a load before it is read, so that what is read is what stands. */
    boolean opens(Act act, String kind, String code, Collection<String> more) {
        String label = Ovens.label(code);
        List<String> chains = new ArrayList<>(more);
        chains.add(Chains.SHOP);
        return hasCome.opens(act, kind, "run:" + label, frames.operationsOf(label), chains.toArray(String[]::new));
    }

    interface Deed {
        void on(RunRow row);
    }

    Run on(Act act, String kind, String code, Deed deed) {
        if (opens(act, kind, code, List.of())) {
            RunRow row = runs.row(code);
            deed.on(row);
            rows.saveAndFlush(row);
            log.event(
                    Chains.SHOP,
                    kind,
                    Map.of("run", row.id(), "state", row.state().name()));
        }
        return runs.byCode(code);
    }
}
