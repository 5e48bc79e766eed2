package org.trammel.shop.designs;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The inputs that a check of the gate looks at, as a hash to tell whether they are still those of an answer. */
final class GateBasis {

    private final DesignSheet sheet;
    private final OrderTells.@Nullable Told told;

    /**
     * The inputs of a revision and of its order.
     *
     * @param told null where no order tells anything
     */
    GateBasis(DesignSheet sheet, OrderTells.@Nullable Told told) {
        this.told = told;
        this.sheet = sheet;
    }

    /**
     * Of one check.
     *
     * @param figures what it shows: a limit that changed is another input, and so is a figure that changed by whatever
     *     it follows from
     * @param open why figures are missing, or what cannot be
     */
    String of(GateCheck check, List<CheckFigure> figures, List<String> open) {
        StringBuilder shown = new StringBuilder();
        for (CheckFigure figure : figures) {
            // A figure that comes from the rider would tell of the rider: the setting and the rider's edition stand for
            // it.
            shown.append('\n')
                    .append(figure.label())
                    .append('|')
                    .append(
                            figure.personal()
                                    ? figure.setting() + "|" + figure.source() + "|" + rider()
                                    : figure.value() + "|" + figure.limit())
                    .append('|')
                    .append(figure.said())
                    .append('|')
                    .append(figure.wanted());
        }
        open.forEach(words -> shown.append('\n').append(words));
        return hash(inputs(check) + shown);
    }

    private String inputs(GateCheck check) {
        return switch (check) {
            case CLOSURE,
                    TYRE_CLEARANCE,
                    TYRE_STAYS,
                    SWING,
                    TOE_CLEARANCE,
                    HEAD_NODES,
                    MITRES,
                    SEATPOST,
                    OVERALL_LENGTH -> drawn(check);
            case TRAIL -> drawn(check) + "\n" + (told == null ? "" : told.category());
            case NOMINALS -> drawn(check) + "\n" + new TreeMap<>(sheet.nominals());
            case COMPONENTS -> drawn(check) + "\n" + sheet.components();
            case TEST_FAMILY -> drawn(check) + "\n" + sheet.testFamily() + "\n" + rider();
            case STANDOVER -> drawn(check) + "\n" + rider();
            case RIDER_DATA -> rests(check) + "\n" + rider();
            case COUNTRY -> told == null ? "" : told.country() + "\n" + told.frontBrakeLever();
            case DEPOSIT -> "";
        };
    }

    private String drawn(GateCheck check) {
        return sheet.metal() + "\n" + sheet.kind() + "\n" + rests(check);
    }

    private Map<String, String> rests(GateCheck check) {
        Map<String, String> rests = new TreeMap<>();
        for (GeometryInput input : GateInputs.of(check)) {
            String amount = sheet.geometry().get(input.code());
            if (amount != null) {
                rests.put(input.code(), amount);
            }
        }
        return rests;
    }

    private String rider() {
        return told == null ? "" : Long.toString(told.riderEdition());
    }

    /** Of the drawing that a customer approves: what a frame is built from and with, not what it should weigh. */
    static String drawing(String metal, String kind, Map<String, String> geometry, List<Component> components) {
        Map<String, String> inputs = new TreeMap<>(geometry);
        Arrays.stream(GeometryInput.values())
                .filter(input -> input.group() == GeometryInput.Group.MASS)
                .forEach(input -> inputs.remove(input.code()));
        return hash(metal + "\n" + kind + "\n" + inputs + "\n" + components);
    }

    private static String hash(String inputs) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(inputs.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
