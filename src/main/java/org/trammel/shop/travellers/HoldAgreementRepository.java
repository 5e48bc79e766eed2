package org.trammel.shop.travellers;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface HoldAgreementRepository extends JpaRepository<HoldAgreement, Long> {

    List<HoldAgreement> findByHoldIdInOrderById(Collection<Long> holdIds);
}
