package org.trammel.shop.alignment;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface RawRepository extends Repository<RawRow, Long> {

    RawRow save(RawRow row);

    List<RawRow> findByIdIn(Collection<Long> ids);

    Optional<RawRow> findById(long id);

    List<RawRow> findBySheetIdOrderById(long sheetId);
}
