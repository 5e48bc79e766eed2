package org.trammel.shop.crash;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import org.trammel.shop.outside.Tablet;
import org.trammel.shop.outside.WrittenFrame;

/**
 * Somebody at a tablet who works frame after frame: ticks two together where the route has it so, ticks, takes a tick
 * back now and then, and reads. An act without an answer is sent again under the same id once the service is back.
 */
final class Client implements Callable<Void> {

    private static final int ONE_IN = 8;
    private static final int TRIES_AFTER_A_FAULT = 3;

    private final Tablet tablet;
    private final Deque<WrittenFrame> frames;
    private final Door door;
    private final Ledger ledger;
    private final Random random;

    Client(Tablet tablet, List<WrittenFrame> frames, Door door, Ledger ledger, long seed) {
        this.tablet = tablet;
        this.frames = new ArrayDeque<>(frames);
        this.door = door;
        this.ledger = ledger;
        this.random = new Random(seed);
    }

    @Override
    public Void call() throws InterruptedException {
        while (!door.isLastRound()) {
            if (frames.size() < 2) {
                throw new IllegalStateException("The client has no frame left to work on");
            }
            work(pair(frames.poll(), frames.poll()));
        }
        return null;
    }

    /** The acts of two frames, from the first step to the last reading. */
    private List<Deed> pair(WrittenFrame one, WrittenFrame other) {
        List<Deed> deeds = new ArrayList<>();
        List<WrittenFrame.Step> ticked = one.operations().get(0).steps();
        for (int i = 0; i < ticked.size(); i++) {
            deeds.add(Deed.tick(List.of(
                    ticked.get(i).id(), other.operations().get(0).steps().get(i).id())));
        }
        for (WrittenFrame frame : List.of(one, other)) {
            for (WrittenFrame.Operation operation :
                    frame.operations().subList(1, frame.operations().size())) {
                for (WrittenFrame.Step step : operation.steps()) {
                    deeds.add(Deed.tick(List.of(step.id())));
                    if (random.nextInt(ONE_IN) == 0) {
                        deeds.add(Deed.untick(step.id()));
                        deeds.add(Deed.tick(List.of(step.id())));
                    }
                }
                for (long characteristic : operation.characteristics()) {
                    deeds.add(Deed.read(
                            characteristic,
                            BigDecimal.valueOf(random.nextInt(41) - 20, 2).toPlainString()));
                }
            }
        }
        return deeds;
    }

    /** Does one act after the other; leaves the frames when one is refused, for those after it would be too. */
    private void work(List<Deed> deeds) throws InterruptedException {
        for (Deed deed : deeds) {
            if (door.isLastRound() || !carriedOut(deed)) {
                return;
            }
        }
    }

    private boolean carriedOut(Deed deed) throws InterruptedException {
        int faults = 0;
        while (true) {
            int opening = door.openings();
            try {
                ledger.sent();
                door.sending();
                long began = System.nanoTime();
                Tablet.Answer answer = tablet.post(door.port(), deed.path(), deed.body());
                if (answer.done()) {
                    ledger.acknowledged(deed, System.nanoTime() - began);
                    return true;
                }
                if (answer.status() < 500) {
                    ledger.refused(deed, answer.status(), answer.body());
                    return false;
                }
                ledger.fault(deed, answer.status(), answer.body());
                if (++faults == TRIES_AFTER_A_FAULT) {
                    return false;
                }
            } catch (IOException unanswered) {
                ledger.unanswered(deed, Instant.now());
                door.awaitOpeningAfter(opening);
            }
        }
    }
}
