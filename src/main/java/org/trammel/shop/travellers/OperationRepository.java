package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface OperationRepository extends JpaRepository<Operation, Long> {

    List<Operation> findByTravellerIdOrderByPosition(long travellerId);

    /** Operations by traveller, those of a piece under its older revisions too: see the travellers of the same piece. */
    default List<Operation> ofSamePiece(List<Traveller> piece) {
        return findByTravellerIdInOrderByTravellerIdAscPositionAsc(
                piece.stream().map(Traveller::id).toList());
    }

    List<Operation> findByStateOrderByAtPointSince(OperationState state);

    List<Operation> findByTravellerIdInOrderByTravellerIdAscPositionAsc(Collection<Long> travellerIds);
}
