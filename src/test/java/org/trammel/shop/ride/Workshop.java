package org.trammel.shop.ride;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.trammel.shop.Fixture;
import org.trammel.shop.TestCrew;
import org.trammel.shop.gauges.GaugeRange;
import org.trammel.shop.gauges.GaugeRegister;
import org.trammel.shop.gauges.NewGauge;
import org.trammel.shop.materials.LotKind;
import org.trammel.shop.materials.LotRegister;
import org.trammel.shop.materials.LotSections;
import org.trammel.shop.materials.MetalFamily;
import org.trammel.shop.materials.NewLot;
import org.trammel.shop.materials.Section;
import org.trammel.shop.people.Credentials;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.people.Qualification;
import org.trammel.shop.people.Qualifications;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.Roster;
import org.trammel.shop.records.Act;
import org.trammel.shop.routes.RouteDrafts;
import org.trammel.shop.stations.Devices;
import org.trammel.shop.stations.Station;
import org.trammel.shop.stations.Stations;

/** An empty shop set up with an invented crew: stations and their tablets, gauges, lots, released starter routes. */
@Fixture
class Workshop {

    private static final LocalDate LAST_AUTUMN = LocalDate.of(2025, 10, 9);
    private static final LocalDate NEXT_YEAR = LocalDate.of(2027, 10, 9);
    static final String TUBES = "TL-6061-01";
    private static final String INVENTED = "invented";

    /** Code, what it is, kind, unit or units, from, to, resolution, u; without resolution and u it is an aid. */
    private static final String[][] GAUGES = {
        {"CA-1", "Calliper 300", "CALLIPER", "mm", "0", "300", "0.01", "0.015"},
        {"CA-2", "Calliper 300 on the pins", "LONG-CALLIPER", "mm", "-20", "300", "0.01", "0.015"},
        {"UW-1", "Ultrasonic wall gauge", "WALL", "mm", "0", "10", "0.01", "0.010"},
        {"DI-1", "Dial indicator on a stand", "DIAL", "mm", "-10", "10", "0.001", "0.003"},
        {"CD-1", "Conductivity meter", "CONDUCTIVITY", "%IACS", "0", "60", "0.1", "0.4"},
        {"LS-1", "Long scale with cursor", "SCALE-RULE", "mm", "-2000", "2000", "0.1", "0.11"},
        {"AG-1", "Digital protractor", "PROTRACTOR", "°", "0", "180", "0.01", "0.03"},
        {"LV-1", "Level on V-blocks", "LEVEL", "°", "", "", "", ""},
        {"FE-1", "Feeler set", "FEELER", "mm", "", "", "", ""},
        {"IR-1", "Infrared thermometer", "IR-TEMP", "°C", "-20", "400", "1", "2"},
        {"TH-1", "Dew point meter", "HYGRO", "°C,%RH", "-20", "100", "0.1", "0.2"},
        {"JS-1", "Scales of the jigs", "JIG-SCALE", "mm", "", "", "", ""},
        {"WM-1", "Welding meter", "METER", "kJ/mm", "", "", "", ""},
        {"TC-1", "Load thermocouple with logger", "THERMOCOUPLE", "°C", "-20", "700", "1", "1.1"},
        {"ST-1", "Stop watch", "TIMER", "s", "0", "3600", "0.1", "0.2"},
        {"OL-1", "Oven logs, evaluated", "OVEN-LOG", "h", "", "", "", ""},
        {"OL-2", "Oven logs, evaluated in minutes", "OVEN-LOG", "min", "", "", "", ""},
        {"HL-1", "Bench hardness tester", "HARDNESS", "HB", "0", "200", "1", "1.5"},
        {"TS-1", "Height gauge on the head tube, 90 apart", "TWIST", "°", "-5", "5", "0.001", "0.056"},
        {"TM-1", "Height gauge on the mandrel, 300 apart", "TWIST", "°", "-5", "5", "0.001", "0.020"},
        {"LM-1", "Height gauge on the mandrel, lean", "LEAN", "°", "-5", "5", "0.001", "0.016"},
        {"OM-1", "Height gauge on the mandrel, offset", "OFFSET", "mm", "-10", "10", "0.01", "0.045"},
        {"AX-1", "Height gauge on the dummy axle", "AXLE-OFFSET", "mm", "-10", "10", "0.01", "0.060"},
        {"YW-1", "Height gauge along the dummy axle", "YAW", "°", "-5", "5", "0.001", "0.020"},
        {"HG-1", "Height gauge", "HEIGHT", "mm", "-200", "600", "0.01", "0.012"},
        {"PA-1", "Parallel gauge pair", "PARALLEL", "mm", "-10", "10", "0.01", "0.003"},
        {"GN-1", "Thread plugs", "GO-NO-GO", "yes", "", "", "", ""},
        {"RO-1", "Run-out stand", "RUN-OUT", "mm", "-10", "10", "0.001", "0.003"},
        {"BG-1", "Bore gauge 10 to 60", "BORE", "mm", "10", "60", "0.001", "0.002"},
        {"WS-1", "Scale 30 kg", "SCALE", "g", "0", "30000", "1", "1"},
        {"PG-1", "Blast pressure gauge", "PRESSURE", "bar", "0", "10", "0.1", "0.05"},
        {"OM-2", "Earth resistance meter", "OHM", "MΩ", "0", "100", "0.01", "0.02"},
        {"EC-1", "Coating gauge, eddy current", "FILM-EDDY", "µm", "0", "500", "1", "1.2"},
        {"TW-1", "Torque wrench 2 to 60", "TORQUE", "N·m", "2", "60", "0.1", "0.1"},
        {"HA-1", "Hanger gauge", "HANGER", "mm", "", "", "", ""},
        {"TA-1", "Tape", "TAPE", "mm", "", "", "", ""},
    };

    private static final String[] STATIONS = {
        "Saw & mitre",
        "Prep & clean",
        "Jig & weld",
        "Alignment table",
        "Heat treat",
        "Ream & face",
        "Blast & pretreat",
        "Coat & cure",
        "Assembly"
    };

    private final FirstStart firstStart;
    private final Roster roster;
    private final Credentials credentials;
    private final Qualifications qualifications;
    private final Stations stations;
    private final Devices devices;
    private final GaugeRegister gauges;
    private final LotRegister lots;
    private final LotSections sections;
    private final RouteDrafts drafts;
    private final Fittings fittings;
    private final TestCrew crew;
    private final Map<String, String> tokens = new LinkedHashMap<>();

    Hand owner;
    Hand qa;
    Hand cutter;
    Hand welder;
    Hand aligner;
    Hand heatTreater;
    Hand coater;
    Hand fitter;
    /** The second at every station. */
    Hand witness;
    /** Signs where the second has taken part. */
    Hand other;

    Workshop(
            FirstStart firstStart,
            Roster roster,
            Credentials credentials,
            Qualifications qualifications,
            Stations stations,
            Devices devices,
            GaugeRegister gauges,
            LotRegister lots,
            LotSections sections,
            RouteDrafts drafts,
            Fittings fittings,
            TestCrew crew) {
        this.firstStart = firstStart;
        this.roster = roster;
        this.credentials = credentials;
        this.qualifications = qualifications;
        this.stations = stations;
        this.devices = devices;
        this.gauges = gauges;
        this.lots = lots;
        this.sections = sections;
        this.drafts = drafts;
        this.fittings = fittings;
        this.crew = crew;
    }

    void setUp() {
        setUp(List.of("HT-6061", "FS-6061-FT", "FS-6061-SA", "FS-6061"));
    }

    /** @param routes of the starters, which the QA lead releases */
    void setUp(List<String> routes) {
        FirstStart.Entry first = new FirstStart.Entry("OB", "Odd Builder", Hand.PASSWORD, Hand.PIN);
        owner = new Hand(
                firstStart
                        .make(UUID.randomUUID(), firstStart.newCode(), "127.0.0.8", first)
                        .id(),
                first.initials(),
                first.name());
        qa = hire("QL", "Quinn Lead", Role.QA_LEAD);
        String once = credentials.resetPassword(act(owner), qa.id());
        credentials.keepPassword(act(qa), once, Hand.PASSWORD);
        cutter = hire("CU", "Cuno Utter", Role.STATION_WORKER);
        welder = hire("WE", "Wela Engström", Role.WELDER);
        aligner = hire("AL", "Alva Lod", Role.ALIGNER);
        heatTreater = hire("HT", "Hedda Torn", Role.HEAT_TREATER);
        coater = hire("CO", "Corin Oda", Role.STATION_WORKER);
        fitter = hire("FI", "Fina Imre", Role.STATION_WORKER);
        witness = hire("WI", "Witold Ingves", Role.STATION_WORKER);
        other = hire("OT", "Otho Tveit", Role.STATION_WORKER);
        qualify(cutter, "CONDUCTIVITY");
        qualifications.enter(
                act(owner),
                welder.id(),
                Qualification.of("WELD:AL:141", "ISO 9606-2", LAST_AUTUMN, NEXT_YEAR, false)
                        .covering("aluminium", "141", new BigDecimal("0.7"), new BigDecimal("3"), "BW, FW"));
        qualify(aligner, "ALIGN");
        qualify(aligner, "PENETRANT");
        qualify(aligner, "VISUAL");
        qualify(heatTreater, "OVEN");
        qualify(fitter, "TORQUE");
        for (int i = 0; i < STATIONS.length; i++) {
            String code = String.valueOf(i + 1);
            stations.add(act(owner), new Station(code, STATIONS[i], 3, new BigDecimal("30"), false));
            String typed = devices.admit(act(owner), "T" + code, List.of(code)).code();
            tokens.put(
                    code,
                    devices.enrol(crew.act(Act.SERVICE), typed).orElseThrow().token());
        }
        stations.addJig(act(owner), "J-1", "3", LAST_AUTUMN, NEXT_YEAR);
        for (String[] gauge : GAUGES) {
            register(gauge);
        }
        receiveLots();
        fittings.putInForce(qa);
        for (String route : routes) {
            drafts.release(act(qa), route, drafts.draft(route).version(), "Looked through, fits the shop");
        }
    }

    private Hand hire(String initials, String name, Role role) {
        Hand hand = new Hand(
                roster.takeOn(act(owner), initials, name, EnumSet.of(role)).id(), initials, name);
        credentials.keepPin(act(hand), credentials.resetPin(act(owner), hand.id()), Hand.PIN);
        return hand;
    }

    private void qualify(Hand hand, String kind) {
        qualifications.enter(act(owner), hand.id(), Qualification.of(kind, "shop rule", LAST_AUTUMN, NEXT_YEAR, false));
    }

    private void register(String[] g) {
        boolean aid = g[7].isEmpty();
        gauges.register(
                act(qa),
                g[0],
                new NewGauge(
                        g[1],
                        null,
                        "shop",
                        aid,
                        Stream.of(g[3].split(","))
                                .map(unit -> range(g, unit, aid))
                                .toList()));
        gauges.calibrated(act(qa), g[0], LAST_AUTUMN, NEXT_YEAR, "C-" + g[0], null, "as it should be");
    }

    private static GaugeRange range(String[] g, String unit, boolean aid) {
        return new GaugeRange(
                g[2],
                unit,
                aid ? null : new BigDecimal(g[4]),
                aid ? null : new BigDecimal(g[5]),
                aid ? null : new BigDecimal(g[6]),
                aid ? null : new BigDecimal(g[7]),
                null,
                aid ? "" : "own trial, " + INVENTED);
    }

    private void receiveLots() {
        lot(TUBES, LotKind.TUBE, "AL6061", null, null);
        lot("FL-4643-01", LotKind.FILLER, null, "ER4643", null);
        lot("AR-01", LotKind.GAS, null, "ARGON", null);
        lot("BM-GLASS-01", LotKind.MEDIA, null, "GLASS-BEAD", MetalFamily.ALUMINIUM);
        lot("PW-GREEN-01", LotKind.POWDER, null, "LOW-BAKE", null);
        lot("BR-6902-01", LotKind.BEARING, null, null, null);
    }

    private void lot(String code, LotKind kind, String metal, String materialClass, MetalFamily only) {
        lots.receive(
                act(cutter),
                new NewLot(
                        code,
                        kind,
                        "an invented lot",
                        metal,
                        materialClass,
                        kind == LotKind.TUBE ? "T6" : "",
                        "heat " + code,
                        only,
                        INVENTED,
                        LAST_AUTUMN,
                        null,
                        null,
                        ""));
        if (kind == LotKind.TUBE) {
            sections.state(
                    act(cutter), code, List.of(new Section(new BigDecimal("42"), new BigDecimal("1.4"), null, null)));
        }
        lots.certify(act(qa), code, "3.1", "certificate of " + code, null);
        lots.release(act(qa), code);
    }

    /** The lot on the rack that suits a step of this kind. */
    String lotOf(String kind) {
        return switch (kind) {
            case "TUBE" -> TUBES;
            case "FILLER" -> "FL-4643-01";
            case "GAS" -> "AR-01";
            case "MEDIA" -> "BM-GLASS-01";
            case "POWDER" -> "PW-GREEN-01";
            case "BEARING" -> "BR-6902-01";
            default -> throw new IllegalArgumentException(kind);
        };
    }

    /** Who works at a station. */
    Hand at(String station) {
        return switch (station) {
            case "1", "2", "6" -> cutter;
            case "3" -> welder;
            case "4" -> aligner;
            case "5" -> heatTreater;
            case "7", "8" -> coater;
            case "9" -> fitter;
            default -> throw new IllegalArgumentException(station);
        };
    }

    /** What the browser of the station's tablet keeps. */
    String token(String station) {
        return tokens.get(station);
    }

    private Act act(Hand by) {
        return crew.act(by.id());
    }
}
