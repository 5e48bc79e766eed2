package org.trammel.shop.stations;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface StationRepository extends JpaRepository<StationRow, String> {

    List<StationRow> findByRetiredAtIsNullOrderByPosition();
}
