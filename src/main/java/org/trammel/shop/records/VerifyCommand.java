package org.trammel.shop.records;

import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.util.List;
import javax.sql.DataSource;
import org.springframework.boot.Banner;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.core.env.Environment;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionException;

/**
 * The command {@code --verify}: looks through everything that is sealed, files included, says what it found and ends. It
 * starts no web server and no migration, and takes the database from the same settings as the service.
 */
public final class VerifyCommand {

    /** Everything fits. */
    public static final int INTACT = 0;

    /** At least one record does not fit. */
    public static final int FAULTS = 1;

    /** The database could not be read, so nothing is known. */
    public static final int NOT_READ = 2;

    private static final String OPTION = "--verify";

    private VerifyCommand() {}

    /** Whether the command line asks for it. */
    public static boolean isAskedFor(String... arguments) {
        return List.of(arguments).contains(OPTION);
    }

    /**
     * Carries it out.
     *
     * @param out where the answer is written
     * @return the code to end with
     */
    public static int run(PrintStream out, String... arguments) {
        try (ConfigurableApplicationContext context = new SpringApplicationBuilder(Setup.class)
                .web(WebApplicationType.NONE)
                .bannerMode(Banner.Mode.OFF)
                .logStartupInfo(false)
                .properties("logging.level.root=WARN")
                .run(arguments)) {
            return tell(
                    out, context.getBean(ChainVerification.class).verify(ChainVerification.Extent.RECORDS_AND_FILES));
        } catch (DataAccessException | TransactionException unreachable) {
            out.println("The records could not be read: "
                    + unreachable.getMostSpecificCause().getMessage());
            out.println(
                    "While the service runs on a database file, use the page Shop, log; or stop the service first.");
            return NOT_READ;
        } catch (UncheckedIOException unreadable) {
            out.println(unreadable.getMessage());
            return NOT_READ;
        }
    }

    private static int tell(PrintStream out, Verification found) {
        out.println(found.words());
        found.faults().stream().skip(1).forEach(fault -> out.println(fault.words()));
        found.remarks().forEach(out::println);
        return found.isIntact() ? INTACT : FAULTS;
    }

    /** What the command needs of the service: the database and nothing else. */
    @Import({ChainVerification.class, CheckpointFile.class})
    static class Setup {

        @Bean
        DataSource database(Environment settings) {
            String url = settings.getRequiredProperty("spring.datasource.url");
            // A mistyped folder must not be answered by a new, empty and faultless database.
            return new DriverManagerDataSource(
                    url.startsWith("jdbc:h2:file:") ? url + ";IFEXISTS=TRUE" : url,
                    settings.getProperty("spring.datasource.username", ""),
                    settings.getProperty("spring.datasource.password", ""));
        }

        @Bean
        PlatformTransactionManager transactions(DataSource database) {
            return new JdbcTransactionManager(database);
        }
    }
}
