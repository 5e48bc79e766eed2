package org.trammel.shop.welding;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.records.Act;

/** Procedures and limits for programs. They are put in force at a desk, where the QA lead gives the own secret. */
@RestController
@RequestMapping("/api/v1")
@Tag(name = "Welding procedures", description = "By what frames are welded, brazed and looked at")
class ProcedureApi {

    private final Procedures procedures;
    private final LimitSets limits;

    ProcedureApi(Procedures procedures, LimitSets limits) {
        this.procedures = procedures;
        this.limits = limits;
    }

    @GetMapping("/weld-procedures")
    @Operation(summary = "Drafts and procedures in force")
    List<Procedure> all() {
        return procedures.current();
    }

    @GetMapping("/weld-procedures/{code}")
    @Operation(summary = "Every revision of a procedure, newest first")
    List<Procedure> one(@PathVariable String code) {
        return procedures.of(code);
    }

    @PostMapping("/weld-procedures/{code}/draft")
    @Operation(summary = "Writes the draft of a procedure or of its next revision")
    Procedure draft(Act act, @PathVariable String code, @RequestBody NewProcedure body) {
        return procedures.draft(act, code, body);
    }

    @GetMapping("/weld-limits")
    @Operation(summary = "Tables of limits of imperfections, each with its edition and source")
    List<LimitSet> tables() {
        return limits.all();
    }

    @GetMapping("/weld-limits/{code}")
    LimitSet table(@PathVariable String code) {
        return limits.of(code);
    }
}
