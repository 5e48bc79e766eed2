package org.trammel.shop.assembly;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.designs.DrawnPosts;
import org.trammel.shop.people.Crew;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Awaited;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/**
 * Seatposts whose own sheet says how far they must go in: what the drawing leaves inside, what was measured on the frame, and
 * the gate that stays shut until enough is in.
 */
@Service
public class Insertions implements Awaited {

    private static final String DEED = "The seatpost was not recorded.";
    private static final BigDecimal GREATEST_mm = BigDecimal.valueOf(600);

    private final InsertionRepository rows;
    private final FrameComponents components;
    private final DrawnPosts drawn;
    private final TorqueTurn turn;
    private final Travellers travellers;
    private final Crew crew;
    private final ActLog log;

    Insertions(
            InsertionRepository rows,
            FrameComponents components,
            DrawnPosts drawn,
            TorqueTurn turn,
            Travellers travellers,
            Crew crew,
            ActLog log) {
        this.rows = rows;
        this.components = components;
        this.drawn = drawn;
        this.turn = turn;
        this.travellers = travellers;
        this.crew = crew;
        this.log = log;
    }

    /** The seatposts that are fitted at an operation and whose sheet says how far they go in. */
    @Transactional(readOnly = true)
    public List<PostIn> of(long operationId) {
        FrameSheet.Head head = travellers.headOf(operationId);
        return of(head, operationId, travellers.operation(operationId).line().code());
    }

    private List<PostIn> of(FrameSheet.Head head, long operationId, String code) {
        List<FramePart> posts = components.of(head.serial(), head.part()).stream()
                .filter(part -> part.component().leastInsertion_mm() != null
                        && part.component().operation().equals(code))
                .toList();
        if (posts.isEmpty()) {
            return List.of();
        }
        Map<Long, InsertionRow> newest = new HashMap<>();
        rows.findByOperationIdOrderById(operationId).forEach(row -> newest.put(row.partId(), row));
        BigDecimal inside = head.designRevisionId() == null
                ? null
                : drawn.inside_mm(head.designRevisionId()).orElse(null);
        return posts.stream()
                .map(part -> post(part, inside, newest.get(part.id())))
                .toList();
    }

    private static PostIn post(FramePart part, @Nullable BigDecimal inside, @Nullable InsertionRow row) {
        return new PostIn(
                part,
                java.util.Objects.requireNonNull(part.component().leastInsertion_mm()),
                inside,
                row == null ? null : row.inserted_mm(),
                row == null ? null : row.by(),
                row == null ? null : row.at());
    }

    /** Records how far one is in. Too little is kept like enough; the gate waits until it is pushed in further. */
    @Transactional
    public List<PostIn> measure(Act act, long operationId, long partId, @Nullable BigDecimal inserted_mm) {
        if (!turn.opens(act, "measure-seatpost", operationId)) {
            return of(operationId);
        }
        if (!crew.byId(act.by()).mayWork()) {
            throw Refusal.person(DEED, "A reader changes nothing.", "Somebody who works here does it.");
        }
        turn.requireHere(turn.of(operationId), operationId, DEED);
        PostIn post = of(operationId).stream()
                .filter(one -> one.part().id() == partId)
                .findFirst()
                .orElseThrow(() -> Refusal.missing(
                        DEED, "The frame has no such seatpost at this operation.", "Open the torque sheet again."));
        if (inserted_mm == null || inserted_mm.signum() <= 0 || inserted_mm.compareTo(GREATEST_mm) > 0) {
            throw Refusal.input(
                    "inserted",
                    DEED,
                    inserted_mm == null
                            ? "It is not said how far it is in."
                            : NewFastener.plain(inserted_mm) + " mm does not lie above 0 and up to " + GREATEST_mm
                                    + " mm.",
                    "Measure its length, less what stands out, and enter it in mm.");
        }
        if (inserted_mm.stripTrailingZeros().scale() > 1) {
            throw Refusal.input("inserted", DEED, "It has more than one decimal.", "Round it down.");
        }
        rows.saveAndFlush(new InsertionRow(operationId, post, inserted_mm, act));
        log.event(
                Chains.bearing(travellers.headOf(operationId).serial()),
                "seatpost-measured",
                Map.of("operation", operationId, "part", partId, "inserted", inserted_mm.toPlainString()));
        turn.come(act, operationId);
        return of(operationId);
    }

    @Override
    public Optional<Refusal> outstanding(AtItsGate operation) {
        if (operation.doneOutside() || !components.any(operation.serial())) {
            return Optional.empty();
        }
        return of(travellers.head(operation.travellerId()), operation.operationId(), operation.code()).stream()
                .filter(post -> !post.enough())
                .findFirst()
                .map(post -> Refusal.state(
                        operation.cannot(),
                        post.inserted_mm() == null
                                ? "It is not measured how far the "
                                        + post.part().called() + " is in; " + NewFastener.plain(post.least_mm())
                                        + " mm at least by its own sheet."
                                : "The " + post.part().called() + " is in by " + NewFastener.plain(post.inserted_mm())
                                        + " mm, and its own sheet asks for " + NewFastener.plain(post.least_mm())
                                        + " mm at least.",
                        "Push it in, or take a longer one, and measure it on the torque sheet."));
    }
}
