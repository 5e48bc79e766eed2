package org.trammel.shop.records;

import java.time.Instant;

/**
 * A checkpoint as it is shown and written down.
 *
 * @param number counted from 1
 * @param at when it was made
 * @param leaves how many chain heads the tree holds since the first checkpoint
 * @param root the tree's root in lower-case hexadecimal
 */
public record CheckpointSheet(long number, Instant at, long leaves, String root) {}
