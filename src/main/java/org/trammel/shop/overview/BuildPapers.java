package org.trammel.shop.overview;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.assembly.BuildRecord;
import org.trammel.shop.assembly.BuildSheets;
import org.trammel.shop.assembly.Builds;
import org.trammel.shop.assembly.FrameComponents;
import org.trammel.shop.assembly.OwnPartChecks;
import org.trammel.shop.assembly.TorqueSheets;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.people.Person;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.OperationState;
import org.trammel.shop.travellers.TravellerState;
import org.trammel.shop.travellers.Travellers;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.ScaleView;
import org.trammel.shop.welding.WeldStories;

/** Puts the build record of a bicycle together from its story and from what was recorded of its assembly. */
@Component
class BuildPapers {

    /** Kinds of gauges whose last readings are told of a finished bicycle: alignment, fit, mass, run-out, film, sizes of joints. */
    private static final Set<String> TOLD = Set.of(
            "TWIST",
            "LEAN",
            "OFFSET",
            "AXLE-OFFSET",
            "YAW",
            "TAPE",
            "SCALE",
            "DIAL",
            "RUN-OUT",
            "FILM-EDDY",
            "FILM-MAGNETIC",
            "HANGER");

    private final Stories stories;
    private final Travellers travellers;
    private final Readings readings;
    private final ReadingWords words;
    private final Formats formats;
    private final FrameComponents components;
    private final OwnPartChecks ownParts;
    private final TorqueSheets torques;
    private final BuildSheets buildSheets;
    private final Builds builds;
    private final WeldStories welds;
    private final Designs designs;
    private final Names.Source names;
    private final Settings settings;

    BuildPapers(
            Stories stories,
            Travellers travellers,
            Readings readings,
            ReadingWords words,
            Formats formats,
            FrameComponents components,
            OwnPartChecks ownParts,
            TorqueSheets torques,
            BuildSheets buildSheets,
            Builds builds,
            WeldStories welds,
            Designs designs,
            Names.Source names,
            Settings settings) {
        this.stories = stories;
        this.travellers = travellers;
        this.readings = readings;
        this.words = words;
        this.formats = formats;
        this.components = components;
        this.ownParts = ownParts;
        this.torques = torques;
        this.buildSheets = buildSheets;
        this.builds = builds;
        this.welds = welds;
        this.designs = designs;
        this.names = names;
        this.settings = settings;
    }

    /** A piece of the bicycle with its operations that were not done over. */
    private record Piece(FrameSheet.Head head, List<FrameSheet.OperationSheetOfFrame> operations) {}

    /** @param named whether people are named; the customer's copy does without */
    @Transactional(readOnly = true)
    BuildPaper of(String serial, Person reader, boolean named) {
        Story story = stories.of(serial, reader);
        Names seen = names.seenBy(reader);
        List<Piece> pieces = travellers.heads(serial).stream()
                .filter(head -> head.state() != TravellerState.WITHDRAWN && head.state() != TravellerState.SCRAPPED)
                .map(head -> new Piece(
                        head,
                        travellers.whole(head.travellerId()).stream()
                                .filter(one -> one.line().state() != OperationState.REPEATED)
                                .toList()))
                .toList();
        List<BuildRecord> recorded = pieces.stream()
                .flatMap(piece -> piece.operations().stream())
                .filter(one -> buildSheets.at(one.line().code()))
                .map(one -> builds.of(one.line().operationId()))
                .toList();
        Long design = story.head().designRevisionId();
        return new BuildPaper(
                story.head(),
                design == null ? null : designs.revision(design).letter(),
                pieces.stream().map(Piece::head).toList(),
                story.madeOf().stream().filter(use -> !use.scrapped()).toList(),
                joined(pieces, seen, named),
                story.heats(),
                measured(pieces, seen),
                pieces.stream()
                        .flatMap(piece -> components.of(serial, piece.head().part()).stream())
                        .toList(),
                ownParts.of(story.head()),
                torqued(serial, pieces, seen, named),
                recorded,
                riders(recorded, seen, named),
                story.nonconformances(),
                builds.lacks(story.head()),
                named);
    }

    private static Map<Long, String> riders(List<BuildRecord> recorded, Names seen, boolean named) {
        return recorded.stream()
                .map(BuildRecord::ridden)
                .filter(ridden -> named && ridden != null)
                .map(BuildRecord.Ridden::rider)
                .distinct()
                .collect(Collectors.toMap(Function.identity(), seen::of));
    }

    private List<BuildPaper.Joined> joined(List<Piece> pieces, Names seen, boolean named) {
        List<BuildPaper.Joined> all = new ArrayList<>();
        for (Piece piece : pieces) {
            for (FrameSheet.OperationSheetOfFrame one : piece.operations()) {
                WeldStories.Nodes nodes = welds.nodes(one.line().operationId());
                if (nodes.closed() > 0) {
                    all.add(new BuildPaper.Joined(
                            piece.head().mark() + ", " + Entries.called(one.line()) + " "
                                    + one.line().name(),
                            nodes.closed(),
                            nodes.again(),
                            named ? nodes.by().stream().map(seen::of).toList() : List.of(),
                            nodes.last()));
                }
            }
        }
        return all;
    }

    /** Of each thing, such as the twist that is read at several gates, the last reading that stands. */
    private List<BuildPaper.Measured> measured(List<Piece> pieces, Names seen) {
        Map<Long, ReadingLine> read =
                readings
                        .ofTravellers(pieces.stream()
                                .map(piece -> piece.head().travellerId())
                                .toList())
                        .stream()
                        .collect(Collectors.toMap(ReadingLine::readingId, Function.identity()));
        Map<String, BuildPaper.Measured> last = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            for (FrameSheet.OperationSheetOfFrame one : piece.operations()) {
                one.characteristics().stream()
                        .filter(c -> TOLD.contains(c.gaugeKind())
                                && c.readingId() != null
                                && read.containsKey(c.readingId()))
                        .forEach(c -> {
                            Story.ReadingOf reading = words.of(read.get(c.readingId()), c, seen);
                            String key = piece.head().tag() + " " + c.name();
                            last.remove(key);
                            last.put(
                                    key,
                                    new BuildPaper.Measured(
                                            piece.head().mark(),
                                            c.name(),
                                            reading.value(),
                                            limits(reading.scale()),
                                            reading.verdict(),
                                            reading.kind(),
                                            reading.gauge(),
                                            settings.dayOf(reading.at())));
                        });
            }
        }
        return List.copyOf(last.values());
    }

    private String limits(@Nullable ScaleView scale) {
        if (scale == null) {
            return "";
        }
        String least = scale.lower() == null ? "" : formats.number(scale.lower());
        String most = scale.upper() == null ? "" : formats.number(scale.upper());
        return least.isEmpty() ? "up to " + most : most.isEmpty() ? "from " + least : least + " to " + most;
    }

    private List<BuildPaper.Torqued> torqued(String serial, List<Piece> pieces, Names seen, boolean named) {
        List<BuildPaper.Torqued> all = new ArrayList<>();
        for (Piece piece : pieces) {
            for (FrameSheet.OperationSheetOfFrame one : piece.operations()) {
                if (torques.at(serial, piece.head().part(), one.line().code())) {
                    torques.of(one.line().operationId())
                            .lines()
                            .forEach(line -> all.add(new BuildPaper.Torqued(
                                    Entries.called(one.line()),
                                    line,
                                    line.last() == null || !named
                                            ? ""
                                            : seen.at(
                                                    line.last().by(),
                                                    line.last().at()),
                                    line.witness() == null
                                            ? ""
                                            : named
                                                    ? seen.at(line.witness(), line.witnessedAt())
                                                    : "a second person")));
                }
            }
        }
        return all;
    }
}
