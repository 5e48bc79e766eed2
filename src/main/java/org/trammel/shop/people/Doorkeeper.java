package org.trammel.shop.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.stations.Devices;

/**
 * Finds out, in one statement, which device a token belongs to and who is signed on at it. Plain SQL, because every
 * request of the shop passes here.
 */
@Component
class Doorkeeper {

    /** Nobody stays signed on longer than a long shift without keying the secret again. */
    private static final Duration LONGEST = Duration.ofHours(12);

    private static final String WHO = """
            select d.id, d.name, d.kind, ds.station_code, s.place, s.since, s.last_seen,
              p.id as person_id, p.initials, p.name as person_name, f.role
            from device d
            left join device_station ds on ds.device_id = d.id
            left join sign_on s on s.device_id = d.id and s.ended_at is null
            left join person p on p.id = s.person_id and p.left_on is null
            left join (%s) f on f.person_id = p.id
            where d.token_hash = :hash and d.withdrawn_at is null
            """.formatted(PersonRepository.ROLES_IN_FORCE);

    private final JdbcClient jdbc;
    private final Settings settings;
    private final LastSeen lastSeen;
    private final Clock clock;

    Doorkeeper(JdbcClient jdbc, Settings settings, LastSeen lastSeen, Clock clock) {
        this.jdbc = jdbc;
        this.settings = settings;
        this.lastSeen = lastSeen;
        this.clock = clock;
    }

    Optional<AtTheDoor> who(String token) {
        List<Line> lines = jdbc.sql(WHO)
                .param("hash", Devices.hash(token))
                .param("today", settings.today())
                .query((row, number) -> Line.of(row))
                .list();
        return lines.isEmpty() ? Optional.empty() : Optional.of(together(lines));
    }

    private AtTheDoor together(List<Line> lines) {
        Line device = lines.get(0);
        Set<String> stations = new TreeSet<>();
        Map<Place, Line> places = new EnumMap<>(Place.class);
        Map<Place, Set<Role>> roles = new EnumMap<>(Place.class);
        for (Line line : lines) {
            if (line.station != null) {
                stations.add(line.station);
            }
            if (line.place != null && line.personId != null) {
                places.put(line.place, line);
                Set<Role> held = roles.computeIfAbsent(line.place, place -> EnumSet.noneOf(Role.class));
                if (line.role != null) {
                    held.add(line.role);
                }
            }
        }
        Person doer = person(places.get(Place.DOER), roles.get(Place.DOER));
        Person second = person(places.get(Place.SECOND), roles.get(Place.SECOND));
        List<String> served = List.copyOf(stations);
        Line place = places.get(Place.DOER);
        if (doer == null || place == null) {
            return new AtTheDoor(device.deviceId, device.deviceName, device.tablet, served, null, null);
        }
        Instant locksAt = locksAt(device.deviceId, device.tablet, place.since, place.lastSeen);
        if (!clock.instant().isBefore(locksAt)) {
            return new AtTheDoor(device.deviceId, device.deviceName, device.tablet, served, null, doer);
        }
        SignedOn signedOn =
                new SignedOn(doer, second, device.deviceId, device.deviceName, device.tablet, served, locksAt);
        return new AtTheDoor(device.deviceId, device.deviceName, device.tablet, served, signedOn, null);
    }

    /** When a sign-on locks: some minutes after the last use, and after a long shift in any case. */
    Instant locksAt(long deviceId, boolean tablet, Instant since, Instant written) {
        int minutes = settings.whole(tablet ? "signon.lock.minutes" : "signon.desk.minutes");
        Instant idle = lastSeen.of(deviceId, written).plus(Duration.ofMinutes(minutes));
        Instant longest = since.plus(LONGEST);
        return idle.isBefore(longest) ? idle : longest;
    }

    private static @Nullable Person person(@Nullable Line line, @Nullable Set<Role> roles) {
        return line == null || line.personId == null || roles == null
                ? null
                : new Person(line.personId, line.initials, line.personName, roles, true);
    }

    private record Line(
            long deviceId,
            String deviceName,
            boolean tablet,
            @Nullable String station,
            @Nullable Place place,
            Instant since,
            Instant lastSeen,
            @Nullable Long personId,
            String initials,
            String personName,
            @Nullable Role role) {

        static Line of(ResultSet row) throws SQLException {
            String place = row.getString("place");
            String role = row.getString("role");
            long person = row.getLong("person_id");
            return new Line(
                    row.getLong("id"),
                    row.getString("name"),
                    row.getString("kind").equals("TABLET"),
                    row.getString("station_code"),
                    place == null ? null : Place.valueOf(place),
                    instant(row, "since"),
                    instant(row, "last_seen"),
                    person == 0 ? null : person,
                    text(row, "initials"),
                    text(row, "person_name"),
                    role == null ? null : Role.valueOf(role));
        }

        private static Instant instant(ResultSet row, String column) throws SQLException {
            OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
            return time == null ? Instant.EPOCH : time.toInstant();
        }

        private static String text(ResultSet row, String column) throws SQLException {
            String text = row.getString(column);
            return text == null ? "" : text;
        }
    }
}
