package org.trammel.shop.designs;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.TreeMap;

/** The inputs that a check of the gate looks at, as a hash to tell whether they are still those of an answer. */
final class GateBasis {

    private final DesignSheet sheet;
    private final String drawn;

    GateBasis(DesignSheet sheet) {
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

    String of(GateCheck check) {
        return hash(
                switch (check) {
                    case CLOSURE,
                            TRAIL,
                            TYRE_CLEARANCE,
                            TOE_CLEARANCE,
                            STANDOVER,
                            HEAD_NODES,
                            MITRES,
                            SEATPOST,
                            OVERALL_LENGTH -> drawn;
                    case COMPONENTS -> drawn + "\n" + sheet.components();
                    case TEST_FAMILY -> drawn + "\n" + sheet.testFamily();
                    case RIDER_DATA, COUNTRY, DEPOSIT -> "";
                });
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
