package org.trammel.shop.alignment;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.metrology.Deviation;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Which characteristics of the routes are deviations of the table, as the QA lead says it. */
@Service
public class TableCharacteristics {

    private static final Duration KEPT = Duration.ofSeconds(5);
    private static final String UNCHANGED = "What the table measures was not changed.";

    private final TableCharacteristicRepository rows;
    private final Travellers travellers;
    private final Crew crew;
    private final ActLog log;
    private final Clock clock;
    private volatile @Nullable Copy copy;

    TableCharacteristics(
            TableCharacteristicRepository rows, Travellers travellers, Crew crew, ActLog log, Clock clock) {
        this.rows = rows;
        this.travellers = travellers;
        this.crew = crew;
        this.log = log;
        this.clock = clock;
    }

    /**
     * A characteristic of a frame that the table measures.
     *
     * @param deviations one for each of its sample points
     */
    public record Measured(FrameSheet.CharacteristicLine line, List<Deviation> deviations) {}

    /** All that are in force, those measured elsewhere included. They change a few times a year, and pages ask often. */
    public List<TableCharacteristic> inForce() {
        Copy now = copy;
        Instant at = clock.instant();
        if (now == null || Duration.between(now.at(), at).abs().compareTo(KEPT) > 0) {
            now = new Copy(
                    at,
                    rows.inForce().stream()
                            .map(TableCharacteristicRow::characteristic)
                            .toList());
            copy = now;
        }
        return now.all();
    }

    private record Copy(Instant at, List<TableCharacteristic> all) {}

    @EventListener(ApplicationReadyEvent.class)
    void begin() {
        inForce();
    }

    /** Which of the operations have something to be measured on the table. */
    public Set<Long> measuring(Collection<Long> operationIds) {
        return travellers.measuring(
                operationIds,
                inForce().stream()
                        .filter(one -> !one.deviations().isEmpty())
                        .map(one -> key(one.name()))
                        .toList());
    }

    /** Those of an operation, in its order. */
    public List<Measured> of(List<FrameSheet.CharacteristicLine> lines) {
        Map<String, TableCharacteristic> all =
                inForce().stream().collect(Collectors.toMap(one -> key(one.name()), one -> one));
        return lines.stream()
                .filter(line -> all.containsKey(key(line.name())))
                .map(line -> new Measured(line, all.get(key(line.name())).deviations()))
                .filter(one -> one.deviations().size() == one.line().points().size()
                        || one.deviations().size() == 1)
                .filter(one -> !one.deviations().isEmpty())
                .toList();
    }

    /** Says what a characteristic of a name is on the table. For the QA lead. */
    @Transactional
    public void put(Act act, String name, List<Deviation> deviations, String source) {
        if (!log.opens(act, "table-characteristic", "characteristic-name:" + key(name), Chains.SHOP)) {
            return;
        }
        crew.require(act.by(), UNCHANGED, Role.QA_LEAD);
        String said = TypedText.line("name", "The name", UNCHANGED, name, 120);
        String from = TypedText.line("source", "The source", UNCHANGED, source, 400);
        if (deviations.stream().map(Deviation::unit).distinct().count() > 1) {
            throw Refusal.input(
                    "deviations",
                    UNCHANGED,
                    "One characteristic has one unit, and these deviations have two.",
                    "Choose deviations of one unit.");
        }
        TableCharacteristicRow row = rows.save(new TableCharacteristicRow(act, said, deviations, from));
        copy = null;
        log.event(
                Chains.SHOP,
                "table-characteristic",
                Map.of(
                        "row",
                        row.id(),
                        "deviations",
                        deviations.stream().map(Enum::name).collect(Collectors.joining(";"))));
    }

    private static String key(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }
}
