package org.trammel.shop.designs;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** The inputs that a check of the gate looks at, as a hash to tell whether they are still those of an answer. */
final class GateBasis {

    private final DesignSheet sheet;
    private final OrderTells.@Nullable Told told;
    private final String drawn;

    /**
     * The inputs of a revision and of its order.
     *
     * @param told null where no order tells anything
     */
    GateBasis(DesignSheet sheet, OrderTells.@Nullable Told told) {
        this.told = told;
        this.sheet = sheet;
        TreeMap<String, String> shape = new TreeMap<>(sheet.geometry());
        // How heavy its parts are says nothing about the room that a frame leaves.
        for (GeometryInput input : GeometryInput.values()) {
            if (input.group() == GeometryInput.Group.MASS) {
                shape.remove(input.code());
            }
        }
        this.drawn = sheet.metal() + "\n" + sheet.kind() + "\n" + shape;
    }

    /**
     * Of one check.
     *
     * @param figures what it shows: a limit that changed is another input
     */
    String of(GateCheck check, List<CheckFigure> figures) {
        StringBuilder limits = new StringBuilder();
        for (CheckFigure figure : figures) {
            // A limit that comes from the rider would tell of the rider: the setting and the rider's edition stand for
            // it.
            limits.append('\n')
                    .append(figure.label())
                    .append('|')
                    .append(
                            figure.personal()
                                    ? figure.setting() + "|" + figure.source() + "|" + rider()
                                    : figure.limit())
                    .append('|')
                    .append(figure.wanted());
        }
        return hash(inputs(check) + limits);
    }

    private String inputs(GateCheck check) {
        return switch (check) {
            case CLOSURE, TRAIL, TYRE_CLEARANCE, TOE_CLEARANCE, HEAD_NODES, MITRES, SEATPOST, OVERALL_LENGTH -> drawn;
            case NOMINALS -> drawn + "\n" + new TreeMap<>(sheet.nominals());
            case COMPONENTS -> drawn + "\n" + sheet.components();
            case TEST_FAMILY -> drawn + "\n" + sheet.testFamily() + "\n" + rider();
            case STANDOVER -> drawn + "\n" + rider();
            case RIDER_DATA -> rider();
            case COUNTRY -> told == null ? "" : told.country() + "\n" + told.frontBrakeLever();
            case DEPOSIT -> "";
        };
    }

    private String rider() {
        return told == null ? "" : Long.toString(told.riderEdition());
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
