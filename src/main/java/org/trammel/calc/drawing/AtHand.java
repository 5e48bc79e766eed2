package org.trammel.calc.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.trammel.calc.geometry.SideView.Part;

/**
 * The parts of a frame that a step of work is about, as the words of the step name them: "Node 4: top tube to head tube"
 * names a top tube, and the joint where it ends on the head tube.
 *
 * @param words as they stand on the drawing
 * @param parts in the order they are named; never empty
 */
public record AtHand(String words, List<Part> parts) {

    /** A word, and the parts it may mean on one frame or another. */
    private static final Map<String, List<Part>> NAMED = new LinkedHashMap<>();

    static {
        NAMED.put("down tube", List.of(Part.DOWN_TUBE));
        NAMED.put("top tube", List.of(Part.TOP_TUBE));
        NAMED.put("seat tube", List.of(Part.SEAT_TUBE));
        NAMED.put("head tube", List.of(Part.HEAD_TUBE));
        NAMED.put("chainstay", List.of(Part.CHAINSTAY, Part.SWING_ARM));
        NAMED.put("seatstay", List.of(Part.SEATSTAY, Part.SWING_ARM));
        NAMED.put("swing arm", List.of(Part.SWING_ARM));
        NAMED.put("swingarm", List.of(Part.SWING_ARM));
        NAMED.put("shock", List.of(Part.SHOCK_EYE));
        NAMED.put("pivot", List.of(Part.PIVOT));
        NAMED.put("dropout", List.of(Part.REAR_AXLE));
        NAMED.put("rear axle", List.of(Part.REAR_AXLE));
        NAMED.put("shell", List.of(Part.SHELL));
    }

    public AtHand {
        parts = List.copyOf(parts);
    }

    private record Found(int from, int to, List<Part> parts) {}

    /**
     * What a text names of a frame; without parts where it names none that this frame has.
     *
     * @param text of a step, or the name of what is measured
     * @param there the parts that the frame's view has
     */
    static AtHand in(String text, List<Part> there) {
        String low = text.toLowerCase(Locale.ROOT);
        List<Found> found = new ArrayList<>();
        NAMED.forEach((word, parts) -> {
            Matcher place = Pattern.compile("\\b" + word + "s?\\b").matcher(low);
            if (place.find()) {
                parts.stream()
                        .filter(there::contains)
                        .findFirst()
                        .ifPresent(part -> found.add(new Found(place.start(), place.end(), List.of(part))));
            }
        });
        found.sort(Comparator.comparingInt(Found::from));
        if (found.isEmpty()) {
            return new AtHand("", List.of());
        }
        List<Part> parts = found.stream()
                .flatMap(one -> one.parts().stream())
                .distinct()
                .limit(2)
                .toList();
        int last = found.size() == 1 ? found.get(0).to() : found.get(1).to();
        return new AtHand(low.substring(found.get(0).from(), last), parts);
    }

    /** Whether the text names a part of the frame. */
    boolean named() {
        return !parts.isEmpty();
    }
}
