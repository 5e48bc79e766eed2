package org.trammel.shop.nonconformance;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.DoneSince;

/** Nonconformances for programs: the same verbs and checks as the sheets. */
@RestController
@RequestMapping("/api/v1/nonconformances")
@Tag(name = "Nonconformances", description = "What did not conform, who decided and what followed.")
class NonconformanceApi {

    private static final int PAGE = 100;

    private final Deciding deciding;
    private final NonconformanceReads reads;
    private final Opening opening;
    private final LooksAgain looks;

    NonconformanceApi(Deciding deciding, NonconformanceReads reads, Opening opening, LooksAgain looks) {
        this.looks = looks;
        this.deciding = deciding;
        this.reads = reads;
        this.opening = opening;
    }

    record OpenRequest(
            long travellerId,
            long operationId,
            @Nullable Long characteristicId,
            @Nullable String faultCode,
            @Nullable String words) {}

    record Words(@Nullable String words) {

        String said() {
            return words == null ? "" : words;
        }
    }

    record Fault(@Nullable String faultCode) {}

    record Proposed(
            @Nullable Decision decision,

            @Schema(description = "why, and what is to be done") @Nullable
            String words,

            @Schema(description = "rework, repair, return: code of the first operation done over") @Nullable
            String fromCode,

            @Schema(description = "concession: how far it reaches") @Nullable
            String limits,

            @Schema(description = "concession: last day it may be used") @Nullable
            LocalDate expiresOn,

            @Schema(description = "dimension, looks or weight differ from the order") @Nullable
            Boolean changesWhatWasOrdered,

            @Schema(description = "who of the customer agreed, when and how") @Nullable
            String customerAgreement,

            @Schema(description = "more loops than the route allows") @Nullable
            Boolean beyondLimit,

            @Schema(description = "h") @Nullable BigDecimal hours,

            @Schema(description = "in the shop's currency") @Nullable
            BigDecimal materialCost,

            @Schema(
                    description =
                            "rework, repair, return, scrap of a part: ids of operations done since that stay valid")
            @Nullable
            Set<Long> stillValid,

            @Schema(description = "true once scrap was asked about and is meant") @Nullable
            Boolean confirm) {

        Proposal proposal() {
            if (decision == null) {
                throw Refusal.input(
                        "decision",
                        "The decision was not put forward.",
                        "No decision is chosen.",
                        "Choose what becomes of it.");
            }
            return new Proposal(
                    decision,
                    words == null ? "" : words.strip(),
                    fromCode,
                    limits,
                    expiresOn,
                    Boolean.TRUE.equals(changesWhatWasOrdered),
                    customerAgreement,
                    Boolean.TRUE.equals(beyondLimit),
                    hours,
                    materialCost,
                    stillValid == null ? Set.of() : stillValid);
        }
    }

    record Agreed(
            @Schema(description = "decisionNumber of the decision that was read") @Nullable
            Integer decisionNumber) {

        int number() {
            if (decisionNumber == null) {
                throw Refusal.input(
                        "decisionNumber",
                        "The decision was not agreed to.",
                        "It is not said which decision was read.",
                        "Read the nonconformance and send its decisionNumber.");
            }
            return decisionNumber;
        }
    }

    @GetMapping
    @Operation(summary = "A page of nonconformances, newest first; go on with the last id as before.")
    List<NonconformanceLine> page(@RequestParam(defaultValue = "" + Long.MAX_VALUE) long before) {
        return reads.page(before, PAGE);
    }

    @GetMapping("/{id}")
    @Operation(summary = "One nonconformance.")
    NonconformanceLine one(@PathVariable long id) {
        return deciding.byId(id);
    }

    @GetMapping("/{id}/since")
    @Operation(summary = "Operations done after it was found; a loop does them over unless they are said to be valid.")
    List<DoneSince.Done> since(@PathVariable long id) {
        return deciding.doneSince(id);
    }

    @PostMapping
    @Operation(summary = "Opens one by hand; a hold of the operation stands until it is decided.")
    NonconformanceLine open(Act act, @RequestBody OpenRequest r) {
        String number = opening.byHand(
                act,
                r.travellerId(),
                r.operationId(),
                r.characteristicId(),
                r.faultCode(),
                r.words() == null ? "" : r.words());
        return deciding.byId(Long.parseLong(number.substring("NC-".length())));
    }

    @PostMapping("/{id}/fault")
    @Operation(summary = "Names the operation at fault.")
    NonconformanceLine blame(Act act, @PathVariable long id, @RequestBody Fault fault) {
        deciding.blame(act, id, fault.faultCode() == null ? "" : fault.faultCode());
        return deciding.byId(id);
    }

    @PostMapping("/{id}/decision")
    @Operation(summary = "Puts a decision forward; carried out when all who must agree have agreed. Hours in h.")
    NonconformanceLine propose(Act act, @PathVariable long id, @RequestBody Proposed proposed) {
        deciding.propose(act, id, proposed.proposal(), Boolean.TRUE.equals(proposed.confirm()));
        return deciding.byId(id);
    }

    @PostMapping("/{id}/agreement")
    @Operation(summary = "Agrees to the decision put forward, if it is still the one that was read.")
    NonconformanceLine agree(Act act, @PathVariable long id, @RequestBody Agreed agreed) {
        deciding.agree(act, id, agreed.number());
        return deciding.byId(id);
    }

    @PostMapping("/{id}/look")
    @Operation(summary = "Records what somebody saw who looked again and took no part in the operation at fault.")
    List<LooksAgain.Seen> look(Act act, @PathVariable long id, @RequestBody Words words) {
        looks.look(act, id, words.said());
        return looks.of(id);
    }

    @PostMapping("/{id}/closing")
    @Operation(summary = "Closes one whose decision was carried out.")
    NonconformanceLine close(Act act, @PathVariable long id, @RequestBody Words words) {
        deciding.close(act, id, words.said());
        return deciding.byId(id);
    }
}
