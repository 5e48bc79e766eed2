package org.trammel.shop.designs;

import jakarta.persistence.Embeddable;

/**
 * One line of a component list.
 *
 * @param what the place it has on the bicycle, such as fork or seatpost
 * @param description maker's words, size, fit
 */
@Embeddable
public record Component(String what, String description) {}
