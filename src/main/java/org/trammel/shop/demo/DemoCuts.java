package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.cuts.CutSheets;
import org.trammel.shop.cuts.Cuts;
import org.trammel.shop.cuts.HoleSaw;
import org.trammel.shop.cuts.HoleSaws;
import org.trammel.shop.designs.CutTubes;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.inspection.GivenReadings;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** What the saw of the invented workshop cuts: its drawer of hole saws, and every tube of a frame by its own cut list. */
@Component
@Profile("demo")
class DemoCuts {

    private static final String AT_THE_SAW = "JA";
    private static final List<String> DRAWER =
            List.of("28.6", "31.8", "34.9", "36", "38", "40", "42", "44", "46.4", "50", "54", "56");

    private final HoleSaws saws;
    private final Cuts cuts;
    private final CutSheets sheets;
    private final GivenReadings given;
    private final Travellers travellers;
    private final Gauges gauges;
    private final Settings settings;
    private final DemoActs acts;
    private final DemoClock clock;

    DemoCuts(
            HoleSaws saws,
            Cuts cuts,
            CutSheets sheets,
            GivenReadings given,
            Travellers travellers,
            Gauges gauges,
            Settings settings,
            DemoActs acts,
            DemoClock clock) {
        this.saws = saws;
        this.cuts = cuts;
        this.sheets = sheets;
        this.given = given;
        this.travellers = travellers;
        this.gauges = gauges;
        this.settings = settings;
        this.acts = acts;
        this.clock = clock;
    }

    void register() {
        DRAWER.forEach(diameter -> register(new BigDecimal(diameter)));
    }

    private void register(BigDecimal diameter) {
        saws.register(acts.by("TR"), label(diameter), "bimetal hole saw", diameter);
    }

    private static String label(BigDecimal diameter) {
        return "HS-" + diameter.stripTrailingZeros().toPlainString();
    }

    boolean at(long operationId, String code) {
        return sheets.at(travellers.headOf(operationId), operationId, code);
    }

    /** Which characteristics a record gives, once the tubes are measured where some are to be read. */
    Set<String> given(FrameSheet.OperationSheetOfFrame at, boolean reads) {
        if (reads) {
            measured(at);
        }
        return given.at(at.line().operationId(), at.line().code()).keySet();
    }

    /** Every tube that is not measured yet, cut as it should be. */
    private synchronized void measured(FrameSheet.OperationSheetOfFrame at) {
        if (!at(at.line().operationId(), at.line().code())) {
            return;
        }
        Cuts.Sheet sheet = cuts.of(at.line().operationId());
        sheet.pieces().stream()
                .filter(piece -> !sheet.recorded().containsKey(piece.code()))
                .forEach(piece -> record(at.line().operationId(), piece, BigDecimal.ZERO));
    }

    /** The down tube alone, its second cut out of phase by so much. */
    synchronized void outOfPhase(long operationId, BigDecimal phase_deg) {
        cuts.of(operationId).pieces().stream()
                .filter(piece -> piece.tube().equals("down tube"))
                .forEach(piece -> record(operationId, piece, phase_deg));
    }

    /** The walks of the demo run side by side, each at a time of its own: a saw is measured and used in one go. */
    private void record(long operationId, CutTubes.Piece piece, BigDecimal phase_deg) {
        Map<Integer, Cuts.EndEntry> ends = new HashMap<>();
        for (CutTubes.End end : piece.ends()) {
            List<@Nullable BigDecimal> gaps = new ArrayList<>();
            for (int i = 0; i < Cuts.PLACES; i++) {
                gaps.add(new BigDecimal(i % 3 == 0 ? "0.05" : i % 3 == 1 ? "0.08" : "0"));
            }
            ends.put(
                    end.place(),
                    new Cuts.EndEntry(
                            ready(end.mate_mm()),
                            end.angle_deg().add(new BigDecimal("0.05")),
                            end.wall_mm().subtract(new BigDecimal("0.01")),
                            gaps));
        }
        cuts.record(
                acts.by(AT_THE_SAW),
                operationId,
                new Cuts.Entry(
                        piece.code(),
                        piece.blank_mm().add(new BigDecimal("0.1")),
                        piece.phased() ? phase_deg : null,
                        ends,
                        Map.of(
                                "lengthGauge", gauge("SCALE-RULE", "mm"),
                                "angleGauge", gauge("PROTRACTOR", "°"),
                                "phaseGauge", gauge("LEVEL", "°"),
                                "gapGauge", gauge("FEELER", "mm"),
                                "wallGauge", gauge("WALL", "mm"))));
    }

    /** A saw for the mate, out of the drawer or bought for it, and measured in time. */
    private String ready(BigDecimal mate) {
        LocalDate today = settings.dayOf(clock.instant());
        BigDecimal most = mate.add(settings.number("saw.oversize"));
        HoleSaw saw = fitting(mate, most);
        if (saw == null) {
            register(mate);
            saw = fitting(mate, most);
        }
        if (saw == null) {
            throw new IllegalStateException("No hole saw of the demo fits a mate of " + mate);
        }
        if (saw.due(today)) {
            saws.check(
                    acts.by(AT_THE_SAW),
                    saw.code(),
                    saw.diameter_mm().subtract(new BigDecimal("0.04")),
                    gauge("CALLIPER", "mm"));
        }
        return saw.code();
    }

    private @Nullable HoleSaw fitting(BigDecimal mate, BigDecimal most) {
        return saws.all().stream()
                .filter(one -> one.diameter_mm().compareTo(mate) >= 0
                        && one.diameter_mm().compareTo(most) <= 0)
                .findFirst()
                .orElse(null);
    }

    private String gauge(String kind, String unit) {
        return gauges.usableFor(kind, unit, settings.dayOf(clock.instant()))
                .get(0)
                .code();
    }
}
