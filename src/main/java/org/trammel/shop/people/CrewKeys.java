package org.trammel.shop.people;

import org.springframework.stereotype.Component;
import org.trammel.shop.records.Act;
import org.trammel.shop.stations.ShopKeys;

/** Answers the stations' question who may change them. */
@Component
class CrewKeys implements ShopKeys {

    private final Crew crew;

    CrewKeys(Crew crew) {
        this.crew = crew;
    }

    @Override
    public void requireOwnerOrQa(Act act, String deed) {
        crew.require(act.by(), deed, Role.OWNER, Role.QA_LEAD);
    }
}
