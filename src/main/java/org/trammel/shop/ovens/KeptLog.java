package org.trammel.shop.ovens;

import java.time.Instant;
import java.util.List;
import org.trammel.calc.thermal.SampleEncoding;
import org.trammel.calc.thermal.Samples;
import org.trammel.calc.units.Answer;

/**
 * What a logger recorded of a run, as it is kept.
 *
 * @param sha256 of the file as it was sent
 * @param samples in few bytes
 * @param how it was read, one sentence a line
 */
public record KeptLog(long runId, String name, String sha256, byte[] samples, String how, long by, Instant at) {

    Samples read() {
        if (SampleEncoding.decode(samples) instanceof Answer.Determined<Samples> there) {
            return there.value();
        }
        throw new IllegalStateException("The kept record of run " + runId + " is not what was kept");
    }

    /** How it was read, one sentence each. */
    public List<String> sentences() {
        return how.lines().toList();
    }
}
