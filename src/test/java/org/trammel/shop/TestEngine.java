package org.trammel.shop;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.core.env.MapPropertySource;

/**
 * The database engine the tests run on, told by the system property {@code trammel.test.engine}: {@code h2} (the
 * default, in memory) or {@code postgresql}. An engine that is asked for and cannot be had fails the tests; none is
 * skipped.
 */
public abstract class TestEngine {

    private static final Logger LOG = LoggerFactory.getLogger(TestEngine.class);

    /** The engine of this JVM. */
    public static TestEngine running() {
        return Holder.RUNNING;
    }

    /** PostgreSQL, whatever the other tests of this JVM run on: for tests that start a service on each engine. */
    public static TestEngine postgresql() {
        return running().name().equals("postgresql") ? running() : SecondHolder.POSTGRESQL;
    }

    /** A PostgreSQL of its own whose acknowledged transactions are on disk: for measurements, which a test never is. */
    public static TestEngine durablePostgresql() {
        return new PostgresEngine(PostgresServer.start(PostgresServer.DURABLE));
    }

    /** {@code h2} or {@code postgresql}. */
    public abstract String name();

    /**
     * The database of that name, made empty at the first call in this JVM. Migrations run as the owner of the tables
     * and the application as a role that owns none, where the engine has roles.
     */
    public abstract TestDatabase database(String name);

    private static final class Holder {

        private static final TestEngine RUNNING = start(System.getProperty("trammel.test.engine", "h2"));

        private static TestEngine start(String name) {
            TestEngine engine = switch (name) {
                case "h2" -> new H2Engine();
                case "postgresql" -> new PostgresEngine(PostgresServer.start(PostgresServer.THROWN_AWAY));
                default -> throw new IllegalArgumentException("trammel.test.engine is " + name);
            };
            LOG.info("Tests run on {}", engine);
            return engine;
        }
    }

    private static final class SecondHolder {

        private static final TestEngine POSTGRESQL =
                new PostgresEngine(PostgresServer.start(PostgresServer.THROWN_AWAY));
    }

    /** Points a context at the running engine. */
    public static final class Initializer implements ApplicationContextInitializer<ConfigurableApplicationContext> {

        @Override
        public void initialize(ConfigurableApplicationContext context) {
            String database = context.getEnvironment().getProperty("trammel.test.database", "shop");
            context.getEnvironment()
                    .getPropertySources()
                    .addFirst(new MapPropertySource(
                            "test engine", running().database(database).properties()));
        }
    }
}
