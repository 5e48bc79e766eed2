package org.trammel.shop.drift;

import java.util.List;
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
import org.trammel.shop.travellers.Pieces;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.web.Formats;

/**
 * Calls somebody to the jig, or to what else is watched, when its chart says so, in the transaction of what made it say so. A drift that goes on calls
 * nobody again until another base is taken or it was within meanwhile.
 */
@Component
class JigCalls {

    private final DriftCharts charts;
    private final JigUseRepository uses;
    private final Pieces pieces;
    private final AlarmRepository alarms;
    private final Remarks remarks;
    private final Stations stations;
    private final Formats formats;
    private final ActLog log;

    JigCalls(
            DriftCharts charts,
            JigUseRepository uses,
            Pieces pieces,
            AlarmRepository alarms,
            Remarks remarks,
            Stations stations,
            Formats formats,
            ActLog log) {
        this.charts = charts;
        this.uses = uses;
        this.pieces = pieces;
        this.alarms = alarms;
        this.remarks = remarks;
        this.stations = stations;
        this.formats = formats;
        this.log = log;
    }

    @EventListener
    void on(ReadingTaken taken) {
        List<Series> watching = charts.of(taken.code());
        if (watching.isEmpty()) {
            return;
        }
        uses.findFirstByTravellerIdInOrderByIdDesc(pieces.same(taken.travellerId()))
                .ifPresent(use -> watching.stream()
                        .filter(series ->
                                series.by() != Factor.JIG || series.of().equals(use.jigCode()))
                        .forEach(series -> look(taken.act(), series, taken.travellerId(), taken.operationId())));
    }

    /** Everybody reads a call, so it names no person. */
    private static String asked(Series series) {
        return switch (series.by()) {
            case JIG -> "Check jig " + series.of() + " before the next tack.";
            case WELDER -> "QA lead: look at the drift chart of a welder before the next tack.";
            case TUBE_SET -> "Look at tubes of " + series.of() + " before the next is cut.";
        };
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
        String words = asked(series) + " " + series.name() + ", " + series.chartUnit() + ": "
                + formats.sentence(began.words());
        alarms.save(new AlarmRow(act, base.id(), point.key(), words, base.stopsJig()));
        remarks.callWithin(act, travellerId, operationId, words);
        String jig = series.jig();
        if (base.stopsJig() && jig != null) {
            stations.stopJigByRule(act, jig);
        }
        log.event(
                Chains.SHOP,
                "axis drifts",
                Map.of("series", series.id(), "base", base.id(), "point", point.key(), "stopped", base.stopsJig()));
    }
}
