package org.trammel.shop;

import com.github.dockerjava.api.DockerClient;
import com.github.dockerjava.api.exception.DockerException;
import com.github.dockerjava.api.exception.NotFoundException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;
import org.testcontainers.utility.DockerImageName;

/** PostgreSQL in a container. */
final class PostgresImage {

    private static final String MADE = "local/postgres:17";

    private PostgresImage() {}

    static PostgresServer start(List<String> settings) {
        try {
            PostgresBinaries.run("docker", "--version");
        } catch (IOException e) {
            throw new IllegalStateException("no docker command is here to remove the container with", e);
        }
        String named = System.getProperty("trammel.postgres.image", "postgres:17");
        String image = present(named) || pulled(named) ? named : made();
        List<String> command = new ArrayList<>(List.of("postgres", "-c", "max_connections=120"));
        settings.forEach(setting -> command.addAll(List.of("-c", setting)));
        // Contexts that use it are closed while this JVM ends, so it goes when the JVM has gone.
        @SuppressWarnings("resource")
        PostgreSQLContainer container = new PostgreSQLContainer(
                        DockerImageName.parse(image).asCompatibleSubstituteFor("postgres"))
                .withUsername("postgres")
                .withPassword("for-tests")
                .withDatabaseName("postgres")
                .withLabel("trammel", "tests")
                .withCommand(command.toArray(String[]::new));
        container.start();
        removeAfterThisJvm(container.getContainerId());
        return new PostgresServer(
                container.getHost(),
                container.getMappedPort(5432),
                container.getUsername(),
                container.getPassword(),
                "container of image " + image);
    }

    /**
     * Leaves somebody behind who waits until the pipe to them ends, however this JVM ends. A hook of the JVM would stop
     * the server while contexts still write to it as they close, and each of them waits half a minute for a connection.
     */
    private static void removeAfterThisJvm(String id) {
        try {
            new ProcessBuilder("sh", "-c", "trap '' HUP INT TERM; cat >/dev/null; docker rm --force --volumes " + id)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            throw new IllegalStateException("Nobody would remove the container of the tests", e);
        }
    }

    private static boolean present(String image) {
        try {
            client().inspectImageCmd(image).exec();
            return true;
        } catch (NotFoundException e) {
            return false;
        }
    }

    private static boolean pulled(String image) {
        try {
            client().pullImageCmd(image).start().awaitCompletion(120, TimeUnit.SECONDS);
            return present(image);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        } catch (DockerException e) {
            return false;
        }
    }

    /** For engines that reach no registry. */
    private static String made() {
        if (!present(MADE)) {
            try {
                PostgresBinaries.run(
                        "ops/engine/postgres-image", PostgresBinaries.archive().toString(), MADE);
            } catch (IOException e) {
                throw new IllegalStateException("No image of PostgreSQL can be had or made", e);
            }
        }
        return MADE;
    }

    private static DockerClient client() {
        return DockerClientFactory.instance().client();
    }
}
