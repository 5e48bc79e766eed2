package org.trammel.shop.ride;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.trammel.shop.Fixture;
import org.trammel.shop.TestCrew;
import org.trammel.shop.assembly.BuildRulesBook;
import org.trammel.shop.assembly.ComponentKind;
import org.trammel.shop.assembly.Components;
import org.trammel.shop.assembly.NewBuildRules;
import org.trammel.shop.assembly.NewComponent;
import org.trammel.shop.assembly.NewFastener;
import org.trammel.shop.assembly.OffsetShares;
import org.trammel.shop.welding.ArcSettings;
import org.trammel.shop.welding.GuardedOperations;
import org.trammel.shop.welding.HeatRules;
import org.trammel.shop.welding.LookRules;
import org.trammel.shop.welding.NewProcedure;
import org.trammel.shop.welding.NodeRules;
import org.trammel.shop.welding.Papers;
import org.trammel.shop.welding.Procedures;

/** What the starter routes ask a shop to have in force: a procedure, sheets of components, rules of join, ride and packing. */
@Fixture
class Fittings {

    private static final String SOURCE = "invented";

    /** Code, kind, operation, characteristic of the route, bolts, least, target, greatest, and whether again after the ride. */
    private static final String[][] SHEETS = {
        {"STEM-1", "STEM", "180", "180-1", "2", "4.5", "5", "5.5", "yes"},
        {"FACE-1", "STEM", "180", "180-2", "4", "4.5", "5", "5.5", "yes"},
        {"CLAMP-1", "SEAT_CLAMP", "180", "180-3", "1", "5", "5.5", "6", ""},
        {"CUPS-1", "SHELL_CUPS", "180", "180-4", "2", "35", "42", "50", ""},
        {"CRANK-1", "CRANKS", "180", "180-5", "2", "40", "47", "54", ""},
        {"CALIPER-1", "BRAKE", "180", "180-6", "4", "6", "7", "8", "yes"},
        {"ROTOR-1", "ROTOR", "180", "180-7", "2", "5.5", "6", "6.5", ""},
        {"AXLE-1", "AXLE", "180", "180-8", "2", "10", "11.5", "13", "yes"},
        {"SHIFT-1", "DERAILLEUR", "180", "180-9", "1", "8", "9", "10", ""},
        {"PEDAL-1", "PEDALS", "180", "180-10", "2", "31", "35", "39", ""},
        {"SADDLE-1", "SADDLE", "180", "180-11", "2", "8", "10", "12", "yes"},
        {"PIVOT-1", "PIVOT", "170", "170-1", "3", "12", "15", "18", ""},
    };

    private final Procedures procedures;
    private final Components components;
    private final BuildRulesBook rules;
    private final TestCrew crew;

    Fittings(Procedures procedures, Components components, BuildRulesBook rules, TestCrew crew) {
        this.procedures = procedures;
        this.components = components;
        this.rules = rules;
        this.crew = crew;
    }

    /** Codes of the components that are fitted at an operation. */
    static List<String> at(String operation) {
        return Arrays.stream(SHEETS)
                .filter(sheet -> sheet[2].equals(operation))
                .map(sheet -> sheet[0])
                .toList();
    }

    void putInForce(Hand qa) {
        long version =
                procedures.draft(crew.act(qa.id()), "W-6061", procedure()).version();
        procedures.putInForce(crew.act(qa.id()), "W-6061", version);
        for (String[] sheet : SHEETS) {
            String letter = components
                    .draft(crew.act(qa.id()), sheet[0], component(sheet))
                    .letter();
            components.putInForce(crew.act(qa.id()), sheet[0], letter);
        }
        rules.putInForce(
                crew.act(qa.id()),
                new NewBuildRules(
                        List.of("170"),
                        List.of("170", "180"),
                        List.of("190"),
                        List.of("200"),
                        new OffsetShares(
                                new BigDecimal("0.3"),
                                new BigDecimal("0.3"),
                                new BigDecimal("0.1"),
                                new BigDecimal("0.2")),
                        20,
                        BigDecimal.valueOf(25),
                        NewBuildRules.items("* | manual\nSE | bell"),
                        SOURCE));
    }

    private static NewProcedure procedure() {
        return new NewProcedure(
                "6061, TIG",
                "AL6061",
                "141",
                List.of("BW", "FW"),
                new BigDecimal("0.7"),
                new BigDecimal("3"),
                new GuardedOperations(List.of(), List.of("070"), List.of("080")),
                new ArcSettings(
                        List.of("ER4643"),
                        new BigDecimal("1.6"),
                        List.of("ARGON"),
                        BigDecimal.valueOf(8),
                        "2.4 mm",
                        "AC",
                        BigDecimal.valueOf(50),
                        BigDecimal.valueOf(140)),
                new HeatRules(
                        BigDecimal.valueOf(120),
                        new BigDecimal("0.22"),
                        new BigDecimal("0.40"),
                        new BigDecimal("0.6"),
                        1),
                new NodeRules(null, null, null, false, false, 2),
                new LookRules("C", "", "ISO-10042-1992"),
                new Papers("ISO 9606-2", "ISO 15609-1", "2019", SOURCE));
    }

    private static NewComponent component(String[] s) {
        NewFastener fastener = new NewFastener(
                "bolts",
                Integer.parseInt(s[4]),
                new BigDecimal(s[5]),
                new BigDecimal(s[6]),
                new BigDecimal(s[7]),
                false,
                null,
                null,
                false,
                List.of(),
                false,
                null,
                !s[8].isEmpty(),
                null,
                s[3],
                true);
        return new NewComponent(
                ComponentKind.valueOf(s[1]), s[0], s[2], "190", false, null, SOURCE, "1", List.of(fastener));
    }
}
