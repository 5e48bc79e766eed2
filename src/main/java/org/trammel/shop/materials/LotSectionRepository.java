package org.trammel.shop.materials;

import java.util.List;
import org.springframework.data.repository.Repository;

interface LotSectionRepository extends Repository<LotSectionRow, Long> {

    LotSectionRow save(LotSectionRow row);

    List<LotSectionRow> findByLotIdOrderByStatementDescIdAsc(long lotId);
}
