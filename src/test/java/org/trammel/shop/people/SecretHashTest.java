package org.trammel.shop.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;
import org.junit.jupiter.api.Test;

/** The hash as a shop has it: its cost, and that it is the one RFC 9106 describes, computed by the library beneath. */
class SecretHashTest {

    private final SecretHash hash = new SecretHash();

    /** OWASP's password storage sheet, from memory: Argon2id, at least 19 MiB, two passes, one lane. */
    @Test
    void itCostsWhatTheSheetNamesAndNoTwoAreAlike() {
        String one = hash.of("305 812");
        assertThat(one).startsWith("$argon2id$v=19$m=19456,t=2,p=1$").isNotEqualTo(hash.of("305 812"));
        assertThat(hash.matches("305 812", one)).isTrue();
        assertThat(hash.matches("305 813", one)).isFalse();
        assertThat(hash.matches("305 812", null)).isFalse();
    }

    @Test
    void theBytesAreThoseOfArgon2id() {
        String[] parts = hash.of("tidewater").split("\\$");
        byte[] salt = Base64.getDecoder().decode(parts[4]);
        Argon2BytesGenerator generator = new Argon2BytesGenerator();
        generator.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                .withSalt(salt)
                .withMemoryAsKB(19456)
                .withIterations(2)
                .withParallelism(1)
                .build());
        byte[] expected = new byte[32];
        generator.generateBytes("tidewater".getBytes(StandardCharsets.UTF_8), expected);
        assertThat(Base64.getDecoder().decode(parts[5])).isEqualTo(expected);
    }
}
