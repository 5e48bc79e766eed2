package org.trammel.shop.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.TestClock;
import org.trammel.shop.records.Refusal;

/** Plays a list of deeds on a new frame and looks after each whether it did what it may. */
final class Trial {

    private final World world;
    private final LastGate gate;
    private final AlwaysTrue always;
    private final Mishaps mishaps;
    private final Map<String, Integer> counted = new TreeMap<>();
    private final List<String> told = new ArrayList<>();

    Trial(World world) {
        this.world = world;
        this.gate = new LastGate(world.jdbc());
        this.always = new AlwaysTrue(world.jdbc(), world.cast(), gate);
        this.mishaps = new Mishaps(world, new NextThing(world));
    }

    Map<String, Integer> counted() {
        return counted;
    }

    /** What was tried last, deed by deed. */
    List<String> told() {
        return told;
    }

    /** What was found wrong; empty if nothing was. */
    List<String> play(List<Deed> deeds) {
        world.shop().clock().setTo(TestClock.START);
        world.begin();
        mishaps.begin();
        told.clear();
        String serial = world.frame().serial();
        List<String> found = new ArrayList<>();
        for (Deed deed : deeds) {
            Optional<Attempt> attempt = mishaps.attempt(deed, Seen.of(world.jdbc(), serial));
            if (attempt.isPresent()) {
                tried(deed, attempt.get(), serial, found);
            }
            if (!found.isEmpty()) {
                break;
            }
        }
        if (found.isEmpty()) {
            found.addAll(always.violations(serial));
        }
        putAway(serial);
        return found;
    }

    private void tried(Deed deed, Attempt attempt, String serial, List<String> found) {
        boolean again = deed.kind() == Deed.Kind.SEND_AGAIN;
        boolean ships = attempt.ships() && !again && !left(serial);
        Set<String> forbids = ships ? gate.forbids(serial, world.shop().clock().instant()) : Set.of();
        String before = attempt.act() == null ? "" : always.digest(serial);
        long ranOut = ranOut(serial);
        String outcome = outcome(attempt, found);
        told.add(attempt.words() + (again ? ", sent again" : "") + ": " + outcome);
        boolean refused = !outcome.equals("done");
        count((refused ? "refused " : "done ") + deed.kind());
        if (!refused) {
            count("did " + attempt.words().split(" ")[0]);
        }
        if (attempt.act() == null) {
            return;
        }
        // What was read back blind and asked about is kept, though nothing is read: see BlindAttempts.
        boolean kept = refused && !again && askedAbout(attempt.act().id());
        boolean undisturbed = ranOut == ranOut(serial) && !kept;
        if ((refused || again) && undisturbed && !before.equals(always.digest(serial))) {
            found.add((again ? "sent again, " : "refused, ") + attempt.words() + " changed something: " + before + " "
                    + always.digest(serial));
        }
        if (refused && !again && logged(attempt.act().id()) != kept) {
            found.add("refused, " + attempt.words() + (kept ? " was kept and is not in the log" : " is in the log"));
        }
        if (!refused && !logged(attempt.act().id())) {
            found.add(attempt.words() + " was done and is not in the log");
        }
        if (again) {
            count("sent again");
        } else if (!refused) {
            mishaps.carriedOut(attempt);
        }
        if (ships) {
            shipping(refused, forbids, found);
        }
    }

    private void shipping(boolean refused, Set<String> forbids, List<String> found) {
        if (!refused) {
            count("shipped");
            if (!forbids.isEmpty()) {
                found.add("a frame left with " + forbids);
            }
            return;
        }
        forbids.forEach(cause -> count("refused to ship: " + cause));
        if (forbids.size() == 1) {
            count("refused to ship: only " + forbids.iterator().next());
        }
    }

    private static String outcome(Attempt attempt, List<String> found) {
        try {
            attempt.call().run();
            return "done";
        } catch (Refusal refused) {
            if (refused.what().isBlank()
                    || refused.why().isBlank()
                    || refused.instead().isBlank()) {
                found.add("a refusal of " + attempt.words() + " has not three parts");
            }
            return "refused: " + refused.why();
        } catch (RuntimeException broken) {
            found.add(attempt.words() + " broke: " + broken);
            return "broke: " + broken;
        }
    }

    private boolean askedAbout(UUID act) {
        return world.jdbc()
                        .sql("select count(*) from blind_attempt where act_id = ?")
                        .param(act)
                        .query(Long.class)
                        .single()
                > 0;
    }

    private boolean logged(@Nullable UUID act) {
        return world.jdbc()
                        .sql("select count(*) from log_entry where act_id = ?")
                        .param(act)
                        .query(Long.class)
                        .single()
                > 0;
    }

    /** Records of the service's own look at the clocks, which may come at any moment. */
    private long ranOut(String serial) {
        return world.jdbc()
                .sql("select count(*) from log_entry where chain = ? and kind = 'clock ran out'")
                .param("frame:" + serial)
                .query(Long.class)
                .single();
    }

    private boolean left(String serial) {
        return world.jdbc()
                        .sql("select count(*) from traveller where serial = ? and state = 'SHIPPED'")
                        .param(serial)
                        .query(Long.class)
                        .single()
                > 0;
    }

    private void count(String what) {
        counted.merge(what, 1, Integer::sum);
    }

    /** Takes the frame out of the lists that other tests look at. */
    private void putAway(String serial) {
        world.jdbc()
                .sql("update traveller set state = 'SCRAPPED', current_operation_id = null, current_station = null,"
                        + " current_code = null where serial = ? and state in ('RELEASED', 'IN_WORK', 'FINISHED')")
                .param(serial)
                .update();
        world.jdbc()
                .sql("update hold set lifted_by = 0, lifted_at = placed_at, lift_words = 'put away'"
                        + " where serial = ? and lifted_at is null")
                .param(serial)
                .update();
        world.jdbc()
                .sql("update shop_call set answered_by = 0, answered_at = at where answered_at is null"
                        + " and traveller_id in (select id from traveller where serial = ?)")
                .param(serial)
                .update();
        world.jdbc()
                .sql("update nonconformance set state = 'CLOSED', decided_at = opened_at where serial = ?"
                        + " and state in ('OPEN', 'PROPOSED')")
                .param(serial)
                .update();
        world.jdbc()
                .sql("update frame_clock set state = 'MET' where state = 'RUNNING'"
                        + " and traveller_id in (select id from traveller where serial = ?)")
                .param(serial)
                .update();
    }
}
