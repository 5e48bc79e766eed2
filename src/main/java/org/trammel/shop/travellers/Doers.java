package org.trammel.shop.travellers;

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
    private final ObjectProvider<EvidenceGivers> givers;

    Doers(
            TickRepository ticks,
            SignatureRepository signatures,
            CharacteristicRepository characteristics,
            ObjectProvider<EvidenceGivers> givers) {
        this.ticks = ticks;
        this.signatures = signatures;
        this.characteristics = characteristics;
        this.givers = givers;
    }

    /** Whoever ticked or gave evidence. */
    Set<Long> of(long operationId) {
        Set<Long> people = new HashSet<>(ticks.peopleAt(operationId));
        givers.forEach(g -> people.addAll(g.peopleAt(operationId)));
        return people;
    }

    /** The same and whoever signed, also where the signature counts no more: none of them decides about it. */
    Set<Long> andSigners(long operationId) {
        Set<Long> people = of(operationId);
        people.addAll(signatures.peopleAt(operationId));
        return people;
    }

    /**
     * Who may not sign a point because they did its work: nobody where the signature is that of whoever did it. A
     * reading back by two people is no work: each looks for themselves. Nor is a reading that only the QA lead may
     * take, such as that of an oven's log, for the QA lead.
     */
    Set<Long> barredFrom(long operationId, Signer as) {
        if (as == Signer.WORKER || as == Signer.ALIGNER || as == Signer.HEAT_TREATER) {
            return Set.of();
        }
        List<Long> worked = characteristics.findByOperationIdOrderByPosition(operationId).stream()
                .filter(c -> !c.secondPerson())
                .filter(c -> as != Signer.QA || !c.signers().equals(List.of(Signer.QA)))
                .map(Characteristic::id)
                .toList();
        Set<Long> people = new HashSet<>(ticks.peopleAt(operationId));
        givers.forEach(g -> people.addAll(g.peopleOn(worked)));
        return people;
    }
}
