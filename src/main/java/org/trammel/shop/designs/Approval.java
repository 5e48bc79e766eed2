package org.trammel.shop.designs;

import java.time.LocalDate;

/**
 * The customer's approval of a drawing.
 *
 * @param letter the revision the customer named
 * @param file SHA-256 of the file the customer saw
 * @param approver who approved
 * @param on the day they did
 */
public record Approval(String letter, String file, String approver, LocalDate on) {}
