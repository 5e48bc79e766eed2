package org.trammel.shop.settings;

import java.util.List;
import org.springframework.data.repository.Repository;

interface DefinitionRepository extends Repository<DefinitionRow, String> {

    List<DefinitionRow> findAllByOrderBySequence();
}
