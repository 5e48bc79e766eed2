package org.trammel.shop.backtraces;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.ovens.OvenTest;
import org.trammel.shop.ovens.RunDoubts;
import org.trammel.shop.records.Act;

/** Answers what ovens ask. */
@Component
class DoubtedRuns implements RunDoubts {

    private final Tracing tracing;
    private final OvenTraces traces;

    DoubtedRuns(Tracing tracing, OvenTraces traces) {
        this.tracing = tracing;
        this.traces = traces;
    }

    @Override
    @Transactional(readOnly = true)
    public Collection<String> chains(String thermocouple, Instant until) {
        return tracing.chains(thermocouple, until);
    }

    @Override
    @Transactional(propagation = Propagation.MANDATORY)
    public void failed(Act act, long ovenId, OvenTest failed) {
        tracing.open(act, ovenId, failed);
    }

    @Override
    @Transactional(propagation = Propagation.MANDATORY)
    public void recorded(Act act, long runId) {
        tracing.tellAnew(act, runId);
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Doubt> against(long runId) {
        return tracing.against(runId).map(trace -> trace.doubt(false));
    }

    @Override
    @Transactional(readOnly = true)
    public Map<Long, List<Doubt>> of(Collection<Long> runIds) {
        return traces.doubts(runIds);
    }

    @Override
    @Transactional(readOnly = true)
    public double missing_h(long runId) {
        return traces.missing_h(runId);
    }
}
