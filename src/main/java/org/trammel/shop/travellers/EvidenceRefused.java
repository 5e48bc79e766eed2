package org.trammel.shop.travellers;

import org.trammel.shop.records.Act;

/**
 * A reading was not conforming. Published in the transaction that took it; whoever opens nonconformances listens in the
 * same transaction.
 *
 * @param deciding false for a reading past its triage limit before the deciding operation
 */
public record EvidenceRefused(
        Act act,
        long travellerId,
        String serial,
        String part,
        long operationId,
        String operationCode,
        long characteristicId,
        String characteristicCode,
        long readingId,
        boolean deciding) {}
