package org.trammel.shop.designs;

/**
 * Tubes of a design as they are sawn.
 *
 * @param tube its name in the cut list
 * @param count how many alike
 * @param length_mm as sawn, one of them
 * @param butted bought in one length and only trimmed: no blank to be laid into bars
 */
public record TubeBlank(
        long revisionId, String tube, int count, double outside_mm, double wall_mm, double length_mm, boolean butted) {}
