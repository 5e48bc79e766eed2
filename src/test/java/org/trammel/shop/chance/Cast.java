package org.trammel.shop.chance;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;

/** Who and what is there: people of every kind, gauges that may and may not be used. */
final class Cast {

    final long worker;
    final long second;
    final long welder;
    final long lapsed;
    final long aligner;
    final long apprentice;
    final long qa;
    final long lead;
    final long owner;
    final long both;
    final long auditor;
    final long gone;
    final List<Long> everybody;

    final String fine;
    final String coarse;
    final String calliper;
    final List<String> unusable;

    Cast(WholeShop shop, JdbcClient jdbc) {
        worker = shop.hire(Role.STATION_WORKER);
        second = shop.hire(Role.STATION_WORKER);
        welder = shop.qualified(ChanceRoute.WELD, LocalDate.of(2026, 12, 31), Role.WELDER);
        lapsed = shop.qualified(ChanceRoute.WELD, LocalDate.of(2026, 1, 31), Role.WELDER);
        aligner = shop.hire(Role.ALIGNER);
        apprentice = shop.hire(Role.APPRENTICE);
        qa = shop.hire(Role.QA_LEAD);
        lead = shop.hire(Role.QA_LEAD);
        owner = shop.hire(Role.OWNER);
        both = shop.hire(Role.QA_LEAD, Role.OWNER);
        auditor = shop.hire(Role.AUDITOR);
        gone = shop.hire(Role.QA_LEAD, Role.WELDER);
        jdbc.sql("update person set left_on = date '2026-02-01' where id = ?")
                .param(gone)
                .update();
        everybody = List.of(worker, second, welder, lapsed, aligner, apprentice, qa, lead, owner, both, auditor, gone);
        LocalDate later = LocalDate.of(2027, 1, 1);
        fine = shop.gauge("TWIST", "°", "0.005", later);
        coarse = shop.gauge("TWIST", "°", "0.020", later);
        calliper = shop.gauge("CALLIPER", "mm", null, later);
        unusable = List.of(
                shop.gauge("TWIST", "°", "0.005", LocalDate.of(2026, 3, 1)),
                shop.gauge("CALLIPER", "mm", null, LocalDate.of(2026, 3, 1)),
                shop.gauge("BORE", "mm", "0.002", later));
    }

    long anybody(Random chance) {
        return everybody.get(chance.nextInt(everybody.size()));
    }
}
