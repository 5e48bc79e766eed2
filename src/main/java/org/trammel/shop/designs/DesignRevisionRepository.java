package org.trammel.shop.designs;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface DesignRevisionRepository extends JpaRepository<DesignRevision, Long> {

    @Query("select r from DesignRevision r join fetch r.design left join fetch r.geometry where r.id = :id")
    Optional<DesignRevision> whole(long id);

    @Query("select r from DesignRevision r join fetch r.design d where d.id = :designId order by r.position")
    List<DesignRevision> ofDesign(long designId);

    /** Number of the order a revision is drawn for: read before the act opens, so it loads nothing that may change. */
    @Query("select d.drawnFor from DesignRevision r join r.design d where r.id = :id")
    Optional<String> drawnFor(long id);

    @Query("select d.drawnFor from Design d where d.id = :designId")
    Optional<String> drawnForOfDesign(long designId);

    /** Letters of the later revisions of the same design whose gate is signed and which are not released. */
    @Query("""
            select r.letter from DesignRevision r, DesignRevision mine
            where mine.id = :id and r.design = mine.design and r.position > mine.position
              and r.state = org.trammel.shop.designs.DesignState.CHECKED
            order by r.position
            """)
    List<String> waitingAfter(long id);

    /** When a revision was released; nothing of one that was not. */
    @Query("select r.releasedAt from DesignRevision r where r.id = :id and r.releasedAt is not null")
    Optional<Instant> releasedAt(long id);

    /** Id of the revision, input, amount. */
    @Query("select r.id, key(g), value(g) from DesignRevision r join r.geometry g where r.id in :ids")
    List<Object[]> inputs(Collection<Long> ids);
}
