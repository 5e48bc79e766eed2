package org.trammel.calc.geometry;

import org.jspecify.annotations.Nullable;

/**
 * The tubes a frame is made of.
 *
 * @param headTubeOutside_mm diameter
 * @param shellOutside_mm diameter
 * @param downTube stock; its first end is at the head tube
 * @param topTube stock; its first end is at the head tube
 * @param seatTube stock; its first end is at the shell
 * @param downTubeAtShell the oval the down tube is formed to at the shell, if it is
 * @param stays the rear triangle; none where a swing arm takes its place
 */
public record TubeSet(
        double headTubeOutside_mm,
        double shellOutside_mm,
        TubeStock downTube,
        TubeStock topTube,
        TubeStock seatTube,
        @Nullable FormedEnd downTubeAtShell,
        @Nullable StaySet stays) {}
