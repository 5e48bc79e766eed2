package org.trammel.shop.records;

import java.util.Map;

/** Who is meant by the ids in the log. People are known further up, so that module answers. */
public interface PersonInitials {

    /** Initials of everybody who works or worked here, by id. */
    Map<Long, String> all();
}
