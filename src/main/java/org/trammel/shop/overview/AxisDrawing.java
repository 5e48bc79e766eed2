package org.trammel.shop.overview;

import org.springframework.stereotype.Component;

/** The time axis for a template, which writes its answers with {@code th:utext}. */
@Component("axis")
class AxisDrawing {

    public String head(Axis axis, String moment) {
        return axis.head(moment);
    }

    public String row(Axis axis, RunLine line) {
        return axis.row(line);
    }
}
