package org.trammel.shop.cuts;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.springframework.beans.factory.BeanFactory;
import org.trammel.shop.designs.CutTubes;
import org.trammel.shop.floor.WholeShop;
import org.trammel.shop.people.Role;

/** Saws, gauges and what is read from a tube that was cut as it should be, for whoever needs one. */
public final class Sawn {

    private static final LocalDate NEXT_YEAR = LocalDate.of(2027, 1, 1);

    private final WholeShop shop;
    private final HoleSaws saws;
    private final Cuts cuts;
    private final Map<String, String> gauges = new HashMap<>();
    private final String calliper;

    public Sawn(BeanFactory beans, WholeShop shop) {
        this.shop = shop;
        saws = beans.getBean(HoleSaws.class);
        cuts = beans.getBean(Cuts.class);
        calliper = shop.gauge("CALLIPER", "mm", "0.01", NEXT_YEAR);
        gauges.put("lengthGauge", shop.gauge("SCALE-RULE", "mm", "0.02", NEXT_YEAR));
        gauges.put("angleGauge", shop.gauge("PROTRACTOR", "°", "0.02", NEXT_YEAR));
        gauges.put("phaseGauge", shop.gauge("LEVEL", "°", null, NEXT_YEAR));
        gauges.put("gapGauge", shop.gauge("FEELER", "mm", null, NEXT_YEAR));
        gauges.put("wallGauge", shop.gauge("WALL", "mm", "0.005", NEXT_YEAR));
    }

    /** A saw under a label of its own, not measured yet. */
    public String saw(String diameter) {
        String code = "S" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        return saws.register(shop.act(shop.hire(Role.QA_LEAD)), code, "of a test", new BigDecimal(diameter))
                .code();
    }

    public String measured(String saw, String over) {
        return saws.check(shop.act(shop.hire(Role.STATION_WORKER)), saw, new BigDecimal(over), calliper)
                .code();
    }

    public void retireAll() {
        long lead = shop.hire(Role.QA_LEAD);
        saws.all().stream()
                .filter(saw -> saw.retiredOn() == null)
                .forEach(saw -> saws.retire(shop.act(lead), saw.code(), "end of the test"));
    }

    /** A piece as its cut list asks, cut with these saws by the mate, and this gap at one place of every end. */
    public Cuts.Entry entry(CutTubes.Piece piece, Map<BigDecimal, String> saws, String gap) {
        Map<Integer, Cuts.EndEntry> ends = new HashMap<>();
        for (CutTubes.End end : piece.ends()) {
            List<BigDecimal> gaps = new java.util.ArrayList<>(Collections.nCopies(Cuts.PLACES, new BigDecimal("0.05")));
            gaps.set(3, new BigDecimal(gap));
            ends.put(
                    end.place(),
                    new Cuts.EndEntry(
                            saws.get(end.mate_mm().stripTrailingZeros()), end.angle_deg(), end.wall_mm(), gaps));
        }
        return new Cuts.Entry(piece.code(), piece.blank_mm(), piece.phased() ? BigDecimal.ZERO : null, ends, gauges);
    }

    /** Saws for every mate of the pieces, measured today. */
    public Map<BigDecimal, String> drawer(List<CutTubes.Piece> pieces) {
        Map<BigDecimal, String> drawer = new HashMap<>();
        pieces.stream()
                .flatMap(piece -> piece.ends().stream())
                .map(end -> end.mate_mm().stripTrailingZeros())
                .distinct()
                .forEach(mate -> drawer.put(mate, measured(saw(mate.toPlainString()), mate.toPlainString())));
        return drawer;
    }

    /** Records every piece of the frame's cut list as it should be. */
    public void all(long by, long operationId) {
        Cuts.Sheet sheet = cuts.of(operationId);
        Map<BigDecimal, String> drawer = drawer(sheet.pieces());
        sheet.pieces().forEach(piece -> cuts.record(shop.act(by), operationId, entry(piece, drawer, "0.10")));
    }
}
