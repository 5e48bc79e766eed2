package org.trammel.shop.materials;

import org.trammel.shop.records.Act;

/** Something went into a frame, or was scrapped out of it; published in the transaction that did it. */
public record MadeOfChanged(Act act, String serial) {}
