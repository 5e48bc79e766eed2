package org.trammel.shop;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.testcontainers.DockerClientFactory;

/**
 * A PostgreSQL server for the tests of this JVM, gone with it.
 *
 * @param where what runs and where it came from, for the log
 */
record PostgresServer(String host, int port, String superuser, String password, String where) {

    private static final Logger LOG = LoggerFactory.getLogger(TestEngine.class);

    /** Where a server may come from, in the order they are tried. */
    private enum Source {
        /** An engine that answers: the image named by trammel.postgres.image, else one made from Maven's binaries. */
        CONTAINER {
            @Override
            PostgresServer start(List<String> settings) {
                if (!DockerClientFactory.instance().isDockerAvailable()) {
                    throw new IllegalStateException("no container engine answers");
                }
                return PostgresImage.start(settings);
            }
        },
        /** The server that this machine has. */
        OWN {
            @Override
            PostgresServer start(List<String> settings) throws IOException {
                Path binaries = ownBinaries();
                return scratch(binaries, settings, "this machine's own server, " + binaries);
            }
        },
        /** The server binaries among the test libraries. */
        MAVEN {
            @Override
            PostgresServer start(List<String> settings) throws IOException {
                return scratch(PostgresBinaries.unpacked().resolve("bin"), settings, "server binaries from Maven");
            }
        };

        abstract PostgresServer start(List<String> settings) throws IOException;
    }

    /** Settings of a server that is thrown away: a test does not wait for the disk. */
    static final List<String> THROWN_AWAY = List.of("fsync=off");

    /** Settings of a server that is measured: what it acknowledges is on disk, as in a shop. */
    static final List<String> DURABLE =
            List.of("fsync=on", "synchronous_commit=on", "shared_buffers=512MB", "max_wal_size=4GB");

    /**
     * Starts one. The system property {@code trammel.test.postgres} may say from where ({@code container}, {@code own},
     * {@code maven}); else each is tried in turn.
     *
     * @throws IllegalStateException if none starts; tests that need PostgreSQL then fail
     */
    static PostgresServer start(List<String> settings) {
        String only = System.getProperty("trammel.test.postgres", "");
        List<String> refused = new ArrayList<>();
        for (Source source : Source.values()) {
            if (!only.isEmpty() && !only.equalsIgnoreCase(source.name())) {
                continue;
            }
            try {
                return source.start(settings);
            } catch (IOException | RuntimeException e) {
                refused.add(source + ": " + e.getMessage());
                LOG.info("PostgreSQL for the tests, not from {}: {}", source, e.getMessage());
            }
        }
        throw new IllegalStateException("No PostgreSQL to test on; ops/check installs one. " + refused);
    }

    String url(String database) {
        return "jdbc:postgresql://" + host + ":" + port + "/" + database;
    }

    private static Path ownBinaries() {
        Path installed = Path.of("/usr/lib/postgresql");
        if (!Files.isDirectory(installed)) {
            return installed;
        }
        try (Stream<Path> majors = Files.list(installed)) {
            return majors.map(major -> major.resolve("bin"))
                    .filter(folder -> Files.isExecutable(folder.resolve("initdb")))
                    .max((a, b) -> Integer.compare(major(a), major(b)))
                    .orElse(installed);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int major(Path binaries) {
        String name = String.valueOf(binaries.getParent().getFileName());
        return name.matches("\\d+") ? Integer.parseInt(name) : 0;
    }

    /** The script stops the server when the pipe to it ends, however this JVM ends. */
    private static PostgresServer scratch(Path binaries, List<String> settings, String where) throws IOException {
        List<String> command = new ArrayList<>(List.of("ops/postgres-scratch", binaries.toString()));
        command.addAll(settings);
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        BufferedReader said =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        String line = said.readLine();
        if (line == null || !line.startsWith("ready ")) {
            throw new IllegalStateException("ops/postgres-scratch did not start a server");
        }
        return new PostgresServer("127.0.0.1", Integer.parseInt(line.substring(6)), "postgres", "", where);
    }
}
