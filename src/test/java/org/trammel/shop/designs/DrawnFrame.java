package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.assertj.core.api.Assertions;
import org.assertj.core.api.ThrowableAssert;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.GeneratedKeyHolder;
import org.trammel.shop.Fixture;
import org.trammel.shop.TestCrew;
import org.trammel.shop.people.Credentials;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Refusal;

/** A design on a small route of two characteristics, taken as far as a test needs it. */
public final class DrawnFrame {

    public static final String PIN = "481592";
    public static final byte[] PDF = "%PDF-1.4\ninvented drawing\n%%EOF\n".getBytes(StandardCharsets.US_ASCII);
    public static final String FILE = sha256(PDF);

    public final long owner;
    public final long qa;
    public final long route;

    private final DesignDesk desk;

    /** The beans a drawn frame is worked with. */
    @Fixture
    public record DesignDesk(
            JdbcClient jdbc,
            TestCrew crew,
            Credentials credentials,
            Designs designs,
            DrawingOffice office,
            DesignGate gate) {}

    public DrawnFrame(DesignDesk desk) {
        this.desk = desk;
        this.owner = desk.crew().hire(Role.OWNER);
        this.qa = desk.crew().hire(Role.QA_LEAD);
        this.route = smallRoute();
    }

    /** Gives somebody a PIN of their own. */
    public void givePin(long person) {
        desk.credentials().keepPin(desk.crew().act(person), "000000", PIN);
    }

    public long begin() {
        return begin("X-" + UUID.randomUUID().toString().substring(0, 12));
    }

    public long begin(String drawnFor) {
        return desk.designs()
                .begin(desk.crew().act(owner), new NewDesign(drawnFor, "AL6061", "HARDTAIL", "Hardtail 29", List.of()))
                .revisionId();
    }

    /** Draft with route, nominals and drawing. */
    public long draft() {
        return drawn(begin());
    }

    public long drawn(long revision) {
        desk.office().change(desk.crew().act(owner), revision, null, draft(Map.of()));
        return withNominals(revision);
    }

    /** Nominals and drawing of a draft that names the route. */
    public long withNominals(long revision) {
        desk.office()
                .give(
                        desk.crew().act(owner),
                        revision,
                        null,
                        Map.of("080-7", Nominal.of(new BigDecimal("65.5"))),
                        Set.of());
        desk.office().draw(desk.crew().act(owner), revision, PDF, "application/pdf", "frame.pdf");
        return revision;
    }

    public DesignDraft draft(Map<GeometryInput, BigDecimal> geometry) {
        return draft(geometry, false);
    }

    private DesignDraft draft(Map<GeometryInput, BigDecimal> geometry, boolean confirmed) {
        return new DesignDraft("Hardtail 29", "AL6061", "HARDTAIL", route, "HT-AL-A", List.of(), geometry, confirmed);
    }

    /** A draft of {@link TrailFrame} with the inputs named so changed, and nothing of it red otherwise. */
    long trail(String changed) {
        long revision = begin();
        retype(revision, changed);
        return revision;
    }

    /** Types the inputs of such a draft anew, confirming what is asked about. */
    void retype(long revision, String changed) {
        desk.office().change(desk.crew().act(owner), revision, null, draft(TrailFrame.nothingRed(changed), true));
    }

    /** What a deed is refused with; a deed that is not refused fails the test. */
    static Refusal refusal(ThrowableAssert.ThrowingCallable deed) {
        Refusal refused = Assertions.catchThrowableOfType(Refusal.class, deed);
        Assertions.assertThat(refused).isNotNull();
        return refused;
    }

    public long sent() {
        return sent(draft());
    }

    public long sent(long revision) {
        desk.office().send(desk.crew().act(owner), revision);
        return revision;
    }

    public long approved() {
        return approved(sent());
    }

    public long approved(long revision) {
        String letter = desk.designs().revision(revision).letter();
        desk.gate()
                .approve(
                        desk.crew().act(owner),
                        revision,
                        new Approval(letter, FILE, "Rider One", LocalDate.of(2026, 3, 18)));
        return revision;
    }

    public void answerAll(long revision) {
        for (GateCheck check : desk.gate().asked(revision)) {
            answer(revision, check);
        }
    }

    /** That it is met; where inputs are missing for a figure, that it was decided. */
    void answer(long revision, GateCheck check) {
        boolean open = desk.gate().notComputed(revision).contains(check);
        desk.gate()
                .answer(
                        desk.crew().act(qa),
                        revision,
                        check,
                        open ? GateAnswer.DECIDED : GateAnswer.MEETS,
                        open ? "looked at without a figure" : null);
    }

    public long checked() {
        return checked(approved());
    }

    public long checked(long revision) {
        answerAll(revision);
        givePin(owner);
        givePin(qa);
        desk.gate().sign(desk.crew().act(owner), revision, owner, Role.OWNER, PIN);
        desk.gate().sign(desk.crew().act(owner), revision, qa, Role.QA_LEAD, PIN);
        return revision;
    }

    private static String sha256(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private long smallRoute() {
        String code = "T"
                + UUID.randomUUID().toString().replace("-", "").substring(0, 10).toUpperCase();
        long made = insert(
                "insert into route (code, name, metal, kind) values (?, 'Small route', 'AL6061', 'HARDTAIL')", code);
        long revision = insert(
                "insert into route_revision (route_id, ordinal, letter, state, draft_of, origin, drawn_by, drawn_at,"
                        + " edits, version) values (?, 1, 'A', 'DRAFT', ?, 'test', 0,"
                        + " timestamp with time zone '2026-01-01 00:00:00+00', 0, 0)",
                made,
                made);
        long operation = insert(
                "insert into route_operation (revision_id, sequence, code, name, station_code, point, signers, together,"
                        + " outside, irreversible, joins, caution) values (?, 1, '080', 'After weld', '4', 'NONE', '',"
                        + " false, false, false, false, '')",
                revision);
        characteristic(operation, 1, "080-7", "Head angle as built", "°", true, null);
        characteristic(operation, 2, "080-2", "Head tube centre offset", "mm", false, BigDecimal.ZERO);
        return revision;
    }

    private void characteristic(
            long operation,
            int sequence,
            String code,
            String name,
            String unit,
            boolean fromDesign,
            BigDecimal nominal) {
        insert(
                "insert into route_characteristic (operation_id, sequence, code, name, unit, decimals, from_design,"
                        + " nominal, lower_deviation, upper_deviation, gauge_kind, points, reduction, rule, signers,"
                        + " sided, read_back, second_person, deciding, cold_set_attempts, source) values (?, ?, ?, ?, ?,"
                        + " 1, ?, ?, -0.3, 0.3, 'PROTRACTOR', 'mandrel', 'SINGLE', 'GUARDED', 'ALIGNER', false, false,"
                        + " false, true, 0, 'test')",
                operation,
                sequence,
                code,
                name,
                unit,
                fromDesign,
                nominal);
    }

    private long insert(String sql, Object... values) {
        GeneratedKeyHolder key = new GeneratedKeyHolder();
        desk.jdbc().sql(sql).params(Arrays.asList(values)).update(key, "id");
        return key.getKeyAs(Long.class);
    }
}
