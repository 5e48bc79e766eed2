package org.trammel.shop.assembly;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.travellers.EvidenceGivers;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Reads what was recorded of a build at an operation. */
@Component
@Transactional(readOnly = true)
class BuildRecords implements EvidenceGivers {

    private final JoinRepository joins;
    private final BeddingRepository beddings;
    private final RideRepository rides;
    private final CountryTickRepository ticks;
    private final PackRepository packs;
    private final Travellers travellers;
    private final Orders orders;
    private final BuildLacks lacks;
    private final BuildRulesBook book;

    BuildRecords(
            JoinRepository joins,
            BeddingRepository beddings,
            RideRepository rides,
            CountryTickRepository ticks,
            PackRepository packs,
            Travellers travellers,
            Orders orders,
            BuildLacks lacks,
            BuildRulesBook book) {
        this.joins = joins;
        this.beddings = beddings;
        this.rides = rides;
        this.ticks = ticks;
        this.packs = packs;
        this.travellers = travellers;
        this.orders = orders;
        this.lacks = lacks;
        this.book = book;
    }

    BuildRecord of(FrameSheet.Head head, long operationId, String code, BuildRules rules) {
        Map<BuildRecord.Brake, BuildRecord.Bedded> brakes = new HashMap<>();
        beddings.findByOperationIdOrderById(operationId)
                .forEach(row -> brakes.put(row.bedded().brake(), row.bedded()));
        return new BuildRecord(
                operationId,
                rules,
                rules.joins(code),
                rules.rides(code),
                rules.packs(code),
                rules.joins(code) ? parts(head) : List.of(),
                last(joins.findByOperationIdOrderById(operationId).stream().map(JoinRow::joined)),
                brakes.get(BuildRecord.Brake.FRONT),
                brakes.get(BuildRecord.Brake.REAR),
                last(rides.findByOperationIdOrderById(operationId).stream().map(RideRow::ridden)),
                rules.rides(code) ? items(head, operationId, rules) : List.of(),
                last(packs.findByOperationIdOrderById(operationId).stream().map(PackRow::packed)),
                rules.packs(code) ? lacks.of(head, operationId) : List.of());
    }

    /** What it lacks before its packing, or altogether where it is packed nowhere. */
    List<String> lacks(FrameSheet.Head head) {
        long packing = travellers.whole(head.travellerId()).stream()
                .filter(one -> book.inForce()
                        .filter(rules -> rules.packs(one.line().code()))
                        .isPresent())
                .mapToLong(one -> one.line().operationId())
                .max()
                .orElse(0);
        return lacks.of(head, packing);
    }

    /** Tags of the parts in force that make the frame. */
    List<String> parts(FrameSheet.Head head) {
        return children(head).stream().map(FrameSheet.Head::tag).toList();
    }

    List<FrameSheet.Head> children(FrameSheet.Head head) {
        return travellers.partsInForce(head.travellerId());
    }

    private List<BuildRecord.Item> items(FrameSheet.Head head, long operationId, BuildRules rules) {
        Map<String, BuildRecord.Item> newest = new HashMap<>();
        ticks.findByOperationIdOrderById(operationId)
                .forEach(row -> newest.put(row.item().item(), row.item()));
        return rules.itemsIn(country(head)).stream()
                .map(item -> newest.getOrDefault(item, new BuildRecord.Item(item, false, null, null)))
                .toList();
    }

    String country(FrameSheet.Head head) {
        return head.orderId() == null ? "" : orders.byId(head.orderId()).country();
    }

    @Override
    public Set<Long> peopleAt(long operationId) {
        Set<Long> people = new HashSet<>(joins.peopleAt(operationId));
        people.addAll(beddings.peopleAt(operationId));
        people.addAll(rides.peopleAt(operationId));
        rides.findByOperationIdOrderById(operationId)
                .forEach(row -> people.add(row.ridden().rider()));
        people.addAll(ticks.peopleAt(operationId));
        people.addAll(packs.peopleAt(operationId));
        return people;
    }

    /** Whoever rode or packed does not sign as the one who took no part. */
    @Override
    public Set<Long> workedAt(long operationId) {
        return peopleAt(operationId);
    }

    @Override
    public Set<Long> peopleOn(Collection<Long> characteristicIds) {
        return Set.of();
    }

    private static <T> @Nullable T last(Stream<T> rows) {
        return rows.reduce((before, after) -> after).orElse(null);
    }
}
