package org.trammel.shop.ovens;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.people.Signatures;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@RestController
@RequestMapping("/api/v1/oven-programmes")
@Tag(name = "Programmes", description = "What ovens have to do, as revisions; a draft is approved by the QA lead")
class ProgrammeApi {

    private static final String DEED = "The programme was not taken.";

    private final Programmes programmes;
    private final Signatures signatures;

    ProgrammeApi(Programmes programmes, Signatures signatures) {
        this.programmes = programmes;
        this.signatures = signatures;
    }

    @GetMapping
    @Operation(summary = "Every revision, by number, the newest first")
    List<Programme> all() {
        return programmes.all();
    }

    @GetMapping("/{code}")
    List<Programme> of(@PathVariable String code) {
        return programmes.of(code);
    }

    @GetMapping("/revisions/{id}")
    Programme revision(@PathVariable long id) {
        return programmes.revision(id);
    }

    @GetMapping("/revisions/{id}/worth")
    @Operation(summary = "What it is worth to each metal that ages, beside the published ages")
    List<Worth> worth(@PathVariable long id) {
        return programmes.worth(programmes.revision(id));
    }

    record Step(
            @Nullable BigDecimal setDegC,
            @Nullable BigDecimal belowK,
            @Nullable BigDecimal aboveK,
            @Nullable BigDecimal soakH,
            @Nullable BigDecimal longestH,
            @Nullable Boolean unbroken,
            @Nullable BigDecimal overshootK,
            @Nullable BigDecimal spreadK,

            @Schema(description = "steepest rise on the way to the step, K/h") @Nullable
            BigDecimal riseKPerH) {

        ProgrammeStep step(int at) {
            return new ProgrammeStep(
                    there("set" + at, setDegC),
                    there("below" + at, belowK),
                    there("above" + at, aboveK),
                    there("soak" + at, soakH),
                    longestH,
                    Boolean.TRUE.equals(unbroken),
                    overshootK,
                    spreadK,
                    riseKPerH);
        }

        private static BigDecimal there(String field, @Nullable BigDecimal value) {
            if (value == null) {
                throw Refusal.input(field, DEED, "A figure of a step is missing.", "Send it.");
            }
            return value;
        }
    }

    /**
     * @param guards codes of operations that a frame passes only by a released run
     * @param gives codes of characteristics of these operations that the record of its runs gives, by its figure
     */
    record Content(
            @Nullable String what,
            @Nullable List<String> metals,
            @Nullable List<String> guards,
            @Nullable List<Step> steps,
            @Nullable BigDecimal neverDegC,
            @Nullable BigDecimal referenceDegC,
            @Nullable BigDecimal leastH,
            @Nullable BigDecimal mostH,
            @Nullable BigDecimal naturalAgeingH,
            @Nullable BigDecimal quenchDelayS,
            @Nullable BigDecimal quenchToAgeH,
            @Nullable Boolean countsSurvey,
            @Nullable String source,
            @Nullable Map<RunFigure, List<String>> gives) {

        NewProgramme programme() {
            List<Step> sent = steps == null ? List.of() : steps;
            return new NewProgramme(
                    what == null ? "" : what,
                    metals == null ? List.of() : metals,
                    guards == null ? List.of() : guards,
                    java.util.stream.IntStream.range(0, sent.size())
                            .mapToObj(i -> sent.get(i).step(i + 1))
                            .toList(),
                    neverDegC,
                    referenceDegC,
                    leastH,
                    mostH,
                    naturalAgeingH,
                    quenchDelayS,
                    quenchToAgeH,
                    Boolean.TRUE.equals(countsSurvey),
                    source == null ? "" : source,
                    gives == null ? Map.of() : gives);
        }
    }

    record Drawn(
            @Nullable String code,
            @Nullable Purpose purpose,
            @Nullable Content content) {}

    @PostMapping
    @ResponseStatus(HttpStatus.CREATED)
    @Operation(summary = "Draws up a programme, or the next revision of one, as a draft")
    Programme draw(Act act, @RequestBody Drawn body) {
        return programmes.draw(act, body.code() == null ? "" : body.code(), body.purpose(), content(body.content()));
    }

    record Changed(long version, @Nullable Content content) {}

    @PutMapping("/revisions/{id}")
    Programme change(Act act, @PathVariable long id, @RequestBody Changed body) {
        return programmes.change(act, id, body.version(), content(body.content()));
    }

    record Approval(
            long version,

            @Schema(description = "the QA lead's own secret once more", accessMode = Schema.AccessMode.WRITE_ONLY)
            @Nullable
            String secret) {}

    @PostMapping("/revisions/{id}/approve")
    Programme approve(Act act, @PathVariable long id, @RequestBody Approval body, SignedOn who) {
        signatures.confirm(who, body.secret() == null ? "" : body.secret());
        return programmes.approve(act, id, body.version());
    }

    private static NewProgramme content(@Nullable Content content) {
        if (content == null) {
            throw Refusal.input("content", DEED, "It is not said what it asks.", "Send its steps, metals and source.");
        }
        return content.programme();
    }
}
