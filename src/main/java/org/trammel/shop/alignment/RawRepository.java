package org.trammel.shop.alignment;

import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface RawRepository extends Repository<RawRow, Long> {

    RawRow save(RawRow row);

    Optional<RawRow> findById(long id);

    List<RawRow> findBySheetIdOrderById(long sheetId);
}
