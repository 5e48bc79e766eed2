package org.trammel.shop.routes;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface RevisionRepository extends JpaRepository<RouteRevision, Long> {

    @Query("select r from RouteRevision r join fetch r.route where r.id in :ids")
    List<RouteRevision> withRoute(Collection<Long> ids);

    @Query("select r from RouteRevision r join fetch r.route where r.route.code = :code and r.state = :state")
    Optional<RouteRevision> find(String code, RevisionState state);

    @Query("select r from RouteRevision r join fetch r.route where r.route.code = :code order by r.ordinal desc")
    List<RouteRevision> history(String code);

    @Query("select r from RouteRevision r join fetch r.route where r.state in :states")
    List<RouteRevision> in(Collection<RevisionState> states);

    @Query("select r from RouteRevision r join fetch r.route where r.route.id in :routeIds and r.state in :states")
    List<RouteRevision> of(Collection<Long> routeIds, Collection<RevisionState> states);

    @Query("""
            select distinct new org.trammel.shop.routes.ToleranceAsked(
                c.gaugeKind, c.unit, c.code, c.name, c.lowerDeviation, c.upperDeviation)
            from CharacteristicRow c
            where c.gaugeKind in :gaugeKinds and c.operation.revision.state = org.trammel.shop.routes.RevisionState.RELEASED
            and c.lowerDeviation is not null and c.upperDeviation is not null
            order by c.code, c.name
            """)
    List<ToleranceAsked> tolerancesOf(Collection<String> gaugeKinds);

    /** An operation that a station does. */
    record AtStation(String station, String name) {}

    @Query("""
            select distinct new org.trammel.shop.routes.RevisionRepository$AtStation(o.station, o.name)
            from OperationRow o join o.revision r
            where o.station <> '' and r.state in (org.trammel.shop.routes.RevisionState.DRAFT,
              org.trammel.shop.routes.RevisionState.RELEASED)
            order by o.station, o.name
            """)
    List<AtStation> atStations();

    @Query("""
            select distinct new org.trammel.shop.routes.ProofAsked(r.route.metal, r.route.kind, o.code, s.proof)
            from StepRow s join s.operation o join o.revision r
            where r.state = org.trammel.shop.routes.RevisionState.RELEASED and s.proof in :proofs
            order by r.route.metal, o.code
            """)
    List<ProofAsked> proofsAsked(Collection<Proof> proofs);
}
