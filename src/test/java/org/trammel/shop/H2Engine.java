package org.trammel.shop;

import java.util.Map;

/** H2 in memory, with the options of the application's own file database. */
final class H2Engine extends TestEngine {

    @Override
    public String name() {
        return "h2";
    }

    @Override
    public Map<String, Object> connection(String database) {
        return Map.of(
                "spring.datasource.url",
                "jdbc:h2:mem:" + database
                        + ";DB_CLOSE_DELAY=-1;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH",
                "spring.datasource.username",
                "trammel",
                "spring.datasource.password",
                "");
    }

    @Override
    public String toString() {
        return "H2 in memory";
    }
}
