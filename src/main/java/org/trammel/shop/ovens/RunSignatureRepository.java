package org.trammel.shop.ovens;

import java.util.List;
import org.springframework.data.repository.Repository;

interface RunSignatureRepository extends Repository<RunSignatureRow, Long> {

    RunSignatureRow save(RunSignatureRow row);

    List<RunSignatureRow> findByRunIdOrderById(long runId);
}
