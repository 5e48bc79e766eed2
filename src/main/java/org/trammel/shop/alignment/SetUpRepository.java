package org.trammel.shop.alignment;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface SetUpRepository extends Repository<SetUpRow, Long> {

    SetUpRow save(SetUpRow row);

    List<SetUpRow> findByIdIn(Collection<Long> ids);

    List<SetUpRow> findBySheetIdOrderById(long sheetId);

    Optional<SetUpRow> findFirstBySheetIdOrderByIdDesc(long sheetId);
}
