package org.trammel.shop.routes;

/**
 * One thing that keeps a draft from being released.
 *
 * @param place code of the operation, characteristic, clock or part it is about; empty for the route as a whole
 * @param why what is wrong, with the facts
 * @param instead what to do
 */
public record Finding(String place, String why, String instead) {}
