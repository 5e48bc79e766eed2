package org.trammel.shop.bench;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.gauges.GaugeKind;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.materials.Lots;
import org.trammel.shop.materials.MadeOf;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Person;
import org.trammel.shop.routes.Point;
import org.trammel.shop.routes.Signer;
import org.trammel.shop.travellers.ConfirmationOverrides;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.FrameStory;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;

/** Lays out the paper that travels with a frame: what is known is printed, what is not is left to be written. */
@Component
class Papers {

    private final Travellers travellers;
    private final Readings readings;
    private final Lots lots;
    private final Gauges gauges;
    private final Strips strips;
    private final ConfirmationOverrides overrides;
    private final Crew crew;
    private final Words words;
    private final Formats formats;
    private final Clock clock;

    Papers(
            Travellers travellers,
            Readings readings,
            Lots lots,
            Gauges gauges,
            Strips strips,
            ConfirmationOverrides overrides,
            Crew crew,
            Words words,
            Formats formats,
            Clock clock) {
        this.travellers = travellers;
        this.readings = readings;
        this.lots = lots;
        this.gauges = gauges;
        this.strips = strips;
        this.overrides = overrides;
        this.crew = crew;
        this.words = words;
        this.formats = formats;
        this.clock = clock;
    }

    /** What the code on a tag says. */
    static String code(FrameSheet.Head head) {
        return SerialNumber.read(head.tag()) instanceof SerialNumber.Result.Whole whole
                ? whole.serial().shown() + "/" + head.letter()
                : head.tag();
    }

    PaperView of(FrameSheet sheet) {
        FrameSheet.Head head = sheet.head();
        List<FrameSheet.OperationSheetOfFrame> whole = travellers.whole(head.travellerId());
        Map<Long, ReadingLine> read = newest(head.travellerId());
        Map<Long, String> initials = crew.all().stream().collect(Collectors.toMap(Person::id, Person::initials));
        Map<String, String> kinds = gauges.kinds().stream()
                .collect(Collectors.toMap(GaugeKind::code, kind -> kind.name().toLowerCase(Locale.ROOT)));
        List<PaperView.Place> places = new ArrayList<>();
        for (FrameSheet.OperationSheetOfFrame operation : whole) {
            String name = formats.station(operation.line().station());
            PaperView.Place last = places.isEmpty() ? null : places.get(places.size() - 1);
            if (last == null || !last.name().equals(name)) {
                last = new PaperView.Place(name, new ArrayList<>());
                places.add(last);
            }
            last.rows().add(row(operation, read, kinds, initials));
        }
        return new PaperView(
                head,
                code(head),
                strips.of(sheet),
                sheet.notes(),
                lots(head, whole),
                places,
                sheet.holds(),
                overrides.at(whole.stream().map(o -> o.line().operationId()).toList()).stream()
                        .map(this::overridden)
                        .toList(),
                formats.date(clock.instant()) + " " + formats.time(clock.instant()));
    }

    private String overridden(FrameStory.Unconfirmed given) {
        return given.operation() + ": the confirmation of " + given.qualification() + " of "
                + crew.byId(given.personId()).initials() + ", run out on " + formats.date(given.lapsedOn())
                + ", was overridden by " + crew.byId(given.givenBy()).initials() + ", " + formats.date(given.at())
                + ". " + given.reason();
    }

    private Map<Long, ReadingLine> newest(long travellerId) {
        Map<Long, ReadingLine> newest = new LinkedHashMap<>();
        readings.ofTravellers(List.of(travellerId)).stream()
                .filter(reading -> !reading.replaced())
                .forEach(reading -> newest.put(reading.characteristicId(), reading));
        return newest;
    }

    private List<PaperView.Lot> lots(FrameSheet.Head head, List<FrameSheet.OperationSheetOfFrame> whole) {
        Map<String, Set<String>> byKind = new LinkedHashMap<>();
        whole.stream()
                .flatMap(operation -> operation.steps().stream())
                .map(FrameSheet.StepLine::lotKind)
                .filter(Objects::nonNull)
                .forEach(kind -> byKind.putIfAbsent(kind, new LinkedHashSet<>()));
        lots.madeOf(head.serial()).stream()
                .filter(use -> !use.scrapped() && use.part().equals(head.part()))
                .forEach((MadeOf use) -> byKind.computeIfAbsent(use.kind().name(), kind -> new LinkedHashSet<>())
                        .add(use.lot()));
        return byKind.entrySet().stream()
                .map(entry -> new PaperView.Lot(
                        capital(entry.getKey().toLowerCase(Locale.ROOT)), String.join(", ", entry.getValue())))
                .toList();
    }

    private PaperView.Row row(
            FrameSheet.OperationSheetOfFrame operation,
            Map<Long, ReadingLine> read,
            Map<String, String> kinds,
            Map<Long, String> initials) {
        List<FrameSheet.CharacteristicLine> measured = operation.characteristics();
        boolean done = operation.line().state() == OperationState.DONE;
        Instant at = operation.line().finishedAt();
        return new PaperView.Row(
                Words.called(operation.line()),
                operation.line().point() != Point.NONE,
                operation.line().name(),
                first(measured.stream().map(words::limits).toList()),
                first(measured.stream()
                        .map(c -> kinds.getOrDefault(c.gaugeKind(), c.gaugeKind()))
                        .distinct()
                        .toList()),
                reading(measured, read),
                done ? ticked(operation).map(initials::get).orElse("") : "",
                operation.signatures().stream()
                        .filter(FrameSheet.SignatureLine::counts)
                        .map(signature -> initials.get(signature.signedBy()))
                        .collect(Collectors.joining(" ")),
                done && at != null ? dayOfMonth(at) : "",
                secondWanted(operation),
                operation.line().state() == OperationState.REPEATED);
    }

    private static boolean secondWanted(FrameSheet.OperationSheetOfFrame operation) {
        return operation.signers().stream().anyMatch(signer -> signer != Signer.WORKER)
                || operation.characteristics().stream().anyMatch(FrameSheet.CharacteristicLine::secondPerson);
    }

    /** Who ticked last. */
    private static Optional<Long> ticked(FrameSheet.OperationSheetOfFrame operation) {
        return operation.steps().stream()
                .map(FrameSheet.StepLine::tickedBy)
                .filter(Objects::nonNull)
                .reduce((first, later) -> later);
    }

    /** One fits in a row; how many follow is said, and the tablet shows them. */
    private static String first(List<String> all) {
        return all.isEmpty() ? "" : all.size() == 1 ? all.get(0) : all.get(0) + " +" + (all.size() - 1);
    }

    private String reading(List<FrameSheet.CharacteristicLine> measured, Map<Long, ReadingLine> read) {
        List<String> values = measured.stream()
                .filter(c -> read.containsKey(c.characteristicId()) && !c.blind())
                .map(c -> formats.number(read.get(c.characteristicId()).value(), c.decimals()))
                .toList();
        return values.size() <= 2 ? String.join("; ", values) : values.size() + " read";
    }

    /** The column is narrow, and the year stands in the foot. */
    private String dayOfMonth(Instant at) {
        String day = formats.day(at);
        return day.substring(day.indexOf(' ') + 1);
    }

    private static String capital(String word) {
        return word.isEmpty() ? word : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
    }
}
