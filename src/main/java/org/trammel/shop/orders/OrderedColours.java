package org.trammel.shop.orders;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.records.Words;

/** The colours a frame is ordered in, coat by coat. What is sprayed is compared with them. */
@Service
@Transactional
public class OrderedColours {

    private static final int MOST_COATS = 8;

    private final OrderedColoursRepository rows;
    private final OrderAct opening;
    private final Words words;

    OrderedColours(OrderedColoursRepository rows, OrderAct opening, Words words) {
        this.rows = rows;
        this.opening = opening;
        this.words = words;
    }

    /**
     * As they were ordered once.
     *
     * @param colours in the order in which they are sprayed, a clear coat too
     * @param reason why they were changed; empty for the first
     */
    public record Ordered(List<String> colours, String reason, long by, Instant at) {

        public Ordered {
            colours = List.copyOf(colours);
        }

        /** As they are typed: one to a line. */
        public String written() {
            return String.join("\n", colours);
        }
    }

    /** Those that stand; empty where none were named. */
    @Transactional(readOnly = true)
    public List<String> of(long orderId) {
        return rows.findFirstByOrderIdOrderByIdDesc(orderId)
                .map(OrderedColoursRow::colours)
                .orElse(List.of());
    }

    /** Everything that was ever ordered, oldest first. */
    @Transactional(readOnly = true)
    public List<Ordered> history(long orderId) {
        return rows.findByOrderIdOrderById(orderId).stream()
                .map(row -> new Ordered(row.colours(), reason(row.reasonWords()), row.by(), row.at()))
                .toList();
    }

    private String reason(@Nullable Long wordsId) {
        return wordsId == null ? "" : words.find(wordsId).shown();
    }

    /**
     * Names the colours.
     *
     * @param typed one for each coat, in the order in which they are sprayed
     * @param why they are other ones now; asked for once the frame is in work
     */
    public List<String> name(Act act, long orderId, List<String> typed, @Nullable String why) {
        return opening.open(act, "name-colours", orderId)
                .map(order -> {
                    String deed = "The colours of " + order.number() + " were not named.";
                    opening.require(act, deed, Role.OWNER, Role.QA_LEAD);
                    if (!order.state().open()) {
                        throw Refusal.state(
                                deed, "It is " + order.state().word() + ".", "Name them on an order that is open.");
                    }
                    List<String> colours = typed.stream()
                            .filter(one -> !one.isBlank())
                            .map(one -> TypedText.line("colours", "A colour", deed, one, 60))
                            .toList();
                    if (colours.isEmpty() || colours.size() > MOST_COATS) {
                        throw Refusal.input(
                                "colours",
                                deed,
                                colours.isEmpty()
                                        ? "No colour is named."
                                        : colours.size() + " coats are more than " + MOST_COATS + ".",
                                "Write one colour to a line, in the order in which they are sprayed.");
                    }
                    List<String> before = of(orderId);
                    boolean changes =
                            !before.isEmpty() && !before.equals(colours) && order.state() == OrderState.IN_WORK;
                    String reason = changes
                            ? TypedText.words("coloursReason", "Why they are other ones now", deed, why)
                            : TypedText.wordsOrNone("coloursReason", "The reason", deed, why);
                    OrderedColoursRow named = rows.saveAndFlush(new OrderedColoursRow(
                            orderId,
                            colours,
                            reason == null ? null : opening.keep(order, "colours-reasoned", reason),
                            act));
                    opening.event(order, "colours-named", Map.of("colours", named.id()));
                    return colours;
                })
                .orElseGet(() -> of(orderId));
    }

    /** As they are typed into one field. */
    static List<String> typed(String lines) {
        return Stream.of(lines.split("\\R")).map(String::strip).toList();
    }
}
