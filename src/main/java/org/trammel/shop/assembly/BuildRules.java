package org.trammel.shop.assembly;

import java.time.Instant;
import java.util.List;
import org.trammel.shop.routes.Proof;

/** A revision of the rules; see {@link NewBuildRules}. */
public record BuildRules(String letter, NewBuildRules content, long setBy, Instant setAt) {

    boolean joins(String operation) {
        return content.joinOperations().contains(operation);
    }

    boolean fits(String operation) {
        return content.fitOperations().contains(operation);
    }

    boolean rides(String operation) {
        return content.finalOperations().contains(operation);
    }

    boolean packs(String operation) {
        return content.packOperations().contains(operation);
    }

    boolean names(String operation) {
        return joins(operation) || rides(operation) || packs(operation);
    }

    /** Whether what a step rests on is recorded at an operation. */
    boolean records(Proof proof, String operation) {
        return switch (proof) {
            case JOINED -> joins(operation);
            case PACKED -> packs(operation);
            default -> rides(operation);
        };
    }

    List<String> itemsIn(String country) {
        return content.countryItems().stream()
                .filter(item -> item.holdsIn(country))
                .map(NewBuildRules.CountryItem::item)
                .distinct()
                .toList();
    }
}
