package org.trammel.shop.assembly;

import java.util.List;
import org.springframework.data.repository.Repository;

interface BuildRulesRepository extends Repository<BuildRulesRow, Long> {

    BuildRulesRow saveAndFlush(BuildRulesRow row);

    List<BuildRulesRow> findAllByOrderById();
}
