package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.routes.Reduction;

/** What a trace asks of many frames at once; each answer is one statement. */
@Service
@Transactional(readOnly = true)
public class Traces {

    private final TravellerRepository travellers;
    private final OperationRepository operations;
    private final CharacteristicRepository characteristics;

    Traces(TravellerRepository travellers, OperationRepository operations, CharacteristicRepository characteristics) {
        this.travellers = travellers;
        this.operations = operations;
        this.characteristics = characteristics;
    }

    /** Serials by traveller. */
    public Map<Long, String> serials(Collection<Long> travellerIds) {
        return travellerIds.isEmpty()
                ? Map.of()
                : travellers.serialsOf(travellerIds).stream()
                        .collect(Collectors.toMap(SerialOf::travellerId, SerialOf::serial));
    }

    /** Every operation of the piece a traveller is of, loops and those done under an older revision included. */
    public List<Long> operationsOf(long travellerId) {
        return operations.ofSamePiece(travellers.ofSamePiece(travellerId)).stream()
                .map(Operation::id)
                .toList();
    }

    /** Whether an operation of one of these codes is not done yet on a traveller. */
    public boolean comes(long travellerId, Predicate<String> code) {
        return operations.findByTravellerIdOrderByPosition(travellerId).stream()
                .anyMatch(o -> !o.state().past() && code.test(o.code()));
    }

    /** Every traveller of each serial, oldest first, parts and withdrawn ones included. */
    public Map<String, List<FrameSheet.Head>> heads(Collection<String> serials) {
        return serials.isEmpty()
                ? Map.of()
                : travellers.findBySerialInOrderById(serials).stream()
                        .map(FrameSheet.Head::of)
                        .collect(Collectors.groupingBy(FrameSheet.Head::serial));
    }

    /**
     * Of these readings those a characteristic stands on now: the newest of it, in a frame that is neither scrapped nor
     * drawn anew, at an operation that was not done over.
     */
    public Set<Long> inForce(Collection<Long> readingIds) {
        return readingIds.isEmpty() ? Set.of() : new HashSet<>(characteristics.inForce(readingIds));
    }

    /** Of these characteristics those that two people have read, each for themselves, by their newest reading. */
    public Map<Long, Long> readByTwo(Collection<Long> characteristicIds) {
        return characteristicIds.isEmpty()
                ? Map.of()
                : characteristics.readByTwo(characteristicIds).stream()
                        .collect(Collectors.toMap(Characteristic::id, Characteristic::readingId));
    }

    /** How the raw values of each characteristic become the one that is judged. */
    public Map<Long, Reduction> reductions(Collection<Long> characteristicIds) {
        return characteristicIds.isEmpty()
                ? Map.of()
                : characteristics.reductions(characteristicIds).stream()
                        .collect(Collectors.toMap(ReducedBy::characteristicId, ReducedBy::reduction));
    }

    /** Reduction of a characteristic. */
    record ReducedBy(long characteristicId, Reduction reduction) {}

    /** Serial of a traveller. */
    record SerialOf(long travellerId, String serial) {}
}
