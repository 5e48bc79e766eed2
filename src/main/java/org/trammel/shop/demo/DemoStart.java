package org.trammel.shop.demo;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.springframework.context.annotation.Profile;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;
import org.trammel.shop.people.FirstStart;
import org.trammel.shop.records.LastAct;
import org.trammel.shop.stations.Devices;

/** Loads the invented workshop before the doors open, and prints how to sign on. */
@Component
@Profile("demo")
class DemoStart implements SmartLifecycle {

    private static final Logger LOG = LoggerFactory.getLogger(DemoStart.class);
    private static final Instant OPENING = Instant.parse("2025-10-01T06:00:00Z");

    /** By then the first lots were there. */
    private static final Instant STOCKED = Instant.parse("2025-10-10T06:00:00Z");

    private final FirstStart firstStart;
    private final DemoClock clock;
    private final DemoCrew crew;
    private final DemoShop shop;
    private final DemoGauges gauges;
    private final DemoHandwork hands;
    private final DemoLots lots;
    private final DemoOvens ovens;
    private final DemoRuns runs;
    private final DemoWelds welds;
    private final DemoBuilds builds;
    private final DemoTorques torques;
    private final DemoCoats coats;
    private final DemoCuts cuts;
    private final DemoRoutes routes;
    private final DemoOrders orders;
    private final DemoDrift drift;
    private final DemoStory story;
    private final DemoTable table;
    private final DemoLastDays lastDays;
    private final DemoActs acts;
    private final Devices devices;
    private final LastAct lastAct;
    private final Environment environment;
    private volatile boolean running;

    DemoStart(
            FirstStart firstStart,
            DemoClock clock,
            DemoCrew crew,
            DemoShop shop,
            DemoGauges gauges,
            DemoHandwork hands,
            DemoLots lots,
            DemoOvens ovens,
            DemoRuns runs,
            DemoWelds welds,
            DemoBuilds builds,
            DemoTorques torques,
            DemoCoats coats,
            DemoCuts cuts,
            DemoRoutes routes,
            DemoOrders orders,
            DemoDrift drift,
            DemoStory story,
            DemoTable table,
            DemoLastDays lastDays,
            DemoActs acts,
            Devices devices,
            LastAct lastAct,
            Environment environment) {
        this.firstStart = firstStart;
        this.clock = clock;
        this.crew = crew;
        this.shop = shop;
        this.gauges = gauges;
        this.hands = hands;
        this.lots = lots;
        this.ovens = ovens;
        this.runs = runs;
        this.welds = welds;
        this.builds = builds;
        this.torques = torques;
        this.coats = coats;
        this.cuts = cuts;
        this.routes = routes;
        this.orders = orders;
        this.drift = drift;
        this.story = story;
        this.table = table;
        this.lastDays = lastDays;
        this.acts = acts;
        this.devices = devices;
        this.lastAct = lastAct;
        this.environment = environment;
    }

    @Override
    public void start() {
        if (firstStart.ownerMissing()) {
            load();
        }
        Instant last = lastAct.at().orElse(DemoClock.MORNING);
        clock.runFrom(last.isAfter(DemoClock.MORNING) ? last : DemoClock.MORNING);
        running = true;
        LOG.info("{}", notice());
    }

    private void load() {
        LOG.info("Loading the invented workshop; this takes about a minute.");
        clock.setTo(OPENING);
        crew.takeOn();
        clock.setTo(OPENING);
        shop.setUp();
        clock.setTo(STOCKED);
        routes.release();
        ovens.register();
        welds.putInForce();
        builds.putInForce();
        torques.putInForce();
        coats.putInForce();
        clock.setTo(STOCKED);
        gauges.register();
        hands.register();
        hands.readCoupons();
        cuts.register();
        lots.receive(STOCKED);
        table.book();
        List<DemoOrder> all = DemoOrders.read();
        Map<String, Long> ids = orders.enter(all);
        drift.watch();
        ExecutorService threads =
                Executors.newFixedThreadPool(Math.min(4, Runtime.getRuntime().availableProcessors()));
        try {
            CompletableFuture<Void> secrets = CompletableFuture.runAsync(
                    () -> {
                        clock.setTo(OPENING);
                        crew.chooseSecrets();
                    },
                    threads);
            // One after the other and in the order of time, so that each frame bears the same scribe mark every time.
            all.stream()
                    .sorted(Comparator.comparing(DemoOrders::start))
                    .forEach(order -> story.release(order, ids.get(order.order())));
            // Frames share nothing but lots and oven runs, so each core walks those of one run; those of several parts
            // take
            // longest and go first.
            Stream<CompletableFuture<Void>> walks = together(all).stream()
                    .sorted(Comparator.comparing(group -> !group.get(0).until().startsWith("FT ")))
                    .map(group -> CompletableFuture.runAsync(() -> walk(group, ids), threads));
            CompletableFuture.allOf(Stream.concat(Stream.of(secrets), walks).toArray(CompletableFuture[]::new))
                    .join();
        } finally {
            threads.shutdownNow();
        }
        all.forEach(order -> story.find(order, ids.get(order.order())));
        lastDays.tell(ids);
    }

    /** Frames that were aged in one run, and each of the others by itself. */
    private static Collection<List<DemoOrder>> together(List<DemoOrder> all) {
        Map<String, List<DemoOrder>> groups = new LinkedHashMap<>();
        all.forEach(order -> groups.computeIfAbsent(
                        order.run() == null ? order.order() : order.run(), key -> new ArrayList<>())
                .add(order));
        return groups.values();
    }

    private void walk(List<DemoOrder> group, Map<String, Long> ids) {
        String run = group.get(0).run();
        Instant aged = run == null ? null : runs.age(run, group, ids);
        for (DemoOrder order : group) {
            long id = ids.get(order.order());
            if (order.order().equals("O-114")) {
                runs.bake(order, id);
            }
            story.walk(order, id, aged == null ? DemoOrders.start(order).plus(Duration.ofDays(2)) : aged);
        }
    }

    private String notice() {
        StringBuilder text = new StringBuilder("\n\nThe invented workshop is open: http://localhost:")
                .append(environment.getProperty("server.port", "8080"))
                .append("/\nAt a desk, by password (/sign-on):\n");
        line(text, "ME", "Marit Ekdalen, owner", DemoCast.OWNER_PASSWORD);
        line(text, "TR", "Tobiah Renn, QA lead", DemoCast.QA_PASSWORD);
        text.append("A browser becomes a tablet at /enrol, by one of these codes (15 minutes, each once):\n");
        DemoCast.TABLETS.forEach((name, at) -> text.append("  ")
                .append(name)
                .append("  ")
                .append(devices.admit(acts.by("ME"), name, at).code())
                .append("  stations ")
                .append(String.join(", ", at))
                .append('\n'));
        text.append(
                "On a tablet, tap the name and key the PIN (the owner prints badges to scan under Shop, People):\n");
        for (DemoCast.Member member : DemoCast.ALL) {
            line(text, member.initials(), member.name(), member.pin());
        }
        return text.toString();
    }

    private static void line(StringBuilder text, String initials, String name, String secret) {
        text.append(String.format("  %-3s %-28s %s%n", initials, name, secret));
    }

    @Override
    public void stop() {
        running = false;
    }

    @Override
    public boolean isRunning() {
        return running;
    }

    /** Before the web server opens its port. */
    @Override
    public int getPhase() {
        return 0;
    }
}
