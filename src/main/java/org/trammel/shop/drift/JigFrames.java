package org.trammel.shop.drift;

import java.util.Set;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Which frames were set up in a jig. */
@Service
public class JigFrames {

    private final JigFrameRepository uses;

    JigFrames(JigFrameRepository uses) {
        this.uses = uses;
    }

    /** Travellers whose last note names the jig. */
    @Transactional(readOnly = true)
    public Set<Long> travellers(String jigCode) {
        return uses.lastIn(jigCode);
    }
}
