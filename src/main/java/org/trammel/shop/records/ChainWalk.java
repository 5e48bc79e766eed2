package org.trammel.shop.records;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.RowCallbackHandler;

/** Goes over the records of all chains, one chain after the other and each from its beginning. */
final class ChainWalk implements RowCallbackHandler {

    static final String RECORDS = "select id, chain, position, act_id, at, kind, subject, payload, previous_hash, hash,"
            + " place from log_entry order by chain, position";

    // Columns by number: a name is looked up for every value of every row.
    private static final int ID = 1;
    private static final int CHAIN = 2;
    private static final int POSITION = 3;
    private static final int ACT = 4;
    private static final int AT = 5;
    private static final int KIND = 6;
    private static final int SUBJECT = 7;
    private static final int PAYLOAD = 8;
    private static final int PREVIOUS = 9;
    private static final int HASH = 10;
    private static final int PLACE = 11;

    private final Findings findings;
    private final Seal.Stamp stamp = new Seal.Stamp();
    /** Acts of which a record in another chain is still to come, and how many. */
    private final Map<UUID, Integer> incomplete = new HashMap<>();

    private String chain = "";
    private long lastId;
    private long position;
    private String hash = Seal.NOTHING;
    private boolean faulty;

    ChainWalk(Findings findings) {
        this.findings = findings;
    }

    @Override
    public void processRow(ResultSet row) throws SQLException {
        String name = row.getString(CHAIN);
        if (!name.equals(chain)) {
            findings.chain();
            chain = name;
            lastId = 0;
            position = 0;
            hash = Seal.NOTHING;
            faulty = false;
        }
        findings.walked();
        String payload = row.getString(PAYLOAD);
        SealedPayload sealed = SealedPayload.of(payload);
        if (sealed != null && sealed.chains().size() > 1) {
            count(sealed);
        }
        if (!faulty) {
            String why = why(row, payload, sealed);
            if (why != null) {
                findings.fault(chain, row.getLong(POSITION), why);
                faulty = true;
            }
        }
    }

    /** After the last row: acts that lack the record of one of their chains. */
    void end() {
        incomplete.forEach((act, missing) -> findings.fault(
                "act " + act, missing, "So many of its records are missing: it touched more chains than have one."));
    }

    private void count(SealedPayload sealed) {
        int missing = incomplete.getOrDefault(sealed.act(), sealed.chains().size()) - 1;
        if (missing == 0) {
            incomplete.remove(sealed.act());
        } else {
            incomplete.put(sealed.act(), missing);
        }
    }

    private @Nullable String why(ResultSet row, String payload, @Nullable SealedPayload sealed) throws SQLException {
        long at = row.getLong(POSITION);
        if (at != position + 1) {
            return "Record " + (position + 1) + " is missing before it.";
        }
        if (!row.getString(PREVIOUS).equals(hash)) {
            return "It does not follow on the record before it.";
        }
        String seal = row.getString(HASH);
        if (!stamp.of(chain, at, hash, payload).equals(seal)) {
            return "Its content is not what was sealed.";
        }
        if (sealed == null) {
            return "Its content cannot be read.";
        }
        Instant when = row.getObject(AT, OffsetDateTime.class).toInstant();
        int place = row.getInt(PLACE);
        boolean columnsFit = sealed.act().equals(row.getObject(ACT, UUID.class))
                && sealed.at().equals(when)
                && sealed.kind().equals(row.getString(KIND))
                && sealed.subject().equals(row.getString(SUBJECT))
                && sealed.place() == place
                && place < sealed.chains().size()
                && sealed.chains().get(place).equals(chain);
        if (!columnsFit) {
            return "Its columns say otherwise than its sealed content.";
        }
        long id = row.getLong(ID);
        if (id <= lastId) {
            return "It was numbered before the record it follows.";
        }
        lastId = id;
        position = at;
        hash = seal;
        return null;
    }
}
