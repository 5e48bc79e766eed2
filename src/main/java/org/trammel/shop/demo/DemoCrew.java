package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.Credentials;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.people.Qualification;
import org.trammel.shop.people.Qualifications;
import org.trammel.shop.people.Roster;

/** Takes on the invented crew. */
@Component
@Profile("demo")
class DemoCrew {

    private final FirstStart firstStart;
    private final Roster roster;
    private final Credentials credentials;
    private final Qualifications qualifications;
    private final DemoActs acts;
    private final DemoClock clock;

    DemoCrew(
            FirstStart firstStart,
            Roster roster,
            Credentials credentials,
            Qualifications qualifications,
            DemoActs acts,
            DemoClock clock) {
        this.firstStart = firstStart;
        this.roster = roster;
        this.credentials = credentials;
        this.qualifications = qualifications;
        this.acts = acts;
        this.clock = clock;
    }

    void takeOn() {
        DemoCast.Member owner = DemoCast.ALL.get(0);
        firstStart.make(
                UUID.randomUUID(),
                firstStart.newCode(),
                "demo",
                new FirstStart.Entry(owner.initials(), owner.name(), DemoCast.OWNER_PASSWORD, owner.pin()));
        for (DemoCast.Member member : DemoCast.ALL.subList(1, DemoCast.ALL.size())) {
            roster.takeOn(acts.by("ME"), member.initials(), member.name(), member.roles());
        }
        qualify();
    }

    /** Each chooses a PIN, the QA lead a password too. Hashing them takes long, so this is done beside other work. */
    void chooseSecrets() {
        for (DemoCast.Member member : DemoCast.ALL.subList(1, DemoCast.ALL.size())) {
            credentials.keepPin(acts.by(member.initials()), "", member.pin());
        }
        credentials.keepPassword(acts.by("TR"), "", DemoCast.QA_PASSWORD);
    }

    private void qualify() {
        weld("IC", "WELD:AL:141", "ISO 9606-2", "aluminium", "2025-02-14", "2027-02-14", "2025-08-12");
        weld("PW", "WELD:AL:141", "ISO 9606-2", "aluminium", "2024-11-30", "2026-11-30", "2025-09-20");
        weld("PW", "WELD:STEEL:141", "ISO 9606-1", "steel", "2025-01-15", "2027-01-15", "2025-07-11");
        weld("HS", "WELD:TI:141", "ISO 9606-5", "titanium", "2024-09-01", "2026-09-01", "2025-08-29");
        qualifications.enter(
                acts.by("ME"),
                acts.id("HS"),
                Qualification.of(
                                "BRAZE",
                                "ISO 13585",
                                LocalDate.parse("2023-08-20"),
                                LocalDate.parse("2026-08-20"),
                                false)
                        .covering("steel", "912", new BigDecimal("0.5"), new BigDecimal("3.0"), "FW"));
        give("TR", "PENETRANT", "ISO 9712", "2022-05-31", "2027-05-31");
        give("TR", "NEAR-VISION", "yearly test of near vision", "2025-09-02", "2026-09-02");
        give("SB", "VISUAL", "shop rule", "2024-01-08", null);
        give("SB", "ALIGN", "shop rule", "2024-01-08", null);
        give("RH", "OVEN", "shop rule", "2024-01-08", null);
        give("DO", "TORQUE", "shop rule", "2024-01-08", null);
        give("JA", "CONDUCTIVITY", "shop rule", "2024-01-08", null);
        confirm("IC", "WELD:AL:141", "2025-12-10");
        confirm("PW", "WELD:STEEL:141", "2026-01-09");
        confirm("HS", "WELD:TI:141", "2026-02-27");
    }

    /** On the day it was confirmed. */
    private void confirm(String who, String kind, String on) {
        LocalDate day = LocalDate.parse(on);
        clock.setTo(day.atTime(12, 0).atZone(DemoOrder.ZONE).toInstant());
        long held = qualifications.of(acts.id(who)).stream()
                .filter(one -> one.kind().equals(kind))
                .findFirst()
                .orElseThrow()
                .id();
        qualifications.confirm(acts.by("TR"), held, day);
    }

    private void weld(
            String who, String kind, String standard, String metal, String issued, String expires, String confirmed) {
        qualifications.enter(
                acts.by("ME"),
                acts.id(who),
                new Qualification(
                        0,
                        0,
                        kind,
                        standard,
                        metal,
                        "141",
                        new BigDecimal("0.7"),
                        new BigDecimal("3.0"),
                        "BW, FW",
                        LocalDate.parse(issued),
                        LocalDate.parse(expires),
                        true,
                        LocalDate.parse(confirmed),
                        null));
    }

    private void give(String who, String kind, String standard, String issued, @Nullable String expires) {
        qualifications.enter(
                acts.by("ME"),
                acts.id(who),
                Qualification.of(
                        kind,
                        standard,
                        LocalDate.parse(issued),
                        expires == null ? null : LocalDate.parse(expires),
                        false));
    }
}
