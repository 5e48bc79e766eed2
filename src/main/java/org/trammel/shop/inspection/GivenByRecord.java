package org.trammel.shop.inspection;

import java.util.Map;
import org.trammel.shop.records.Refusal;

/**
 * Tells which characteristics of an operation a record gives, such as that of an oven run, so that nobody keys a figure
 * that the shop has judged already. Each module that keeps such records provides one.
 */
public interface GivenByRecord {

    /**
     * Where a characteristic comes from.
     *
     * @param refusal what is answered to who keys it
     * @param address where the record is looked at or made
     * @param label of the way there
     */
    record Source(Refusal refusal, String address, String label) {}

    /**
     * By code of the characteristic; empty where whatever stands there is keyed.
     *
     * @param operationCode code of the operation, as its route has it
     */
    Map<String, Source> at(long operationId, String operationCode);
}
