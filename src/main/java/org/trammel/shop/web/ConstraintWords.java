package org.trammel.shop.web;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;

/**
 * What it means in the shop when a constraint of the database refuses a row. Every module keeps its own sentences in
 * {@code constraints/MODULE.properties}, by the name of the constraint:
 *
 * <pre>
 * person_initials_key = The person was not added. | Another person has these initials. | Choose others.
 * </pre>
 *
 * A name followed by {@code @field} also says which field of the form is at fault.
 */
@Component
class ConstraintWords {

    private final Map<String, Sentence> sentences = new HashMap<>();
    private final List<String> longestFirst;

    private record Sentence(
            String what,
            String why,
            String instead,
            @Nullable String field) {}

    ConstraintWords() throws IOException {
        for (Resource file :
                new PathMatchingResourcePatternResolver().getResources("classpath*:constraints/*.properties")) {
            Properties properties = new Properties();
            try (Reader reader = new InputStreamReader(file.getInputStream(), StandardCharsets.UTF_8)) {
                properties.load(reader);
            }
            properties.forEach((name, sentence) -> add(name.toString(), sentence.toString()));
        }
        longestFirst = sentences.keySet().stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .toList();
    }

    private void add(String key, String sentence) {
        String[] parts = sentence.split("\\s*\\|\\s*");
        if (parts.length != 3) {
            throw new IllegalStateException("The sentence of constraint " + key + " needs three parts");
        }
        int at = key.indexOf('@');
        String name = at < 0 ? key : key.substring(0, at);
        sentences.put(name, new Sentence(parts[0], parts[1], parts[2], at < 0 ? null : key.substring(at + 1)));
    }

    /** The sentence of the constraint that the failure names; empty if it names none that has a sentence. */
    Optional<Refusal> of(DataIntegrityViolationException failure) {
        String told =
                String.valueOf(failure.getMostSpecificCause().getMessage()).toLowerCase(Locale.ROOT);
        return longestFirst.stream().filter(told::contains).findFirst().map(name -> {
            Sentence words = sentences.get(name);
            return words.field() == null
                    ? Refusal.state(words.what(), words.why(), words.instead())
                    : Refusal.input(words.field(), words.what(), words.why(), words.instead());
        });
    }
}
