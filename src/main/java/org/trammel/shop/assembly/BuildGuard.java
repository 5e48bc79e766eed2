package org.trammel.shop.assembly;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.Awaited;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Keeps the gates shut that the rules of building name, until their records are there and as asked. */
@Component
class BuildGuard implements Awaited {

    private static final int NAMED = 3;

    private final BuildRulesBook book;
    private final BuildRecords records;
    private final OwnPartChecks ownParts;
    private final Travellers travellers;

    BuildGuard(BuildRulesBook book, BuildRecords records, OwnPartChecks ownParts, Travellers travellers) {
        this.book = book;
        this.records = records;
        this.ownParts = ownParts;
        this.travellers = travellers;
    }

    @Override
    public Optional<Refusal> outstanding(AtItsGate operation) {
        BuildRules rules = operation.doneOutside()
                ? null
                : book.inForce(operation.code(), operation.begunAt()).orElse(null);
        if (rules == null || !rules.names(operation.code()) && !rules.fits(operation.code())) {
            return Optional.empty();
        }
        FrameSheet.Head head = travellers.head(operation.travellerId());
        if (rules.fits(operation.code())) {
            Optional<Refusal> own = ownParts.outstanding(head, operation.cannot());
            if (own.isPresent()) {
                return own;
            }
        }
        if (!rules.names(operation.code())) {
            return Optional.empty();
        }
        BuildRecord record = records.of(head, operation.operationId(), operation.code(), rules);
        return Optional.ofNullable(first(
                record.joins() ? joined(record, operation.cannot()) : null,
                record.rides() ? ridden(record, operation.cannot()) : null,
                record.packs() ? packed(record, operation.cannot()) : null));
    }

    /** A step of the route that rests on a record asks for it whatever the rules say, also of work begun before them. */
    @Override
    public Optional<Refusal> proof(AtItsGate operation, ProvenStep step) {
        if (step.proof().sheet() != Proof.Sheet.BUILD || operation.doneOutside()) {
            return Optional.empty();
        }
        String cannot = operation.notTicked(step.text());
        BuildRules rules = book.inForce()
                .filter(one -> one.records(step.proof(), operation.code()))
                .orElse(null);
        if (rules == null) {
            return Optional.of(Refusal.state(
                    cannot,
                    "It rests on a record (" + step.proof().words() + "), and no rules in force name operation "
                            + operation.code() + " for it.",
                    "The QA lead puts the rules of join, final check and packing in force; then it is recorded."));
        }
        BuildRecord record =
                records.of(travellers.head(operation.travellerId()), operation.operationId(), operation.code(), rules);
        return Optional.ofNullable(
                switch (step.proof()) {
                    case JOINED -> joined(record, cannot);
                    case BEDDED -> bedded(record, cannot);
                    case RIDDEN -> rode(record, cannot);
                    case COUNTRY -> country(record, cannot);
                    default -> packed(record, cannot);
                });
    }

    private static @Nullable Refusal joined(BuildRecord record, String cannot) {
        BuildRecord.Joined joined = record.joined();
        Set<String> wanted = new TreeSet<>(record.parts());
        return joined != null && new TreeSet<>(joined.parts()).equals(wanted)
                ? null
                : Refusal.state(
                        cannot,
                        joined == null
                                ? "It is not recorded which parts were joined."
                                : "A part in force was not scanned: " + String.join(", ", wanted) + ".",
                        "Scan the tag of every part on the sheet of the join.");
    }

    private static @Nullable Refusal ridden(BuildRecord record, String cannot) {
        return first(bedded(record, cannot), rode(record, cannot), country(record, cannot));
    }

    private static @Nullable Refusal bedded(BuildRecord record, String cannot) {
        if (!Builds.enough(record.front()) || !Builds.enough(record.rear())) {
            String which = Builds.enough(record.front()) ? "rear" : "front";
            return Refusal.state(
                    cannot,
                    "The " + which + " brake is not bedded as its pads ask, with the lever clear of the bar.",
                    "Bed it, not on public roads, and count the stops on the final sheet.");
        }
        return null;
    }

    private static @Nullable Refusal rode(BuildRecord record, String cannot) {
        BuildRecord.Ridden ridden = record.ridden();
        if (ridden == null || !ridden.good()) {
            return Refusal.state(
                    cannot,
                    ridden == null
                            ? "Nobody is recorded to have ridden it."
                            : "The ride was not good: " + ridden.words(),
                    "Put right what was found; then somebody rides it and signs.");
        }
        return null;
    }

    private static @Nullable Refusal country(BuildRecord record, String cannot) {
        List<String> open = record.items().stream()
                .filter(item -> !item.there())
                .map(BuildRecord.Item::item)
                .toList();
        return open.isEmpty()
                ? null
                : Refusal.state(
                        cannot,
                        "The country of the order asks for what is not ticked: " + String.join(", ", open) + ".",
                        "Tick each on the final sheet.");
    }

    private static @Nullable Refusal packed(BuildRecord record, String cannot) {
        return notWhole(record, cannot)
                .orElse(
                        record.packed() == null
                                ? Refusal.state(
                                        cannot,
                                        "Frame, box and paper were not scanned together.",
                                        "Scan all three on the final sheet: one serial.")
                                : null);
    }

    /** Why nothing is packed yet; empty where the record of the build is whole. */
    static Optional<Refusal> notWhole(BuildRecord record, String cannot) {
        if (record.missing().isEmpty()) {
            return Optional.empty();
        }
        int more = record.missing().size() - NAMED;
        return Optional.of(Refusal.state(
                cannot,
                "The record of the build is not whole. "
                        + String.join(
                                "; ", record.missing().stream().limit(NAMED).toList())
                        + (more > 0 ? "; and " + more + " more." : "."),
                "The final sheet lists all of it; each is put right where it belongs."));
    }

    private static @Nullable Refusal first(@Nullable Refusal... found) {
        for (Refusal one : found) {
            if (one != null) {
                return one;
            }
        }
        return null;
    }
}
