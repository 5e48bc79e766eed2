package org.trammel.shop.settings;

import java.util.Map;
import org.trammel.shop.records.Act;

/** Who may change a setting. The crew stands above the settings and answers this from there. */
public interface SettingKeys {

    /**
     * Refuses unless the person who acts is an owner or QA lead.
     *
     * @param deed what is not done otherwise, as a sentence
     */
    void requireOwnerOrQa(Act act, String deed);

    /** Names of everybody by id, to say who put a value in force. */
    Map<Long, String> names();
}
