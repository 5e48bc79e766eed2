package org.trammel.shop.assembly;

import java.time.Instant;
import java.util.List;

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

    List<String> itemsIn(String country) {
        return content.countryItems().stream()
                .filter(item -> item.holdsIn(country))
                .map(NewBuildRules.CountryItem::item)
                .distinct()
                .toList();
    }
}
