package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;

/** Whether the numbers of a draft can be, each by itself and beside the others. */
final class DraftNumbers {

    /** What lies inside something, and what it lies in. */
    private static final List<Inside> INSIDE = List.of(
            new Inside(GeometryInput.HEAD_TUBE_BORE, GeometryInput.HEAD_TUBE_OUTSIDE),
            new Inside(GeometryInput.HEAD_TUBE_SEATS, GeometryInput.HEAD_TUBE_OUTSIDE),
            new Inside(GeometryInput.SHELL_BORE, GeometryInput.SHELL_OUTSIDE),
            new Inside(GeometryInput.SEAT_TUBE_BORE, GeometryInput.SEAT_TUBE_OUTSIDE),
            new Inside(GeometryInput.ARM_BORE, GeometryInput.ARM_BOSS));

    private record Inside(GeometryInput bore, GeometryInput outside) {}

    private DraftNumbers() {}

    /**
     * Refuses what cannot be, and asks about all that is unusual at once. A number that is kept already was asked about
     * when it was first typed, and is not asked about again until it is changed.
     */
    static void check(String deed, DesignDraft draft, DesignSheet kept) {
        Map<GeometryInput, BigDecimal> typed = draft.geometry();
        Unusual unusual = new Unusual();
        for (GeometryInput input : GeometryInput.values()) {
            BigDecimal amount = typed.get(input);
            if (amount != null) {
                input.band().check(field(input), deed, amount, isKept(input, amount, kept) ? new Unusual() : unusual);
                refuseHalfAYes(deed, input, amount);
            }
        }
        INSIDE.forEach(pair -> refuseWider(deed, pair, typed));
        refuseLongStroke(deed, typed);
        noteLowStack(typed, kept, unusual);
        unusual.ask(deed, draft.confirmed());
    }

    private static boolean isKept(GeometryInput input, @Nullable BigDecimal amount, DesignSheet kept) {
        String before = kept.geometry().get(input.code());
        return before != null && amount != null && new BigDecimal(before).compareTo(amount) == 0;
    }

    private static void refuseHalfAYes(String deed, GeometryInput input, BigDecimal amount) {
        if (input.yesOrNo() && amount.signum() != 0 && amount.compareTo(BigDecimal.ONE) != 0) {
            throw Refusal.input(
                    field(input),
                    deed,
                    input.label() + " is " + amount.toPlainString() + "; it is 1 for yes or 0 for no.",
                    "Choose one of the two.");
        }
    }

    private static void refuseWider(String deed, Inside pair, Map<GeometryInput, BigDecimal> typed) {
        BigDecimal bore = typed.get(pair.bore());
        BigDecimal outside = typed.get(pair.outside());
        if (bore != null && outside != null && bore.compareTo(outside) >= 0) {
            throw Refusal.input(
                    field(pair.bore()),
                    deed,
                    said(pair.bore(), bore) + " leaves no metal of " + said(pair.outside(), outside) + ".",
                    "Look which of the two was mistyped; the bore is the smaller one.");
        }
    }

    /** Body and shaft of a shock are each longer than its stroke: the one takes the other up. Plain geometry of a slide. */
    private static void refuseLongStroke(String deed, Map<GeometryInput, BigDecimal> typed) {
        BigDecimal length = typed.get(GeometryInput.SHOCK_LENGTH);
        BigDecimal stroke = typed.get(GeometryInput.SHOCK_STROKE);
        if (length != null && stroke != null && stroke.add(stroke).compareTo(length) >= 0) {
            throw Refusal.input(
                    field(GeometryInput.SHOCK_LENGTH),
                    deed,
                    said(GeometryInput.SHOCK_LENGTH, length) + " cannot hold "
                            + said(GeometryInput.SHOCK_STROKE, stroke)
                            + ": its body takes the whole stroke up, so that eye to eye it is more than twice as long.",
                    "Read both on the shock's own sheet.");
        }
    }

    private static void noteLowStack(Map<GeometryInput, BigDecimal> typed, DesignSheet kept, Unusual unusual) {
        BigDecimal stack = typed.get(GeometryInput.STACK_ASKED);
        BigDecimal reach = typed.get(GeometryInput.REACH);
        boolean asked = isKept(GeometryInput.STACK_ASKED, stack, kept) && isKept(GeometryInput.REACH, reach, kept);
        if (stack != null && reach != null && !asked && stack.compareTo(reach) < 0) {
            unusual.add(
                    field(GeometryInput.STACK_ASKED),
                    "The stack, " + GeometryInput.STACK_ASKED.written(stack.doubleValue())
                            + ", is less than the reach, " + GeometryInput.REACH.written(reach.doubleValue()) + ".",
                    "Look whether the two were exchanged; confirm if they are meant.");
        }
    }

    private static String said(GeometryInput input, BigDecimal amount) {
        return input.label() + " " + input.written(amount.doubleValue());
    }

    private static String field(GeometryInput input) {
        return "geometry." + input.code();
    }
}
