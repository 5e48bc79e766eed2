package org.trammel.shop.coats;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface MaskRepository extends Repository<MaskRow, Long> {

    MaskRow saveAndFlush(MaskRow row);

    List<MaskRow> findByOperationIdOrderById(long operationId);

    List<MaskRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    /** Those of the operations at which anything is recorded of surface or coat. */
    @Query("""
            select m.operationId from MaskRow m where m.operationId in :operations
            union select b.operationId from BlastRow b where b.operationId in :operations
            union select s.operationId from SprayRow s where s.operationId in :operations
            union select f.operationId from FilmRow f where f.operationId in :operations
            union select l.operationId from LookRow l where l.operationId in :operations
            union select t.operationId from StripRow t where t.operationId in :operations
            union select e.operationId from LineRow e where e.operationId in :operations
            """)
    Set<Long> recorded(Collection<Long> operations);

    @Query("select distinct r.by from MaskRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
