package org.trammel.shop.coats;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How the lines of film stand on a frame.
 *
 * @param lines one for each of the finish, in its order
 * @param sprayedAt when the second colour was sprayed over them; null if it was not
 * @param until when the last of them must be off; null if nothing was sprayed over them
 */
public record FilmLines(
        List<Line> lines,
        @Nullable Instant sprayedAt,
        @Nullable Instant until) {

    /** @param last null if nothing was recorded since the frame was last stripped */
    public record Line(String name, @Nullable MaskLine last) {

        public boolean on() {
            return last != null && last.laid();
        }
    }

    /** Lines on which there is no film. */
    public List<String> off() {
        return lines.stream().filter(line -> !line.on()).map(Line::name).toList();
    }

    /** Lines on which there is film. */
    public List<String> on() {
        return lines.stream().filter(Line::on).map(Line::name).toList();
    }

    boolean late(Instant at) {
        return until != null && at.isAfter(until);
    }
}
