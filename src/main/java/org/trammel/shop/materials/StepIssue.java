package org.trammel.shop.materials;

import java.time.Instant;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.MaterialIssue;

/** Issues what is scanned when a step is ticked that asks for a lot. Several labels may be scanned into one field. */
@Component
class StepIssue implements MaterialIssue {

    private static final Set<LotKind> USED_UP = EnumSet.of(LotKind.FILLER, LotKind.FLUX, LotKind.GAS);

    private final Lots lots;
    private final LotUseRepository uses;
    private final FramePlaces frames;

    StepIssue(Lots lots, LotUseRepository uses, FramePlaces frames) {
        this.lots = lots;
        this.uses = uses;
        this.frames = frames;
    }

    @Override
    public void issue(Act act, String scanned, String kind, Use use) {
        LotKind asked = kind(kind);
        List<String> labels = Arrays.stream(scanned.split("[\\s,;]+"))
                .filter(label -> !label.isEmpty())
                .distinct()
                .toList();
        if (labels.isEmpty()) {
            throw Lots.unknown("");
        }
        Destination to = new Destination(
                use.serial(),
                use.part(),
                use.metal(),
                process(asked, use.serial()),
                use.operationCode(),
                use.position());
        List<MadeOf> tubes = asked == LotKind.TUBE ? byPlace(to) : List.of();
        if (tubes.isEmpty()) {
            labels.forEach(label -> issue(act, label, asked, to, use.begunAt()));
        } else {
            labels.forEach(label -> refuseUnlessIssued(label, tubes));
        }
    }

    private List<MadeOf> byPlace(Destination to) {
        return uses.madeOf(to.serial()).stream()
                .filter(made ->
                        made.place() != null && !made.scrapped() && made.part().equals(to.part()))
                .toList();
    }

    /** A frame whose tubes were issued place by place takes no second piece by a scan before the cut: it must be its own. */
    private static void refuseUnlessIssued(String label, List<MadeOf> tubes) {
        String lot = Lots.meant(label);
        MadeOf own = tubes.stream()
                .filter(made -> made.lot().equals(lot))
                .findFirst()
                .orElseThrow(() -> Refusal.input(
                        "lot",
                        "The tube was not taken.",
                        lot + " was issued to no place of this frame; its tubes are of "
                                + tubes.stream().map(MadeOf::lot).distinct().collect(Collectors.joining(", ")) + ".",
                        "Take the tube that was issued to it. Another is issued on the sheet of tubes first."));
        if (own.state() == LotState.QUARANTINED || own.state() == LotState.BLOCKED) {
            throw Refusal.state(
                    "The tube was not taken.",
                    lot + " is " + own.state().word() + ".",
                    "Lay the tube on the quarantine rack and call the QA lead.");
        }
    }

    /**
     * A step that was unticked and ticked again found its piece the first time. What an arc uses up is used anew in every
     * loop, the same rod too.
     */
    private void issue(Act act, String label, LotKind asked, Destination to, Instant begunAt) {
        boolean known = uses.madeOf(to.serial()).stream()
                .anyMatch(made -> made.lot().equals(LotRegister.label(label))
                        && !made.scrapped()
                        && !(USED_UP.contains(asked) && made.at().isBefore(begunAt))
                        && made.part().equals(to.part())
                        && made.operation().equals(to.operation())
                        && made.position().equals(to.position()));
        if (known) {
            lots.issuable(label, asked, to);
        } else {
            lots.issue(act, label, to, asked, null, null);
        }
    }

    /** The joining process matters for what is melted in; a gas or a powder is the same for all. */
    private @Nullable String process(LotKind asked, String serial) {
        return asked == LotKind.FILLER || asked == LotKind.FLUX ? frames.processOf(serial) : null;
    }

    private static LotKind kind(String kind) {
        return Arrays.stream(LotKind.values())
                .filter(known -> known.name().equals(kind))
                .findFirst()
                .orElseThrow(() -> Refusal.state(
                        "The lot was not issued.",
                        "The route asks for a kind of material nobody knows, " + kind + ".",
                        "Let the QA lead correct the route."));
    }
}
