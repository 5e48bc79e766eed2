package org.trammel.shop.alignment;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface SheetRepository extends Repository<SheetRow, Long> {

    SheetRow save(SheetRow row);

    List<SheetRow> findByIdIn(Collection<Long> ids);

    Optional<SheetRow> findById(long id);

    Optional<SheetRow> findFirstByOperationIdOrderByTurnDesc(long operationId);

    List<SheetRow> findByOperationIdOrderByTurn(long operationId);
}
