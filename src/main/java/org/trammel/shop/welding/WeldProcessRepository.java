package org.trammel.shop.welding;

import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;

interface WeldProcessRepository extends Repository<WeldProcess, String> {

    Optional<WeldProcess> findById(String number);

    List<WeldProcess> findAllByOrderByNumber();
}
