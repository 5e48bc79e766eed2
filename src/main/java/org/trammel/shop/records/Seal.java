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
        return new Stamp().of(chain, position, previousHash, payload);
    }

    static String sha256(byte[] bytes) {
        return HexFormat.of().formatHex(digest().digest(bytes));
    }

    static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }

    /** Makes seals one after the other. */
    static final class Stamp {

        private final MessageDigest digest = digest();

        String of(String chain, long position, String previousHash, String payload) {
            String sealed = chain + '\n' + position + '\n' + previousHash + '\n' + payload;
            return HexFormat.of().formatHex(digest.digest(sealed.getBytes(StandardCharsets.UTF_8)));
        }
    }
}
