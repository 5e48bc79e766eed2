package org.trammel.shop.people;

import java.security.Principal;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Act;
import org.trammel.shop.settings.SettingKeys;
import org.trammel.shop.stations.ShopKeys;

/** Answers the stations and the settings, which stand below the crew, who may change them. */
@Component
class CrewKeys implements ShopKeys, SettingKeys {

    private final Crew crew;

    CrewKeys(Crew crew) {
        this.crew = crew;
    }

    @Override
    public void requireOwnerOrQa(Act act, String deed) {
        crew.require(act.by(), deed, Role.OWNER, Role.QA_LEAD);
    }

    @Override
    public boolean opens(@Nullable Principal who) {
        return who instanceof SignedOnToken token
                && (token.getPrincipal().person().is(Role.OWNER)
                        || token.getPrincipal().person().is(Role.QA_LEAD));
    }

    @Override
    public Map<Long, String> names() {
        return crew.names();
    }
}
