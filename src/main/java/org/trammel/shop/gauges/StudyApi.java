package org.trammel.shop.gauges;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;

@RestController
@RequestMapping("/api/v1/gauges/{code}/studies")
@Tag(name = "Gauges")
class StudyApi {

    private final GaugeStudies studies;
    private final Gauges gauges;

    StudyApi(GaugeStudies studies, Gauges gauges) {
        this.studies = studies;
        this.gauges = gauges;
    }

    @GetMapping
    @Operation(summary = "Studies of a gauge, newest first")
    List<StudyLine> list(@PathVariable String code) {
        return studies.of(gauges.byCode(code)
                .orElseThrow(() -> Refusal.missing(
                        "The gauge was not found.",
                        "No gauge carries the number " + code + ".",
                        "Ask the register for the numbers there are.")));
    }

    @GetMapping("/{id}")
    @Operation(summary = "A study with what it comes to; appraisers by letters unless the QA lead asks")
    Study one(@PathVariable String code, @PathVariable long id, SignedOn who) {
        return studies.one(code, id, who.person().is(Role.QA_LEAD));
    }

    record Body(String what, String unit, @Nullable BigDecimal tolerance, List<StudyReading> readings) {}

    @PostMapping
    @ResponseStatus(HttpStatus.CREATED)
    @Operation(summary = "A crossed study: every appraiser read every part equally often, twice or more")
    Study enter(Act act, @PathVariable String code, @RequestBody Body body, SignedOn who) {
        long id = studies.enter(act, code, new NewStudy(body.what(), body.unit(), body.tolerance(), body.readings()));
        return studies.one(code, id, who.person().is(Role.QA_LEAD));
    }
}
