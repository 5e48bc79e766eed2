package org.trammel.shop.materials;

import java.math.BigDecimal;

/**
 * Bars alike as they are laid on the rack.
 *
 * @param count how many
 * @param butted bought in one length with thick ends: never laid out for blanks
 */
public record NewBars(BigDecimal outside_mm, BigDecimal wall_mm, BigDecimal length_mm, int count, boolean butted) {}
