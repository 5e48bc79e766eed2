package org.trammel.shop;

/** H2 in memory, with the options of the application's own file database. */
final class H2Engine extends TestEngine {

    @Override
    public String name() {
        return "h2";
    }

    @Override
    public TestDatabase database(String name) {
        String url = "jdbc:h2:mem:" + name
                + ";DB_CLOSE_DELAY=-1;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH";
        return new TestDatabase(url, "trammel", "", "trammel", "");
    }

    @Override
    public String toString() {
        return "H2 in memory";
    }
}
