package org.trammel.shop.routes;

/** How the values of several sample points become the one value that is judged. */
public enum Reduction {
    /** One point, its value. */
    SINGLE,
    /** The mean of all points. */
    MEAN,
    /** The point that stands worst against the limits: with the least margin to one, or farthest outside. */
    WORST,
    /** The greatest less the least. */
    SPAN,
    /** The greatest value. */
    GREATEST,
    /** The least value. */
    LEAST,
    /** The value that all but a fifth of the points reach: a fifth may lie below a lower limit. */
    ALL_BUT_FIFTH,
    /** The same where fewer than a fifth may lie below. */
    ALL_BUT_UNDER_FIFTH,
    /** Twice the distance of an axis from its datum, read in two directions square to each other. */
    COAXIAL
}
