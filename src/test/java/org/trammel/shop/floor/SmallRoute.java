package org.trammel.shop.floor;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.ChildSheet;
import org.trammel.shop.routes.ClockKind;
import org.trammel.shop.routes.ClockSheet;
import org.trammel.shop.routes.OperationSheet;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.Reduction;
import org.trammel.shop.routes.RouteSheet;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.routes.StepSheet;

/** Writes small routes for tests. */
public final class SmallRoute {

    private final List<OperationSheet> operations = new ArrayList<>();
    private final List<ClockSheet> clocks = new ArrayList<>();
    private final List<ChildSheet> children = new ArrayList<>();

    public static SmallRoute of(OperationSheet... operations) {
        SmallRoute route = new SmallRoute();
        route.operations.addAll(List.of(operations));
        return route;
    }

    public SmallRoute window(String code, long minutes, String startedBy, String... gates) {
        clocks.add(new ClockSheet(code, code, ClockKind.WINDOW, minutes, startedBy, List.of(gates), "test"));
        return this;
    }

    public SmallRoute wait(String code, long minutes, String startedBy, String... gates) {
        clocks.add(new ClockSheet(code, code, ClockKind.WAIT, minutes, startedBy, List.of(gates), "test"));
        return this;
    }

    public SmallRoute child(String part, SmallRoute route) {
        children.add(new ChildSheet(part, part, route.sheet()));
        return this;
    }

    public RouteSheet sheet() {
        return new RouteSheet(0, "TEST", "test route", "A", "AL6061", "HARDTAIL", operations, clocks, children);
    }

    /** One operation, its parts to be replaced by the {@code with} methods of {@link Op}. */
    public static Op op(String code) {
        return new Op(code);
    }

    /** Writes one operation. */
    public static final class Op {

        private final String code;
        private String station = "1";
        private Point point = Point.NONE;
        private List<Signer> signers = List.of();
        private @Nullable String qualification;
        private boolean together;
        private boolean outside;
        private boolean irreversible;
        private boolean joins;
        private @Nullable Integer limit;
        private final List<StepSheet> steps = new ArrayList<>();
        private final List<CharacteristicSheet> characteristics = new ArrayList<>();

        private Op(String code) {
            this.code = code;
        }

        public Op hold(Signer... by) {
            point = Point.HOLD;
            signers = List.of(by);
            return this;
        }

        public Op witness() {
            point = Point.WITNESS;
            signers = List.of(Signer.SECOND);
            return this;
        }

        /** At another station than 1. */
        public Op at(String station) {
            this.station = station;
            return this;
        }

        public Op qualified(String kind) {
            qualification = kind;
            return this;
        }

        public Op together() {
            together = true;
            return this;
        }

        public Op outside() {
            outside = true;
            return this;
        }

        public Op irreversible() {
            irreversible = true;
            return this;
        }

        public Op joins() {
            joins = true;
            return this;
        }

        public Op atMost(int loops) {
            limit = loops;
            return this;
        }

        public Op step(String text) {
            return step(text, null);
        }

        public Op step(StepSheet step) {
            steps.add(step);
            return this;
        }

        public Op step(String text, @Nullable String startsClock) {
            steps.add(new StepSheet(text, "", false, false, null, startsClock, null));
            return this;
        }

        /** A step at which the label of a lot of this kind is scanned. */
        public Op lot(String text, String kind) {
            steps.add(new StepSheet(text, "", false, false, kind, null, null));
            return this;
        }

        public Op photo(String text) {
            steps.add(new StepSheet(text, "", true, false, null, null, null));
            return this;
        }

        /** A deciding characteristic of the plain rule, nominal 0. */
        public Op plain(String code, String tolerance) {
            return characteristic(code, tolerance, Rule.PLAIN, "CALLIPER", true, null, 0, false, false);
        }

        /** A deciding characteristic of the guarded rule, nominal 0, that a cold-set may put right. */
        public Op guarded(String code, String tolerance, @Nullable String coldSetClock, int attempts) {
            return characteristic(code, tolerance, Rule.GUARDED, "TWIST", true, coldSetClock, attempts, false, false);
        }

        /** Read where it is not decided. */
        public Op triage(String code, String tolerance) {
            return characteristic(code, tolerance, Rule.GUARDED, "TWIST", false, null, 0, false, false);
        }

        /** Read back blind by two people. */
        public Op readBack(String code, String tolerance) {
            return characteristic(code, tolerance, Rule.PLAIN, "CALLIPER", true, null, 0, true, true);
        }

        public Op characteristic(CharacteristicSheet wanted) {
            characteristics.add(wanted);
            return this;
        }

        private Op characteristic(
                String code,
                String tolerance,
                Rule rule,
                String gauge,
                boolean deciding,
                @Nullable String coldSetClock,
                int attempts,
                boolean readBack,
                boolean second) {
            BigDecimal t = new BigDecimal(tolerance);
            characteristics.add(new CharacteristicSheet(
                    code,
                    "characteristic " + code,
                    rule == Rule.GUARDED ? "°" : "mm",
                    3,
                    false,
                    BigDecimal.ZERO,
                    t.negate(),
                    t,
                    gauge,
                    List.of("once"),
                    Reduction.SINGLE,
                    rule,
                    List.of(Signer.WORKER),
                    false,
                    readBack,
                    second,
                    deciding,
                    coldSetClock,
                    attempts,
                    null,
                    null,
                    "test"));
            return this;
        }

        public OperationSheet sheet() {
            return new OperationSheet(
                    code,
                    "operation " + code,
                    station,
                    point,
                    signers,
                    qualification,
                    together,
                    outside,
                    irreversible,
                    joins,
                    limit,
                    "",
                    steps,
                    characteristics);
        }
    }
}
