package org.trammel.shop.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.stream.Stream;
import org.trammel.shop.TestEngine;
import org.trammel.shop.outside.RecordsAt;

/**
 * Measures the service as it ships against bare JDBC on the same engine. Started by {@code ops/bench/run}; ends with 1 if
 * the figures are worth nothing, never for being slow.
 */
final class Benchmark {

    private static final Measurement.Size SIZE = new Measurement.Size(8, 3, 120, 60);

    private Benchmark() {}

    public static void main(String[] arguments) throws IOException, InterruptedException, SQLException {
        String engine = arguments[0];
        int frames = Integer.parseInt(arguments[1]);
        Path home = Files.createTempDirectory("trammel-load");
        boolean worthIt;
        try {
            RecordsAt records = switch (engine) {
                case "h2" -> RecordsAt.file(home);
                case "postgresql" ->
                    RecordsAt.database(home, TestEngine.durablePostgresql().database("load"));
                default -> throw new IllegalArgumentException("The engine is h2 or postgresql");
            };
            Result result =
                    new Measurement(records, frames, SIZE, Path.of("target", "load", engine + "-" + frames)).run();
            result.print(System.out, engine + ", " + frames + " frames (" + durability(records) + ")");
            worthIt = result.wrong().isEmpty();
        } finally {
            forget(home);
        }
        System.exit(worthIt ? 0 : 1);
    }

    /** What the engine itself says about when a transaction is on disk. */
    private static String durability(RecordsAt records) throws SQLException {
        if (records.h2()) {
            return "WRITE_DELAY=0, as it ships";
        }
        StringBuilder said = new StringBuilder();
        try (Connection connection = records.connect();
                Statement statement = connection.createStatement()) {
            for (String setting : new String[] {"server_version", "fsync", "synchronous_commit", "full_page_writes"}) {
                try (ResultSet row = statement.executeQuery("show " + setting)) {
                    row.next();
                    said.append(said.isEmpty() ? "" : ", ")
                            .append(setting)
                            .append(' ')
                            .append(row.getString(1));
                }
            }
        }
        return said.toString();
    }

    private static void forget(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted((a, b) -> b.compareTo(a)).toList()) {
                Files.delete(path);
            }
        }
    }
}
