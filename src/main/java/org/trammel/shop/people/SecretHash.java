package org.trammel.shop.people;

import java.security.SecureRandom;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.stereotype.Component;

/**
 * Hashes PINs and passwords with Argon2id: 19 MiB, two passes, one lane (the least that OWASP's password storage sheet
 * names, from memory), which takes some 50 ms. Nobody's secret is checked against a hash of nobody's, so that a name
 * that does not exist takes as long as one that does.
 */
@Component
class SecretHash {

    private static final String ALPHABET = "23456789abcdefghjkmnpqrstvwxyz";

    private final Argon2PasswordEncoder encoder;
    private final SecureRandom random = new SecureRandom();
    private final String nobodys;
    /** Hashing is made to be dear: a storm of guesses must not take the memory and the cores from the shop. */
    private final Semaphore turns =
            new Semaphore(Math.max(2, Runtime.getRuntime().availableProcessors()));

    @Autowired
    SecretHash() {
        this(19 * 1024, 2);
    }

    /** Of another cost, for whoever hashes thousands of secrets that protect nothing. */
    SecretHash(int memory_KiB, int passes) {
        encoder = new Argon2PasswordEncoder(16, 32, 1, memory_KiB, passes);
        nobodys = encoder.encode("nobody's secret");
    }

    String of(String secret) {
        turns.acquireUninterruptibly();
        try {
            return encoder.encode(SecretRules.normal(secret));
        } finally {
            turns.release();
        }
    }

    boolean matches(String secret, @Nullable String hash) {
        turns.acquireUninterruptibly();
        try {
            String typed = secret.length() > 400 ? "" : SecretRules.normal(secret);
            boolean same = encoder.matches(typed, hash == null ? nobodys : hash);
            return same && hash != null;
        } finally {
            turns.release();
        }
    }

    /** A PIN that follows the rules and that nobody chose. */
    String freshPin() {
        String pin;
        do {
            pin = String.valueOf(100_000 + random.nextInt(900_000));
        } while (SecretRules.stepsEvenly(pin));
        return pin;
    }

    /** The text of a badge: digits, which a scanner types alike on every keyboard. */
    String freshDigits(int length) {
        StringBuilder made = new StringBuilder();
        for (int i = 0; i < length; i++) {
            made.append(random.nextInt(10));
        }
        return made.toString();
    }

    /** A one-time password of this length. */
    String fresh(int length) {
        StringBuilder made = new StringBuilder();
        for (int i = 0; i < length; i++) {
            made.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return made.toString();
    }
}
