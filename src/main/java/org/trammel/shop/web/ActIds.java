package org.trammel.shop.web;

import java.util.UUID;
import org.springframework.stereotype.Component;

/** Fresh ids for the forms of a page: one form, one act. Templates know it as {@code @actIds}. */
@Component("actIds")
class ActIds {

    public UUID fresh() {
        return UUID.randomUUID();
    }
}
