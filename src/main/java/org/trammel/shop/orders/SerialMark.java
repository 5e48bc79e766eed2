package org.trammel.shop.orders;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Properties;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;

/**
 * The highest serial ever given, kept outside the database: a back-up that is put back knows nothing of the serials
 * given after it was made, and two frames must never carry the same one.
 */
@Component
class SerialMark {

    private static final Logger LOG = LoggerFactory.getLogger(SerialMark.class);

    private final Path home;

    SerialMark(@Value("${trammel.home}") String home) {
        this.home = Path.of(home);
    }

    /**
     * The highest number given in a series; 0 if none is known.
     *
     * @throws Refusal if the mark is there and cannot be read
     */
    synchronized int highest(UUID installation, String series) {
        Path file = file(installation);
        if (!Files.exists(file)) {
            return 0;
        }
        try {
            return Integer.parseInt(read(file).getProperty(series, "0"));
        } catch (IOException | IllegalArgumentException unreadable) {
            LOG.error("The mark of serials {} cannot be read", file, unreadable);
            throw Refusal.state(
                    "No serial was given.",
                    "The mark that keeps serials from being given twice, " + file + ", cannot be read.",
                    "Put the file right: one line for each year, such as AB27=121, the last number given.");
        }
    }

    /** Notes a number that was given; a failure is logged, since the database holds the number too. */
    synchronized void note(UUID installation, String series, int number) {
        Path file = file(installation);
        try {
            Files.createDirectories(home);
            Properties marks = Files.exists(file) ? read(file) : new Properties();
            if (Integer.parseInt(marks.getProperty(series, "0")) >= number) {
                return;
            }
            marks.setProperty(series, Integer.toString(number));
            Path fresh = file.resolveSibling(file.getFileName() + ".new");
            try (Writer writer = Files.newBufferedWriter(fresh, StandardCharsets.UTF_8)) {
                marks.store(writer, "Highest frame serial given; keep this file when a back-up is restored");
            }
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException | IllegalArgumentException failure) {
            LOG.error("The mark of serials {} was not moved to {} {}", file, series, number, failure);
        }
    }

    private static Properties read(Path file) throws IOException {
        Properties marks = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            marks.load(reader);
        }
        return marks;
    }

    private Path file(UUID installation) {
        return home.resolve("serial-mark-" + installation + ".properties");
    }
}
