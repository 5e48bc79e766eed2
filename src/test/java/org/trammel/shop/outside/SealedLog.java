package org.trammel.shop.outside;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HexFormat;
import java.util.UUID;

/**
 * The records of a history that is written in bulk, sealed as the service seals them: SHA-256 over chain, position,
 * previous seal and payload. Written apart from the service's own code, so that its verification is tried by a second
 * hand.
 */
public final class SealedLog {

    private static final String NOTHING = "0".repeat(64);

    private final Rows entries;
    private final Rows heads;
    private final MessageDigest digest;

    SealedLog(Connection connection) throws SQLException {
        entries = Rows.numbered(
                connection,
                "log_entry",
                "chain, position, act_id, at, kind, subject, payload, previous_hash, hash, place");
        heads = Rows.keyed(connection, "chain_head", "chain, position, hash");
        digest = digest();
    }

    /** What seals are made with. */
    public static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }

    /**
     * What is sealed of an act that touched one chain.
     *
     * @param events as JSON, parted by commas, their names in the order of the alphabet
     */
    public static String payload(
            String chain, UUID act, Instant at, long by, long device, String kind, String subject, String events) {
        return "{\"act\":\"" + act + "\",\"at\":\"" + at + "\",\"by\":" + by + ",\"chains\":[\"" + chain
                + "\"],\"device\":" + device + ",\"deviceAt\":null,\"events\":[" + events + "],\"kind\":\"" + kind
                + "\",\"place\":0,\"subject\":\"" + subject + "\"}";
    }

    /** The seal of a record. */
    public static String seal(MessageDigest digest, String chain, long position, String previous, String payload) {
        String sealed = chain + '\n' + position + '\n' + previous + '\n' + payload;
        return HexFormat.of().formatHex(digest.digest(sealed.getBytes(StandardCharsets.UTF_8)));
    }

    /** Begins the chain of a frame. */
    Chain chain(String name) {
        return new Chain(name);
    }

    void send() throws SQLException {
        heads.send();
        entries.send();
    }

    void end() throws SQLException {
        heads.end();
        entries.end();
    }

    long count() {
        return entries.count();
    }

    /** One chain, from its first record. */
    final class Chain {

        private final String name;
        private long position;
        private String hash = NOTHING;

        private Chain(String name) {
            this.name = name;
        }

        /**
         * Adds the record of an act that touched this chain only.
         *
         * @param event as JSON, its names in the order of the alphabet
         */
        void add(UUID act, Instant at, long by, long device, String kind, String subject, String event)
                throws SQLException {
            String payload = payload(name, act, at, by, device, kind, subject, event);
            position++;
            String previous = hash;
            hash = seal(digest, name, position, previous, payload);
            entries.add(name, position, act, at, kind, subject, payload, previous, hash, 0);
        }

        /** Writes where the chain stands. */
        void stand() throws SQLException {
            heads.put(name, position, hash);
        }
    }
}
