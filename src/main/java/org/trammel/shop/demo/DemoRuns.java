package org.trammel.shop.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.context.annotation.Profile;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;
import org.trammel.shop.ovens.Loads;
import org.trammel.shop.ovens.LogImport;
import org.trammel.shop.ovens.OvenRuns;
import org.trammel.shop.ovens.QuenchMark;
import org.trammel.shop.ovens.Quenches;
import org.trammel.shop.ovens.RunRelease;
import org.trammel.shop.ovens.RunSigner;
import org.trammel.shop.ovens.Runs;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Heats frames as the crew did: loaded, signed by two, run, its logger's file read in, released by the QA lead. */
@Component
@Profile("demo")
class DemoRuns {

    private static final Duration LOADING = Duration.ofMinutes(20);

    /** A run of the story: when it began in the shop's time, and how long it took. */
    private record Told(String begin, int minutes, String programme) {}

    private static final Map<String, Told> RUNS = Map.of(
            "HT-0222", new Told("2026-02-19T18:00", 600, "P-AGE-6061"),
            "HT-0223", new Told("2026-02-26T18:05", 600, "P-AGE-6061"),
            "HT-0224", new Told("2026-03-03T18:10", 600, "P-AGE-6061"),
            "HT-0225", new Told("2026-03-05T15:00", 1685, "P-AGE-7005"),
            "HT-0226", new Told("2026-03-10T18:00", 600, "P-AGE-6061"),
            "HT-0227", new Told("2026-03-13T06:15", 1685, "P-AGE-7005"),
            "HT-0228", new Told("2026-03-16T05:30", 600, "P-AGE-6061"));

    private final DemoWalk walk;
    private final DemoActs acts;
    private final DemoClock clock;
    private final Travellers travellers;
    private final Loads loads;
    private final OvenRuns ovenRuns;
    private final Quenches quenches;
    private final LogImport records;
    private final Runs runs;
    private final RunRelease release;

    DemoRuns(
            DemoWalk walk,
            DemoActs acts,
            DemoClock clock,
            Travellers travellers,
            Loads loads,
            OvenRuns ovenRuns,
            Quenches quenches,
            LogImport records,
            Runs runs,
            RunRelease release) {
        this.walk = walk;
        this.acts = acts;
        this.clock = clock;
        this.travellers = travellers;
        this.loads = loads;
        this.ovenRuns = ovenRuns;
        this.quenches = quenches;
        this.records = records;
        this.runs = runs;
        this.release = release;
    }

    /** A frame, or a part of one, that goes into an oven. */
    private record Goes(DemoOrder order, long travellerId, String tag) {}

    /**
     * Brings the frames of one run to their age, and has them aged.
     *
     * @return when it was released
     */
    Instant age(String run, List<DemoOrder> of, Map<String, Long> orderIds) {
        Told told = RUNS.get(run);
        if (told == null) {
            throw new IllegalStateException("The story does not tell when " + run + " began");
        }
        List<Goes> in = new ArrayList<>();
        for (DemoOrder order : of) {
            for (FrameSheet.Head head : travellers.ofOrder(orderIds.get(order.order()))) {
                if (order.parts().contains(head.part())) {
                    in.add(new Goes(order, head.travellerId(), head.tag()));
                    clock.setTo(DemoOrders.start(order).plus(Duration.ofDays(2)));
                    walk.to(order, head.travellerId(), "110a:0");
                }
            }
        }
        Instant begin = DemoStory.at(told.begin());
        clock.setTo(begin.minus(LOADING));
        load(run, "OV-1", told.programme(), in, "head tube down", "upper rack");
        sign(run, "SB");
        inTheOven(run, begin, told.minutes(), in, "110a:1");
        clock.pass(Duration.ofMinutes(6));
        release.decide(acts.by("TR"), run, acts.id("TR"), Set.of(), null);
        return clock.instant();
    }

    /** Solution treatment of one frame, and its quench at 06:40. It stands at the end of it. */
    void dissolve(DemoOrder order, long travellerId) {
        String run = "SO-0031";
        List<Goes> in = List.of(new Goes(
                order, travellerId, travellers.sheet(travellerId).head().tag()));
        walk.to(order, travellerId, "090a:0");
        load(run, "OV-2", "P-SOL-6061", in, "head tube down, to drain", "basket");
        sign(run, "SB");
        clock.setTo(DemoStory.at("2026-03-18T05:34"));
        ovenRuns.start(acts.by("RH"), run);
        clock.setTo(DemoStory.at("2026-03-18T05:43"));
        walk.on(order, travellerId, 2);
        quenches.tap(acts.by("RH"), run, QuenchMark.OUT);
        walk.on(order, travellerId, 1);
        quenches.tap(acts.by("RH"), run, QuenchMark.IN);
        stop(run, DemoStory.at("2026-03-18T06:41"));
        clock.pass(Duration.ofMinutes(2));
        release.decide(acts.by("TR"), run, acts.id("TR"), Set.of(), null);
    }

    /** The base colour of a frame that is baked three times in all: with the second colour and the clear coat it stays within its heat. */
    void bake(DemoOrder order, long orderId) {
        FrameSheet.Head head = travellers.ofOrder(orderId).get(0);
        long travellerId = head.travellerId();
        walk.to(order, travellerId, "150.2:0");
        String tag = head.tag();
        bake("CU-0043", "2026-03-12T10:00", "base colour", travellerId, tag, order);
    }

    private void bake(String run, String begins, String hung, long travellerId, String tag, DemoOrder order) {
        Instant begin = DemoStory.at(begins);
        clock.setTo(begin.minus(LOADING));
        List<Goes> in = List.of(new Goes(order, travellerId, tag));
        load(run, "OV-3", "P-CURE-160", in, hung, "middle hook");
        sign(run, "DO");
        inTheOven(run, begin, 55, in, "150.2:1");
        clock.pass(Duration.ofMinutes(6));
        release.decide(acts.by("SB"), run, acts.id("SB"), Set.of(), null);
    }

    /** One at a time, though several threads tell the story: an oven runs one load. */
    private synchronized void inTheOven(String run, Instant begin, int minutes, List<Goes> in, String place) {
        clock.setTo(begin);
        ovenRuns.start(acts.by("RH"), run);
        in.forEach(one -> walk.to(one.order(), one.travellerId(), place));
        stop(run, begin.plus(Duration.ofMinutes(minutes)));
    }

    private void load(String run, String oven, String programme, List<Goes> in, String hung, String place) {
        loads.open(acts.by("RH"), run, oven, programme, hung);
        clock.pass(Duration.ofMinutes(4));
        loads.load(acts.by("RH"), run, in.stream().map(Goes::tag).toList(), new Loads.Ready(place, true, true, null));
        clock.pass(Duration.ofMinutes(4));
    }

    private void sign(String run, String second) {
        ovenRuns.sign(acts.by("RH"), run, acts.id("RH"), RunSigner.HEAT_TREATER);
        clock.pass(Duration.ofMinutes(2));
        ovenRuns.sign(acts.by(second), run, acts.id(second), RunSigner.SECOND);
    }

    private void stop(String run, Instant end) {
        clock.setTo(end);
        ovenRuns.stop(acts.by("RH"), run);
        clock.pass(Duration.ofMinutes(3));
        try (InputStream file = new ClassPathResource("demo/" + run + ".csv").getInputStream()) {
            records.read(acts.by("RH"), run, file, run + ".csv", new LogImport.Choices(null, null, false));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        clock.pass(Duration.ofMinutes(1));
        records.take(acts.by("RH"), run, runs.draftId(run).orElseThrow());
    }
}
