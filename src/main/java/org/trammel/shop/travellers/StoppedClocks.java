package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;

/** Where a record of another module, such as that of a cold store, lets clocks of a frame stand still and run on. */
@Service
public class StoppedClocks {

    private final TravellerRepository travellers;
    private final FrameClockRepository clocks;
    private final ActLog log;

    StoppedClocks(TravellerRepository travellers, FrameClockRepository clocks, ActLog log) {
        this.travellers = travellers;
        this.clocks = clocks;
        this.log = log;
    }

    /**
     * Lets them stand. The act is open already, on the chain of the frame.
     *
     * @return names of those that stand now; what ran out before does not come to life again
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public List<String> stop(Act act, long travellerId, Collection<String> codes) {
        List<FrameClock> standing = clocks.findByTravellerIdOrderById(travellerId).stream()
                .filter(clock -> codes.contains(clock.code()) && !clock.stands())
                .peek(clock -> clock.stand(act.at()))
                .filter(FrameClock::stands)
                .toList();
        standing.forEach(clock -> tell(travellerId, "clock stands still", clock, true));
        return standing.stream().map(FrameClock::name).toList();
    }

    /** @param cold whether it was cold enough to the end; else windows have run all the time */
    @Transactional(propagation = Propagation.MANDATORY)
    public void goOn(Act act, long travellerId, boolean cold) {
        clocks.findByTravellerIdOrderById(travellerId).stream()
                .filter(FrameClock::stands)
                .forEach(clock -> {
                    clock.runOn(act.at(), cold);
                    tell(travellerId, "clock runs on", clock, cold);
                });
    }

    private void tell(long travellerId, String what, FrameClock clock, boolean cold) {
        Traveller traveller = travellers.findById(travellerId).orElseThrow(() -> Bench.noSuch("traveller"));
        log.event(traveller.chain(), what, Map.of("clock", clock.code(), "part", traveller.part(), "cold", cold));
    }
}
