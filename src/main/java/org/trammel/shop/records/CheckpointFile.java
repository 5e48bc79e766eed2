package org.trammel.shop.records;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * The roots of the checkpoints, written line by line to {@code checkpoints.log} in the folder of the service. Whoever
 * rebuilds the database cannot rebuild the copies that were taken of this file, or the last root somebody wrote down.
 */
@Component
class CheckpointFile {

    private final Path path;

    CheckpointFile(@Value("${trammel.home}") String home) {
        this.path = Path.of(home).resolve("checkpoints.log");
    }

    /** A line of the file that can be read, or one that cannot. */
    sealed interface Line {

        record Written(CheckpointSheet checkpoint) implements Line {}

        record Unreadable(int line) implements Line {}
    }

    Path path() {
        return path;
    }

    /** Adds a checkpoint, on the disk before it returns. */
    void add(CheckpointSheet checkpoint) {
        String line = checkpoint.number() + " " + checkpoint.at() + " " + checkpoint.leaves() + " " + checkpoint.root()
                + "\n";
        try {
            Files.createDirectories(path.toAbsolutePath().getParent());
            try (FileChannel file = FileChannel.open(
                    path, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.APPEND)) {
                file.write(ByteBuffer.wrap(line.getBytes(StandardCharsets.US_ASCII)));
                file.force(true);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("The checkpoint was not written to " + path, e);
        }
    }

    /** All lines, in order; none if there is no file. */
    List<Line> lines() {
        if (!Files.exists(path)) {
            return List.of();
        }
        try {
            List<Line> lines = new ArrayList<>();
            List<String> texts = Files.readAllLines(path, StandardCharsets.ISO_8859_1);
            for (int i = 0; i < texts.size(); i++) {
                lines.add(read(texts.get(i), i + 1));
            }
            return lines;
        } catch (IOException e) {
            throw new UncheckedIOException("The checkpoints cannot be read from " + path, e);
        }
    }

    private static Line read(String text, int line) {
        String[] parts = text.split(" ");
        try {
            if (parts.length == 4) {
                return new Line.Written(new CheckpointSheet(
                        Long.parseLong(parts[0]), Instant.parse(parts[1]), Long.parseLong(parts[2]), parts[3]));
            }
        } catch (NumberFormatException | DateTimeParseException unreadable) {
            return new Line.Unreadable(line);
        }
        return new Line.Unreadable(line);
    }
}
