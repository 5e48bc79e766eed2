package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.fastening.BoltOrder;
import org.trammel.calc.fastening.Preload;
import org.trammel.calc.units.Answer;

/** A fastener of a revision of a component's sheet; see {@link NewFastener}. */
public record Fastener(
        long id,
        String name,
        int bolts,
        BigDecimal least_Nm,
        BigDecimal target_Nm,
        BigDecimal most_Nm,
        boolean greased,
        BigDecimal nutFactor,
        @Nullable BigDecimal thread_mm,
        boolean crosswise,
        List<Integer> passes,
        boolean leftHand,
        boolean witness,
        boolean afterRide,
        @Nullable ComponentKind clamps,
        @Nullable String answers,
        boolean everyPlace) {

    public Fastener {
        passes = List.copyOf(passes);
    }

    /** Numbers of the bolts in the order they are tightened. */
    public List<Integer> order() {
        return crosswise ? BoltOrder.cross(bolts) : BoltOrder.inTurn(bolts);
    }

    /** Pull in the bolt at a torque with its own nut factor, in kN; null where the thread is not known. */
    public @Nullable BigDecimal preload_kN(BigDecimal torque_Nm) {
        return preload(torque_Nm, nutFactor);
    }

    /** The same if its thread were the other way: greased where the sheet wants it dry, dry where it wants grease. */
    public @Nullable BigDecimal otherPreload_kN(BigDecimal torque_Nm) {
        return preload(torque_Nm, otherFactor());
    }

    public BigDecimal otherFactor() {
        return greased ? Preload.DRY : Preload.GREASED;
    }

    private @Nullable BigDecimal preload(BigDecimal torque_Nm, BigDecimal factor) {
        return thread_mm != null
                        && Preload.of_kN(torque_Nm, factor, thread_mm) instanceof Answer.Determined<BigDecimal> answer
                ? answer.value()
                : null;
    }
}
