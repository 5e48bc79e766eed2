package org.trammel.shop.welding;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface RepairRepository extends Repository<RepairRow, Long> {

    RepairRow saveAndFlush(RepairRow row);

    Optional<RepairRow> findByNonconformance(String number);

    List<RepairRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from RepairRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
