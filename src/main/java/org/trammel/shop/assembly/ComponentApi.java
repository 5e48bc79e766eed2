package org.trammel.shop.assembly;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;

/** Components, and those of a frame, for programs. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Components", description = "What the sheets of components say of their fasteners, and which a frame has")
class ComponentApi {

    private final Components components;
    private final FrameComponents frames;
    private final Signatures signatures;

    ComponentApi(Components components, FrameComponents frames, Signatures signatures) {
        this.components = components;
        this.frames = frames;
        this.signatures = signatures;
    }

    @GetMapping("/components")
    @Operation(summary = "Drafts and those in force, by their numbers")
    List<Component> all() {
        return components.current();
    }

    @GetMapping("/components/{code}")
    @Operation(summary = "Every revision of one, newest first")
    List<Component> of(@PathVariable String code) {
        return components.of(code);
    }

    record FastenerBody(
            @Nullable String name,
            @Nullable Integer bolts,
            @Nullable BigDecimal leastNm,
            @Nullable BigDecimal targetNm,
            @Nullable BigDecimal mostNm,
            @Nullable Boolean greased,

            @Schema(description = "left out, that of a dry or greased thread") @Nullable
            BigDecimal nutFactor,

            @Nullable BigDecimal threadMm,
            @Nullable Boolean crosswise,

            @Schema(description = "share of the target in each pass, in per cent") @Nullable
            List<Integer> passes,

            @Nullable Boolean leftHand,

            @Schema(description = "left out, as is usual for the kind of component") @Nullable
            Boolean witness,

            @Nullable Boolean afterRide,
            @Nullable ComponentKind clamps,

            @Schema(description = "code of the route's characteristic that it stands for") @Nullable
            String answers,

            @Schema(description = "whether its bolts are in every place of that characteristic") @Nullable
            Boolean everyPlace) {

        NewFastener fastener() {
            return new NewFastener(
                    text(name),
                    bolts == null ? 1 : bolts,
                    leastNm,
                    targetNm,
                    mostNm,
                    Boolean.TRUE.equals(greased),
                    nutFactor,
                    threadMm,
                    Boolean.TRUE.equals(crosswise),
                    passes == null ? List.of() : passes,
                    Boolean.TRUE.equals(leftHand),
                    witness,
                    Boolean.TRUE.equals(afterRide),
                    clamps,
                    answers,
                    Boolean.TRUE.equals(everyPlace));
        }
    }

    record ComponentBody(
            @Nullable String code,
            @Nullable ComponentKind kind,
            @Nullable String what,
            @Nullable String operation,
            @Nullable String rideOperation,
            @Nullable Boolean carbon,
            @Nullable BigDecimal clampedMostNm,
            @Nullable String source,
            @Nullable String edition,
            @Nullable List<FastenerBody> fasteners,

            @Schema(description = "how far a seatpost must be in, by its mark") @Nullable
            BigDecimal leastInsertionMm) {

        NewComponent content() {
            return new NewComponent(
                    kind,
                    text(what),
                    text(operation),
                    rideOperation,
                    Boolean.TRUE.equals(carbon),
                    clampedMostNm,
                    text(source),
                    text(edition),
                    fasteners == null
                            ? List.of()
                            : fasteners.stream().map(FastenerBody::fastener).toList(),
                    leastInsertionMm);
        }
    }

    @PostMapping("/components")
    @Operation(summary = "Writes a component's sheet, or the next revision of one, as a draft")
    Component draft(Act act, @RequestBody ComponentBody body) {
        return components.draft(act, text(body.code()), body.content());
    }

    record InForce(
            @Nullable String letter,

            @Schema(description = "own password or PIN of whoever puts it in force") @Nullable
            String secret) {}

    @PostMapping("/components/{code}/in-force")
    Component putInForce(Act act, SignedOn who, @PathVariable String code, @RequestBody InForce body) {
        signatures.confirm(who, text(body.secret()));
        return components.putInForce(act, code, text(body.letter()));
    }

    @GetMapping("/frames/{serial}/components")
    @Operation(summary = "Every component a frame ever had, those taken off too")
    List<FramePart> ofFrame(@PathVariable String serial) {
        return frames.everOf(serial);
    }

    record Given(
            @Schema(description = "traveller of the frame or of a part of it")
            long traveller,

            @Nullable String component,

            @Schema(description = "where on the frame; empty where there is but one") @Nullable
            String place) {}

    @PostMapping("/frame-components")
    FramePart give(Act act, @RequestBody Given body) {
        return frames.give(act, body.traveller(), text(body.component()), body.place());
    }

    record TakenOff(@Nullable String words) {}

    @PostMapping("/frame-components/{partId}/remove")
    void remove(Act act, @PathVariable long partId, @RequestBody TakenOff body) {
        frames.remove(act, partId, body.words());
    }

    private static String text(@Nullable String sent) {
        return sent == null ? "" : sent;
    }
}
