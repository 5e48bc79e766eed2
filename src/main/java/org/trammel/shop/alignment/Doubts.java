package org.trammel.shop.alignment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.calc.metrology.Contribution;
import org.trammel.calc.metrology.ErrorKind;
import org.trammel.calc.metrology.RawReading;
import org.trammel.shop.settings.Settings;

/** What makes a raw figure doubtful, by the settings of the shop: one cause for each line of the budget. */
@Component
class Doubts {

    private final Settings settings;

    Doubts(Settings settings) {
        this.settings = settings;
    }

    /** The raw figure of a spot with all that makes it doubtful. */
    RawReading height(Spot spot, RawLine line, String metal) {
        return height(spot, line, metal, false);
    }

    /** The same; where a tube is read from both sides its middle is, and how far out of round it is falls out. */
    RawReading height(Spot spot, RawLine line, String metal, boolean bothSides) {
        List<Contribution> causes = new ArrayList<>();
        causes.add(gauge(line));
        causes.add(own(ErrorKind.REPEATABILITY, "table.repeatability"));
        causes.add(sharedOrOwn(ErrorKind.PLATE, "table.plate"));
        causes.add(sharedOrOwn(ErrorKind.CLAMP, "table.clamp"));
        boolean mandrel = spot.group() == Spot.Group.MANDREL || spot.group() == Spot.Group.REAR_END || spot.side();
        boolean tube = !bothSides && (spot.group() == Spot.Group.SEAT_TUBE || spot.group() == Spot.Group.HEAD_TUBE);
        if (mandrel) {
            causes.add(own(ErrorKind.BAR, "table.mandrel"));
        } else if (tube) {
            causes.add(own(ErrorKind.OVALITY, "table.ovality"));
        }
        temperature(causes, line, metal);
        return new RawReading(spot.called(), mm(line), line.gauge(), causes);
    }

    RawReading length(Spot spot, RawLine line, String metal) {
        List<Contribution> causes = new ArrayList<>();
        causes.add(gauge(line));
        causes.add(own(ErrorKind.REPEATABILITY, "table.length"));
        temperature(causes, line, metal);
        return new RawReading(spot.called(), mm(line), line.gauge(), causes);
    }

    List<Contribution> point(RawLine line) {
        return List.of(gauge(line), own(ErrorKind.REPEATABILITY, "table.point"));
    }

    /** The height of the post where nobody read it. */
    RawReading post(BigDecimal post_mm) {
        return new RawReading(
                "middle of the shell on its post",
                post_mm.doubleValue(),
                "post",
                List.of(own(ErrorKind.POST, "table.post.u")));
    }

    /** A diameter as it was typed for the sheet: as good as a calliper that is set on a tube. */
    RawReading diameter(String name, double diameter_mm) {
        return new RawReading(name, diameter_mm, "sheet", List.of(own(ErrorKind.OVALITY, "table.ovality")));
    }

    double tilt_rad() {
        return Math.toRadians(settings.number("table.post.tilt").doubleValue());
    }

    private Contribution gauge(RawLine line) {
        double u = line.u_mm().doubleValue();
        return shared().contains(ErrorKind.GAUGE)
                ? Contribution.shared(ErrorKind.GAUGE, u, line.gauge())
                : Contribution.own(ErrorKind.GAUGE, u);
    }

    private Contribution own(ErrorKind kind, String key) {
        return Contribution.own(kind, settings.number(key).doubleValue());
    }

    private Contribution sharedOrOwn(ErrorKind kind, String key) {
        double u = settings.number(key).doubleValue();
        return shared().contains(kind) ? Contribution.shared(kind, u, "sheet") : Contribution.own(kind, u);
    }

    private void temperature(List<Contribution> causes, RawLine line, String metal) {
        double apart_K = settings.number("table.temperature").doubleValue();
        if (apart_K > 0) {
            causes.add(Contribution.temperature(mm(line), expansion_perK(metal), apart_K, "room"));
        }
    }

    /** That of the part less that of the gauge, which grows with it; of another metal it is not known. */
    private double expansion_perK(String metal) {
        return PushesNoted.METALS.contains(metal)
                ? settings.number("expansion." + metal)
                        .subtract(settings.number("gauge.expansion"))
                        .movePointLeft(6)
                        .doubleValue()
                : 0;
    }

    private Set<ErrorKind> shared() {
        return Arrays.stream(settings.text("table.shared").split(";"))
                .map(word -> word.strip().toUpperCase(Locale.ROOT))
                .filter(word -> Arrays.stream(ErrorKind.values())
                        .anyMatch(kind -> kind.name().equals(word)))
                .map(ErrorKind::valueOf)
                .collect(Collectors.toSet());
    }

    private static double mm(RawLine line) {
        return java.util.Objects.requireNonNull(line.mm()).doubleValue();
    }
}
