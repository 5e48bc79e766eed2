package org.trammel.shop.inspection;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.JpaRepository;

interface FrameAgreementRepository extends JpaRepository<FrameAgreement, Long> {

    List<FrameAgreement> findByDecisionIdInOrderById(Collection<Long> decisionIds);
}
