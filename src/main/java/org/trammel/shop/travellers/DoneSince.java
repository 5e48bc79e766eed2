package org.trammel.shop.travellers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What was begun after the operation a fault was found at. Its verdicts are about a piece that is changed by what is done
 * over, so none of them stands without a word: each is done over as well, or said to be valid still.
 */
@Service
public class DoneSince {

    private final TravellerRepository travellers;
    private final OperationRepository operations;

    DoneSince(TravellerRepository travellers, OperationRepository operations) {
        this.travellers = travellers;
        this.operations = operations;
    }

    /** An operation begun since, of the piece itself or of the frame it was joined into. */
    public record Done(long operationId, String part, String called, String name) {}

    /** Everything begun after an operation, in order: first of its own piece, then of the frame it was joined into. */
    @Transactional(readOnly = true)
    public List<Done> since(long operationId) {
        Operation found = operations.findById(operationId).orElseThrow(() -> Bench.noSuch("operation"));
        Traveller traveller = travellers.findById(found.travellerId()).orElseThrow();
        List<Operation> all = operations.findByTravellerIdOrderByPosition(traveller.id());
        Stream<Done> own = inPiece(all, inForce(all, found)).stream().map(o -> done(traveller, o));
        Stream<Done> joined = whole(traveller).stream()
                .flatMap(whole -> sinceJoined(operations.findByTravellerIdOrderByPosition(whole.id())).stream()
                        .map(o -> done(whole, o)));
        return Stream.concat(own, joined).toList();
    }

    private static Done done(Traveller traveller, Operation o) {
        return new Done(o.id(), traveller.part(), o.called(), o.name());
    }

    /**
     * What of the operations that were put in to be done over is not done yet, as a sentence; empty if all is.
     *
     * @param source what they were put in for, such as the number of a nonconformance
     */
    @Transactional(readOnly = true)
    public Optional<String> outstanding(String serial, String source) {
        return travellers.findBySerialOrderById(serial).stream()
                .filter(traveller -> traveller.state().open())
                .flatMap(traveller -> outstanding(traveller, source).stream())
                .findFirst();
    }

    private Optional<String> outstanding(Traveller traveller, String source) {
        List<Operation> all = operations.findByTravellerIdOrderByPosition(traveller.id());
        return all.stream()
                .filter(o -> o.state() == OperationState.REPEATED && source.equals(o.stateReason()))
                .map(o -> inForce(all, o))
                .filter(o -> !o.state().past())
                .findFirst()
                .map(o -> "Operation " + o.called() + " of " + traveller.mark() + " is "
                        + o.state().word() + ".");
    }

    /** Where the operation a fault was found at is done over already, its newest loop. */
    static Operation inForce(List<Operation> all, Operation found) {
        return found.state() != OperationState.REPEATED
                ? found
                : all.stream()
                        .filter(o -> o.code().equals(found.code()) && o.state() != OperationState.REPEATED)
                        .findFirst()
                        .orElse(found);
    }

    List<Operation> inPiece(List<Operation> all, Operation until) {
        return begun(all.stream().filter(o -> o.position() > until.position()).toList());
    }

    /** Whether anything was begun after an operation, in its piece or in the frame the piece was joined into. */
    boolean any(Traveller traveller, Operation operation) {
        return !inPiece(operations.findByTravellerIdOrderByPosition(traveller.id()), operation)
                        .isEmpty()
                || whole(traveller).stream()
                        .anyMatch(whole -> !sinceJoined(operations.findByTravellerIdOrderByPosition(whole.id()))
                                .isEmpty());
    }

    /** The frame a part belongs to. */
    Optional<Traveller> whole(Traveller traveller) {
        return Optional.ofNullable(traveller.parentId()).flatMap(travellers::findById);
    }

    /** The operations of a whole frame from the one on that joined its parts; none while it is not joined. */
    List<Operation> sinceJoined(List<Operation> ofWhole) {
        List<Operation> begun = begun(ofWhole);
        List<Operation> since = new ArrayList<>();
        for (Operation o : begun) {
            if (o.joins() || !since.isEmpty()) {
                since.add(o);
            }
        }
        return since;
    }

    private static List<Operation> begun(List<Operation> all) {
        return all.stream()
                .filter(o -> o.state() != OperationState.WAITING && o.state() != OperationState.REPEATED)
                .toList();
    }
}
