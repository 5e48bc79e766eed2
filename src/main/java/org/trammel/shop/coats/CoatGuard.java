package org.trammel.shop.coats;

import java.math.BigDecimal;
import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.dew.DewMargin;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.Awaited;
import org.trammel.shop.web.Formats;

/**
 * Guards the operations that a finish names. A blast passes its gate with a whole record; masks are on before the step that
 * starts the clock of the coat; nothing is sprayed on metal too near the dew point, or without powder and earth.
 */
@Component
class CoatGuard implements Awaited {

    private final Finishes finishes;
    private final SurfaceRecords records;
    private final CoatGate coats;
    private final LineGate lines;
    private final CoatStrips strips;
    private final CoatColours colours;
    private final CoatFaults faults;
    private final Settings settings;
    private final Formats formats;
    private final Clock clock;

    CoatGuard(
            Finishes finishes,
            SurfaceRecords records,
            CoatGate coats,
            LineGate lines,
            CoatStrips strips,
            CoatColours colours,
            CoatFaults faults,
            Settings settings,
            Formats formats,
            Clock clock) {
        this.finishes = finishes;
        this.records = records;
        this.coats = coats;
        this.lines = lines;
        this.strips = strips;
        this.colours = colours;
        this.faults = faults;
        this.settings = settings;
        this.formats = formats;
        this.clock = clock;
    }

    @Override
    public Optional<Refusal> outstanding(AtItsGate operation) {
        Finish finish = guarding(operation);
        if (finish == null) {
            return Optional.empty();
        }
        return surface(operation, finish)
                .or(() -> lines.outstanding(operation, finish))
                .or(() -> coats.outstanding(operation, finish));
    }

    private Optional<Refusal> surface(AtItsGate operation, Finish finish) {
        if (!finish.blasts(operation.code()) && !finish.coats(operation.code())) {
            return Optional.empty();
        }
        SurfaceRecord record = records.of(operation.operationId(), finish);
        return finish.blasts(operation.code())
                ? first(
                        strip(operation, finish, operation.cannot()),
                        masks(record, operation.cannot()),
                        blast(record, operation.cannot()),
                        margin(record, operation.cannot(), false))
                : first(
                        margin(record, operation.cannot(), false),
                        spray(operation, record, finish, operation.cannot(), false));
    }

    @Override
    public Optional<Refusal> before(AtItsGate operation, NoWayBack step) {
        Finish finish = guarding(operation);
        if (finish == null) {
            return Optional.empty();
        }
        String cannot = "“" + step.text() + "” of " + operation.mark() + " was not ticked.";
        SurfaceRecord record = records.of(operation.operationId(), finish);
        if (finish.blasts(operation.code())) {
            return step.startsClock() == null
                    ? Optional.empty()
                    : first(strip(operation, finish, cannot), masks(record, cannot));
        }
        if (!step.first()) {
            return Optional.empty();
        }
        Optional<Refusal> film = lines.before(operation, finish, cannot);
        return film.isPresent() || !finish.coats(operation.code())
                ? film
                : first(margin(record, cannot, true), spray(operation, record, finish, cannot, true));
    }

    private @Nullable Finish guarding(AtItsGate operation) {
        return operation.doneOutside()
                ? null
                : finishes.guarding(operation.code(), operation.metal(), operation.begunAt())
                        .orElse(null);
    }

    private @Nullable Refusal strip(AtItsGate operation, Finish finish, String cannot) {
        return strips.of(operation.operationId()).isPresent() || !strips.finds(operation.travellerId(), finish)
                ? null
                : Refusal.state(
                        cannot,
                        "It was sprayed before, and it is not recorded how that coat came off.",
                        "Strip it and say how on the sheet of the coat. What heat it has seen stays on its record.");
    }

    private static @Nullable Refusal masks(SurfaceRecord record, String cannot) {
        return record.bare().isEmpty()
                ? null
                : Refusal.state(
                        cannot,
                        "Not masked: " + String.join(", ", record.bare()) + ".",
                        "Cover each and tick it on the sheet of the coat.");
    }

    private @Nullable Refusal blast(SurfaceRecord record, String cannot) {
        SurfaceRecord.Blast blast = record.blast();
        if (blast == null) {
            return Refusal.state(
                    cannot,
                    "It is not recorded what it was blasted with and how clean it is.",
                    "Scan the media and enter pressure and cleanliness on the sheet of the coat.");
        }
        return blast.gentle()
                ? null
                : Refusal.state(
                        cannot,
                        "It was blasted at " + bare(blast.pressure_bar()) + " bar; at most " + bare(blast.most_bar())
                                + " bar are allowed.",
                        "Look for pits and thinned walls, and call the QA lead. Blasted again, it is recorded again.");
    }

    private @Nullable Refusal margin(SurfaceRecord record, String cannot, boolean now) {
        DewMargin air = record.air();
        if (air == null) {
            return Refusal.state(
                    cannot,
                    "Air and metal were not measured at this operation.",
                    "Measure air, humidity and metal on the sheet of the coat.");
        }
        if (!air.enough()) {
            return Refusal.state(
                    cannot,
                    "The metal is at " + bare(air.metal_degC()) + " °C. In air of " + bare(air.air_degC()) + " °C and "
                            + bare(air.humidity_percent()) + " % the " + air.pointInFull() + ", is "
                            + formats.number(air.point_degC(), 1) + " °C: the metal lies "
                            + formats.number(air.margin_K(), 2) + " K above it, and "
                            + bare(air.wanted_K()) + " K are asked for (" + air.source() + ").",
                    "Wait until the metal is at " + formats.number(air.leastMetal_degC(), 1)
                            + " °C, or dry the air, and measure again. The clock of the blast does not stop.");
        }
        int minutes = settings.whole("coat.margin.minutes");
        return now && air.olderThan(minutes, clock.instant())
                ? Refusal.state(
                        cannot,
                        "Air and metal were measured at " + formats.time(air.at()) + ", more than " + minutes
                                + " min ago.",
                        "Measure them once more right before the coat.")
                : null;
    }

    private @Nullable Refusal spray(
            AtItsGate operation, SurfaceRecord record, Finish finish, String cannot, boolean now) {
        SurfaceRecord.Spray spray = record.spray();
        BigDecimal most = finish.content().mostEarth_MOhm();
        if (spray == null) {
            return Refusal.state(
                    cannot,
                    "Its powder or paint was not scanned" + (most == null ? "." : ", and its earth was not measured."),
                    "Do both on the sheet of the coat.");
        }
        if (!spray.earthed(most)) {
            return Refusal.state(
                    cannot,
                    spray.earth_MOhm() == null
                            ? "Its earth was not measured."
                            : "From hook to frame are " + bare(spray.earth_MOhm()) + " MΩ; at most " + bare(most)
                                    + " MΩ are allowed.",
                    "Clean the hook and the ground spot, and measure again.");
        }
        return now && spray.expired(settings.today())
                ? Refusal.state(
                        cannot,
                        spray.lot() + " was to be used until " + formats.date(spray.expiresOn()) + ".",
                        "Scan another lot on the sheet of the coat.")
                : colour(operation, spray.lot(), finish, cannot);
    }

    /** Of another colour than was ordered it stays where a concession says so of this lot and this order. */
    private @Nullable Refusal colour(AtItsGate operation, String lot, Finish finish, String cannot) {
        Refusal other = colours.differs(operation.travellerId(), operation.code(), finish, lot, cannot);
        return other != null
                        && faults.about(operation.serial(), other.why()).stream()
                                .anyMatch(faults::concession)
                ? null
                : other;
    }

    private String bare(@Nullable BigDecimal figure) {
        return figure == null ? "" : formats.number(figure.stripTrailingZeros());
    }

    private static Optional<Refusal> first(@Nullable Refusal... found) {
        for (Refusal one : found) {
            if (one != null) {
                return Optional.of(one);
            }
        }
        return Optional.empty();
    }
}
