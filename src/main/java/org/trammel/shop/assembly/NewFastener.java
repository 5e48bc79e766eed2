package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.calc.fastening.Preload;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/**
 * What a component's sheet says of one fastener.
 *
 * @param least_Nm least torque allowed
 * @param target_Nm what the tool is set to
 * @param most_Nm greatest torque allowed
 * @param nutFactor null for the usual one of a dry or greased thread
 * @param thread_mm diameter of the thread; null where the sheet does not say
 * @param passes share of the target in each pass, in per cent; the last is 100
 * @param witness null where the kind of component decides
 * @param afterRide whether it is torqued again after the ride
 * @param clamps kind of the component it clamps, whose own sheet may allow less; null for none
 * @param answers code of the route's characteristic that need not be read by hand beside it; null for none
 * @param everyPlace whether it is in every place of that characteristic, as the bolts of a face plate are, and not in one of them,
 *     as those of a front caliper are
 */
public record NewFastener(
        String name,
        int bolts,
        @Nullable BigDecimal least_Nm,
        @Nullable BigDecimal target_Nm,
        @Nullable BigDecimal most_Nm,
        boolean greased,
        @Nullable BigDecimal nutFactor,
        @Nullable BigDecimal thread_mm,
        boolean crosswise,
        List<Integer> passes,
        boolean leftHand,
        @Nullable Boolean witness,
        boolean afterRide,
        @Nullable ComponentKind clamps,
        @Nullable String answers,
        boolean everyPlace) {

    static final int MOST_BOLTS = 24;
    private static final int MOST_PASSES = 4;
    private static final BigDecimal GREATEST_Nm = BigDecimal.valueOf(400);
    private static final BigDecimal GREATEST_mm = BigDecimal.valueOf(60);

    public NewFastener {
        passes = List.copyOf(passes);
    }

    /** In one place, or standing for nothing that the route asks for. */
    public NewFastener(
            String name,
            int bolts,
            @Nullable BigDecimal least_Nm,
            @Nullable BigDecimal target_Nm,
            @Nullable BigDecimal most_Nm,
            boolean greased,
            @Nullable BigDecimal nutFactor,
            @Nullable BigDecimal thread_mm,
            boolean crosswise,
            List<Integer> passes,
            boolean leftHand,
            @Nullable Boolean witness,
            boolean afterRide,
            @Nullable ComponentKind clamps,
            @Nullable String answers) {
        this(
                name, bolts, least_Nm, target_Nm, most_Nm, greased, nutFactor, thread_mm, crosswise, passes, leftHand,
                witness, afterRide, clamps, answers, false);
    }

    /** @param place of the fastener among the fields of a form, from 0 */
    NewFastener checked(int place, ComponentKind kind, String deed) {
        String called = TypedText.line("name" + place, "The name of the fastener", deed, name, 80);
        if (bolts < 1 || bolts > MOST_BOLTS) {
            throw Refusal.input(
                    "bolts" + place,
                    deed,
                    called + " cannot have " + bolts + " bolts.",
                    "Enter 1 to " + MOST_BOLTS + ".");
        }
        BigDecimal least = torque("least" + place, "The least torque of " + called, deed, least_Nm);
        BigDecimal most = torque("most" + place, "The greatest torque of " + called, deed, most_Nm);
        BigDecimal target = torque("target" + place, "The target of " + called, deed, target_Nm);
        if (least.compareTo(most) >= 0) {
            throw Refusal.input(
                    "most" + place,
                    deed,
                    called + " ends at " + plain(most) + " N·m and begins at " + plain(least) + ".",
                    "Enter the band as the component's own sheet gives it.");
        }
        if (target.compareTo(least) < 0 || target.compareTo(most) > 0) {
            throw Refusal.input(
                    "target" + place,
                    deed,
                    "The target of " + called + ", " + plain(target) + " N·m, lies outside " + plain(least) + " to "
                            + plain(most) + ".",
                    "Aim inside the band, best at its middle.");
        }
        return new NewFastener(
                called,
                bolts,
                least,
                target,
                most,
                greased,
                nutFactor(place, called, deed),
                thread(place, called, deed),
                crosswise,
                passes(place, called, deed),
                leftHand,
                witness == null ? kind.witnessed() : witness,
                afterRide,
                clamps,
                answers == null || answers.isBlank() ? null : code("answers" + place, deed, answers),
                everyPlace);
    }

    private BigDecimal nutFactor(int place, String called, String deed) {
        BigDecimal factor = nutFactor == null ? greased ? Preload.GREASED : Preload.DRY : nutFactor;
        if (factor.compareTo(new BigDecimal("0.05")) < 0 || factor.compareTo(new BigDecimal("0.5")) > 0) {
            throw Refusal.input(
                    "nutFactor" + place,
                    deed,
                    "The nut factor of " + called + ", " + plain(factor) + ", does not lie within 0.05 and 0.5.",
                    "Leave it empty for the usual one of a " + (greased ? "greased" : "dry") + " thread.");
        }
        return factor;
    }

    private @Nullable BigDecimal thread(int place, String called, String deed) {
        if (thread_mm != null && (thread_mm.signum() <= 0 || thread_mm.compareTo(GREATEST_mm) > 0)) {
            throw Refusal.input(
                    "thread" + place,
                    deed,
                    "The thread of " + called + ", " + plain(thread_mm) + " mm, does not lie above 0 and up to "
                            + GREATEST_mm + " mm.",
                    "Enter its diameter in mm, or leave it empty.");
        }
        return thread_mm;
    }

    private List<Integer> passes(int place, String called, String deed) {
        List<Integer> read = passes.isEmpty() ? List.of(100) : passes;
        boolean rising = read.get(0) > 0;
        for (int i = 1; i < read.size(); i++) {
            rising &= read.get(i) > read.get(i - 1);
        }
        if (!rising || read.get(read.size() - 1) != 100 || read.size() > MOST_PASSES) {
            throw Refusal.input(
                    "passes" + place,
                    deed,
                    "The passes of " + called + " do not rise to 100 % in " + MOST_PASSES + " or fewer.",
                    "Enter the share of the target in each pass, such as 60 100.");
        }
        return read;
    }

    private static BigDecimal torque(String field, String what, String deed, @Nullable BigDecimal value) {
        if (value == null || value.signum() <= 0 || value.compareTo(GREATEST_Nm) > 0) {
            throw Refusal.input(
                    field,
                    deed,
                    value == null
                            ? what + " is missing."
                            : what + ", " + plain(value) + " N·m, does not lie above 0 and up to " + GREATEST_Nm
                                    + " N·m.",
                    "Enter it as the component's own sheet gives it.");
        }
        if (value.stripTrailingZeros().scale() > 3) {
            throw Refusal.input(
                    field, deed, what + ", " + plain(value) + " N·m, has more than three decimals.", "Round it.");
        }
        return value;
    }

    static String code(String field, String deed, String typed) {
        String code = typed.strip();
        if (!code.matches("[A-Za-z0-9][A-Za-z0-9.-]{0,15}")) {
            throw Refusal.input(field, deed, code + " is no code of a route.", "Enter codes such as 180 or 180-2.");
        }
        return code;
    }

    static String plain(BigDecimal value) {
        BigDecimal bare = value.stripTrailingZeros();
        return (bare.scale() < 0 ? bare.setScale(0) : bare).toPlainString();
    }
}
