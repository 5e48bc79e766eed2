package org.trammel.shop.welding;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface NodeKeptRepository extends Repository<NodeKeptRow, Long> {

    NodeKeptRow saveAndFlush(NodeKeptRow row);

    List<NodeKeptRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from NodeKeptRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
