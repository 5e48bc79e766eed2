package org.trammel.shop.drift;

import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.trammel.calc.statistics.ControlChart.Alarm;
import org.trammel.shop.inspection.ReadingTaken;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.web.Formats;

/**
 * Calls somebody to the jig when its chart says so, in the transaction of what made it say so. A drift that goes on calls
 * nobody again until another base is taken or it was within meanwhile.
 */
@Component
class JigCalls {

    private final DriftCharts charts;
    private final JigUseRepository uses;
    private final AlarmRepository alarms;
    private final Remarks remarks;
    private final Stations stations;
    private final Formats formats;
    private final ActLog log;

    JigCalls(
            DriftCharts charts,
            JigUseRepository uses,
            AlarmRepository alarms,
            Remarks remarks,
            Stations stations,
            Formats formats,
            ActLog log) {
        this.charts = charts;
        this.uses = uses;
        this.alarms = alarms;
        this.remarks = remarks;
        this.stations = stations;
        this.formats = formats;
        this.log = log;
    }

    @EventListener
    void on(ReadingTaken taken) {
        uses.findFirstByTravellerIdOrderByIdDesc(taken.travellerId())
                .flatMap(use -> charts.watched(use.jigCode(), taken.code()))
                .ifPresent(series -> look(taken.act(), series, taken.travellerId(), taken.operationId()));
    }

    /** Looks at a series to which something was just added. */
    void look(Act act, Series series, @Nullable Long travellerId, @Nullable Long operationId) {
        Charted now = charts.of(series.id());
        Base base = now.base();
        Alarm began = now.began();
        if (base == null || began == null) {
            return;
        }
        Set<String> called = alarms.findByBaseIdOrderById(base.id()).stream()
                .map(AlarmRow::point)
                .collect(Collectors.toSet());
        boolean calledBefore = now
                .points()
                .subList(now.driftsSince(), now.points().size())
                .stream()
                .anyMatch(point -> called.contains(point.key()));
        if (calledBefore) {
            return;
        }
        Point point = now.points().get(began.index());
        String words = "Check jig " + series.jig() + " before the next tack. " + series.name() + ", "
                + series.chartUnit() + ": " + formats.sentence(began.words());
        alarms.save(new AlarmRow(act, base.id(), point.key(), words, base.stopsJig()));
        remarks.callWithin(act, travellerId, operationId, words);
        if (base.stopsJig()) {
            stations.stopJigByRule(act, series.jig());
        }
        log.event(
                Chains.SHOP,
                "jig drifts",
                Map.of("series", series.id(), "base", base.id(), "point", point.key(), "stopped", base.stopsJig()));
    }
}
