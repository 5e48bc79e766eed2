package org.trammel.shop.nonconformance;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

interface AgreementsOfMany extends Repository<Agreement, Long> {

    List<Agreement> findByNonconformanceIdInOrderById(Collection<Long> ids);
}
