package org.trammel.shop.assembly;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface CountryTickRepository extends Repository<CountryTickRow, Long> {

    CountryTickRow saveAndFlush(CountryTickRow row);

    List<CountryTickRow> findByOperationIdOrderById(long operationId);

    List<CountryTickRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from CountryTickRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
