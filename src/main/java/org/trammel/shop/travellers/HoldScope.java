package org.trammel.shop.travellers;

/** How far a hold reaches. */
public enum HoldScope {
    /** The whole frame with all its parts. */
    FRAME,
    /** One part, such as the swing arm. */
    PART,
    /** One operation, until it is done or goes on under the hold; from then on the part. */
    OPERATION
}
