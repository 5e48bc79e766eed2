package org.trammel.shop.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.trammel.calc.metrology.Deviation;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Signed;

/**
 * Datum from the faces of a tilted shell, tubes read from both sides, the side view by heights, and points of an arm. What
 * is expected was put into the frame: heights and points follow from planes and lines written out here.
 */
class TableShapesTest extends OnThePlate {

    private static final double SEAT = Math.toRadians(75);
    private static final double HEAD = Math.toRadians(65.5);
    private static final double STACK = 58 + 663 * Math.sin(HEAD) - 44 * Math.cos(HEAD);
    private static final double AXLE_X = -Math.sqrt(432 * 432 - 58 * 58);

    @Autowired
    private MockMvc mvc;

    @Autowired
    private Crew crew;

    private static String mm(double value) {
        return String.format(Locale.ROOT, "%.4f", value);
    }

    private WholeShop.Frame whole() {
        return drawn(frame(
                characteristic("100-1", "Twist, head tube against seat tube", "°", "0.30", "twist"),
                characteristic("100-2", "Head tube centre offset", "mm", "0.8", "mandrel low", "mandrel high"),
                characteristic("100-3", "Rear axle centre offset", "mm", "1.0", "dummy axle"),
                about("65.5", "100-7", "Head angle as built", "°", "0.3", "mandrel"),
                about("643.1", "100-8", "Stack as built", "mm", "2", "top"),
                about("458", "100-8b", "Reach as built", "mm", "2", "top"),
                characteristic("100-9", "Lean of seat tube", "°", "0.30", "100 to 400"),
                about("75", "100-13", "Seat angle as built", "°", "0.3", "seat tube")));
    }

    @Test
    void theTiltOfAShellIsTakenOutByItsFaces() throws Exception {
        WholeShop.Frame frame = whole();
        figures.setUp(
                shop.act(aligner),
                operation(frame),
                turns.setUp(operation(frame)).from(TableSetUp.Datum.FACES),
                figures.saidOf(operation(frame)));
        double ahead = 0.004;
        double up = -0.003;
        for (int i = 0; i < 3; i++) {
            double x = 18.5 * Math.cos(Math.toRadians(120 * i));
            double y = 18.5 * Math.sin(Math.toRadians(120 * i));
            double tilt = ahead * x + up * y;
            read(frame, Spot.valueOf("FACE_OTHER_" + (i + 1)), mm(150 - 36.5 + tilt));
            read(frame, Spot.valueOf("FACE_DRIVE_" + (i + 1)), mm(150 + 36.5 + tilt));
        }
        double seatLean = 0.001;
        double headLean = -0.004;
        for (int along : new int[] {100, 400}) {
            double x = -along * Math.cos(SEAT);
            double y = along * Math.sin(SEAT);
            read(frame, along == 100 ? Spot.SEAT_LOW : Spot.SEAT_HIGH, mm(150 + ahead * x + up * y + along * seatLean));
        }
        for (int above : new int[] {-45, 45}) {
            double x = 458 + (55 - above) * Math.cos(HEAD);
            double y = STACK - (55 - above) * Math.sin(HEAD);
            read(
                    frame,
                    above < 0 ? Spot.HEAD_LOW : Spot.HEAD_HIGH,
                    mm(150 + ahead * x + up * y + 0.4 + above * headLean));
        }
        List<ReadingLine> given = reduce(frame);
        // the slopes put in are those of heights over lengths in the plane: to first order the leans
        assertThat(of(given, "100-1").value().doubleValue())
                .isCloseTo(Math.toDegrees(headLean - seatLean), within(0.002));
        assertThat(of(given, "100-9").value().doubleValue()).isCloseTo(Math.toDegrees(seatLean), within(0.002));
        assertThat(told(frame, Deviation.HEAD_TUBE_OFFSET)).isCloseTo(0.4, within(0.002));
        // three points 18,5 mm from the axis carry so much doubt to the head tube that its offset is not judged
        assertThat(given).extracting(ReadingLine::code).containsExactly("100-1", "100-9");
        assertThat(page("/alignment/" + operation(frame) + "?axis="
                        + line(frame, "100-2").characteristicId()))
                .contains("Gauge unfit: it was read");
        ReductionLine reduction = Objects.requireNonNull(sheet(frame).newest());
        assertThat(Objects.requireNonNull(reduction.residual_mm()).doubleValue())
                .isCloseTo(0, within(0.001));
    }

    @Test
    void aFaceThatIsNotCleanGivesNothing() {
        WholeShop.Frame frame = whole();
        figures.setUp(
                shop.act(aligner),
                operation(frame),
                turns.setUp(operation(frame)).from(TableSetUp.Datum.FACES),
                figures.saidOf(operation(frame)));
        for (int i = 1; i <= 3; i++) {
            // the two faces open by a tenth at one place: no common plane lies between them within 0,03
            read(frame, Spot.valueOf("FACE_DRIVE_" + i), i == 2 ? "186.70" : "186.50");
            read(frame, Spot.valueOf("FACE_OTHER_" + i), i == 2 ? "113.30" : "113.50");
        }
        seatTube(frame, "150.12", "150.42");
        assertThat(refusal(() -> reduce(frame)).why()).contains("face");
        assertThat(shop.at(frame).characteristics())
                .allSatisfy(line -> assertThat(line.readingId()).isNull());
    }

    @Test
    void bothSidesOfATubeGiveItsMiddleAndHowFarItIsOutOfRound() throws Exception {
        WholeShop.Frame frame = whole();
        figures.setUp(
                shop.act(aligner),
                operation(frame),
                turns.setUp(operation(frame)).with(true, false),
                figures.saidOf(operation(frame)));
        // middles 150.12, 150.42 and 149.91, 149.48; the seat tube 34.90 and 34.82 across
        read(frame, Spot.SEAT_LOW_UNDER, "132.67");
        read(frame, Spot.SEAT_LOW, "167.57");
        read(frame, Spot.SEAT_HIGH, "167.83");
        read(frame, Spot.HEAD_LOW, "176.91");
        read(frame, Spot.HEAD_HIGH, "176.48");
        read(frame, Spot.HEAD_LOW_UNDER, "122.91");
        assertThat(refusal(() -> reduce(frame)).why())
                .as("two tubes are read by halves")
                .isNotBlank();
        read(frame, Spot.HEAD_HIGH_UNDER, "122.48");
        read(frame, Spot.SEAT_HIGH_UNDER, "133.01");
        ReadingLine twist = of(reduce(frame), "100-1");
        double head = Math.atan((149.48 - 149.91) / 90);
        double seat = Math.atan((150.42 - 150.12) / 300);
        assertThat(twist.value().doubleValue()).isCloseTo(Math.toDegrees(head - seat), within(1e-6));
        // each middle is a mean of two readings (JCGM 100:2008, 5.1.2); the tube's form falls out, the gauge too
        double height = Math.sqrt(0.030 * 0.030 + 0.006 * 0.006 + 0.030 * 0.030) / Math.sqrt(2);
        assertThat(Objects.requireNonNull(twist.u()).doubleValue())
                .isCloseTo(
                        Math.toDegrees(Math.hypot(Math.sqrt(2) * height / 90, Math.sqrt(2) * height / 300)),
                        within(1e-4));
        assertThat(page("/alignment/" + operation(frame)))
                .contains("Seat tube across the plate: 34,90 at the lower station and 34,82", "0,08\u00a0mm apart");
    }

    @Test
    void headAndSeatAngleStackAndReachComeFromHeightsInTwoSettings() throws Exception {
        WholeShop.Frame frame = whole();
        figures.setUp(
                shop.act(aligner),
                operation(frame),
                turns.setUp(operation(frame)).with(false, true),
                figures.saidOf(operation(frame)));
        double headAngle = Math.toRadians(65.38);
        double seatAngle = Math.toRadians(75.11);
        side(frame, "SHELL", 0, 0);
        side(frame, "AXLE", AXLE_X, 58);
        side(frame, "HEAD_LOW", 457.2 + 110 * Math.cos(headAngle), 644.0 - 110 * Math.sin(headAngle));
        side(frame, "HEAD_HIGH", 457.2, 644.0);
        side(frame, "SEAT_LOW", -60 * Math.cos(seatAngle), 60 * Math.sin(seatAngle));
        side(frame, "SEAT_HIGH", -400 * Math.cos(seatAngle), 400 * Math.sin(seatAngle));
        List<ReadingLine> given = reduce(frame);
        assertThat(of(given, "100-7").value().doubleValue()).isCloseTo(65.38, within(0.002));
        assertThat(of(given, "100-13").value().doubleValue()).isCloseTo(75.11, within(0.002));
        assertThat(of(given, "100-8").value().doubleValue()).isCloseTo(644.0, within(0.002));
        assertThat(of(given, "100-8b").value().doubleValue()).isCloseTo(457.2, within(0.002));
        assertThat(Objects.requireNonNull(sheet(frame).newest()).deviations())
                .extracting(DeviationLine::what)
                .containsExactly(Deviation.HEAD_ANGLE, Deviation.SEAT_ANGLE, Deviation.STACK, Deviation.REACH);
        assertThat(page("/alignment/" + operation(frame))).contains("blue: as built, off the drawing 20 times larger");
    }

    /** The frame turned by 25° in the first setting, its heights 600 and 400 above where the plate would pass the shell. */
    private void side(WholeShop.Frame frame, String place, double x, double y) {
        double c = Math.cos(Math.toRadians(25));
        double s = Math.sin(Math.toRadians(25));
        read(frame, Spot.valueOf("SIDE_" + place + "_1"), mm(600 + c * x - s * y));
        read(frame, Spot.valueOf("SIDE_" + place + "_2"), mm(400 + s * x + c * y));
    }

    @Test
    void aSideViewNeedsTheDrawing() {
        WholeShop.Frame frame = frame(
                characteristic("100-1", "Twist, head tube against seat tube", "°", "0.30", "twist"),
                about("65.5", "100-7", "Head angle as built", "°", "0.3", "mandrel"));
        figures.setUp(
                shop.act(aligner),
                operation(frame),
                turns.setUp(operation(frame)).with(false, true),
                figures.saidOf(operation(frame)));
        side(frame, "SHELL", 0, 0);
        assertThat(refusal(() -> reduce(frame)).why()).contains("gives no geometry", "side view");
    }

    // -------------------------------------------------------------------------------------------- points

    @Test
    void pointsOfAnArmGiveWhatWasPutIntoTheFrameThroughThePage() throws Exception {
        WholeShop.Frame frame = whole();
        String arm = shop.gauge("ARM", "mm", "0.020", NEXT_YEAR);
        perform(frame, "/set-up", "datum", "POINTS", "base", "TUBE", "up", "DRIVE", "sides", "ONE");
        perform(frame, "/points", "points", lines(';', ','), "gauge", arm);
        perform(frame, "/reduce");
        put(frame);
        assertThat(page("/alignment/" + operation(frame))).contains("points of an arm or probe", arm);
    }

    @Test
    void pointsComeFromAProgramAndFromAFileWithPoints() throws Exception {
        WholeShop.Frame frame = whole();
        String arm = shop.gauge("ARM", "mm", "0.020", NEXT_YEAR);
        String at = "/api/v1/operations/" + operation(frame) + "/table";
        mvc.perform(api(
                        org.springframework.http.HttpMethod.PUT,
                        at + "/set-up",
                        "{\"datum\": \"POINTS\", \"base\": \"TUBE\"}"))
                .andExpect(status().isOk());
        mvc.perform(api(
                        org.springframework.http.HttpMethod.POST,
                        at + "/points",
                        "{\"gauge\": \"" + arm + "\", \"lines\": \""
                                + lines(',', '.').replace("\n", "\\n") + "\"}"))
                .andExpect(status().is2xxSuccessful());
        mvc.perform(api(org.springframework.http.HttpMethod.POST, at + "/reduction", "{}"))
                .andExpect(status().is2xxSuccessful());
        put(frame);
    }

    private void put(WholeShop.Frame frame) {
        assertThat(told(frame, Deviation.REAR_AXLE_OFFSET)).isCloseTo(0.6, within(0.002));
        // told of the middle of its two stations, 7,5 mm below the middle of the tube
        assertThat(told(frame, Deviation.HEAD_TUBE_OFFSET))
                .isCloseTo(0.4 - 7.5 * Math.tan(Math.toRadians(-0.20)), within(0.002));
        assertThat(told(frame, Deviation.TWIST)).isCloseTo(-0.25, within(0.002));
        assertThat(told(frame, Deviation.SEAT_TUBE_LEAN)).isCloseTo(0.05, within(0.002));
        assertThat(told(frame, Deviation.HEAD_ANGLE)).isCloseTo(65.5, within(0.002));
        assertThat(told(frame, Deviation.STACK)).isCloseTo(STACK, within(0.005));
        assertThat(told(frame, Deviation.REACH)).isCloseTo(458, within(0.005));
        // the twist and the side view do not hang on the datum's tilt, and are judged
        assertThat(taken.ofTravellers(List.of(frame.travellerId())))
                .extracting(ReadingLine::code)
                .contains("100-1", "100-7", "100-8", "100-8b");
    }

    private double told(WholeShop.Frame frame, Deviation what) {
        return Objects.requireNonNull(sheet(frame).newest()).deviations().stream()
                .filter(one -> one.what() == what)
                .findFirst()
                .orElseThrow()
                .value()
                .doubleValue();
    }

    /** The frame with its deviations, anywhere in the room: turned about three axes and moved. */
    private static String lines(char separator, char decimal) {
        List<String> lines = new ArrayList<>(List.of("feature;name;x;y;z".replace(';', separator)));
        for (int i = 0; i < 3; i++) {
            double x = 18.5 * Math.cos(2 * Math.PI * i / 3);
            double y = 18.5 * Math.sin(2 * Math.PI * i / 3);
            add(lines, separator, decimal, "drive face", i, x, y, 36.5);
            add(lines, separator, decimal, "non-drive face", i, x, y, -36.5);
        }
        for (int i = 0; i < 4; i++) {
            add(lines, separator, decimal, "shell bore", i, 17 * Math.cos(i * 1.6), 17 * Math.sin(i * 1.6), 10);
        }
        double seatLean = Math.tan(Math.toRadians(0.05));
        double headLean = Math.tan(Math.toRadians(-0.20));
        for (int along : new int[] {80, 390}) {
            add(
                    lines,
                    separator,
                    decimal,
                    "seat tube",
                    along,
                    -along * Math.cos(SEAT),
                    along * Math.sin(SEAT),
                    along * seatLean);
        }
        for (int above : new int[] {-55, 40}) {
            add(
                    lines,
                    separator,
                    decimal,
                    "head tube",
                    above + 55,
                    458 + (55 - above) * Math.cos(HEAD),
                    STACK - (55 - above) * Math.sin(HEAD),
                    0.4 + above * headLean);
        }
        add(lines, separator, decimal, "head tube top", 1, 458, STACK, 0.4 + 55 * headLean);
        add(lines, separator, decimal, "drive dropout", 1, AXLE_X, 58, 0.6 + 74.1);
        add(lines, separator, decimal, "non-drive dropout", 1, AXLE_X, 58, 0.6 - 74.1);
        add(lines, separator, decimal, "drive axle end", 1, AXLE_X, 58, 0.6 + 74);
        add(lines, separator, decimal, "non-drive axle end", 1, AXLE_X, 58, 0.6 - 74);
        return String.join("\n", lines);
    }

    private static void add(
            List<String> lines, char separator, char decimal, String feature, int name, double x, double y, double z) {
        double[] at = {x, y, z};
        turn(at, 0, 1, 0.7);
        turn(at, 1, 2, -1.1);
        turn(at, 2, 0, 2.3);
        double[] away = {300, -120, 45};
        StringBuilder line =
                new StringBuilder(feature).append(separator).append("p").append(name);
        for (int i = 0; i < 3; i++) {
            line.append(separator).append(mm(at[i] + away[i]).replace('.', decimal));
        }
        lines.add(line.toString());
    }

    private static void turn(double[] at, int one, int other, double rad) {
        double a = at[one] * Math.cos(rad) - at[other] * Math.sin(rad);
        at[other] = at[one] * Math.sin(rad) + at[other] * Math.cos(rad);
        at[one] = a;
    }

    @Autowired
    private org.trammel.shop.inspection.Readings taken;

    private void perform(WholeShop.Frame frame, String path, String... params) throws Exception {
        MockHttpServletRequestBuilder form = post("/alignment/" + operation(frame) + path)
                .with(Signed.on(crew.byId(aligner)))
                .with(csrf())
                .param("actId", UUID.randomUUID().toString());
        for (int i = 0; i < params.length; i += 2) {
            form.param(params[i], params[i + 1]);
        }
        assertThat(mvc.perform(form).andReturn().getResponse())
                .satisfies(answer -> assertThat(answer.getStatus())
                        .as(answer.getContentAsString())
                        .isBetween(300, 399));
    }

    private String page(String address) throws Exception {
        return mvc.perform(get(address).with(Signed.on(crew.byId(aligner))))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
    }

    private MockHttpServletRequestBuilder api(org.springframework.http.HttpMethod method, String path, String body) {
        return org.springframework.test.web.servlet.request.MockMvcRequestBuilders.request(method, path)
                .with(Signed.on(crew.byId(aligner)))
                .with(csrf())
                .header("Act-Id", UUID.randomUUID().toString())
                .contentType(MediaType.APPLICATION_JSON)
                .content(body);
    }
}
