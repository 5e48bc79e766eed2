package org.trammel.shop.overview;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Component;
import org.trammel.shop.gauges.Failure;
import org.trammel.shop.gauges.Gauge;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.gauges.GaugeState;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.materials.Lot;
import org.trammel.shop.materials.LotState;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.people.Qualification;
import org.trammel.shop.people.Qualifications;
import org.trammel.shop.people.Standing;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.stations.Jig;
import org.trammel.shop.stations.Stations;

/** Gauges, qualifications, lots and jigs whose last day is near or past, the nearest first. */
@Component
class FallingDue {

    private static final int MOST = 200;

    private final Gauges gauges;
    private final GaugeRegister register;
    private final Qualifications qualifications;
    private final Lots lots;
    private final Stations stations;
    private final Settings settings;

    FallingDue(
            Gauges gauges,
            GaugeRegister register,
            Qualifications qualifications,
            Lots lots,
            Stations stations,
            Settings settings) {
        this.gauges = gauges;
        this.register = register;
        this.qualifications = qualifications;
        this.lots = lots;
        this.stations = stations;
        this.settings = settings;
    }

    List<DeskFacts.Due> soon(Names names) {
        LocalDate today = settings.today();
        List<DeskFacts.Due> due = new ArrayList<>();
        gauges(today, due);
        qualifications(today, names, due);
        lots(today, due);
        for (Jig jig : stations.jigs()) {
            if (jig.stopped()) {
                due.add(new DeskFacts.Due("Jig " + jig.code(), "stopped", "stopped", null, "/stations"));
            } else if (jig.overdue(today)) {
                due.add(new DeskFacts.Due("Jig " + jig.code(), "check overdue", "stopped", jig.dueOn(), "/stations"));
            }
        }
        due.sort(Comparator.comparing(DeskFacts.Due::on, Comparator.nullsFirst(Comparator.naturalOrder()))
                .thenComparing(DeskFacts.Due::what));
        return due;
    }

    private void gauges(LocalDate today, List<DeskFacts.Due> due) {
        LocalDate until = today.plusDays(settings.whole("gauge.warn.days"));
        for (Gauge g : gauges.page(null, false, MOST)) {
            String path = "/shop/gauges/" + g.code();
            String what = g.code() + ", " + g.what();
            if (g.state() == GaugeState.BLOCKED || g.state() == GaugeState.FAILED) {
                due.add(new DeskFacts.Due(what, g.state().word(), "stopped", since(g), path));
            } else if (g.dueOn() != null && !g.dueOn().isAfter(until)) {
                boolean over = g.dueOn().isBefore(today);
                due.add(new DeskFacts.Due(
                        what,
                        over ? "calibration overdue" : "calibration due",
                        over ? "stopped" : "tight",
                        g.dueOn(),
                        path));
            }
        }
    }

    /** The day on which it was found so, and not the one on which it would have been due. */
    private LocalDate since(Gauge gauge) {
        return register.failuresOf(gauge.id()).stream()
                .filter(failure -> gauge.state() == GaugeState.FAILED)
                .findFirst()
                .map(Failure::foundOn)
                .orElseGet(() -> settings.dayOf(gauge.stateSince()));
    }

    private void qualifications(LocalDate today, Names names, List<DeskFacts.Due> due) {
        LocalDate until = today.plusDays(settings.whole("qualification.warn.days"));
        for (Qualification q : qualifications.all()) {
            LocalDate last = q.until();
            boolean standing = q.state(today) != Standing.State.ENDED && q.state(today) != Standing.State.NOT_HELD;
            if (standing && last != null && !last.isAfter(until)) {
                boolean over = last.isBefore(today);
                boolean confirm = last.equals(q.confirmedUntil());
                due.add(new DeskFacts.Due(
                        names.of(q.personId()) + ", " + q.kind(),
                        (confirm ? "confirmation " : "qualification ") + (over ? "ran out" : "ends"),
                        over ? "stopped" : "tight",
                        last,
                        "/shop/people/" + q.personId()));
            }
        }
    }

    private void lots(LocalDate today, List<DeskFacts.Due> due) {
        for (LotState state : List.of(LotState.QUARANTINED, LotState.BLOCKED)) {
            for (Lot lot : lots.page(null, null, state, MOST)) {
                due.add(new DeskFacts.Due(
                        "Lot " + lot.code() + ", " + lot.what(),
                        state.word(),
                        state == LotState.BLOCKED ? "stopped" : "waiting",
                        null,
                        "/shop/lots/" + lot.code()));
            }
        }
        for (Lot lot : lots.expiring(today.plusDays(settings.whole("lot.warn.days")))) {
            boolean over = lot.expired(today);
            due.add(new DeskFacts.Due(
                    "Lot " + lot.code() + ", " + lot.what(),
                    over ? "expired" : "expires",
                    over ? "stopped" : "tight",
                    lot.expiresOn(),
                    "/shop/lots/" + lot.code()));
        }
    }
}
