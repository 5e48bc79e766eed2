package org.trammel.shop.gauges;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

interface GaugeKindRepository extends Repository<GaugeKindRow, String> {

    List<GaugeKindRow> findAllByOrderByName();

    List<GaugeKindRow> findByCodeIn(Collection<String> codes);
}
