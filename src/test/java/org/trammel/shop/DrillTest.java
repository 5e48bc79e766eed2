package org.trammel.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The drill that a shop runs, on the application as it was just packaged. */
@Tag("crash")
class DrillTest {

    @ParameterizedTest
    @ValueSource(strings = {"h2", "postgresql"})
    void whatWasBackedUpComesBackWholeAndVerifies(String engine) throws IOException, InterruptedException {
        Path said = Path.of("target", "drill-" + engine + ".log");
        ProcessBuilder command = new ProcessBuilder("ops/drill", engine)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        // The first start of an empty shop writes enough to lose; the demo workshop takes minutes to build up.
        command.environment().put("TRAMMEL_DRILL_PROFILE", "");
        Process drill = command.start();
        boolean ended = drill.waitFor(10, TimeUnit.MINUTES);
        if (!ended) {
            drill.destroy();
        }
        assertThat(ended).as("the drill ends").isTrue();
        assertThat(drill.exitValue()).as(Files.readString(said)).isZero();
        assertThat(Files.readString(said)).contains(engine + ": ", "came back unchanged, the log verifies");
    }
}
