package org.trammel.shop.welding;

import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Embeddable;
import java.util.List;
import java.util.stream.Stream;

/**
 * Codes of the operations that a procedure guards.
 *
 * @param tack where the frame is tacked: who, filler, gas and purge are asked for
 * @param weld where it is welded out or brazed: the same, and what each node is recorded by
 * @param look where its welds are looked at
 */
@Embeddable
public record GuardedOperations(
        @Convert(converter = WordList.class) @Column(name = "tack_operations", nullable = false)
        List<String> tack,

        @Convert(converter = WordList.class) @Column(name = "weld_operations", nullable = false)
        List<String> weld,

        @Convert(converter = WordList.class) @Column(name = "look_operations", nullable = false)
        List<String> look) {

    public GuardedOperations {
        tack = tack == null ? List.of() : List.copyOf(tack);
        weld = weld == null ? List.of() : List.copyOf(weld);
        look = look == null ? List.of() : List.copyOf(look);
    }

    boolean joins(String operation) {
        return tack.contains(operation) || weld.contains(operation);
    }

    Stream<String> all() {
        return Stream.of(tack, weld, look).flatMap(List::stream);
    }
}
