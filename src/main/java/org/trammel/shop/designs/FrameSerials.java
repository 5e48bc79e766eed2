package org.trammel.shop.designs;

import java.util.Optional;

/** Who knows which serial a frame was given, by the order its design was drawn for. */
public interface FrameSerials {

    /** Stored form; empty while there is none. */
    Optional<String> serialOf(String orderNumber);
}
