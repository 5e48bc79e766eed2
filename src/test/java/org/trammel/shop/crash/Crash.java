package org.trammel.shop.crash;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.stream.Stream;
import org.trammel.shop.TestEngine;
import org.trammel.shop.outside.RecordsAt;

/** The crash test by hand, with as many kills as asked for. Started by {@code ops/bench/crash}. */
final class Crash {

    private static final int SHOWN = 10;

    private Crash() {}

    public static void main(String[] arguments) throws IOException, InterruptedException, SQLException {
        int kills = Integer.parseInt(arguments[0]);
        String engine = arguments[1];
        Path home = Files.createTempDirectory("trammel-crash");
        RecordsAt records = switch (engine) {
            case "h2" -> RecordsAt.file(home);
            case "h2-that-may-lose" -> RecordsAt.fileThatMayLose(home);
            case "postgresql" ->
                RecordsAt.database(home, TestEngine.postgresql().database("crash"));
            default -> throw new IllegalArgumentException("The engine is h2, postgresql or h2-that-may-lose");
        };
        long seed = System.nanoTime();
        Outcome outcome = new CrashRun(records, kills, Path.of("target", "crash", engine + "-by-hand"), seed).run();
        PrintStream out = System.out;
        out.println(engine + ", seed " + seed + ": " + outcome.line());
        out.println(outcome.verified().lines().limit(SHOWN).toList());
        Stream.of(outcome.lost(), outcome.twice(), outcome.torn(), outcome.refusals(), outcome.faults())
                .flatMap(found -> found.stream().limit(SHOWN))
                .forEach(out::println);
        forget(home);
        boolean whole = Stream.of(outcome.lost(), outcome.twice(), outcome.torn(), outcome.refusals(), outcome.faults())
                .allMatch(List::isEmpty);
        System.exit(whole && outcome.verifyCode() == 0 ? 0 : 1);
    }

    private static void forget(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted((a, b) -> b.compareTo(a)).toList()) {
                Files.delete(path);
            }
        }
    }
}
