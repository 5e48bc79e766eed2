package org.trammel.shop.stations;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;

/** The tablets and desks that acts are done at. A device is known by a random token that its browser keeps. */
@Service
@Transactional
public class Devices {

    /** Without the letters and digits that are taken for one another. */
    private static final String ALPHABET = "23456789ABCDEFGHJKMNPQRSTVWXYZ";

    private final DeviceRepository devices;
    private final EnrolmentCodeRepository codes;
    private final Stations stations;
    private final ActLog log;
    private final ShopKeys keys;
    private final SecureRandom random = new SecureRandom();

    Devices(DeviceRepository devices, EnrolmentCodeRepository codes, Stations stations, ActLog log, ShopKeys keys) {
        this.devices = devices;
        this.codes = codes;
        this.stations = stations;
        this.log = log;
        this.keys = keys;
    }

    /** A device and the token its browser must keep; the token is not stored and cannot be shown again. */
    public record Enrolled(Device device, String token) {}

    /** A code to type at the tablet; it is not stored and cannot be shown again. */
    public record Code(Device device, String code, Instant expiresAt) {}

    /** All tablets, the withdrawn too. */
    @Transactional(readOnly = true)
    public List<Device> tablets() {
        return devices.findByKindOrderById(DeviceRow.Kind.TABLET).stream()
                .map(DeviceRow::sheet)
                .toList();
    }

    @Transactional(readOnly = true)
    public Optional<Device> byId(long id) {
        return devices.findById(id).map(DeviceRow::sheet);
    }

    /** The device whose browser keeps this token, unless it was withdrawn. */
    @Transactional(readOnly = true)
    public Optional<Device> byToken(String token) {
        return devices.findByTokenHash(hash(token))
                .filter(row -> !row.withdrawn())
                .map(DeviceRow::sheet);
    }

    /**
     * Names a tablet and makes the code that is typed on it once, within 15 minutes. For a tablet that is known
     * already, the code moves its name to another piece of hardware; the old one loses it when the code is used.
     */
    public Code admit(Act act, String name, Collection<String> stationCodes) {
        if (!log.opens(act, "admit-tablet", "tablet:" + name, Chains.SHOP)) {
            throw Refusal.state(
                    "No code was made.",
                    "This act made one already, and a code is shown only once.",
                    "Ask for a new code.");
        }
        keys.requireOwnerOrQa(act, "No code was made.");
        if (!name.matches("[A-Z0-9][A-Z0-9-]{0,11}") || name.startsWith("DESK")) {
            throw Refusal.input(
                    "name",
                    "No code was made.",
                    "A tablet's name is 1 to 12 capital letters, digits and hyphens.",
                    "Name it the way it is labelled, such as T3.");
        }
        stationCodes.forEach(stations::byCode);
        DeviceRow row = devices.findByName(name)
                .orElseGet(() ->
                        devices.save(new DeviceRow(DeviceRow.Kind.TABLET, name, stationCodes, act.at(), act.by())));
        row.serves(stationCodes);
        row.takeBack();
        String code = code(8);
        EnrolmentCode made = codes.save(new EnrolmentCode(row.id(), hash(code), act.at(), act.by()));
        log.event(
                Chains.SHOP,
                "tablet-admitted",
                Map.of(
                        "device",
                        row.id(),
                        "stations",
                        stationCodes.stream().sorted().toList()));
        return new Code(row.sheet(), code.substring(0, 4) + "-" + code.substring(4), made.expiresAt());
    }

    /**
     * Takes a code typed at a tablet.
     *
     * @return nothing if the code is unknown, used or too old; the three cases look the same to who guesses
     */
    public Optional<Enrolled> enrol(Act act, String typed) {
        Optional<EnrolmentCode> open = codes.lock(
                        hash(typed.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "")))
                .filter(code -> code.open(act.at()));
        if (open.isEmpty()) {
            return Optional.empty();
        }
        EnrolmentCode code = open.get();
        Act byMaker = new Act(act.id(), code.madeBy(), code.deviceId(), act.at(), act.deviceAt());
        if (!log.opens(byMaker, "enrol-tablet", "device:" + code.deviceId(), Chains.SHOP)) {
            return Optional.empty();
        }
        code.use(act.at());
        DeviceRow row = devices.lock(code.deviceId()).orElseThrow();
        String token = token();
        row.carries(hash(token), act.at());
        log.event(Chains.SHOP, "tablet-enrolled", Map.of("device", row.id()));
        return Optional.of(new Enrolled(row.sheet(), token));
    }

    /** Withdraws a tablet, lost or retired: its token is worth nothing from now on. */
    public Device withdraw(Act act, long deviceId) {
        DeviceRow known = row(deviceId);
        if (!log.opens(act, "withdraw-tablet", "device:" + deviceId, Chains.SHOP)) {
            return known.sheet();
        }
        keys.requireOwnerOrQa(act, "The tablet was not withdrawn.");
        DeviceRow row = devices.lock(deviceId).orElseThrow();
        row.withdraw(act.at());
        log.event(Chains.SHOP, "tablet-withdrawn", Map.of("device", deviceId));
        return row.sheet();
    }

    /** Makes a desk for a browser on which somebody has just signed on. Call inside an act. */
    public Enrolled desk(Act act) {
        DeviceRow row =
                devices.save(new DeviceRow(DeviceRow.Kind.DESK, "DESK-" + code(8), List.of(), act.at(), act.by()));
        String token = token();
        row.carries(hash(token), act.at());
        return new Enrolled(row.sheet(), token);
    }

    /** Gives a desk a new token, so that one seen before signing on is worth nothing after it. Call inside an act. */
    public Enrolled renew(Act act, long deviceId) {
        DeviceRow row = devices.lock(deviceId).orElseThrow();
        String token = token();
        row.carries(hash(token), act.at());
        return new Enrolled(row.sheet(), token);
    }

    /** SHA-256 of a random token of 256 bits or a short-lived code: nothing slower is needed for these. */
    public static String hash(String token) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }

    private DeviceRow row(long deviceId) {
        return devices.findById(deviceId)
                .orElseThrow(() -> Refusal.missing(
                        "The tablet was not found.",
                        "There is no device " + deviceId + ".",
                        "Choose one from the list."));
    }

    private String token() {
        byte[] bytes = new byte[32];
        random.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    private String code(int length) {
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < length; i++) {
            code.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return code.toString();
    }
}
