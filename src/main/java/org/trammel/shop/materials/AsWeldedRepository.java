package org.trammel.shop.materials;

import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface AsWeldedRepository extends Repository<AsWeldedRow, Long> {

    AsWeldedRow saveAndFlush(AsWeldedRow row);

    Optional<AsWeldedRow> findBySerial(String serial);

    List<AsWeldedRow> findAllByOrderByIdDesc();
}
