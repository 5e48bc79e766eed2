package org.trammel.shop.materials;

import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface MaterialClassRepository extends Repository<MaterialClassRow, String> {

    List<MaterialClassRow> findAllByOrderByKindAscNameAsc();

    Optional<MaterialClassRow> findById(String code);
}
