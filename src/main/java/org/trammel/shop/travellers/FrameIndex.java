package org.trammel.shop.travellers;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.springframework.data.domain.Limit;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.marks.SerialNumber;

/** Finds frames, those in the shop and those that left it. */
@Service
@Transactional(readOnly = true)
public class FrameIndex {

    private static final Set<TravellerState> OPEN =
            EnumSet.of(TravellerState.RELEASED, TravellerState.IN_WORK, TravellerState.FINISHED);
    private static final Set<TravellerState> CLOSED = EnumSet.of(TravellerState.SHIPPED, TravellerState.SCRAPPED);
    private static final Limit MOST = Limit.of(50);
    private static final String NOTHING = "-";

    private final StoryQueries queries;

    FrameIndex(StoryQueries queries) {
        this.queries = queries;
    }

    /**
     * A page of whole frames, newest first.
     *
     * @param open those in the shop, else those that left it
     * @param before id of the traveller to go on below; {@link Long#MAX_VALUE} for the first page
     */
    public List<FrameSheet.Head> page(boolean open, long before, int size) {
        return heads(queries.page(open ? OPEN : CLOSED, before, Limit.of(size)));
    }

    /**
     * Frames that answer to what was typed: a serial, a mark such as 042-3, the last digits, or the number of an order;
     * 50 at most.
     *
     * @param orderNumbers numbers of orders that answer to it as well
     */
    public List<FrameSheet.Head> find(String typed, List<String> orderNumbers) {
        String text = typed.strip().toUpperCase(Locale.ROOT);
        String ending = "%" + escaped(body(text));
        List<String> numbers = new java.util.ArrayList<>(orderNumbers);
        numbers.add(text.isEmpty() ? NOTHING : text);
        return text.isEmpty() ? List.of() : heads(queries.found(ending, numbers, MOST));
    }

    private static String body(String text) {
        if (SerialNumber.read(text) instanceof SerialNumber.Result.Whole whole) {
            return whole.serial().frame().stored();
        }
        String body = text.replaceAll("[^A-Z0-9]", "");
        // Three digits alone are the number on the tag; the check character may stand for anything.
        return body.isEmpty() ? NOTHING : body.matches("\\d{3}") ? body + "_" : body;
    }

    private static String escaped(String text) {
        return text.replace("%", "").replace("\\", "");
    }

    private static List<FrameSheet.Head> heads(List<Traveller> travellers) {
        return travellers.stream().map(FrameSheet.Head::of).toList();
    }
}
