package org.trammel.shop.coats;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Finishes for programs. They are put in force at a desk, where the QA lead gives the own secret. */
@RestController
@RequestMapping("/api/v1/finishes")
@Tag(name = "Finishes", description = "What is asked of frames that are blasted and coated")
class FinishApi {

    private final Finishes finishes;

    FinishApi(Finishes finishes) {
        this.finishes = finishes;
    }

    @GetMapping
    @Operation(summary = "Finishes in force")
    List<Finish> all() {
        return finishes.inForce();
    }

    @GetMapping("/{code}")
    @Operation(summary = "Every revision of a finish, newest first")
    List<Finish> one(@PathVariable String code) {
        return finishes.of(code);
    }
}
