package org.trammel.shop.travellers;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.trammel.shop.routes.Signer;

/** Who took part in an operation: whoever ticked at it, gave evidence for it, or signed it. */
@Component
class Doers {

    private final TickRepository ticks;
    private final SignatureRepository signatures;
    private final CharacteristicRepository characteristics;
    private final CarryOverRepository carries;
    private final ObjectProvider<EvidenceGivers> givers;
    private final Crewed crewed;

    Doers(
            TickRepository ticks,
            SignatureRepository signatures,
            CharacteristicRepository characteristics,
            CarryOverRepository carries,
            ObjectProvider<EvidenceGivers> givers,
            Crewed crewed) {
        this.ticks = ticks;
        this.signatures = signatures;
        this.characteristics = characteristics;
        this.carries = carries;
        this.givers = givers;
        this.crewed = crewed;
    }

    /**
     * The operation, and those of older revisions whose work was kept for it: whoever did that work did this. What was
     * to be done again counts for nothing here.
     */
    private List<Long> kept(long operationId) {
        List<Long> all = new ArrayList<>(List.of(operationId));
        List<Long> newest = all;
        while (!newest.isEmpty()) {
            newest = carries.findByNewOperationIdIn(newest).stream()
                    .filter(c -> c.verdict().keeps())
                    .map(CarryOver::oldOperationId)
                    .toList();
            all.addAll(newest);
        }
        return all;
    }

    /** Whoever ticked or gave evidence. */
    Set<Long> of(long operationId) {
        return of(kept(operationId));
    }

    private Set<Long> of(List<Long> kept) {
        Set<Long> people = new HashSet<>(ticks.peopleAt(kept));
        givers.forEach(g -> kept.forEach(id -> people.addAll(g.peopleAt(id))));
        return people;
    }

    /** The same and whoever signed, also where the signature counts no more: none of them decides about it. */
    Set<Long> andSigners(long operationId) {
        List<Long> kept = kept(operationId);
        Set<Long> people = of(kept);
        kept.forEach(id -> people.addAll(signatures.peopleAt(id)));
        return people;
    }

    /**
     * Who may not sign a point because they did its work: nobody where the signature is that of whoever did it. A
     * reading back by two people is no work: each looks for themselves; nor is a step that a second person ticks. Nor is a
     * reading that only the QA lead may take, such as that of an oven's log, for the QA lead.
     */
    Set<Long> barredFrom(long operationId, Signer as) {
        if (as == Signer.WORKER || as == Signer.ALIGNER || as == Signer.HEAT_TREATER) {
            return Set.of();
        }
        return worked(kept(operationId), as);
    }

    /**
     * Who signs an operation as the worker: whoever did work of it and may still sign, each point once. Empty where anybody
     * may, because nobody did any, or none of those who did may.
     *
     * @param signed who signed its point already
     */
    Set<Long> signingAsWorker(long operationId, Set<Long> signed) {
        Set<Long> people = worked(kept(operationId), Signer.SECOND);
        people.removeAll(signed);
        people.removeIf(id -> !crewed.person(id).maySign());
        return people;
    }

    private Set<Long> worked(List<Long> kept, Signer as) {
        List<Long> worked = characteristics.findByOperationIdInOrderByOperationIdAscPositionAsc(kept).stream()
                .filter(c -> !c.secondPerson())
                .filter(c -> as != Signer.QA || !c.signers().equals(List.of(Signer.QA)))
                .map(Characteristic::id)
                .toList();
        Set<Long> people = new HashSet<>(ticks.workersAt(kept));
        givers.forEach(g -> people.addAll(g.peopleOn(worked)));
        givers.forEach(g -> kept.forEach(id -> people.addAll(g.workedAt(id))));
        return people;
    }
}
