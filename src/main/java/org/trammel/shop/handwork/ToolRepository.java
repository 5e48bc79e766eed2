package org.trammel.shop.handwork;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.data.repository.Repository;
import org.trammel.shop.materials.MetalFamily;

interface ToolRepository extends Repository<ToolRow, Long> {

    ToolRow saveAndFlush(ToolRow row);

    Optional<ToolRow> findByCode(String code);

    List<ToolRow> findAllByOrderByFamilyAscKindAscCodeAsc();

    boolean existsByFamilyAndKindInAndRetiredOnIsNull(MetalFamily family, Collection<ToolKind> kinds);

    boolean existsByFamilyAndKindIn(MetalFamily family, Collection<ToolKind> kinds);
}
