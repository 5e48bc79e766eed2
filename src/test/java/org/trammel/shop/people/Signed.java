package org.trammel.shop.people;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** Requests of tests whose subject is not signing on: {@code mvc.perform(get("/lots").with(Signed.on(crew.byId(id))))}. */
public final class Signed {

    private static final Instant NEVER = Instant.parse("2099-01-01T00:00:00Z");

    private Signed() {}

    /** Signed on at a desk. */
    public static RequestPostProcessor on(Person person) {
        return authentication(new SignedOnToken(who(person, null, false)));
    }

    /** Signed on at a tablet of these stations, with a second if one is given. */
    public static RequestPostProcessor atTablet(Person person, @Nullable Person second, String... stations) {
        return authentication(new SignedOnToken(who(person, second, true, stations)));
    }

    /** The principal of such a request. */
    public static SignedOn who(Person person, @Nullable Person second, boolean tablet, String... stations) {
        return new SignedOn(person, second, 1, tablet ? "T1" : "DESK-1", tablet, List.of(stations), NEVER);
    }
}
