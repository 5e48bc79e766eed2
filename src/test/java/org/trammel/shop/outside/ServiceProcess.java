package org.trammel.shop.outside;

import java.io.File;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The service as a shop runs it: what {@code ops/build} lays out, started by its start script, in a process of its own. */
public final class ServiceProcess {

    private static final Path START = Path.of("target", "app", "start").toAbsolutePath();
    private static final long PATIENCE_S = 120;

    private final Process process;
    private final int port;
    private final Path said;
    private final Duration startedIn;

    private ServiceProcess(Process process, int port, Path said, Duration startedIn) {
        this.process = process;
        this.port = port;
        this.said = said;
        this.startedIn = startedIn;
    }

    /** Lays the application out as {@code ops/build} does; nothing if it is newer than the sources. */
    public static void build() throws IOException, InterruptedException {
        Path said = Files.createDirectories(Path.of("target")).resolve("build-app.log");
        Process build = new ProcessBuilder("ops/build")
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        if (build.waitFor() != 0) {
            throw new IOException("ops/build ended with " + build.exitValue() + "\n" + Files.readString(said));
        }
    }

    /** Starts it on the records, with nothing but the settings they need, and waits until it is ready. */
    public static ServiceProcess start(RecordsAt records, Path said) throws IOException, InterruptedException {
        return start(records, said, Map.of());
    }

    public static ServiceProcess start(RecordsAt records, Path said, Map<String, String> environment)
            throws IOException, InterruptedException {
        long began = System.nanoTime();
        int port = freePort();
        Process process = launch(records, said, environment, port);
        Knock knock = new Knock(port);
        while (!knock.answered()) {
            if (process.waitFor(20, TimeUnit.MILLISECONDS)) {
                throw new IOException("The service did not start:\n" + Files.readString(said));
            }
            if (System.nanoTime() - began > TimeUnit.SECONDS.toNanos(PATIENCE_S)) {
                process.destroyForcibly();
                throw new IOException("The service was not ready in " + PATIENCE_S + " s:\n" + Files.readString(said));
            }
        }
        return new ServiceProcess(process, port, said, Duration.ofNanos(System.nanoTime() - began));
    }

    /** Starts it and kills it so soon that it may not be ready yet. */
    public static void startAndKill(RecordsAt records, Path said, Duration after)
            throws IOException, InterruptedException {
        Process process = launch(records, said, Map.of(), freePort());
        process.waitFor(after.toMillis(), TimeUnit.MILLISECONDS);
        process.destroyForcibly().waitFor();
    }

    private static Process launch(RecordsAt records, Path said, Map<String, String> environment, int port)
            throws IOException {
        Files.createDirectories(records.home());
        List<String> command = new ArrayList<>(List.of(START.toString()));
        command.addAll(records.arguments());
        command.add("--server.address=127.0.0.1");
        command.add("--server.port=" + port);
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said.toFile());
        shopless(builder.environment());
        builder.environment().putAll(environment);
        return builder.start();
    }

    /** Settings of a shop's own on this machine are not for a test. */
    private static void shopless(Map<String, String> environment) {
        environment.keySet().removeIf(name -> name.startsWith("SPRING_") || name.startsWith("TRAMMEL_"));
    }

    private static int freePort() throws IOException {
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return free.getLocalPort();
        }
    }

    /** What the command {@code --verify} says about the records, and the code it ends with. */
    public record Verified(int code, String words) {}

    /** Runs the shipped command on the records; no service may have an H2 file open. */
    public static Verified verify(RecordsAt records) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(START.toString(), "--verify"));
        command.addAll(records.arguments());
        File said = Files.createTempFile("verify", ".log").toFile();
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(said);
        shopless(builder.environment());
        int code = builder.start().waitFor();
        String words = Files.readString(said.toPath());
        Files.delete(said.toPath());
        return new Verified(code, words);
    }

    public int port() {
        return port;
    }

    /** From the command to the first answer that says it is ready. */
    public Duration startedIn() {
        return startedIn;
    }

    /** Ends it as a lost battery would end it for the process: at once, whatever it is doing. */
    public void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    /** Stops it in order. */
    public void stop() throws InterruptedException {
        process.destroy();
        process.waitFor();
    }

    public boolean runs() {
        return process.isAlive();
    }

    /** Waits so long, or shorter if it ends. */
    public void letWork(Duration time) throws InterruptedException {
        process.waitFor(time.toNanos(), TimeUnit.NANOSECONDS);
    }

    /** Everything it wrote to its console. */
    public String said() throws IOException {
        return Files.readString(said);
    }

    /** Most memory it ever had resident, in megabytes, as Linux counts it. */
    public long peakMemoryMb() throws IOException {
        return Files.readAllLines(Path.of("/proc", String.valueOf(process.pid()), "status")).stream()
                        .filter(line -> line.startsWith("VmHWM:"))
                        .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                        .sum()
                / 1024;
    }
}
