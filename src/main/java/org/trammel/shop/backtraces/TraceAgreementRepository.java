package org.trammel.shop.backtraces;

import java.util.Collection;
import java.util.List;
import org.springframework.data.repository.Repository;

interface TraceAgreementRepository extends Repository<TraceAgreementRow, Long> {

    TraceAgreementRow saveAndFlush(TraceAgreementRow row);

    List<TraceAgreementRow> findByDecisionIdInOrderById(Collection<Long> decisionIds);
}
