package org.trammel.shop.records;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) over a record's chain, position, previous seal and payload, as lower-case hexadecimal. */
final class Seal {

    /** Stands before the first record of a chain. */
    static final String NOTHING = "0".repeat(64);

    private Seal() {}

    static String of(String chain, long position, String previousHash, String payload) {
        return sha256(
                (chain + '\n' + position + '\n' + previousHash + '\n' + payload).getBytes(StandardCharsets.UTF_8));
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
