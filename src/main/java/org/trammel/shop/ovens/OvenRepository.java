package org.trammel.shop.ovens;

import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface OvenRepository extends Repository<OvenRow, Long> {

    OvenRow saveAndFlush(OvenRow row);

    Optional<OvenRow> findById(long id);

    Optional<OvenRow> findByCode(String code);

    List<OvenRow> findAllByOrderByCode();

    boolean existsByCode(String code);
}
