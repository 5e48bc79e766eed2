package org.trammel.shop.inspection;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Act;

/**
 * When something was done at a tablet, as far as what it read on the frame before tells how its clock stands to the
 * server's. A reading arrives no earlier than it was taken, so the clock lags by no more than the least that one took to
 * arrive: its time and that much more is the latest the deed can have been.
 */
@Component
class TabletClocks {

    /** A clock is not believed to run on as it did longer than this. */
    private static final Duration KNOWN_FOR = Duration.ofHours(12);

    private static final int NEWEST = 20;

    private final ReadingRepository readings;

    TabletClocks(ReadingRepository readings) {
        this.readings = readings;
    }

    /** The latest it can have been; the server's own time where nothing better is known. */
    Instant latest(Act act, long travellerId) {
        Instant device = act.deviceAt();
        Long tablet = act.device();
        if (device == null || tablet == null || device.isAfter(act.at())) {
            return act.at();
        }
        @Nullable
        Duration lag = readings.newestAt(tablet, travellerId, act.at().minus(KNOWN_FOR), Limit.of(NEWEST)).stream()
                .map(read -> Duration.between(read.deviceAt(), read.at()))
                .min(Duration::compareTo)
                .orElse(null);
        Instant latest = lag == null ? act.at() : device.plus(lag);
        return latest.isAfter(act.at()) ? act.at() : latest;
    }
}
