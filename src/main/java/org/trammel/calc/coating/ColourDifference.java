package org.trammel.calc.coating;

import org.trammel.calc.units.Answer;

/**
 * How far a colour lies from another.
 *
 * <pre>
 * ΔE*ab = √(ΔL*² + Δa*² + Δb*²)
 * ΔE00  = √((ΔL'/SL)² + (ΔC'/SC)² + (ΔH'/SH)² + RT (ΔC'/SC)(ΔH'/SH))      kL = kC = kH = 1
 * </pre>
 *
 * Without unit; about 1 is the least that is seen side by side. Source: ISO/CIE 11664-4 and 11664-6; terms as in Sharma, Wu,
 * Dalal, Color Research and Application 30 (2005) 21.
 *
 * @param ab ΔE*ab of 1976
 * @param e00 ΔE00 of 2000
 */
public record ColourDifference(double ab, double e00) {

    private static final double SEVENTH_POWER_OF_25 = 6_103_515_625.0;
    private static final double GREATEST = 200;

    /**
     * A colour in CIELAB.
     *
     * @param l lightness, 0 to 100
     * @param a from green to red
     * @param b from blue to yellow
     */
    public record Lab(double l, double a, double b) {}

    /** Compares; the order of the two makes no difference. */
    public static Answer<ColourDifference> of(Lab one, Lab two) {
        for (Lab colour : new Lab[] {one, two}) {
            if (!(colour.l() >= 0 && colour.l() <= 100)) {
                return Answer.none("l", "A lightness of " + colour.l() + " does not lie from 0 to 100.");
            }
            if (!(Math.abs(colour.a()) <= GREATEST && Math.abs(colour.b()) <= GREATEST)) {
                return Answer.none(
                        "ab", "A colour of a* " + colour.a() + " and b* " + colour.b() + " lies beyond ±200.");
            }
        }
        double ab = Math.sqrt(square(one.l() - two.l()) + square(one.a() - two.a()) + square(one.b() - two.b()));
        return Answer.of(new ColourDifference(ab, e00(one, two)));
    }

    private static double e00(Lab one, Lab two) {
        double chroma = (Math.hypot(one.a(), one.b()) + Math.hypot(two.a(), two.b())) / 2;
        double g = 0.5 * (1 - Math.sqrt(ratio(chroma)));
        double a1 = (1 + g) * one.a();
        double a2 = (1 + g) * two.a();
        double c1 = Math.hypot(a1, one.b());
        double c2 = Math.hypot(a2, two.b());
        double h1 = hue_deg(a1, one.b());
        double h2 = hue_deg(a2, two.b());
        boolean grey = c1 * c2 == 0;
        double dh = grey ? 0 : h2 - h1;
        dh += dh > 180 ? -360 : dh < -180 ? 360 : 0;
        double dHue = 2 * Math.sqrt(c1 * c2) * Math.sin(Math.toRadians(dh / 2));
        double meanC = (c1 + c2) / 2;
        double meanH = grey ? h1 + h2 : meanHue_deg(h1, h2);
        double t = 1
                - 0.17 * cos(meanH - 30)
                + 0.24 * cos(2 * meanH)
                + 0.32 * cos(3 * meanH + 6)
                - 0.20 * cos(4 * meanH - 63);
        double off = square((one.l() + two.l()) / 2 - 50);
        double sl = 1 + 0.015 * off / Math.sqrt(20 + off);
        double sc = 1 + 0.045 * meanC;
        double sh = 1 + 0.015 * meanC * t;
        double turn = 30 * Math.exp(-square((meanH - 275) / 25));
        double rt = -2 * Math.sqrt(ratio(meanC)) * Math.sin(Math.toRadians(2 * turn));
        double l = (two.l() - one.l()) / sl;
        double c = (c2 - c1) / sc;
        double h = dHue / sh;
        return Math.sqrt(Math.max(0, l * l + c * c + h * h + rt * c * h));
    }

    private static double meanHue_deg(double h1, double h2) {
        if (Math.abs(h1 - h2) <= 180) {
            return (h1 + h2) / 2;
        }
        return h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
    }

    private static double ratio(double chroma) {
        double seventh = Math.pow(chroma, 7);
        return seventh / (seventh + SEVENTH_POWER_OF_25);
    }

    private static double hue_deg(double a, double b) {
        double hue = a == 0 && b == 0 ? 0 : Math.toDegrees(Math.atan2(b, a));
        return hue < 0 ? hue + 360 : hue;
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }

    private static double square(double value) {
        return value * value;
    }
}
