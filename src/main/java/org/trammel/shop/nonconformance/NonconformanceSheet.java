package org.trammel.shop.nonconformance;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.orders.OrderSheet;
import org.trammel.shop.people.Role;
import org.trammel.shop.travellers.DoneSince;
import org.trammel.shop.travellers.FrameSheet;

/**
 * A nonconformance with all that whoever decides it looks at.
 *
 * @param about name of the characteristic it is about; empty where it is about none
 * @param asked decimals that the route shows the characteristic with
 * @param readings every reading of the characteristic, oldest first
 * @param tookPart names of those who took part in the operation at fault: none of them decides
 * @param mayDecide true if the reader may
 * @param mayAgree true if the reader could still agree to the decision put forward
 * @param alone true if the reader would decide in both roles, because nobody else may
 * @param mustAgree roles that must agree to the decision put forward
 * @param looks what was seen by those who looked again
 * @param mayLook true if the reader may look again: it was seen and not measured, and the reader took no part
 * @param room what a cold-set may still do; null where it is about no characteristic
 * @param operations operations of the traveller up to where it was found, for the choice of a loop
 * @param since what was begun after where it was found; a loop does it over unless it is said to be valid still
 * @param stillValid operations that the decision leaves as they are, as people call them
 */
record NonconformanceSheet(
        NonconformanceLine line,
        FrameSheet.Head head,
        @Nullable OrderSheet order,
        String about,
        int asked,
        List<ReadingLine> readings,
        List<String> tookPart,
        boolean mayDecide,
        boolean mayAgree,
        boolean alone,
        Set<Role> mustAgree,
        List<LooksAgain.Seen> looks,
        boolean mayLook,
        ColdSets.@Nullable Room room,
        Map<String, String> operations,
        List<DoneSince.Done> since,
        List<String> stillValid,
        String openedByName,
        Map<Long, String> names) {

    private static final int MOST_DECIMALS = 4;

    /** A reading is shown as finely as it was asked for or taken, and not with the zeros its column keeps. */
    public int decimals(ReadingLine reading) {
        int taken = Math.max(0, reading.value().stripTrailingZeros().scale());
        return Math.max(asked, Math.min(MOST_DECIMALS, taken));
    }
}
