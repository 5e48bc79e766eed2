package org.trammel.shop;

import java.time.Clock;
import java.time.Duration;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.context.annotation.Bean;
import org.springframework.modulith.Modulithic;
import org.springframework.scheduling.annotation.EnableScheduling;
import org.trammel.shop.records.VerifyCommand;

/** The service of one workshop. Its modules are the packages beside this class. */
@SpringBootApplication
@EnableScheduling
@Modulithic(
        systemName = "Trammel",
        sharedModules = {"records", "people", "stations", "settings", "web"})
public class TrammelApplication {

    public static void main(String[] args) {
        if (VerifyCommand.isAskedFor(args)) {
            System.exit(VerifyCommand.run(System.out, args));
        }
        SpringApplication.run(TrammelApplication.class, args);
    }

    /**
     * The only clock: whoever needs the time asks this bean, so that the demo day and the tests can set it. It ticks in
     * microseconds because the databases keep no more: a finer instant, rounded up as it is stored, lies in the future.
     */
    @Bean
    Clock clock() {
        return Clock.tick(Clock.systemUTC(), Duration.ofNanos(1000));
    }
}
