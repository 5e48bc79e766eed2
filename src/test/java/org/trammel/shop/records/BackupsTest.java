package org.trammel.shop.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.stream.Stream;
import org.h2.tools.Restore;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.DriverManagerDataSource;
import org.trammel.shop.TestClock;

class BackupsTest {

    @TempDir
    private Path home;

    private final TestClock clock = new TestClock();
    private Backups backups;
    private BackupsOnH2 onH2;
    private JdbcClient jdbc;

    @BeforeEach
    void open() {
        jdbc = JdbcClient.create(new DriverManagerDataSource(url(home)));
        jdbc.sql("create table if not exists frame (serial varchar(8))").update();
        jdbc.sql("insert into frame values ('AV26901X')").update();
        backups = new Backups(home);
        onH2 = new BackupsOnH2(home, Duration.ofHours(24), 2, backups, jdbc, clock);
    }

    @Test
    void withoutABackupThereIsNoneToTellOf() throws IOException {
        assertThat(backups.last()).isEmpty();
        Files.writeString(home.resolve("last-backup"), "yesterday, I think");
        assertThat(backups.last()).isEmpty();
    }

    @Test
    void oneIsTakenEveryDayAndTheOldestAreForgotten() throws IOException {
        for (int day = 0; day < 4; day++) {
            onH2.takeIfDue();
            onH2.takeIfDue();
            assertThat(backups.last()).get().extracting(Backups.Backup::at).isEqualTo(clock.instant());
            clock.pass(Duration.ofHours(24));
        }
        try (Stream<Path> kept = Files.list(home.resolve("backups"))) {
            assertThat(kept.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("trammel-20260320T073000Z.zip", "trammel-20260321T073000Z.zip");
        }
    }

    @Test
    void oneIsTakenAtOnceWhenItIsWanted() throws IOException {
        onH2.takeIfDue();
        clock.pass(Duration.ofMinutes(5));
        Files.createFile(home.resolve("backup-wanted"));
        onH2.takeIfDue();
        assertThat(home.resolve("backup-wanted")).doesNotExist();
        assertThat(backups.last()).get().extracting(Backups.Backup::at).isEqualTo(clock.instant());
    }

    @Test
    void whatWasBackedUpComesBack(@TempDir Path elsewhere) throws SQLException {
        onH2.takeIfDue();
        jdbc.sql("delete from frame").update();
        String taken = home.resolve("backups")
                .resolve(backups.last().orElseThrow().name())
                .toString();
        Restore.execute(taken, elsewhere.toString(), "trammel");
        try (Connection connection = DriverManager.getConnection(url(elsewhere));
                Statement statement = connection.createStatement();
                var rows = statement.executeQuery("select count(*) from frame")) {
            rows.next();
            assertThat(rows.getInt(1)).isEqualTo(1);
        }
    }

    private static String url(Path folder) {
        return "jdbc:h2:file:" + folder.resolve("trammel") + ";DATABASE_TO_LOWER=TRUE;MODE=PostgreSQL";
    }
}
