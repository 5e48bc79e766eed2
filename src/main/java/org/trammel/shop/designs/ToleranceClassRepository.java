package org.trammel.shop.designs;

import java.util.Optional;
import org.springframework.data.repository.Repository;

interface ToleranceClassRepository extends Repository<ToleranceClass, String> {

    Optional<ToleranceClass> findById(String code);
}
