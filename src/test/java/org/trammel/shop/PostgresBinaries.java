package org.trammel.shop;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** The PostgreSQL server binaries that Maven fetched, for machines that bring none. */
final class PostgresBinaries {

    private static final String ARCHIVE = "/postgres-linux-x86_64.txz";

    private PostgresBinaries() {}

    /** The archive as a file under target. */
    static Path archive() throws IOException {
        Path file = Path.of("target", "postgres.txz").toAbsolutePath();
        if (!Files.exists(file)) {
            try (InputStream in = PostgresBinaries.class.getResourceAsStream(ARCHIVE)) {
                if (in == null) {
                    throw new IOException("no server binaries for this machine among the test libraries");
                }
                Path part = Files.createTempFile(file.getParent(), "postgres", ".part");
                Files.copy(in, part, StandardCopyOption.REPLACE_EXISTING);
                Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
            }
        }
        return file;
    }

    /** A folder that any user of this machine may read. */
    static Path unpacked() throws IOException {
        Path folder = Path.of(System.getProperty("java.io.tmpdir"), "trammel-postgres-binaries");
        if (!Files.isExecutable(folder.resolve("bin/initdb"))) {
            Files.createDirectories(folder);
            run("tar", "-xJf", archive().toString(), "-C", folder.toString());
            run("chmod", "-R", "go+rX", folder.toString());
        }
        return folder;
    }

    /** Runs a command to its end. */
    static void run(String... command) throws IOException {
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            if (process.waitFor() != 0) {
                throw new IOException(command[0] + " ended with " + process.exitValue());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(command[0] + " was interrupted", e);
        }
    }
}
