package org.trammel.shop.assembly;

import java.util.Collection;
import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface ComponentRepository extends Repository<ComponentRow, Long> {

    ComponentRow saveAndFlush(ComponentRow row);

    List<ComponentRow> findByCodeOrderByIdDesc(String code);

    List<ComponentRow> findByIdIn(Collection<Long> ids);

    @Query("select s from ComponentRow s where s.supersededAt is null order by s.code, s.id")
    List<ComponentRow> current();
}
