package org.trammel.shop.records;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;

/**
 * When the last back-up was taken. Whoever takes one, this service or a script, writes one line to the file
 * {@code last-backup} in the folder {@code trammel.home}: the time, a blank, and the name of the back-up.
 */
@Service
public class Backups {

    private static final Logger LOG = LoggerFactory.getLogger(Backups.class);
    private static final String NOTE = "last-backup";

    private final Path home;

    /**
     * A back-up that was taken.
     *
     * @param at when it was finished
     * @param name its file
     */
    public record Backup(Instant at, String name) {}

    Backups(@Value("${trammel.home}") Path home) {
        this.home = home;
    }

    /** The last one; nothing if none was taken or the note of it cannot be read. */
    public Optional<Backup> last() {
        try {
            String[] parts = Files.readString(home.resolve(NOTE)).strip().split(" ", 2);
            return Optional.of(new Backup(Instant.parse(parts[0]), parts.length > 1 ? parts[1] : ""));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        } catch (IOException | DateTimeException e) {
            LOG.warn("The note of the last back-up cannot be read: {}", e.getMessage());
            return Optional.empty();
        }
    }

    void took(Backup backup) throws IOException {
        Path part = Files.createTempFile(home, NOTE, ".part");
        Files.writeString(part, backup.at() + " " + backup.name() + "\n");
        Files.move(part, home.resolve(NOTE), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
}
