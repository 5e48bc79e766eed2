package org.trammel;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The project's own files, for the rules that no compiler keeps. */
final class Sources {

    private static final Pattern LITERAL =
            Pattern.compile("\"\"\"(.*?)\"\"\"|\"((?:[^\"\\\\\\n]|\\\\.)*)\"", Pattern.DOTALL);
    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/|(?m)^\\s*//.*$", Pattern.DOTALL);

    private Sources() {}

    /** All files under the folder with one of these endings; none if the folder is not there yet. */
    static List<Path> files(String folder, String... endings) {
        Path root = Path.of(folder);
        if (!Files.isDirectory(root)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> Stream.of(endings).anyMatch(file.toString()::endsWith))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** String literals and text blocks of a Java file that read as a sentence or a label: a capital, then a blank. */
    static List<String> sentences(Path java) {
        List<String> sentences = new ArrayList<>();
        Matcher literal = LITERAL.matcher(COMMENT.matcher(text(java)).replaceAll(""));
        while (literal.find()) {
            String text = literal.group(1) != null ? literal.group(1).strip() : literal.group(2);
            if (text.matches("(?s)\\p{Lu}\\p{Ll}*[ ,].*") || text.matches("(?s) ?\\p{Ll}+ .*\\.")) {
                sentences.add(text);
            }
        }
        return sentences;
    }

    /** What each file has against a rule, as lines that name the file. */
    static List<String> findings(List<Path> files, Function<Path, List<String>> rule) {
        return files.stream()
                .flatMap(file -> rule.apply(file).stream().map(finding -> file + ": " + finding))
                .toList();
    }

    /** Every match of the pattern in the text, with its line. */
    static List<String> matches(Pattern pattern, String text) {
        List<String> found = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            long line = text.substring(0, matcher.start()).lines().count();
            found.add("line " + Math.max(line, 1) + ": " + matcher.group().strip());
        }
        return found;
    }
}
