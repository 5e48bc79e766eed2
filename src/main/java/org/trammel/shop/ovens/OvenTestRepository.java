package org.trammel.shop.ovens;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

/** Newest first: of two of one instant the one that was recorded later. */
interface OvenTestRepository extends Repository<OvenTestRow, Long> {

    OvenTestRow save(OvenTestRow row);

    List<OvenTestRow> findByOvenIdOrderByTestedAtDescIdDesc(long ovenId);

    List<OvenTestRow> findByOvenIdInOrderByTestedAtDescIdDesc(Collection<Long> ovenIds);

    List<OvenTestRow> findByThermocoupleOrderByTestedAtDescIdDesc(String thermocouple);
}
