package org.trammel.shop.overview;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One open order in the run of the shop.
 *
 * @param serial null until the frame has one
 * @param mark 042-3, or the order's number before there is a serial
 * @param path where the line leads: the frame's story, else the order
 * @param station where it stands now, in words
 * @param state word of the state there
 * @param kind kind of the state mark
 * @param since when the order was entered
 * @param daysLeft calendar days to the promise, negative once it is past; null without a promise
 * @param held whether a hold is open or work is stopped
 * @param reasons why it stands where it stands, the weightiest first
 * @param tracks the whole, or its parts and the whole; empty before the release
 */
record RunLine(
        long orderId,
        String number,
        @Nullable String serial,
        String mark,
        String path,
        String description,
        String metal,
        String station,
        String state,
        String kind,
        Instant since,
        @Nullable LocalDate promised,
        @Nullable Integer daysLeft,
        boolean held,
        List<String> reasons,
        List<Track> tracks) {

    /** Whether the promise is past and the frame is still here. */
    public boolean late() {
        return daysLeft != null && daysLeft < 0;
    }

    /** The reasons that fit beside it. */
    public String reason() {
        return String.join("; ", reasons.subList(0, Math.min(2, reasons.size())));
    }
}
