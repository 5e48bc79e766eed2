package org.trammel.shop.gauges;

import org.springframework.stereotype.Component;
import org.trammel.shop.web.ErrorsView;
import org.trammel.shop.web.Formats;

/** Puts the errors of a calibration together for their drawing, with the finding it is read out as. */
@Component
class DrawnErrors {

    private final Formats formats;

    DrawnErrors(Formats formats) {
        this.formats = formats;
    }

    ErrorsView of(Gauge gauge, Calibration calibration) {
        CalibrationPoint worst = calibration.worst().orElseThrow();
        String finding =
                "Errors of " + gauge.code() + " at " + calibration.points().size() + " values: "
                        + calibration.found().word() + "; the worst is "
                        + formats.with(worst.error(), worst.error().scale(), calibration.unit()) + " at "
                        + formats.number(worst.at()) + ", permissible " + formats.number(worst.permissible()) + ".";
        return new ErrorsView(
                finding,
                calibration.unit(),
                calibration.points().stream()
                        .map(point ->
                                new ErrorsView.Point(point.at(), point.error(), point.permissible(), point.over()))
                        .toList());
    }
}
