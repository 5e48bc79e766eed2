package org.trammel.shop.materials;

import java.util.List;
import org.springframework.stereotype.Component;

/** Gives any sheet what a frame is made of: {@code th:replace="~{lots/made-of :: frame(${serial})}"}. */
@Component("madeOf")
class MadeOfLines {

    private final Lots lots;

    MadeOfLines(Lots lots) {
        this.lots = lots;
    }

    /** Public, as templates call it. */
    public List<MadeOf> of(String serial) {
        return lots.madeOf(serial);
    }

    /** Word and mark of a line's lot, as the list of lots has them. */
    public String mark(MadeOf line) {
        return switch (line.state()) {
            case QUARANTINED -> "waiting";
            case RELEASED -> "in-work";
            case BLOCKED -> "stopped";
            case USED_UP -> "done";
        };
    }
}
