package org.trammel.shop.assembly;

import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface PartRepository extends Repository<PartRow, Long> {

    PartRow saveAndFlush(PartRow row);

    Optional<PartRow> findById(long id);

    List<PartRow> findBySerialOrderById(String serial);
}
