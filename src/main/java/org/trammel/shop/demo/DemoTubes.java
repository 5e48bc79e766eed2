package org.trammel.shop.demo;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.trammel.shop.materials.LotSections;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.materials.MadeOf;
import org.trammel.shop.materials.Section;
import org.trammel.shop.materials.TubeIssues;
import org.trammel.shop.routes.Proof;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/**
 * Which sections lie in the invented lots, and which lot each tube of a frame was cut from.
 *
 * <p>A set of tubes came as one lot with one certificate, with every section that the drawings of its metal ask for; shells
 * and head tubes as another.
 */
@Component
@Profile("demo")
class DemoTubes {

    private static final Map<String, String> SECTIONS = new LinkedHashMap<>();

    static {
        SECTIONS.put(
                "TL-6061-188",
                "42x1.3 42x1.4 42x1.5 38x1.3 38x1.35 34.9x1.1 34.9x1.15 34.9x1.35 31.8x1.1 22x1.6 18x1.4");
        SECTIONS.put("TL-6061-191", "42x1.6 34.9x1.3 34.9x1.5 22x1.6 18x1.4");
        SECTIONS.put(
                "TL-7005-073",
                "42x1.5 42x1.3 38x1.3 38x1.35 35x1.25 34.9x1.1 34.9x1.2 34.9x1.35 31.8x1.1 31.8x1.35 22x1.6 18x1.4");
        SECTIONS.put(
                "TL-CRMO-052",
                "38x0.95 35x0.78 35x0.85 31.8x0.7 31.8x0.72 31.8x0.75 31.8x0.9 31.8x0.95 28.6x0.65 28.6x0.7"
                        + " 28.6x0.75 28.6x0.8 22.2x0.7 22.2x0.85 22.2x1 16x0.75 16x0.9 14x0.65");
        SECTIONS.put("TF-6061-021", "54x5 42x4.25");
        SECTIONS.put("TF-7005-022", "50x3 54x5 56x6 42x4.25");
        SECTIONS.put("TF-CRMO-023", "36x1.2 46.4x1.2 40x2.55");
        SECTIONS.put("TF-TI-024", "46.4x1.25 42x4.25");
        SECTIONS.put("TL-TI-017", "41x1 38.1x0.95 34.9x0.9 34.9x0.95 22.2x0.9 19x0.9");
    }

    private final LotSections sections;
    private final TubeIssues tubes;
    private final Lots lots;
    private final Travellers travellers;
    private final DemoActs acts;

    DemoTubes(LotSections sections, TubeIssues tubes, Lots lots, Travellers travellers, DemoActs acts) {
        this.sections = sections;
        this.tubes = tubes;
        this.lots = lots;
        this.travellers = travellers;
        this.acts = acts;
    }

    /** While the lot is quarantined, so that its certificate is read beside them. */
    void state(String lot) {
        if (SECTIONS.containsKey(lot)) {
            sections.state(acts.by("JA"), lot, of(lot));
        }
    }

    private static List<Section> of(String lot) {
        return Arrays.stream(SECTIONS.get(lot).split(" "))
                .map(section -> section.split("x"))
                .map(figure -> new Section(new BigDecimal(figure[0]), new BigDecimal(figure[1]), null, null))
                .toList();
    }

    /** Scans a tube for every place that has none, where that is what the step rests on. */
    void prove(DemoOrder order, long operationId, Proof proof, String by) {
        if (proof != Proof.TUBES) {
            return;
        }
        for (String place : tubes.open(operationId)) {
            tubes.issue(
                    acts.by(by),
                    operationId,
                    new TubeIssues.Scan(place, lot(order, place, tubes.asked(operationId, place)), null, null, null));
        }
    }

    /** The order's own lot where it holds the section, else the one of the metal that does. */
    private static String lot(DemoOrder order, String place, @Nullable Section asked) {
        if (place.equals("HEAD_TUBE") || place.equals("SHELL")) {
            return order.fittings();
        }
        return Stream.concat(Stream.of(order.tubes()), SECTIONS.keySet().stream())
                .filter(lot -> lot.startsWith(order.tubes().substring(0, 6)))
                .filter(lot -> asked == null || of(lot).contains(asked))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(order.order() + " has no lot for " + place));
    }

    /** The lot that a step of that kind takes, if it takes one; before the cut, one that a tube of the frame was issued from. */
    @Nullable
    String lot(DemoOrder order, long operationId, @Nullable String kind, Instant at) {
        if (kind == null || !kind.equals("TUBE")) {
            return kind == null
                    ? null
                    : order.lot(kind, at.atZone(DemoOrder.ZONE).toLocalDate());
        }
        FrameSheet.Head head = travellers.headOf(operationId);
        return lots.madeOf(head.serial()).stream()
                .filter(made -> made.part().equals(head.part()) && made.place() != null && !made.scrapped())
                .map(MadeOf::lot)
                .findFirst()
                .orElse(order.tubes());
    }
}
