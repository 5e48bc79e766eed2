package org.trammel.shop.routes;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One operation of a route.
 *
 * @param code its number, such as 080 or 150.3; unique in the route and printed on the traveller
 * @param station code of the station; empty where no station works (a waiting time)
 * @param point the gate at its end
 * @param signers who signs the gate, each with their own PIN; empty where there is no gate
 * @param qualification what the worker must hold to begin, such as WELD:AL:141
 * @param together several frames may be ticked at once (blast, oven, wash)
 * @param outside may be sent out and booked back with a certificate
 * @param irreversible cannot be undone once begun (cut, weld, quench, age, machine); an open hold keeps it shut
 * @param joins waits until every child is finished
 * @param repeatLimit how often it may be repeated in rework before the QA lead and the owner decide
 * @param caution at most twelve words; empty where there is nothing to say
 */
public record OperationSheet(
        String code,
        String name,
        String station,
        Point point,
        List<Signer> signers,
        @Nullable String qualification,
        boolean together,
        boolean outside,
        boolean irreversible,
        boolean joins,
        @Nullable Integer repeatLimit,
        String caution,
        List<StepSheet> steps,
        List<CharacteristicSheet> characteristics) {

    public OperationSheet {
        signers = List.copyOf(signers);
        steps = List.copyOf(steps);
        characteristics = List.copyOf(characteristics);
    }
}
