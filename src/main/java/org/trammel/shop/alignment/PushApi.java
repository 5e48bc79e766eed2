package org.trammel.shop.alignment;

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
import org.trammel.calc.metrology.Deviation;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.Evidence;
import org.trammel.shop.travellers.Travellers;

/** How far to push, for programs. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Alignment table", description = "Raw figures of a frame, in mm, and what is reduced from them and judged.")
class PushApi {

    private final PushAdvices advices;
    private final PushesNoted pushes;
    private final Evidence evidence;
    private final Travellers travellers;

    PushApi(PushAdvices advices, PushesNoted pushes, Evidence evidence, Travellers travellers) {
        this.advices = advices;
        this.pushes = pushes;
        this.evidence = evidence;
        this.travellers = travellers;
    }

    record Noted(
            @Nullable Deviation deviation,

            @Schema(description = "AL6061, AL7005, STEEL or TI") @Nullable
            String metal,

            @Nullable BigDecimal outsideMm,
            @Nullable BigDecimal wallMm,
            @Nullable BigDecimal pushMm,
            @Nullable BigDecimal setMm,
            @Nullable String source) {}

    @GetMapping("/characteristics/{id}/push")
    @Operation(summary = "How far to push for a characteristic that is to be set right; empty while it is not")
    List<PushAdvice> advice(@PathVariable long id) {
        long operationId = evidence.wanted(id).operationId();
        return travellers.operation(operationId).characteristics().stream()
                .filter(line -> line.characteristicId() == id)
                .flatMap(line -> advices.of(travellers.headOf(operationId), line).stream())
                .toList();
    }

    @GetMapping("/pushes-noted")
    @Operation(summary = "Pushes the shop noted before, from which the next is proposed")
    List<PushNoted> noted() {
        return pushes.all();
    }

    @PostMapping("/pushes-noted")
    @Operation(summary = "Notes a push that was made before; for the QA lead and aligners")
    List<PushNoted> note(Act act, @RequestBody Noted sent) {
        String what = "The push is not noted.";
        if (sent.deviation() == null) {
            throw Refusal.input("deviation", what, "It is missing.", "Send the deviation that was set right.");
        }
        pushes.note(
                act,
                new PushNoted(
                        sent.deviation(),
                        sent.metal() == null ? "" : sent.metal(),
                        given("outsideMm", sent.outsideMm()),
                        given("wallMm", sent.wallMm()),
                        given("pushMm", sent.pushMm()),
                        given("setMm", sent.setMm()),
                        sent.source() == null ? "" : sent.source()));
        return pushes.all();
    }

    private static BigDecimal given(String field, @Nullable BigDecimal figure) {
        if (figure == null) {
            throw Refusal.input(field, "The push is not noted.", "It is missing.", "Send it in millimetres.");
        }
        return figure;
    }
}
