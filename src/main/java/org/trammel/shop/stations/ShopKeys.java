package org.trammel.shop.stations;

import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

/**
 * Asks whether somebody may change the shop's stations and devices. Who works here is known one module further up, so
 * that module answers.
 */
public interface ShopKeys {

    /**
     * Lets owner and QA lead through.
     *
     * @param deed what is to be done, as the start of the refusal's sentence, such as "The station was not changed."
     * @throws Refusal if the person who acts is neither
     */
    void requireOwnerOrQa(Act act, String deed);
}
