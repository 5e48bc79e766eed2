package org.trammel.shop.designs;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.StoredFile;

/**
 * Everything the sheet of a revision shows.
 *
 * @param revisions all of the design, first one first
 * @param names of people by id
 * @param routeName code, letter and name of the route the nominals are for; null until one was chosen
 * @param lines the characteristic list; empty until a route was chosen
 * @param drawn what the drawing gives for them, by code
 * @param drawingFits the drawing was added for the inputs as they are now
 * @param fromDrawing codes of those whose nominal was taken from the drawing
 */
record RevisionStory(
        RevisionSummary revision,
        DesignSheet sheet,
        List<RevisionSummary> revisions,
        Map<Long, String> words,
        Map<Long, String> names,
        @Nullable String routeName,
        List<CharacteristicLine> lines,
        Map<String, DrawnNominals.FromDrawing> drawn,
        Set<String> fromDrawing,
        List<CheckLine> checks,
        List<SignatureLine> signatures,
        List<NoteLine> notes,
        @Nullable StoredFile file,
        boolean drawingFits) {

    private static final int MANY = 3;

    /**
     * One check of the gate.
     *
     * @param answer null while there is none
     * @param counts the answer holds for the inputs as they are now
     * @param red a figure is not met, or the inputs contradict each other
     * @param lacking which inputs are missing for a figure
     * @param cannot why the inputs cannot be together
     * @param takes the answers that it takes on these figures
     * @param answeredOn the figures of the answer, as they were then
     */
    record CheckLine(
            GateCheck check,
            @Nullable GateAnswer answer,
            @Nullable String decision,
            @Nullable String by,
            @Nullable Instant at,
            boolean counts,
            boolean red,
            List<CheckFigure> figures,
            List<String> lacking,
            List<String> cannot,
            List<GateAnswer> takes,
            List<CheckFigure> answeredOn) {

        /** Only a decision in writing lets the frame pass it. */
        public boolean decidedOnly() {
            return takes.equals(List.of(GateAnswer.DECIDED));
        }

        /** The answer to begin with: the one that was given, if it may still be given. */
        public GateAnswer first() {
            return answer != null && takes.contains(answer) ? answer : takes.get(0);
        }

        /** The words of the answers by what a form sends. */
        public Map<String, String> options() {
            Map<String, String> options = new LinkedHashMap<>();
            takes.forEach(one -> options.put(one.name(), one.word()));
            return options;
        }
    }

    record SignatureLine(Role capacity, String by, Instant at) {

        public String word() {
            return capacity == Role.OWNER ? "owner" : "QA lead";
        }
    }

    record NoteLine(String note, String by, Instant at) {}

    /** How many nominals are missing. */
    public long lacking() {
        return lines.stream().filter(CharacteristicLine::lacking).count();
    }

    /** Whether a nominal was typed and lies further from the drawing's than its kind allows. */
    public boolean contradicts(String code) {
        DrawnNominals.FromDrawing from = drawn.get(code);
        Nominal typed = sheet.nominals().get(code);
        return from != null && typed != null && from.contradicts(typed.nominal());
    }

    /** How many typed ones contradict it. */
    public long contradicting() {
        return lines.stream().filter(line -> contradicts(line.code())).count();
    }

    /** Characteristics that are judged against other limits than the route's. */
    public List<CharacteristicLine> apart() {
        return lines.stream().filter(CharacteristicLine::apart).toList();
    }

    /** How many checks of the gate wait for an answer. */
    public long open() {
        return checks.stream().filter(check -> !check.counts()).count();
    }

    /** What several checks wait for, so that it is said once and not in the row of each. */
    public Set<String> lackingOfMany() {
        Map<String, Long> often = checks.stream()
                .flatMap(check -> check.lacking().stream())
                .collect(Collectors.groupingBy(Function.identity(), LinkedHashMap::new, Collectors.counting()));
        often.values().removeIf(times -> times < MANY);
        return often.keySet();
    }

    /** Whether a check waits for any of these. */
    public boolean waits(CheckLine check, Set<String> many) {
        return check.lacking().stream().anyMatch(many::contains);
    }

    public boolean draft() {
        return sheet.state() == DesignState.DRAFT;
    }

    public boolean signedAs(String capacity) {
        return signatures.stream().anyMatch(one -> one.capacity().name().equals(capacity));
    }

    /** A geometry input by its code; null if it was not typed. */
    public @Nullable BigDecimal amount(String code) {
        String typed = sheet.geometry().get(code);
        return typed == null ? null : new BigDecimal(typed);
    }

    public String said(@Nullable Long id) {
        return id == null ? "" : words.getOrDefault(id, "");
    }
}
