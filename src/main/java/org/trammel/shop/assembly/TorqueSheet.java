package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Every fastener that is torqued at one operation of a frame, in the order of its components.
 *
 * @param afterRide whether it is the second time, after the ride
 * @param awaitsRide whether the rules ask for a ride here and none was good yet: what is torqued after it is not begun
 */
public record TorqueSheet(long operationId, boolean afterRide, boolean awaitsRide, List<Line> lines) {

    public TorqueSheet {
        lines = List.copyOf(lines);
    }

    /** How many are whole. */
    public int done() {
        return (int) lines.stream().filter(Line::whole).count();
    }

    /** The first that still wants a bolt; null where all are tightened. */
    public @Nullable Line next() {
        return lines.stream().filter(line -> line.next() != null).findFirst().orElse(null);
    }

    /** Tightened, and nobody has looked at them yet. */
    public List<Line> toWitness() {
        return lines.stream().filter(line -> line.state() == State.TO_WITNESS).toList();
    }

    List<Line> outstanding() {
        return lines.stream().filter(line -> !line.whole()).toList();
    }

    Line line(long partId, long fastenerId) {
        return lines.stream()
                .filter(line -> line.part().id() == partId && line.fastener().id() == fastenerId)
                .findFirst()
                .orElseThrow(() -> org.trammel.shop.records.Refusal.missing(
                        "Nothing was recorded.",
                        "The frame has no such fastener at this operation.",
                        "Open the torque sheet of the frame again."));
    }

    /** Where a fastener is. */
    public enum State {
        WAITING("waiting", "waiting"),
        IN_WORK("in work", "in-work"),
        /** A bolt was not tightened right: all of it is loosened and begun again. */
        AGAIN("to be torqued again", "not-conforming"),
        /** What clamps and what is clamped allow no torque in common. */
        CLASHES("sheets clash", "hold"),
        TO_WITNESS("to be witnessed", "hold"),
        DONE("done", "done");

        private final String word;
        private final String mark;

        State(String word, String mark) {
            this.word = word;
            this.mark = mark;
        }

        public String word() {
            return word;
        }

        public String mark() {
            return mark;
        }
    }

    /**
     * A fastener of this frame.
     *
     * @param most_Nm greatest torque allowed here, which the part it clamps may lower
     * @param target_Nm what the tool is to be set to in the last pass
     * @param lowered why the greatest torque is less than its own sheet says; null where it is not
     * @param caution of a carbon part it clamps; null for none
     * @param round from 1
     * @param bolts of this round, in the order they were tightened
     * @param earlier bolts of the rounds before
     * @param next bolt to tighten; null where none is
     * @param witness id of whoever looked at it; null while nobody has
     */
    public record Line(
            FramePart part,
            Fastener fastener,
            BigDecimal most_Nm,
            BigDecimal target_Nm,
            @Nullable String lowered,
            @Nullable String caution,
            int round,
            List<Bolt> bolts,
            List<Bolt> earlier,
            State state,
            @Nullable Next next,
            @Nullable Long witness,
            @Nullable Instant witnessedAt) {

        public Line {
            bolts = List.copyOf(bolts);
            earlier = List.copyOf(earlier);
        }

        boolean whole() {
            return state == State.DONE;
        }

        /** Component and fastener, as people say it. */
        public String called() {
            return fastener.name() + " of " + part.called();
        }

        public BigDecimal least_Nm() {
            return fastener.least_Nm();
        }

        public @Nullable Bolt last() {
            return bolts.isEmpty() ? null : bolts.get(bolts.size() - 1);
        }
    }

    /**
     * A bolt to tighten.
     *
     * @param of passes there are
     * @param set_Nm what the tool is set to in this pass
     * @param last whether it is the last pass, in which the band decides
     */
    public record Next(int pass, int of, int bolt, BigDecimal set_Nm, boolean last) {}
}
