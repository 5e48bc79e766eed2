package org.trammel.shop.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.routes.Signer;

/**
 * A hold or witness point to sign.
 *
 * @param asked the signatures the route asks for
 * @param as the one to give now; null if all are given
 * @param candidates who may give it
 */
record SignView(
        FrameView frame, List<Asked> asked, @Nullable Signer as, List<Candidate> candidates) {

    /** A signature asked for, and who gave it. */
    record Asked(Signer signer, @Nullable String by, String at) {}

    /** Somebody who may sign. */
    record Candidate(long personId, String name, String note, boolean chosen) {}
}
