package org.trammel.shop.materials;

import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface FitRepository extends Repository<FitRow, Long> {

    FitRow save(FitRow row);

    Optional<FitRow> findById(long id);

    @Query("select f from FitRow f where f.endedAt is null order by f.materialClass, f.metal, f.id")
    List<FitRow> inForce();

    @Query("select f from FitRow f where f.endedAt is null and f.materialClass = :materialClass order by f.id")
    List<FitRow> inForceOf(String materialClass);
}
