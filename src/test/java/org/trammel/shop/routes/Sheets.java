package org.trammel.shop.routes;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Route sheets for tests, each complete and free of findings until a test spoils it. */
final class Sheets {

    static final RouteCheck.Shop SHOP = new RouteCheck.Shop(Set.of("1"), Set.of("FEELER"));

    private Sheets() {}

    static RouteSheet route(OperationSheet... operations) {
        return route(List.of(operations), List.of());
    }

    static RouteSheet route(List<OperationSheet> operations, List<ClockSheet> clocks) {
        return new RouteSheet(1, "R-1", "Route", "A", "STEEL", "HARDTAIL", operations, clocks, List.of());
    }

    static Builder operation(String code) {
        return new Builder(code);
    }

    static StepSheet step(String text) {
        return new StepSheet(text, "", false, false, null, null, null);
    }

    static StepSheet starting(String text, String clock) {
        return new StepSheet(text, "", true, false, "TUBE", clock, null);
    }

    static CharacteristicSheet characteristic(String code) {
        return new CharacteristicSheet(
                code,
                "Characteristic " + code,
                "mm",
                2,
                false,
                BigDecimal.ZERO,
                new BigDecimal("-0.5"),
                new BigDecimal("0.5"),
                "CALLIPER",
                List.of("place"),
                Reduction.SINGLE,
                Rule.GUARDED,
                List.of(Signer.WORKER),
                false,
                false,
                false,
                true,
                null,
                0,
                null,
                null,
                "own trial");
    }

    static ClockSheet clock(String code, String startedBy, String... gates) {
        return new ClockSheet(code, "Clock", ClockKind.WINDOW, 60, startedBy, List.of(gates), "own trial");
    }

    /** An operation with one step; gates and content are added. */
    static final class Builder {

        private final String code;
        private final List<StepSheet> steps = new ArrayList<>();
        private final List<CharacteristicSheet> characteristics = new ArrayList<>();
        private Point point = Point.NONE;
        private List<Signer> signers = List.of();
        private boolean irreversible;
        private boolean joins;
        private String station = "1";
        private String caution = "";
        private boolean bare;

        private Builder(String code) {
            this.code = code;
        }

        Builder hold(Signer... who) {
            point = Point.HOLD;
            signers = List.of(who);
            return this;
        }

        Builder signers(Signer... who) {
            signers = List.of(who);
            return this;
        }

        Builder irreversible() {
            irreversible = true;
            return this;
        }

        Builder joins() {
            joins = true;
            return this;
        }

        Builder at(String where) {
            station = where;
            return this;
        }

        Builder caution(String words) {
            caution = words;
            return this;
        }

        Builder bare() {
            bare = true;
            return this;
        }

        Builder step(StepSheet step) {
            steps.add(step);
            return this;
        }

        Builder characteristic(CharacteristicSheet characteristic) {
            characteristics.add(characteristic);
            return this;
        }

        OperationSheet sheet() {
            List<StepSheet> all = steps.isEmpty() && !bare ? List.of(Sheets.step("Do it")) : steps;
            return new OperationSheet(
                    code,
                    "Operation " + code,
                    station,
                    point,
                    signers,
                    null,
                    false,
                    false,
                    irreversible,
                    joins,
                    null,
                    caution,
                    all,
                    characteristics);
        }
    }
}
