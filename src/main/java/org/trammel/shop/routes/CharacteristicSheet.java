package org.trammel.shop.routes;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One characteristic to measure at an operation.
 *
 * <p>Limits are nominal plus deviation. Where {@code fromDesign} holds, the nominal is the design's. Where it does not
 * and {@code nominal} is null, the characteristic has no nominal and the deviations are the limits themselves (counted
 * from zero): "120 °C at most" is an upper deviation of 120.
 *
 * @param code its id, such as 080-1 or 130-1a; unique in the route
 * @param decimals decimals shown; a verdict is never made on the displayed number
 * @param fromDesign the nominal comes from the frame's own drawing
 * @param lowerDeviation null where the low side is open
 * @param upperDeviation null where the high side is open
 * @param gaugeKind kind of gauge or measuring set-up it wants
 * @param points labels of the sample points, at least one
 * @param signers who signs the verdict
 * @param sided its sign is a side: entered with drive and non-drive buttons, plus is drive
 * @param readBack typed blind: the wanted number is not shown before the reading is in
 * @param secondPerson two readings by two people
 * @param deciding judged here; otherwise the reading is information with a triage limit
 * @param coldSetClock code of the clock inside whose window a cold-set may put a not conforming value right
 * @param coldSetAttempts how many attempts; 0 where none is allowed
 * @param triageTolerances for a characteristic that is not deciding: how many tolerances off may pass on to its
 *     deciding operation; null leaves it to the shop's setting
 * @param coldSetAmount greatest permanent set of all attempts together, in the characteristic's unit
 * @param source where the limits come from; "shop default" until the QA lead owns them
 */
public record CharacteristicSheet(
        String code,
        String name,
        String unit,
        int decimals,
        boolean fromDesign,
        @Nullable BigDecimal nominal,
        @Nullable BigDecimal lowerDeviation,
        @Nullable BigDecimal upperDeviation,
        String gaugeKind,
        List<String> points,
        Reduction reduction,
        Rule rule,
        List<Signer> signers,
        boolean sided,
        boolean readBack,
        boolean secondPerson,
        boolean deciding,
        @Nullable String coldSetClock,
        int coldSetAttempts,
        @Nullable BigDecimal triageTolerances,
        @Nullable BigDecimal coldSetAmount,
        String source) {

    public CharacteristicSheet {
        points = List.copyOf(points);
        signers = List.copyOf(signers);
    }

    /** Unit of what is answered and not measured: 1 is yes, 0 is no. */
    public static final String ANSWER = "yes";

    /** Whether a characteristic in that unit is answered point by point with yes or no. */
    public static boolean isAnswered(String unit) {
        return ANSWER.equals(unit);
    }
}
