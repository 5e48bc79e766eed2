package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/**
 * A component as its own sheet describes it.
 *
 * @param what article, as the shop writes it
 * @param operation code of the operation in which it is fitted
 * @param rideOperation code of the one in which its fasteners so marked are torqued again after the ride; null for none
 * @param carbon whether what is clamped or threaded of it is carbon
 * @param clampedMost_Nm greatest torque of a bolt that clamps it, by its own sheet; null where that says nothing
 * @param source its sheet
 * @param edition of the sheet
 * @param leastInsertion_mm how far a seatpost must be in; null where its sheet does not say
 */
public record NewComponent(
        @Nullable ComponentKind kind,
        String what,
        String operation,
        @Nullable String rideOperation,
        boolean carbon,
        @Nullable BigDecimal clampedMost_Nm,
        String source,
        String edition,
        List<NewFastener> fasteners,
        @Nullable BigDecimal leastInsertion_mm) {

    static final int MOST_FASTENERS = 12;
    private static final BigDecimal DEEPEST_mm = BigDecimal.valueOf(400);

    public NewComponent {
        fasteners = List.copyOf(fasteners);
    }

    /** One that does not go into the frame. */
    public NewComponent(
            @Nullable ComponentKind kind,
            String what,
            String operation,
            @Nullable String rideOperation,
            boolean carbon,
            @Nullable BigDecimal clampedMost_Nm,
            String source,
            String edition,
            List<NewFastener> fasteners) {
        this(kind, what, operation, rideOperation, carbon, clampedMost_Nm, source, edition, fasteners, null);
    }

    private void requireInsertion(ComponentKind kind, String deed) {
        if (leastInsertion_mm == null) {
            return;
        }
        if (kind != ComponentKind.SEATPOST) {
            throw Refusal.input(
                    "leastInsertion", deed, "A " + kind.word() + " has no least insertion.", "Leave it empty.");
        }
        if (leastInsertion_mm.signum() <= 0
                || leastInsertion_mm.compareTo(DEEPEST_mm) > 0
                || leastInsertion_mm.stripTrailingZeros().scale() > 1) {
            throw Refusal.input(
                    "leastInsertion",
                    deed,
                    "A least insertion of " + NewFastener.plain(leastInsertion_mm)
                            + " mm does not lie above 0 and up to " + DEEPEST_mm + " mm, in tenths.",
                    "Enter it from its mark, in mm.");
        }
    }

    NewComponent checked(String deed) {
        if (kind == null) {
            throw Refusal.input("kind", deed, "It is not said what it is.", "Choose from the list.");
        }
        if (fasteners.size() > MOST_FASTENERS
                || fasteners.isEmpty() && clampedMost_Nm == null && leastInsertion_mm == null) {
            throw Refusal.input(
                    "name0",
                    deed,
                    fasteners.isEmpty()
                            ? "It has no fastener, and nothing is said of the bolts that clamp it."
                            : fasteners.size() + " fasteners are more than " + MOST_FASTENERS + ".",
                    "Enter its fasteners as its own sheet lists them.");
        }
        requireInsertion(kind, deed);
        if (clampedMost_Nm != null && clampedMost_Nm.signum() <= 0) {
            throw Refusal.input(
                    "clampedMost",
                    deed,
                    "The greatest clamping torque is not above 0 N·m.",
                    "Leave it empty or enter it.");
        }
        List<NewFastener> read = new ArrayList<>();
        for (int i = 0; i < fasteners.size(); i++) {
            read.add(fasteners.get(i).checked(i, kind, deed));
        }
        if (read.stream().map(NewFastener::name).distinct().count() != read.size()) {
            throw Refusal.input("name0", deed, "Two of its fasteners have one name.", "Tell them apart.");
        }
        String ride = rideOperation == null || rideOperation.isBlank()
                ? null
                : NewFastener.code("rideOperation", deed, rideOperation);
        if (ride == null && read.stream().anyMatch(NewFastener::afterRide)) {
            throw Refusal.input(
                    "rideOperation",
                    deed,
                    "A fastener is torqued again after the ride, and it is not said at which operation.",
                    "Enter the code of the final check, such as 190.");
        }
        String at = NewFastener.code("operation", deed, operation);
        if (at.equals(ride)) {
            throw Refusal.input(
                    "rideOperation", deed, "Operation " + at + " is named for both.", "Name the one after the ride.");
        }
        return new NewComponent(
                kind,
                TypedText.line("what", "The article", deed, what, 200),
                at,
                ride,
                carbon,
                clampedMost_Nm,
                TypedText.line("source", "The source", deed, source, 400),
                TypedText.line("edition", "The edition", deed, edition, 80),
                read,
                leastInsertion_mm);
    }
}
