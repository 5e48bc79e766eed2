package org.trammel.shop.bench;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Readings;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.travellers.AtHand;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Frames for programs: what a tablet shows, and what stands at the stations. */
@RestController
@RequestMapping("/api/v1/frames")
@Tag(name = "Frames", description = "Frames, parts and station checks on their way through the shop.")
class FramesApi {

    private static final String BY_TAG =
            "serial AB270423 or AB27-042-3, with the part as AB270423-FT; or the last three"
                    + " digits and the check character, 042-3, while the frame is in the shop";

    private final Tags tags;
    private final AtHand atHand;
    private final Travellers travellers;
    private final Readings readings;

    FramesApi(Tags tags, AtHand atHand, Travellers travellers, Readings readings) {
        this.tags = tags;
        this.atHand = atHand;
        this.travellers = travellers;
        this.readings = readings;
    }

    @GetMapping
    @Operation(
            summary = "Finds the frame of a scanned or typed tag",
            description = "A tag of a superseded revision (AB27-042-3/A) and a wrong check character are refused.")
    FrameSheet.Head find(@Parameter(description = "what the tag says, " + BY_TAG) @RequestParam String code) {
        return tags.current(code);
    }

    @GetMapping("/at-stations")
    @Operation(
            summary = "What is at hand at stations",
            description = "Longest released first; without stations, those of the tablet the program is signed on at.")
    List<AtHand.Line> atStations(
            @Parameter(description = "codes of stations") @RequestParam(defaultValue = "") List<String> station,
            SignedOn who) {
        return atHand.at(station.isEmpty() ? who.stations() : station);
    }

    @GetMapping("/{tag}")
    @Operation(
            summary = "One frame with its operation at hand",
            description =
                    "Limits stand in the unit of their characteristic; of one that is read blind they are kept back"
                            + " until it is read.")
    FrameSheet frame(@Parameter(description = BY_TAG) @PathVariable String tag) {
        return tags.sheet(tag);
    }

    @GetMapping("/{tag}/operations")
    @Operation(summary = "Every operation of a frame in full, in order, loops included")
    List<FrameSheet.OperationSheetOfFrame> operations(@PathVariable String tag) {
        return travellers.whole(tags.sheet(tag).head().travellerId());
    }

    @GetMapping("/{tag}/readings")
    @Operation(
            summary = "Every reading of a frame, oldest first",
            description =
                    "Values and uncertainty in the unit of the reading; plus is the drive side. Replaced ones stay and"
                            + " are marked.")
    List<ReadingLine> readings(@PathVariable String tag) {
        FrameSheet sheet = tags.sheet(tag);
        List<Long> hidden = travellers.whole(sheet.head().travellerId()).stream()
                .flatMap(operation -> operation.characteristics().stream())
                .filter(FrameSheet.CharacteristicLine::blind)
                .map(FrameSheet.CharacteristicLine::characteristicId)
                .toList();
        return readings.ofTravellers(List.of(sheet.head().travellerId())).stream()
                .filter(reading -> !hidden.contains(reading.characteristicId()))
                .toList();
    }
}
