package org.trammel.shop.orders;

/** What an entry of cost stands for. */
public enum CostKind {
    /** Planned work of the route. */
    WORK,
    /** Rework, repair, recut. */
    REWORK,
    /** Tubes, filler, powder, bought parts. */
    MATERIAL,
    /** Work done outside: stress relief, coat. */
    OUTSIDE
}
