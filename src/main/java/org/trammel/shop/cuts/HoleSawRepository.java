package org.trammel.shop.cuts;

import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface HoleSawRepository extends Repository<HoleSawRow, Long> {

    HoleSawRow saveAndFlush(HoleSawRow row);

    Optional<HoleSawRow> findByCode(String code);

    List<HoleSawRow> findAllByOrderByCode();

    boolean existsByRetiredOnIsNull();
}
