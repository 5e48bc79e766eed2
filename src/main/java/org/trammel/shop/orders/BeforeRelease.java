package org.trammel.shop.orders;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.designs.ReleaseWarnings;
import org.trammel.shop.designs.RevisionSummary;

/** What speaks against releasing a revision although it may be released. */
@Component
public class BeforeRelease {

    private final Designs designs;
    private final ObjectProvider<ReleaseWarnings> sources;

    BeforeRelease(Designs designs, ObjectProvider<ReleaseWarnings> sources) {
        this.designs = designs;
        this.sources = sources;
    }

    List<String> warnings(@Nullable RevisionSummary checked) {
        return checked == null ? List.of() : warnings(checked.revisionId());
    }

    /** One sentence each. */
    public List<String> warnings(long designRevisionId) {
        return sources.stream()
                .flatMap(source -> source.of(designs.revision(designRevisionId)).stream())
                .toList();
    }
}
