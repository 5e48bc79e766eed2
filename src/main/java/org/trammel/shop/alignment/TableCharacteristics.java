package org.trammel.shop.alignment;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
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

/** Which characteristics of the routes are deviations of the table, as the QA lead says it. */
@Service
public class TableCharacteristics {

    private static final String UNCHANGED = "What the table measures was not changed.";

    private final TableCharacteristicRepository rows;
    private final Crew crew;
    private final ActLog log;

    TableCharacteristics(TableCharacteristicRepository rows, Crew crew, ActLog log) {
        this.rows = rows;
        this.crew = crew;
        this.log = log;
    }

    /**
     * A characteristic of a frame that the table measures.
     *
     * @param deviations one for each of its sample points
     */
    public record Measured(FrameSheet.CharacteristicLine line, List<Deviation> deviations) {}

    /** All that are in force, those measured elsewhere included. */
    @Transactional(readOnly = true)
    public List<TableCharacteristic> inForce() {
        return rows.inForce().stream()
                .map(TableCharacteristicRow::characteristic)
                .toList();
    }

    /** Those of an operation, in its order. */
    @Transactional(readOnly = true)
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
