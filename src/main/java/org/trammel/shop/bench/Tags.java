package org.trammel.shop.bench;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.AtHand;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/**
 * What a tag says. A tag carries the serial and the revision it was printed for, AB27-042-3/A; the last three digits and
 * the check character are enough while the frame is in the shop.
 */
@Component
class Tags {

    private static final Pattern WITH_REVISION = Pattern.compile("(.+)/\\s*([A-Za-z]{1,3})\\s*");

    private static final String NOT_OPENED = "No frame was opened.";

    private final Travellers travellers;
    private final AtHand atHand;

    Tags(Travellers travellers, AtHand atHand) {
        this.travellers = travellers;
        this.atHand = atHand;
    }

    /**
     * What was scanned or typed.
     *
     * @param letter revision on the tag; null if none was read
     */
    record Read(FrameSheet.Head head, @Nullable String letter) {

        /** True if the tag was printed for a revision that another took the place of. */
        boolean superseded() {
            return letter != null && !letter.equals(head.letter());
        }
    }

    /**
     * The traveller in force that a tag names.
     *
     * @throws Refusal if it names none, its check character is wrong, or it may mean two
     */
    Read read(@Nullable String scanned) {
        String text = scanned == null ? "" : scanned;
        Matcher printed = WITH_REVISION.matcher(text);
        return printed.matches()
                ? new Read(head(printed.group(1)), printed.group(2).toUpperCase(Locale.ROOT))
                : new Read(head(text), null);
    }

    /** The same, for whoever cannot be shown the newer revision: a tag of an older one is refused. */
    FrameSheet.Head current(@Nullable String scanned) {
        Read read = read(scanned);
        if (read.superseded()) {
            throw superseded(read.head(), String.valueOf(read.letter()));
        }
        return read.head();
    }

    /** What people call a frame, of the form in addresses. */
    static String mark(String tag) {
        return SerialNumber.read(tag) instanceof SerialNumber.Result.Whole whole
                ? whole.serial().tag()
                : tag;
    }

    static Refusal superseded(FrameSheet.Head head, String letter) {
        return Refusal.state(
                "Revision " + letter + " of " + head.mark() + " is superseded.",
                "The tag was printed for revision " + letter + "; the traveller in force is revision " + head.letter()
                        + ".",
                "Go to revision " + head.letter() + ": print its tag and take the old one off.");
    }

    /** The sheet a page's address names. */
    FrameSheet sheet(String tag) {
        if (SerialNumber.read(tag) instanceof SerialNumber.Result.Whole whole) {
            SerialNumber serial = whole.serial();
            return travellers
                    .opened(serial.frame().stored(), part(serial.part()))
                    .orElseThrow(() -> nobody(serial.tag()));
        }
        return travellers.sheet(head(tag).travellerId());
    }

    private FrameSheet.Head head(String text) {
        SerialNumber.Result result = SerialNumber.read(text);
        if (result instanceof SerialNumber.Result.Whole whole) {
            SerialNumber serial = whole.serial();
            return travellers.inForce(serial.frame().stored(), part(serial.part()));
        }
        if (result instanceof SerialNumber.Result.WrongCheck wrong) {
            throw Refusal.input(
                    "code", NOT_OPENED, wrong.reason(), "The number printed under the code is the one to type.");
        }
        if (result instanceof SerialNumber.Result.Tag tag) {
            return ofTag(tag);
        }
        return ofCheck(text, ((SerialNumber.Result.Unreadable) result).reason());
    }

    private FrameSheet.Head ofTag(SerialNumber.Result.Tag tag) {
        List<FrameSheet.Head> numbered = atHand.numbered(String.format(Locale.ROOT, "%03d", tag.number())).stream()
                .filter(head -> head.orderId() != null)
                .toList();
        List<FrameSheet.Head> found =
                numbered.stream().filter(head -> isOf(tag, head)).toList();
        if (found.size() == 1) {
            return found.get(0);
        }
        if (found.size() > 1) {
            throw Refusal.input(
                    "code",
                    NOT_OPENED,
                    "The shop has " + found.size() + " frames of this number, of different years.",
                    "Scan the tag, or type the whole serial.");
        }
        if (numbered.stream().anyMatch(head -> part(tag.part()).equals(head.part()))) {
            throw Refusal.input(
                    "code",
                    NOT_OPENED,
                    "The check character " + tag.check() + " does not belong to the frame of this number: one character"
                            + " was misread, or two were swapped.",
                    "Read the tag again.");
        }
        throw nobody(String.format(Locale.ROOT, "%03d-%s", tag.number(), tag.check()));
    }

    private static boolean isOf(SerialNumber.Result.Tag tag, FrameSheet.Head head) {
        return SerialNumber.read(head.tag()) instanceof SerialNumber.Result.Whole whole && tag.isOf(whole.serial());
    }

    private FrameSheet.Head ofCheck(String text, String unreadable) {
        return travellers.heads(text.strip()).stream()
                .reduce((earlier, later) -> later)
                .orElseThrow(
                        () -> Refusal.input("code", NOT_OPENED, unreadable, "Scan the tag, or read it once more."));
    }

    private static Refusal nobody(String mark) {
        return Refusal.missing(
                NOT_OPENED,
                "There is no traveller of " + mark + " in the shop.",
                "Read the tag again; a frame that has left the shop is found by its whole serial.");
    }

    private static String part(@Nullable String letters) {
        return letters == null ? "" : letters;
    }
}
