package org.trammel.shop.outside;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The people, tablets, stations and the gauge of a shop, written straight into the tables of an empty one, so that a
 * test can begin with thousands of frames. The people are signed on, each at a tablet of their own.
 */
public final class WrittenShop {

    /** Number of the one gauge; it reads every kind that {@link WrittenRoutes} asks for. */
    public static final String GAUGE = "CAL-1";

    static final String UNIT = "mm";
    static final String KIND = "CALLIPER";
    static final String U = "0.005";

    private static final String[] STATIONS = {"1", "2", "3", "4", "5", "6", "7", "8", "9"};

    private final Connection connection;
    private final List<Worker> workers = new ArrayList<>();
    private final LocalDate gaugeDueOn;
    private @Nullable Worker lead;
    private long gaugeId;
    private String photoSha256 = "";

    private WrittenShop(Connection connection, Instant now) {
        this.connection = connection;
        this.gaugeDueOn = now.atOffset(ZoneOffset.UTC).toLocalDate().plusDays(300);
    }

    /** Somebody who works at a tablet. */
    public record Worker(long personId, long deviceId, String token) {}

    /** Writes a shop with so many workers, each at a tablet that serves one station, an owner, and a QA lead at a tablet. */
    public static WrittenShop write(Connection connection, int workers, Instant now) throws SQLException {
        WrittenShop shop = new WrittenShop(connection, now);
        shop.stations();
        shop.people(workers, now);
        shop.gauge(now);
        shop.photo(now);
        return shop;
    }

    public List<Worker> workers() {
        return workers;
    }

    /** The QA lead, at a tablet too. */
    public Worker lead() {
        return Objects.requireNonNull(lead);
    }

    public long gaugeId() {
        return gaugeId;
    }

    LocalDate gaugeDueOn() {
        return gaugeDueOn;
    }

    /** What every photograph of the history shows. */
    String photoSha256() {
        return photoSha256;
    }

    private void photo(Instant now) throws SQLException {
        byte[] content = "not much of a photograph".getBytes(StandardCharsets.UTF_8);
        photoSha256 = sha256(content);
        Rows files = Rows.keyed(connection, "kept_file", "sha256, media_type, name, size_bytes, kept_at");
        files.put(photoSha256, "image/png", "photo.png", (long) content.length, now);
        files.end();
        Rows parts = Rows.numbered(connection, "kept_file_part", "file_sha256, part, content");
        parts.add(photoSha256, 0, content);
        parts.end();
    }

    private void stations() throws SQLException {
        Rows stations = Rows.keyed(
                connection,
                "station",
                "code, name, wip_limit, productive_hours_per_week, paper_only, position, version");
        for (int i = 0; i < STATIONS.length; i++) {
            stations.put(STATIONS[i], "Station " + STATIONS[i], 20, 40, false, i + 1, 0L);
        }
        stations.end();
    }

    private void people(int count, Instant now) throws SQLException {
        Rows persons = Rows.numbered(
                connection, "person", "initials, name, badge, joined_on, pin_one_time, password_one_time, version");
        Rows roles = Rows.keyed(connection, "person_role", "person_id, role");
        Rows devices =
                Rows.numbered(connection, "device", "kind, name, token_hash, made_at, made_by, token_at, version");
        Rows served = Rows.keyed(connection, "device_station", "device_id, station_code");
        Rows signOns = Rows.numbered(connection, "sign_on", "device_id, person_id, place, since, last_seen, open_key");
        roles.put(person(persons, "OW"), "OWNER");
        for (int i = -1; i < count; i++) {
            boolean leads = i < 0;
            String initials = leads ? "QA" : String.format(Locale.ROOT, "W%03d", i);
            long person = person(persons, initials);
            roles.put(person, leads ? "QA_LEAD" : "STATION_WORKER");
            String token = sha256(UUID.randomUUID().toString());
            long device = devices.add("TABLET", "Tablet " + initials, sha256(token), now, 0L, now, 0L);
            served.put(device, STATIONS[Math.max(i, 0) % STATIONS.length]);
            signOns.add(device, person, "DOER", now, now, device + ":DOER");
            Worker worker = new Worker(person, device, token);
            if (leads) {
                lead = worker;
            } else {
                workers.add(worker);
            }
        }
        for (Rows rows : List.of(persons, roles, devices, served, signOns)) {
            rows.end();
        }
        // A measurement or a hundred restarts take longer than a tablet is left alone.
        try (PreparedStatement longer = connection.prepareStatement("insert into setting (code, worth, source, reason,"
                + " by_person, since) values ('signon.lock.minutes', '120', 'test', 'nobody touches it', 0, ?)")) {
            longer.setObject(1, now.atOffset(ZoneOffset.UTC));
            longer.executeUpdate();
        }
    }

    private static long person(Rows persons, String initials) throws SQLException {
        return persons.add(initials, "Person " + initials, "B-" + initials, LocalDate.of(2020, 1, 1), false, false, 0L);
    }

    private void gauge(Instant now) throws SQLException {
        LocalDate since = now.atOffset(ZoneOffset.UTC).toLocalDate().minusDays(30);
        Rows gauges = Rows.numbered(
                connection,
                "gauge",
                "code, what, setup, aid, location, state, state_reason, state_since, calibrated_on, due_on, certificate,"
                        + " version");
        gaugeId = gauges.add(
                GAUGE, "Calliper", false, false, "bench", "IN_USE", "registered", now, since, gaugeDueOn, "C-1", 0L);
        gauges.end();
        Rows ranges = Rows.numbered(
                connection, "gauge_range", "gauge_id, kind, unit, lowest, highest, resolution, u, u_source");
        ranges.add(
                gaugeId,
                KIND,
                UNIT,
                new java.math.BigDecimal("-2000"),
                new java.math.BigDecimal("2000"),
                new java.math.BigDecimal("0.001"),
                new java.math.BigDecimal(U),
                "from memory");
        ranges.end();
        Rows calibrations = Rows.numbered(
                connection,
                "gauge_calibration",
                "gauge_id, calibrated_on, due_on, certificate, as_found, by_person, at");
        calibrations.add(gaugeId, since, gaugeDueOn, "C-1", "as it should be", 0L, now);
        calibrations.end();
    }

    private static String sha256(String text) {
        return sha256(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String sha256(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
