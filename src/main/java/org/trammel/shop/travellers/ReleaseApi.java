package org.trammel.shop.travellers;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.orders.BeforeRelease;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;

/** Releasing frames for programs: the same verbs and checks as the sheets. */
@RestController
@RequestMapping("/api/v1/orders/{orderId}")
@Tag(name = "Release", description = "From a checked design and a released route to a traveller.")
class ReleaseApi {

    private final Release release;
    private final Revising revising;
    private final Signatures signatures;
    private final BeforeRelease before;

    ReleaseApi(Release release, Revising revising, Signatures signatures, BeforeRelease before) {
        this.release = release;
        this.revising = revising;
        this.signatures = signatures;
        this.before = before;
    }

    record ReleaseRequest(long designRevisionId, long routeRevisionId) {}

    record Verdict(
            long operationId,
            @Nullable Carry verdict,
            @Nullable String reason) {}

    record NewerRequest(
            long designRevisionId,
            long routeRevisionId,
            @Nullable List<Verdict> verdicts,
            String secret,
            @Nullable Long ownerId,
            @Nullable String ownerPin,
            @Nullable String customer,
            @Nullable String limits,
            @Nullable LocalDate expiresOn) {}

    record Serial(String serial) {}

    @PostMapping("/release")
    @Operation(summary = "Releases the order's frame to the shop and freezes route and design in its traveller.")
    Serial release(Act act, @PathVariable long orderId, @RequestBody ReleaseRequest r) {
        return new Serial(release.release(act, orderId, r.designRevisionId(), r.routeRevisionId()));
    }

    @GetMapping("/release-warnings")
    @Operation(
            summary = "What speaks against releasing a revision although it may be released, such as a gauge it lacks.")
    List<String> warnings(@PathVariable long orderId, @RequestParam long designRevisionId) {
        return before.warnings(designRevisionId);
    }

    @GetMapping("/finished-operations")
    @Operation(summary = "Operations done so far, each of which a newer revision must give a verdict.")
    List<Revising.Finished> finished(@PathVariable long orderId) {
        return revising.finished(orderId);
    }

    @PostMapping("/newer-revision")
    @Operation(
            summary = "Withdraws the travellers in the shop and releases a newer design revision. Signed with"
                    + " the QA lead's own secret: the PIN at a tablet, the password at a desk.")
    Serial newer(Act act, SignedOn who, @PathVariable long orderId, @RequestBody NewerRequest r) {
        signatures.confirm(who, r.secret());
        Map<Long, Revising.Said> said = new HashMap<>();
        for (Verdict v : r.verdicts() == null ? List.<Verdict>of() : r.verdicts()) {
            if (v.verdict() != null) {
                said.put(v.operationId(), new Revising.Said(v.verdict(), v.reason() == null ? "" : v.reason()));
            }
        }
        Revising.Agreed agreed = r.ownerId() == null || r.ownerPin() == null
                ? null
                : new Revising.Agreed(
                        signatures
                                .sign(r.ownerId(), r.ownerPin(), who.deviceId())
                                .id(),
                        Objects.requireNonNullElse(r.customer(), ""),
                        Objects.requireNonNullElse(r.limits(), ""),
                        r.expiresOn());
        return new Serial(revising.supersede(act, orderId, r.designRevisionId(), r.routeRevisionId(), said, agreed));
    }
}
