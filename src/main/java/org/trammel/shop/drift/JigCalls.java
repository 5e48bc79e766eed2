package org.trammel.shop.drift;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.trammel.calc.statistics.ControlChart.Alarm;
import org.trammel.shop.inspection.ReadingTaken;
import org.trammel.shop.materials.MadeOfChanged;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.stations.Stations;
import org.trammel.shop.travellers.Remarks;
import org.trammel.shop.travellers.SkilledWork;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/**
 * Calls somebody to the jig, or to what else is watched, when its chart says so, in the transaction of what made it say so. A drift that goes on calls
 * nobody again until another base is taken or it was within meanwhile.
 */
@Component
class JigCalls {

    private final DriftCharts charts;
    private final KeptCharts kept;
    private final KeptRows rows;
    private final Travellers travellers;
    private final AlarmRepository alarms;
    private final Remarks remarks;
    private final Stations stations;
    private final Formats formats;
    private final ActLog log;

    JigCalls(
            DriftCharts charts,
            KeptCharts kept,
            KeptRows rows,
            Travellers travellers,
            AlarmRepository alarms,
            Remarks remarks,
            Stations stations,
            Formats formats,
            ActLog log) {
        this.charts = charts;
        this.kept = kept;
        this.rows = rows;
        this.travellers = travellers;
        this.alarms = alarms;
        this.remarks = remarks;
        this.stations = stations;
        this.formats = formats;
        this.log = log;
    }

    @EventListener
    void on(ReadingTaken taken) {
        changed(taken.act(), taken.travellerId(), taken.operationId(), charts.of(taken.code()));
    }

    /** Welded after it was read: it stands on the chart of another welder as well. */
    @EventListener
    void on(SkilledWork work) {
        List<Series> watching = charts.of(kept.codesOf(work.serial()));
        changed(work.act(), work.travellerId(), null, watching);
    }

    /** Tubes that went into it, or were scrapped, after it was read. */
    @EventListener
    void on(MadeOfChanged changed) {
        List<Series> watching = charts.of(kept.codesOf(changed.serial()));
        if (!watching.isEmpty()) {
            travellers.heads(changed.serial()).stream()
                    .filter(head -> head.state() != TravellerState.WITHDRAWN)
                    .forEach(head -> changed(changed.act(), head.travellerId(), null, watching));
        }
    }

    /** Puts what was read of a piece where it belongs, and looks at the charts that this changed. */
    void changed(Act act, long travellerId, @Nullable Long operationId, List<Series> watching) {
        if (!watching.isEmpty()) {
            kept.look(travellerId, watching)
                    .forEach(one -> look(act, one.series(), one.place(), travellerId, operationId));
        }
    }

    /** Everybody reads a call, so it names no person. */
    private static String asked(Series series) {
        return switch (series.by()) {
            case JIG -> "Check jig " + series.of() + " before the next tack.";
            case WELDER -> "QA lead: look at the drift chart of a welder before the next tack.";
            case TUBE_SET -> "Look at tubes of " + series.of() + " before the next is cut.";
        };
    }

    /** Looks where a series stands now, after the QA lead took a base or readings of before, or struck one out. */
    void look(Act act, Series series) {
        Standing now = charts.standing(series.id());
        Base base = now.base();
        Integer since = now.kept().driftsSince();
        if (base != null && since != null) {
            int place = rows.numbered(series, since, since).get(0).place();
            rows.uncalled(series.id(), base.id(), place).forEach(began -> tell(act, series, base, began, null, null));
        }
    }

    /**
     * Looks at what was just written of a series: a reading that came late, in between, may have raised an alarm although the
     * newest is within.
     */
    private void look(Act act, Series series, int place, long travellerId, @Nullable Long operationId) {
        Base base = charts.base(series);
        if (base != null) {
            rows.uncalled(series.id(), base.id(), place)
                    .forEach(since -> tell(act, series, base, since, travellerId, operationId));
        }
    }

    private void tell(
            Act act, Series series, Base base, int since, @Nullable Long travellerId, @Nullable Long operationId) {
        List<KeptRow> upTo = rows.numbered(series, since - Continued.REACH, since);
        Alarm began = DriftCharts.last(base, upTo);
        if (began == null) {
            return;
        }
        Point point = upTo.get(upTo.size() - 1).point();
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
