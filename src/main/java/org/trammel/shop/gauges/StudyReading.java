package org.trammel.shop.gauges;

import java.math.BigDecimal;

/**
 * One reading of a study.
 *
 * @param part which part, as it was marked
 * @param appraiser initials of who measured it; a letter where they are hidden
 * @param value in the unit of the study
 */
public record StudyReading(String part, String appraiser, BigDecimal value) {}
