package org.trammel.shop.people;

import org.springframework.context.annotation.Primary;
import org.trammel.shop.Fixture;

/**
 * Hashes the secrets that tests give away by the thousand, at the least cost there is. What the shop's own cost is, and that
 * its hashes are checked at it, {@link SecretHashTest} shows.
 */
@Fixture
@Primary
class QuickHash extends SecretHash {

    QuickHash() {
        super(8, 1);
    }
}
