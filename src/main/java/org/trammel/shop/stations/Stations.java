package org.trammel.shop.stations;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;

/** The stations of the shop and their jigs. */
@Service
@Transactional
public class Stations {

    /** A hyphen only after another sign: a code beginning with one would be a formula in a spreadsheet. */
    private static final Pattern CODE = Pattern.compile("[A-Z0-9][A-Z0-9-]{0,9}");

    private final StationRepository stations;
    private final JigRepository jigs;
    private final ActLog log;
    private final ShopKeys keys;

    Stations(StationRepository stations, JigRepository jigs, ActLog log, ShopKeys keys) {
        this.stations = stations;
        this.jigs = jigs;
        this.log = log;
        this.keys = keys;
    }

    /** All stations in use, in the order work passes them. */
    @Transactional(readOnly = true)
    public List<Station> all() {
        return stations.findByRetiredAtIsNullOrderByPosition().stream()
                .map(StationRow::sheet)
                .toList();
    }

    /**
     * The station of this code, in use or retired.
     *
     * @throws Refusal if there is none
     */
    @Transactional(readOnly = true)
    public Station byCode(String code) {
        return stations.findById(code).map(StationRow::sheet).orElseThrow(() -> unknownStation(code));
    }

    /** All jigs in use. */
    @Transactional(readOnly = true)
    public List<Jig> jigs() {
        return jigs.findByRetiredAtIsNullOrderByCode().stream()
                .map(JigRow::sheet)
                .toList();
    }

    /** The jig of this code. */
    @Transactional(readOnly = true)
    public Optional<Jig> jig(String code) {
        return jigs.findById(code).map(JigRow::sheet);
    }

    /** Adds a station after the others. */
    public Station add(Act act, Station station) {
        if (!log.opens(act, "add-station", "station:" + station.code(), Chains.SHOP)) {
            return byCode(station.code());
        }
        keys.requireOwnerOrQa(act, "The station was not added.");
        checked(station);
        if (stations.existsById(station.code())) {
            throw Refusal.input(
                    "code",
                    "The station was not added.",
                    "Station " + station.code() + " is there already.",
                    "Take another code, or change the station that has it.");
        }
        StationRow row = stations.save(new StationRow(station, (int) stations.count() + 1));
        log.event(Chains.SHOP, "station-added", facts(station));
        return row.sheet();
    }

    /** Changes what a station is called, how much it holds and how long it runs. */
    public Station change(Act act, Station station) {
        if (!log.opens(act, "change-station", "station:" + station.code(), Chains.SHOP)) {
            return byCode(station.code());
        }
        keys.requireOwnerOrQa(act, "The station was not changed.");
        checked(station);
        StationRow row = stations.findById(station.code()).orElseThrow(() -> unknownStation(station.code()));
        row.runs(station.name(), station.wipLimit(), station.productiveHoursPerWeek(), station.paperOnly());
        log.event(Chains.SHOP, "station-changed", facts(station));
        return row.sheet();
    }

    /** Adds a jig to a station. */
    public Jig addJig(Act act, String code, String stationCode, LocalDate checkedOn, LocalDate dueOn) {
        if (!log.opens(act, "add-jig", "jig:" + code, Chains.SHOP)) {
            return knownJig(code).sheet();
        }
        keys.requireOwnerOrQa(act, "The jig was not added.");
        if (!CODE.matcher(code).matches() || jigs.existsById(code)) {
            throw Refusal.input(
                    "code",
                    "The jig was not added.",
                    "Its code is taken, or is not 1 to 10 capital letters, digits and hyphens.",
                    "Give it a code of its own, such as J4.");
        }
        byCode(stationCode);
        checkedDates(checkedOn, dueOn);
        JigRow row = jigs.save(new JigRow(code, stationCode, checkedOn, dueOn));
        log.event(Chains.SHOP, "jig-added", Map.of("jig", code, "station", stationCode, "due", dueOn.toString()));
        return row.sheet();
    }

    /** Notes that a jig was checked. */
    public Jig checkJig(Act act, String code, LocalDate checkedOn, LocalDate dueOn) {
        if (!log.opens(act, "check-jig", "jig:" + code, Chains.SHOP)) {
            return knownJig(code).sheet();
        }
        keys.requireOwnerOrQa(act, "The check was not noted.");
        checkedDates(checkedOn, dueOn);
        JigRow row = knownJig(code);
        row.checked(checkedOn, dueOn);
        log.event(Chains.SHOP, "jig-checked", Map.of("jig", code, "on", checkedOn.toString(), "due", dueOn.toString()));
        return row.sheet();
    }

    /** Stops a jig: nothing may be set up in it until it is freed. */
    public Jig stopJig(Act act, String code) {
        if (!log.opens(act, "stop-jig", "jig:" + code, Chains.SHOP)) {
            return knownJig(code).sheet();
        }
        keys.requireOwnerOrQa(act, "The jig was not stopped.");
        JigRow row = knownJig(code);
        row.stop(act.at());
        log.event(Chains.SHOP, "jig-stopped", Map.of("jig", code));
        return row.sheet();
    }

    /** Stops a jig in an act that is open already, by a rule the QA lead set; one that is stopped stays so. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void stopJigByRule(Act act, String code) {
        JigRow row = knownJig(code);
        if (!row.stopped()) {
            row.stop(act.at());
            log.event(Chains.SHOP, "jig-stopped", Map.of("jig", code));
        }
    }

    /** Frees a stopped jig. */
    public Jig freeJig(Act act, String code) {
        if (!log.opens(act, "free-jig", "jig:" + code, Chains.SHOP)) {
            return knownJig(code).sheet();
        }
        keys.requireOwnerOrQa(act, "The jig was not freed.");
        JigRow row = knownJig(code);
        if (!row.stopped()) {
            throw Refusal.state(
                    "The jig was not freed.", "Jig " + code + " is not stopped.", "Nothing needs to be done.");
        }
        row.free();
        log.event(Chains.SHOP, "jig-freed", Map.of("jig", code));
        return row.sheet();
    }

    private JigRow knownJig(String code) {
        return jigs.findById(code)
                .orElseThrow(() -> Refusal.missing(
                        "The jig was not found.", "There is no jig " + code + ".", "Choose one from the list."));
    }

    private static Refusal unknownStation(String code) {
        return Refusal.missing(
                "The station was not found.", "There is no station " + code + ".", "Choose one from the list.");
    }

    private static void checked(Station station) {
        if (!CODE.matcher(station.code()).matches()) {
            throw Refusal.input(
                    "code",
                    "The station was not kept.",
                    "A code is 1 to 10 capital letters, digits and hyphens, and begins with none of the last.",
                    "Give it a short code, such as 3.");
        }
        TypedText.line("name", "Its name", "The station was not kept.", station.name(), 120);
        if (station.wipLimit() < 1) {
            throw Refusal.input(
                    "wipLimit",
                    "The station was not kept.",
                    "It holds at least one frame; " + station.wipLimit() + " was entered.",
                    "Enter 1 or more.");
        }
        double hours = station.productiveHoursPerWeek().doubleValue();
        if (hours < 0 || hours > 168) {
            throw Refusal.input(
                    "productiveHoursPerWeek",
                    "The station was not kept.",
                    "A week has 168 hours.",
                    "Enter the hours a week this station produces.");
        }
    }

    private static void checkedDates(LocalDate checkedOn, LocalDate dueOn) {
        if (dueOn.isBefore(checkedOn)) {
            throw Refusal.input(
                    "dueOn",
                    "The jig's dates were not kept.",
                    "The next check, " + dueOn + ", lies before the last, " + checkedOn + ".",
                    "Enter the day until which this check holds.");
        }
    }

    private static Map<String, Object> facts(Station station) {
        return Map.of(
                "station",
                station.code(),
                "wip",
                station.wipLimit(),
                "hours",
                station.productiveHoursPerWeek().toPlainString(),
                "paper",
                station.paperOnly());
    }
}
