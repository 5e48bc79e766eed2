package org.trammel.shop.welding;

import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface LimitSetRepository extends Repository<LimitSetRow, Long> {

    LimitSetRow saveAndFlush(LimitSetRow row);

    Optional<LimitSetRow> findByCode(String code);

    List<LimitSetRow> findAllByOrderByCode();
}
