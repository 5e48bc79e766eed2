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
}
