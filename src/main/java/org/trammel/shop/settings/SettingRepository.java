package org.trammel.shop.settings;

import java.util.List;
import org.springframework.data.jpa.repository.Query;
import org.springframework.data.repository.Repository;

interface SettingRepository extends Repository<SettingRow, Long> {

    SettingRow save(SettingRow row);

    @Query("select s from SettingRow s where s.id in (select max(n.id) from SettingRow n group by n.code)")
    List<SettingRow> inForce();

    List<SettingRow> findByCodeOrderByIdDesc(String code);
}
