package org.trammel.shop.alignment;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.trammel.calc.metrology.Deviation;
import org.trammel.shop.records.Act;

/** What a characteristic of a name is on the table. Only added to. */
@Entity
@Table(name = "alignment_characteristic")
class TableCharacteristicRow {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private String name;
    private String deviations;
    private String source;

    @Column(name = "by_person")
    private long by;

    private Instant since;

    protected TableCharacteristicRow() {}

    TableCharacteristicRow(Act act, String name, List<Deviation> deviations, String source) {
        this.name = name;
        this.deviations = deviations.stream().map(Enum::name).collect(Collectors.joining(";"));
        this.source = source;
        this.by = act.by();
        this.since = act.at();
    }

    long id() {
        return id;
    }

    TableCharacteristic characteristic() {
        return new TableCharacteristic(
                name,
                Arrays.stream(deviations.split(";"))
                        .filter(code -> !code.isEmpty())
                        .map(Deviation::valueOf)
                        .toList(),
                source,
                by,
                since);
    }
}
