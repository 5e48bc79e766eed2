package org.trammel.shop.travellers;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;

/** Finds the frames whose tags were scanned or typed, each with its check character. */
@Component
public class ScannedFrames {

    private final Travellers travellers;
    private final FrameIndex index;

    ScannedFrames(Travellers travellers, FrameIndex index) {
        this.travellers = travellers;
        this.index = index;
    }

    /** A frame, or a part of one, and the chain of the log it belongs to. */
    public record Found(FrameSheet.Head head, String chain) {}

    public List<Found> find(List<String> tags, String deed) {
        List<String> typed =
                tags.stream().map(String::strip).filter(tag -> !tag.isEmpty()).toList();
        if (typed.isEmpty()) {
            throw Refusal.input("tags", deed, "No tag was scanned.", "Scan a tag, or type its number.");
        }
        List<Found> found = new ArrayList<>();
        for (String tag : typed) {
            FrameSheet.Head head = one(tag, deed);
            if (found.stream().anyMatch(there -> there.head().travellerId() == head.travellerId())) {
                throw Refusal.input("tags", deed, tag + " stands in the list twice.", "Take it off once.");
            }
            found.add(new Found(head, Chains.bearing(head.serial())));
        }
        return found;
    }

    private FrameSheet.Head one(String tag, String deed) {
        SerialNumber.Result read = SerialNumber.read(tag);
        if (read instanceof SerialNumber.Result.Whole whole) {
            SerialNumber serial = whole.serial();
            try {
                return travellers.inForce(serial.frame().stored(), serial.part() == null ? "" : serial.part());
            } catch (Refusal none) {
                throw Refusal.input("tags", deed, none.why(), none.instead());
            }
        }
        if (read instanceof SerialNumber.Result.Tag short_) {
            List<FrameSheet.Head> those = index.find(tag, List.of()).stream()
                    .filter(head -> SerialNumber.read(head.serial()) instanceof SerialNumber.Result.Whole whole
                            && new SerialNumber.Result.Tag(short_.number(), short_.check(), null)
                                    .isOf(whole.serial().frame()))
                    .map(FrameSheet.Head::serial)
                    .distinct()
                    .flatMap(
                            serial -> Stream.of(travellers.inForce(serial, short_.part() == null ? "" : short_.part())))
                    .toList();
            if (those.size() == 1) {
                return those.get(0);
            }
            throw Refusal.input(
                    "tags",
                    deed,
                    those.isEmpty() ? "No frame in the shop has the tag " + tag + "." : tag + " is on two frames.",
                    "Scan the tag, or type the whole serial.");
        }
        String why = read instanceof SerialNumber.Result.WrongCheck wrong
                ? wrong.reason()
                : ((SerialNumber.Result.Unreadable) read).reason();
        throw Refusal.input("tags", deed, tag + ": " + why, "Read the tag again.");
    }
}
