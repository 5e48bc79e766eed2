package org.trammel.shop.nonconformance;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;

/** Nonconformances for programs: the same verbs and checks as the sheets. */
@RestController
@RequestMapping("/api/v1/nonconformances")
@Tag(name = "Nonconformances", description = "What did not conform, who decided and what followed.")
class NonconformanceApi {

    private static final int PAGE = 100;

    private final Deciding deciding;
    private final Opening opening;

    NonconformanceApi(Deciding deciding, Opening opening) {
        this.deciding = deciding;
        this.opening = opening;
    }

    record OpenRequest(
            long travellerId,
            long operationId,
            @Nullable Long characteristicId,
            @Nullable String faultCode,
            String words) {}

    record Words(String words) {}

    record Fault(String faultCode) {}

    @GetMapping
    @Operation(summary = "A page of nonconformances, newest first; go on with the last id as before.")
    List<NonconformanceLine> page(@RequestParam(defaultValue = "" + Long.MAX_VALUE) long before) {
        return deciding.page(before, PAGE);
    }

    @GetMapping("/{id}")
    @Operation(summary = "One nonconformance.")
    NonconformanceLine one(@PathVariable long id) {
        return deciding.byId(id);
    }

    @PostMapping
    @Operation(summary = "Opens one by hand; a hold of the operation stands until it is decided.")
    NonconformanceLine open(Act act, @RequestBody OpenRequest r) {
        String number =
                opening.byHand(act, r.travellerId(), r.operationId(), r.characteristicId(), r.faultCode(), r.words());
        return deciding.byId(Long.parseLong(number.substring("NC-".length())));
    }

    @PostMapping("/{id}/fault")
    @Operation(summary = "Names the operation at fault.")
    NonconformanceLine blame(Act act, @PathVariable long id, @RequestBody Fault fault) {
        deciding.blame(act, id, fault.faultCode());
        return deciding.byId(id);
    }

    @PostMapping("/{id}/decision")
    @Operation(summary = "Puts a decision forward; carried out when all who must agree have agreed. Hours in h.")
    NonconformanceLine propose(Act act, @PathVariable long id, @RequestBody Proposal proposal) {
        deciding.propose(act, id, proposal);
        return deciding.byId(id);
    }

    @PostMapping("/{id}/agreement")
    @Operation(summary = "Agrees to the decision put forward.")
    NonconformanceLine agree(Act act, @PathVariable long id) {
        deciding.agree(act, id);
        return deciding.byId(id);
    }

    @PostMapping("/{id}/closing")
    @Operation(summary = "Closes one whose decision was carried out.")
    NonconformanceLine close(Act act, @PathVariable long id, @RequestBody Words words) {
        deciding.close(act, id, words.words());
        return deciding.byId(id);
    }
}
