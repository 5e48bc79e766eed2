package org.trammel.shop.designs;

import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface GateSignatureRepository extends JpaRepository<GateSignature, Long> {

    List<GateSignature> findByRevisionIdOrderById(long revisionId);
}
