package org.trammel.shop.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.ShopTest;
import org.trammel.shop.TestClock;

@ShopTest
class ChecksOnH2Test {

    @Autowired
    private JdbcClient jdbc;

    @Test
    void aCheckOfNamedValuesHoldsAfterTheMigrationsHaveEnded() {
        int rows = jdbc.sql("insert into device (kind, name, made_at, made_by, version) values ('DESK', ?, ?, 0, 0)")
                .param("D-" + UUID.randomUUID().toString().substring(0, 8))
                .param(java.sql.Timestamp.from(TestClock.START))
                .update();
        assertThat(rows).isEqualTo(1);
    }
}
