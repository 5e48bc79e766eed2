package org.trammel.shop.stations;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface JigRepository extends JpaRepository<JigRow, String> {

    List<JigRow> findByRetiredAtIsNullOrderByCode();
}
