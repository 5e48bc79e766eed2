package org.trammel.shop.gauges;

import java.util.List;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.trammel.shop.web.CsvFile;

/** The register as a file: one row for each range. */
@Controller
class GaugeFile {

    private final Gauges gauges;

    GaugeFile(Gauges gauges) {
        this.gauges = gauges;
    }

    @GetMapping("/shop/gauges.csv")
    ResponseEntity<byte[]> file() {
        CsvFile file = CsvFile.of(
                "number",
                "what",
                "made of",
                "maker's number",
                "kept at",
                "state",
                "reason",
                "calibrated on",
                "due on",
                "certificate",
                "kind",
                "unit",
                "from",
                "to",
                "resolution",
                "u",
                "u in per cent of the reading",
                "source of u",
                "greatest error in per cent of what is set");
        for (Gauge gauge : gauges.all()) {
            List<GaugeRange> ranges = gauge.ranges();
            ranges.forEach(range -> file.row(
                    gauge.code(),
                    gauge.what(),
                    String.join(" ", gauge.parts()),
                    gauge.makerNumber(),
                    gauge.location(),
                    gauge.state().word(),
                    gauge.stateReason(),
                    gauge.calibratedOn(),
                    gauge.dueOn(),
                    gauge.certificate(),
                    range.kind(),
                    range.unit(),
                    range.lowest(),
                    range.highest(),
                    range.resolution(),
                    range.u(),
                    range.uPercent(),
                    range.uSource(),
                    range.errorPercent()));
        }
        return file.answer("gauges.csv");
    }
}
