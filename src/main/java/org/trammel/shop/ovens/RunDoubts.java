package org.trammel.shop.ovens;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.trammel.shop.records.Act;

/**
 * What is found of runs whose thermocouple was found wrong after them. Ovens ask for it and do not know how it is found: the
 * module that traces back uses this one, and must not be used by it.
 */
public interface RunDoubts {

    /** Chains of every frame that a failed test of a thermocouple may hold; read before the act is opened, to lock them in it. */
    Collection<String> chains(String thermocouple, Instant until);

    /** An accuracy test is not good; in the act that records it. */
    void failed(Act act, long ovenId, OvenTest failed);

    /** A record of a run was taken; in the act that takes it. */
    void recorded(Act act, long runId);

    /** What keeps a run from being released; empty where nothing waits. */
    Optional<Doubt> against(long runId);

    /** What was found since of the thermocouples of runs, by the ids of the runs; none of a run that nothing is found of. */
    Map<Long, List<Doubt>> of(Collection<Long> runIds);

    /** Equivalent hours that the worst case leaves missing of a run; 0 where it is not in doubt. */
    double missing_h(long runId);

    /**
     * What a thermocouple found wrong means to a run.
     *
     * @param number of the trace
     * @param cleared whether its verdict is the same whatever the error was
     * @param open whether frames may still wait for results
     */
    record Doubt(long traceId, String number, String thermocouple, boolean cleared, boolean open) {

        public String words() {
            return cleared
                    ? "told again, the same verdict"
                    : open ? "in doubt: " + thermocouple + " was found wrong since" : "was in doubt; results are given";
        }
    }
}
