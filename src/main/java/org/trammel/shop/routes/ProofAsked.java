package org.trammel.shop.routes;

/**
 * What released routes rest on: an operation of frames of a metal and kind with a step that rests on it.
 *
 * @param kind of frame, as the route says
 */
public record ProofAsked(String metal, String kind, String operation, Proof proof) {}
