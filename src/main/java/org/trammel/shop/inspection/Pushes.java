package org.trammel.shop.inspection;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What pushes did before, told by the readings before and after each. */
@Service
public class Pushes {

    private static final int MOST = 200;

    private final ColdSetRepository coldSets;
    private final ReadingRepository readings;

    Pushes(ColdSetRepository coldSets, ReadingRepository readings) {
        this.coldSets = coldSets;
        this.readings = readings;
    }

    /**
     * A push that was measured.
     *
     * @param code of the characteristic, which tells at which operation of its route it was pushed
     * @param push_mm how far it was pushed
     * @param set what stayed, towards the nominal, in {@code unit}; below 0 where it went the other way
     */
    public record Done(
            long travellerId,
            String code,
            BigDecimal push_mm,
            BigDecimal set,
            String unit,
            long personId,
            Instant at) {}

    /**
     * The newest pushes of characteristics of these names on frames of a metal. Left out are those that nobody read afterwards, and
     * those where the frame was pushed elsewhere before that was read: what stayed is then of both.
     *
     * @return oldest first
     */
    @Transactional(readOnly = true)
    public List<Done> of(Collection<String> names, String metal) {
        List<ColdSet> pushes = coldSets.measured(names, metal, Limit.of(MOST));
        Map<Long, List<ReadingLine>> read = read(pushes);
        Map<Long, List<ColdSet>> atOperation =
                coldSets
                        .findByOperationIdInOrderById(pushes.stream()
                                .map(ColdSet::operationId)
                                .distinct()
                                .toList())
                        .stream()
                        .collect(Collectors.groupingBy(ColdSet::operationId));
        return pushes.stream()
                .sorted(java.util.Comparator.comparing(ColdSet::id))
                .map(push -> done(
                        push,
                        read.getOrDefault(push.characteristicId(), List.of()),
                        atOperation.getOrDefault(push.operationId(), List.of())))
                .filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .toList();
    }

    /** Those of readings that were taken before anybody pushed their frame. */
    @Transactional(readOnly = true)
    public List<ReadingLine> before(List<ReadingLine> lines) {
        Map<Long, Instant> pushed = coldSets.firsts().stream()
                .collect(Collectors.toMap(ColdSetRepository.First::travellerId, ColdSetRepository.First::at));
        return lines.stream()
                .filter(line ->
                        !pushed.containsKey(line.travellerId()) || line.at().isBefore(pushed.get(line.travellerId())))
                .toList();
    }

    /**
     * How much permanent set pushes took, whichever way it went: of each what was aimed at, or what was measured where
     * that was more. The metal counts what was done to it, not what was meant.
     */
    BigDecimal used(List<ColdSet> pushes) {
        if (pushes.isEmpty()) {
            return BigDecimal.ZERO;
        }
        Map<Long, List<ReadingLine>> read = read(pushes);
        return pushes.stream()
                .map(push -> {
                    List<ReadingLine> ofIt = read.getOrDefault(push.characteristicId(), List.of());
                    ReadingLine before = corrected(ofIt, push.readingBeforeId());
                    ReadingLine after = after(push, before, ofIt);
                    return before == null || after == null
                            ? push.amount()
                            : push.amount()
                                    .max(before.value().subtract(after.value()).abs());
                })
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private Map<Long, List<ReadingLine>> read(List<ColdSet> pushes) {
        return Readings.lines(readings.findByCharacteristicIdInOrderById(pushes.stream()
                        .map(ColdSet::characteristicId)
                        .distinct()
                        .toList()))
                .stream()
                .collect(Collectors.groupingBy(ReadingLine::characteristicId));
    }

    /** The first reading after a push. */
    private static @Nullable ReadingLine after(ColdSet push, @Nullable ReadingLine before, List<ReadingLine> read) {
        return read.stream()
                .filter(line -> !line.replaced() && line.readingId() > push.readingBeforeId())
                .filter(line -> before == null || line.readingId() != before.readingId())
                .filter(line -> !line.at().isBefore(push.at()))
                .findFirst()
                .orElse(null);
    }

    private static @Nullable Done done(ColdSet push, List<ReadingLine> read, Collection<ColdSet> others) {
        ReadingLine before = corrected(read, push.readingBeforeId());
        Instant next = others.stream()
                .filter(other -> other.id() > push.id())
                .map(ColdSet::at)
                .min(Instant::compareTo)
                .orElse(Instant.MAX);
        ReadingLine after = after(push, before, read);
        if (before == null || after == null || after.at().isAfter(next)) {
            return null;
        }
        BigDecimal nominal = before.nominal() == null ? BigDecimal.ZERO : before.nominal();
        BigDecimal off = before.value().subtract(nominal);
        BigDecimal moved = before.value().subtract(after.value());
        return new Done(
                push.travellerId(),
                before.code(),
                Objects.requireNonNull(push.pushMm()),
                off.signum() < 0 ? moved.negate() : moved,
                before.unit(),
                push.personId(),
                push.at());
    }

    /** A reading, or the correction that stands for it now. */
    private static @Nullable ReadingLine corrected(List<ReadingLine> read, long readingId) {
        ReadingLine line = read.stream()
                .filter(one -> one.readingId() == readingId)
                .findFirst()
                .orElse(null);
        while (line != null && line.replaced()) {
            long id = line.readingId();
            line = read.stream()
                    .filter(one -> Objects.equals(one.replacesId(), id))
                    .findFirst()
                    .orElse(null);
        }
        return line;
    }
}
