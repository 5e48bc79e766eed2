package org.trammel.shop.cuts;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

interface CutEndRepository extends Repository<CutEndRow, Long> {

    CutEndRow saveAndFlush(CutEndRow row);

    List<CutEndRow> findByCutIdInOrderByPlace(Collection<Long> cutIds);
}
