package org.trammel.calc.geometry;

/**
 * The stays of a frame.
 *
 * @param chainstayPath where the drive side's chainstay runs
 * @param seatstayPath where the drive side's seatstay runs
 * @param chainstay stock; its first end is at the shell
 * @param seatstay stock; its first end is at the seat tube
 * @param plate what both are slotted for
 */
public record StaySet(
        BentStay chainstayPath, BentStay seatstayPath, TubeStock chainstay, TubeStock seatstay, DropoutPlate plate) {}
