package org.trammel.shop.alignment;

import java.util.Optional;
import org.springframework.data.repository.Repository;

interface SetUpRepository extends Repository<SetUpRow, Long> {

    SetUpRow save(SetUpRow row);

    Optional<SetUpRow> findFirstBySheetIdOrderByIdDesc(long sheetId);
}
