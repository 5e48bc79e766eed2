package org.trammel.shop.travellers;

/** The short name of a frame, as it stands on its tag: last three digits, a dash, the check character. */
final class Marks {

    private Marks() {}

    /**
     * Mark of a serial such as AB270423 with part FT: 042-3 FT.
     *
     * @param serial stored form, without dashes; anything shorter than four characters is its own mark
     */
    static String of(String serial, String part) {
        int end = serial.length() - 1;
        String mark = end < 3 ? serial : serial.substring(end - 3, end) + "-" + serial.charAt(end);
        return part.isEmpty() ? mark : mark + " " + part;
    }
}
