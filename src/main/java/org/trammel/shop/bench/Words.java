package org.trammel.shop.bench;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.routes.ClockKind;
import org.trammel.shop.travellers.CharacteristicState;
import org.trammel.shop.travellers.ClockState;
import org.trammel.shop.travellers.ClockView;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.web.Formats;

/** How a station says things: limits, clocks, operations, metals, marks. Templates know it as {@code @said}. */
@Component("said")
class Words {

    private final Formats formats;

    Words(Formats formats) {
        this.formats = formats;
    }

    /** Letter of a characteristic in its flag: a, b, … z, aa, … */
    static String letter(int index) {
        String last = String.valueOf((char) ('a' + index % 26));
        return index < 26 ? last : letter(index / 26 - 1) + last;
    }

    /** Nominal and limits as they stand on a drawing: 42,00 ±0,10 mm; 95 HB or more; 120 °C or less. */
    String limits(FrameSheet.CharacteristicLine c) {
        if (c.blind()) {
            return "read blind";
        }
        return CharacteristicSheet.isAnswered(c.unit())
                ? "yes to each"
                : limits(c.nominal(), c.lowerLimit(), c.upperLimit(), c.unit(), c.decimals());
    }

    String limits(
            @Nullable BigDecimal nominal,
            @Nullable BigDecimal lower,
            @Nullable BigDecimal upper,
            String unit,
            int decimals) {
        int least = decimals(nominal, lower, upper, decimals);
        if (lower == null && upper == null) {
            return nominal == null ? "noted, " + unit : formats.with(nominal, least, unit) + ", noted";
        }
        if (lower == null) {
            return formats.with(upper, least, unit) + " or less";
        }
        if (upper == null) {
            return formats.with(lower, least, unit) + " or more";
        }
        if (nominal == null) {
            return formats.number(lower, least) + " to " + formats.with(upper, least, unit);
        }
        BigDecimal below = nominal.subtract(lower);
        BigDecimal above = upper.subtract(nominal);
        if (below.compareTo(above) == 0) {
            String both = "±" + formats.with(above, least, unit);
            return nominal.signum() == 0 ? both : formats.number(nominal, least) + " " + both;
        }
        return formats.number(nominal, least) + " " + formats.signed(above, least) + "/"
                + formats.with(below.negate(), below.signum() == 0 ? 0 : least, unit);
    }

    /** Decimals in which limits are written: as many as they have, one less than is read, whichever is more. */
    static int decimals(
            @Nullable BigDecimal nominal, @Nullable BigDecimal lower, @Nullable BigDecimal upper, int read) {
        return Stream.of(nominal, lower, upper)
                .flatMap(Stream::ofNullable)
                .mapToInt(Words::places)
                .reduce(Math.max(0, read - 1), Math::max);
    }

    private static int places(BigDecimal figure) {
        return Math.max(0, figure.stripTrailingZeros().scale());
    }

    /** A clock that runs or ran out; null if there is nothing to say of it. */
    FrameView.@Nullable ClockLine clock(ClockView clock, Instant now) {
        Instant ends = clock.endsAt();
        if (ends == null || clock.state() != ClockState.RUNNING && clock.state() != ClockState.RUN_OUT) {
            return null;
        }
        boolean window = clock.kind() == ClockKind.WINDOW;
        String name = clock.name().substring(0, 1).toUpperCase(Locale.ROOT)
                + clock.name().substring(1);
        return new FrameView.ClockLine(
                name + (window ? " closes in" : " ends in"),
                ends,
                name + (window ? " closed" : " over since"),
                clock.closedAt(now) ? "stopped" : clock.waitingAt(now) ? "waiting" : window ? "in-work" : "done");
    }

    /** Operation with its loop: 100, or 100 loop 2. */
    static String called(FrameSheet.OperationLine operation) {
        return operation.loop() == 0 ? operation.code() : operation.code() + " loop " + operation.loop();
    }

    /** Kind of the state mark of an operation. */
    public String mark(OperationState state) {
        return switch (state) {
            case WAITING -> "waiting";
            case IN_WORK -> "in-work";
            case STOPPED -> "stopped";
            case AWAY -> "sent";
            case AT_POINT -> "hold";
            case DONE -> "done";
            case REPEATED -> "rework";
        };
    }

    /** Kind of the state mark of a characteristic. */
    static String mark(CharacteristicState state) {
        return switch (state) {
            case OPEN, FIRST_READ, OWN_SHEET -> "waiting";
            case CONFORMING -> "conforming";
            case NOT_CONFORMING -> "not-conforming";
            case UNDECIDED -> "undecided";
            case INFORMATION -> "done";
            case CONCESSION -> "concession";
        };
    }
}
