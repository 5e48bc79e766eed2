package org.trammel.shop.settings;

import java.security.Principal;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.records.Act;

/** Who may change a setting. The crew stands above the settings and answers this from there. */
public interface SettingKeys {

    /**
     * Refuses unless the person who acts is an owner or QA lead.
     *
     * @param deed what is not done otherwise, as a sentence
     */
    void requireOwnerOrQa(Act act, String deed);

    /** Whether whoever is signed on may change one, so that nobody else is shown the form. */
    boolean opens(@Nullable Principal who);

    /** Names of everybody by id, to say who put a value in force. */
    Map<Long, String> names();
}
