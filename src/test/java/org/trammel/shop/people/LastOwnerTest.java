package org.trammel.shop.people;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.ShopTest;

/** Runs in a shop of its own: in a shared one, other tests' owners would let this one go. */
@ShopTest(properties = "trammel.test.database=last_owner")
class LastOwnerTest {

    @Autowired
    private People people;

    @Autowired
    private Roster roster;

    @Test
    void theShopKeepsAnOwner() {
        assertThatThrownBy(() ->
                        roster.giveRoles(people.act(people.owner()), people.owner(), EnumSet.of(Role.STATION_WORKER)))
                .hasMessageContaining("without an owner");
        assertThatThrownBy(() -> roster.leaves(people.act(people.owner()), people.owner()))
                .hasMessageContaining("without an owner");
    }
}
