package org.trammel.shop.nonconformance;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.inspection.ColdSets;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Travellers;

/** Puts together what a nonconformance's page shows. */
@Component
class Sheets {

    private final NonconformanceRepository all;
    private final Deciding deciding;
    private final Opening opening;
    private final LooksAgain looks;
    private final Readings readings;
    private final Evidence evidence;
    private final ColdSets coldSets;
    private final Travellers travellers;
    private final Orders orders;
    private final Crew crew;
    private final Clock clock;

    Sheets(
            NonconformanceRepository all,
            Deciding deciding,
            Opening opening,
            LooksAgain looks,
            Readings readings,
            Evidence evidence,
            ColdSets coldSets,
            Travellers travellers,
            Orders orders,
            Crew crew,
            Clock clock) {
        this.all = all;
        this.deciding = deciding;
        this.opening = opening;
        this.looks = looks;
        this.readings = readings;
        this.evidence = evidence;
        this.coldSets = coldSets;
        this.travellers = travellers;
        this.orders = orders;
        this.crew = crew;
        this.clock = clock;
    }

    @Transactional(readOnly = true)
    NonconformanceSheet of(long id, Person reader) {
        NonconformanceLine line = deciding.byId(id);
        Nonconformance n = all.findById(id).orElseThrow();
        Set<Long> causers = opening.causers(n);
        FrameSheet.Head head = travellers.head(line.travellerId());
        Map<Long, String> names = crew.names();
        Evidence.Wanted wanted = line.characteristicId() == null ? null : evidence.wanted(line.characteristicId());
        return new NonconformanceSheet(
                line,
                head,
                head.orderId() == null ? null : orders.byId(head.orderId()),
                wanted == null ? "" : wanted.name(),
                wanted == null ? 0 : wanted.decimals(),
                line.characteristicId() == null ? List.of() : readings.of(List.of(line.characteristicId())),
                causers.stream()
                        .map(c -> names.getOrDefault(c, "Trammel"))
                        .sorted()
                        .toList(),
                deciding.allows(id, reader),
                deciding.agrees(id, reader),
                deciding.alone(id, reader),
                deciding.mustAgree(id),
                looks.of(id),
                looks.wanted(n) && reader.mayWork() && !causers.contains(reader.id()),
                line.characteristicId() == null ? null : coldSets.room(line.characteristicId(), clock.instant()),
                operations(line),
                deciding.doneSince(id),
                line.stillValid().stream()
                        .sorted()
                        .map(o -> travellers.operation(o).line())
                        .map(o -> o.loop() == 0 ? o.code() : o.code() + " loop " + o.loop())
                        .toList(),
                names.getOrDefault(line.openedBy(), "Trammel"),
                names);
    }

    private Map<String, String> operations(NonconformanceLine line) {
        Map<String, String> found = new LinkedHashMap<>();
        for (FrameSheet.OperationLine o :
                travellers.strips(List.of(line.travellerId())).getOrDefault(line.travellerId(), List.of())) {
            if (o.state() != OperationState.WAITING) {
                found.putIfAbsent(o.code(), o.code() + " " + o.name());
            }
            if (o.operationId() == line.operationId()) {
                break;
            }
        }
        return found;
    }
}
