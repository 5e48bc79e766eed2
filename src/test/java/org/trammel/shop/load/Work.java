package org.trammel.shop.load;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.trammel.shop.outside.WrittenFrame;

/** A frame whose steps are ticked one after the other, all but those of its last operation. */
final class Work {

    final WrittenFrame frame;
    private int next;

    private Work(WrittenFrame frame) {
        this.frame = frame;
    }

    /** Frames that wait for somebody to work on them. */
    static final class Waiting {

        private final Deque<Work> frames = new ArrayDeque<>();

        Waiting(List<WrittenFrame> frames) {
            frames.forEach(frame -> this.frames.add(new Work(frame)));
        }

        synchronized Work take() {
            Work work = frames.poll();
            if (work == null) {
                throw new IllegalStateException("No frame is left to work on");
            }
            return work;
        }
    }

    /** A step to tick, with where it stands. */
    record Next(WrittenFrame.Operation operation, WrittenFrame.Operation after, long step, int index) {

        boolean begins() {
            return index == 0;
        }

        boolean ends() {
            return index == operation.steps().size() - 1;
        }
    }

    boolean done() {
        return next == acts(frame);
    }

    Next next() {
        int steps = frame.operations().get(0).steps().size();
        WrittenFrame.Operation operation = frame.operations().get(next / steps);
        WrittenFrame.Operation after = frame.operations().get(next / steps + 1);
        int index = next % steps;
        next++;
        return new Next(operation, after, operation.steps().get(index).id(), index);
    }

    /** How often such a frame can be ticked. */
    static int acts(WrittenFrame frame) {
        return frame.operations().stream()
                .limit(frame.operations().size() - 1L)
                .mapToInt(operation -> operation.steps().size())
                .sum();
    }
}
