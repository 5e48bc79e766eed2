package org.trammel.shop.dew;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

interface DewPlaceRepository extends Repository<DewPlaceRow, Long> {

    DewPlaceRow saveAndFlush(DewPlaceRow row);

    List<DewPlaceRow> findByMarginIdInOrderById(Collection<Long> marginIds);
}
