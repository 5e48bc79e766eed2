package org.trammel.shop.ovens;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

interface WiredRepository extends Repository<WiredRow, Long> {

    WiredRow saveAndFlush(WiredRow row);

    void delete(WiredRow row);

    List<WiredRow> findByRunIdOrderByCode(long runId);

    List<WiredRow> findByRunIdInOrderByCode(Collection<Long> runIds);

    List<WiredRow> findByCodeOrderByRunId(String code);
}
