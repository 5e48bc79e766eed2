package org.trammel.shop.coats;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface FilmRepository extends Repository<FilmRow, Long> {

    FilmRow saveAndFlush(FilmRow row);

    List<FilmRow> findByOperationIdOrderById(long operationId);

    List<FilmRow> findByOperationIdInOrderById(Collection<Long> operationIds);

    @Query("select distinct r.by from FilmRow r where r.operationId = :operationId")
    Set<Long> peopleAt(long operationId);
}
