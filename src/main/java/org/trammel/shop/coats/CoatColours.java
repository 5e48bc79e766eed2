package org.trammel.shop.coats;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.materials.PowderSheet;
import org.trammel.shop.materials.PowderSheets;
import org.trammel.shop.orders.OrderedColours;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.travellers.Travellers;

/** Compares the colour of a lot, by its sheet, with the colour that the order names for the coat. */
@Component
class CoatColours {

    private final OrderedColours ordered;
    private final PowderSheets sheets;
    private final Travellers travellers;

    CoatColours(OrderedColours ordered, PowderSheets sheets, Travellers travellers) {
        this.ordered = ordered;
        this.sheets = sheets;
        this.travellers = travellers;
    }

    /**
     * What the order asks of a coat.
     *
     * @param coat which one it is, from 1
     * @param coats how many the route has
     * @param colour null where the order names fewer
     * @param named how many colours the order names
     */
    record Asked(
            String order, int coat, int coats, @Nullable String colour, int named) {

        /** Which coat it is, behind its colour; empty where there is one alone. */
        public String words() {
            return coats == 1 ? "" : ", coat " + coat + " of " + coats;
        }
    }

    /** Empty where the order names no colour. */
    Optional<Asked> asked(long travellerId, String operation, Finish finish) {
        FrameSheet.Head head = travellers.head(travellerId);
        Long orderId = head.orderId();
        List<String> colours = orderId == null ? List.of() : ordered.of(orderId);
        if (colours.isEmpty()) {
            return Optional.empty();
        }
        List<String> coats = travellers.strips(Set.of(travellerId)).getOrDefault(travellerId, List.of()).stream()
                .map(FrameSheet.OperationLine::code)
                .filter(finish::coats)
                .distinct()
                .toList();
        int at = coats.indexOf(operation);
        return at < 0
                ? Optional.empty()
                : Optional.of(new Asked(
                        head.orderNumber(),
                        at + 1,
                        coats.size(),
                        at < colours.size() ? colours.get(at) : null,
                        colours.size()));
    }

    /** The sheet of a lot; empty where none was entered. */
    Optional<PowderSheet> sheet(String lot) {
        return sheets.of(lot);
    }

    /** That a lot is of another colour than the order asks for, as a sentence; empty where it is not, or nobody can tell. */
    Optional<String> other(long travellerId, String operation, Finish finish, String lot) {
        return asked(travellerId, operation, finish)
                .filter(asked -> asked.colour() != null)
                .flatMap(asked -> sheets.of(lot)
                        .filter(sheet -> !same(sheet.colour(), asked.colour()))
                        .map(sheet -> lot + " is " + sheet.colour() + "; order " + asked.order() + " asks for "
                                + asked.colour() + asked.words() + "."));
    }

    /** Refuses a lot of another colour, or of one that nobody entered; null where nothing speaks against it. */
    @Nullable
    Refusal differs(long travellerId, String operation, Finish finish, String lot, String cannot) {
        Asked asked = asked(travellerId, operation, finish).orElse(null);
        if (asked == null) {
            return null;
        }
        if (asked.colour() == null) {
            return Refusal.state(
                    cannot,
                    "This is coat " + asked.coat() + " of " + asked.coats() + ", and order " + asked.order() + " names "
                            + asked.named() + (asked.named() == 1 ? " colour." : " colours."),
                    "Have the order name a colour for each coat, clear too.");
        }
        PowderSheet sheet = sheets.of(lot).orElse(null);
        if (sheet == null) {
            return Refusal.state(
                    cannot,
                    "Order " + asked.order() + " asks for " + asked.colour() + asked.words() + ", and of which colour "
                            + lot + " is was not entered.",
                    "Have the maker's sheet of " + lot + " entered with the lot, and hold its sample beside it.");
        }
        return other(travellerId, operation, finish, lot)
                .map(
                        words -> Refusal.state(
                                cannot,
                                words,
                                "Take that colour. If the customer wants another, the order is changed first, with its reason."))
                .orElse(null);
    }

    private static boolean same(String one, String other) {
        return plain(one).equals(plain(other));
    }

    private static String plain(String colour) {
        return colour.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }
}
