package org.trammel.calc.fastening;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.trammel.calc.units.Answer;

/**
 * Pull in a bolt that a torque makes.
 *
 * <pre>
 * F = T / (K d)       T torque in N·m, K nut factor, d thread diameter in mm; F in kN
 * </pre>
 *
 * The nut factor holds all friction of thread and head; it is 0.2 for dry steel and about 0.12 for greased threads, and
 * scatters by a quarter. An estimate beside the torque, never a limit. Source: the short form of the torque equation in
 * Shigley, Mechanical Engineering Design, chapter on screws and fasteners; the factors as tabled there.
 */
public final class Preload {

    /** Nut factor of a dry thread, from the same table. */
    public static final BigDecimal DRY = new BigDecimal("0.20");

    /** Of a greased one. */
    public static final BigDecimal GREASED = new BigDecimal("0.12");

    private Preload() {}

    /** @return kN, to a hundredth */
    public static Answer<BigDecimal> of_kN(BigDecimal torque_Nm, BigDecimal nutFactor, BigDecimal thread_mm) {
        if (torque_Nm.signum() < 0) {
            return Answer.none("torque", "A torque of " + torque_Nm.toPlainString() + " N·m lies below 0.");
        }
        if (nutFactor.signum() <= 0) {
            return Answer.none("nutFactor", "The nut factor is not above 0.");
        }
        if (thread_mm.signum() <= 0) {
            return Answer.none("thread", "The thread diameter is not above 0 mm.");
        }
        return Answer.of(torque_Nm.divide(nutFactor.multiply(thread_mm), 2, RoundingMode.HALF_EVEN));
    }
}
