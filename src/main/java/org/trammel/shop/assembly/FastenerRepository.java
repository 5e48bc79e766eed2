package org.trammel.shop.assembly;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

interface FastenerRepository extends Repository<FastenerRow, Long> {

    FastenerRow saveAndFlush(FastenerRow row);

    List<FastenerRow> findBySheetIdInOrderBySheetIdAscSequenceAsc(Collection<Long> sheetIds);
}
