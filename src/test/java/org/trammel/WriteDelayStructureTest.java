package org.trammel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.springframework.boot.context.config.ConfigDataEnvironmentPostProcessor;
import org.springframework.core.env.StandardEnvironment;

/**
 * H2 keeps acknowledged acts in memory for half a second unless its address says otherwise, and a kill takes them: no
 * profile may keep a file without saying so. {@code ops/bench/crash} shows what is lost without.
 */
class WriteDelayStructureTest {

    private static final Pattern PROFILE = Pattern.compile("@Profile\\(\"!?([^\"]+)\"\\)");
    private static final Pattern OF_A_FILE = Pattern.compile("application-(.+)\\.(?:ya?ml|properties)");

    @Test
    void everyProfileThatKeepsAFileWritesAnActToDiskBeforeItAnswers() {
        Set<String> profiles = profiles();
        assertThat(profiles).contains("", "demo").allSatisfy(profile -> {
            String address = address(profile);
            assertThat(address).as("the database of profile '" + profile + "'").isNotNull();
            if (address.startsWith("jdbc:h2:file:")) {
                assertThat(address).contains(";WRITE_DELAY=0;");
            }
        });
        assertThat(address("")).startsWith("jdbc:h2:file:");
    }

    /** The profiles that code or a file of settings knows; the empty one is none. */
    private static Set<String> profiles() {
        Set<String> profiles = new TreeSet<>(List.of(""));
        Sources.files("src/main/java", ".java").forEach(file -> {
            Matcher named = PROFILE.matcher(Sources.text(file));
            while (named.find()) {
                profiles.add(named.group(1));
            }
        });
        Sources.files("src/main/resources", ".yaml", ".yml", ".properties").forEach(file -> {
            Matcher named = OF_A_FILE.matcher(String.valueOf(file.getFileName()));
            if (named.matches()) {
                profiles.add(named.group(1));
            }
        });
        return profiles;
    }

    private static String address(String profile) {
        StandardEnvironment environment = new StandardEnvironment();
        // What this machine's own shop sets is not what the program ships with.
        environment.getPropertySources().remove(StandardEnvironment.SYSTEM_ENVIRONMENT_PROPERTY_SOURCE_NAME);
        ConfigDataEnvironmentPostProcessor.applyTo(
                environment, null, null, profile.isEmpty() ? new String[0] : new String[] {profile});
        return environment.getProperty("spring.datasource.url");
    }
}
