package org.trammel.shop.nonconformance;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A decision put forward.
 *
 * @param words why, and what is to be done
 * @param fromCode rework, repair, return: code of the first operation done over
 * @param limits concession: how far it reaches
 * @param expiresOn concession: last day it may be used
 * @param changesWhatWasOrdered dimension, looks or weight differ from the order: the customer must agree
 * @param customerAgreement who of the customer agreed, when and how; null if not asked
 * @param beyondLimit more loops than the route allows; then the owner agrees as well
 * @param hours work it costs, h
 * @param materialCost material it costs, in the shop's currency
 * @param stillValid rework, repair, return: operations done since that are valid although what came before them is
 *     done over; the rest of them is done over as well
 */
public record Proposal(
        Decision decision,
        String words,
        @Nullable String fromCode,
        @Nullable String limits,
        @Nullable LocalDate expiresOn,
        boolean changesWhatWasOrdered,
        @Nullable String customerAgreement,
        boolean beyondLimit,
        @Nullable BigDecimal hours,
        @Nullable BigDecimal materialCost,
        Set<Long> stillValid) {}
