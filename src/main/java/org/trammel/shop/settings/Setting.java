package org.trammel.shop.settings;

import java.time.Instant;

/**
 * One value of a setting as it was put in force.
 *
 * @param id names this very value; a verdict keeps it so that it can say later what it was judged by
 * @param value as stored: decimals with a point, codes as they are
 * @param unit empty where the value is a plain figure or a text
 * @param source where the value comes from: a standard, a data sheet, a trial of the shop
 * @param reason why it was put in force at that moment
 * @param since when it came into force
 * @param by id of the person who put it in force; 0 for what the program came with
 */
public record Setting(
        long id, String key, String value, String unit, String source, String reason, Instant since, long by) {}
