package org.trammel.shop.records;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.stereotype.Component;

/** Who may read the log: those who answer for it, and the auditor. Who works here is known further up. */
@Component
class LogReaders {

    private static final List<String> KEEPERS = List.of("QA_LEAD", "OWNER");
    private static final String AUDITOR = "AUDITOR";

    /** Lets readers through. */
    void require(HttpServletRequest request) {
        if (!keeps(request) && !request.isUserInRole(AUDITOR)) {
            throw Refusal.person(
                    "The log is not shown.",
                    "It is for the QA lead, the owner and an auditor.",
                    "A frame's own story is on the frame's sheet.");
        }
    }

    /** Lets those through who answer for the log. */
    void requireKeeper(HttpServletRequest request) {
        if (!keeps(request)) {
            throw Refusal.person(
                    "No checkpoint was made.",
                    "It is for the QA lead and the owner.",
                    "One is made by itself from time to time.");
        }
    }

    boolean keeps(HttpServletRequest request) {
        return KEEPERS.stream().anyMatch(request::isUserInRole);
    }
}
