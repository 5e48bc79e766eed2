package org.trammel.shop.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionalOnExpression;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/**
 * Takes back-ups of an H2 file, which only the service itself can do while it runs: once a day, and whenever somebody
 * puts a file {@code backup-wanted} beside the database.
 */
@Component
@ConditionalOnExpression("'${spring.datasource.url}'.startsWith('jdbc:h2:file:')")
class BackupsOnH2 {

    private static final Logger LOG = LoggerFactory.getLogger(BackupsOnH2.class);
    private static final DateTimeFormatter NAME =
            DateTimeFormatter.ofPattern("'trammel-'uuuuMMdd'T'HHmmss'Z.zip'").withZone(ZoneOffset.UTC);

    private final Path home;
    private final Duration every;
    private final int kept;
    private final Backups backups;
    private final JdbcClient jdbc;
    private final Clock clock;

    BackupsOnH2(
            @Value("${trammel.home}") Path home,
            @Value("${trammel.backup.every:24h}") Duration every,
            @Value("${trammel.backup.kept:14}") int kept,
            Backups backups,
            JdbcClient jdbc,
            Clock clock) {
        this.home = home;
        this.every = every;
        this.kept = kept;
        this.backups = backups;
        this.jdbc = jdbc;
        this.clock = clock;
    }

    @Scheduled(fixedDelay = 3_000)
    void takeIfDue() {
        Path wanted = home.resolve("backup-wanted");
        boolean asked = Files.exists(wanted);
        if (asked || isDue()) {
            try {
                take();
                Files.deleteIfExists(wanted);
            } catch (IOException e) {
                LOG.error("No back-up was taken: {}", e.getMessage());
            }
        }
    }

    private boolean isDue() {
        return backups.last()
                .map(last -> !last.at().plus(every).isAfter(clock.instant()))
                .orElse(true);
    }

    private void take() throws IOException {
        Instant now = clock.instant();
        Path folder = Files.createDirectories(home.resolve("backups"));
        Path part = folder.resolve(NAME.format(now) + ".part");
        Path whole = folder.resolve(NAME.format(now));
        jdbc.sql("backup to '" + part.toAbsolutePath().toString().replace("'", "''") + "'")
                .update();
        Files.move(part, whole, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        backups.took(new Backups.Backup(now, whole.getFileName().toString()));
        forgetOldest(folder);
    }

    private void forgetOldest(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            List<Path> newestFirst = all.filter(file -> file.toString().endsWith(".zip"))
                    .sorted(Comparator.reverseOrder())
                    .toList();
            for (Path old : newestFirst.subList(Math.min(kept, newestFirst.size()), newestFirst.size())) {
                Files.delete(old);
            }
        }
    }
}
