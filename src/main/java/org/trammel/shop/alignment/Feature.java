package org.trammel.shop.alignment;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a point of an arm or probe lies on. */
public enum Feature {
    DRIVE_FACE("drive face of the shell"),
    NON_DRIVE_FACE("non-drive face of the shell"),
    SHELL_BORE("bore of the shell"),
    HEAD_TUBE("head tube, from its lower end"),
    HEAD_TUBE_ACROSS("head tube, right across the point of that name"),
    SEAT_TUBE("seat tube, from its lower end"),
    SEAT_TUBE_ACROSS("seat tube, right across the point of that name"),
    DRIVE_DROPOUT("inner face of the drive dropout"),
    NON_DRIVE_DROPOUT("inner face of the non-drive dropout"),
    DRIVE_AXLE_END("axle at the drive dropout"),
    NON_DRIVE_AXLE_END("axle at the non-drive dropout"),
    HEAD_TUBE_TOP("middle of the head tube's upper end");

    private final String words;

    Feature(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** As it is typed or stands in a file: blanks, hyphens and case do not matter. */
    static Optional<Feature> typed(String text) {
        String plain = text.strip().toUpperCase(Locale.ROOT).replaceAll("[\\s-]+", "_");
        return Arrays.stream(values()).filter(one -> one.name().equals(plain)).findFirst();
    }

    static String all() {
        return String.join(", ", List.of(values()).stream().map(Enum::name).toList());
    }
}
