package org.trammel.shop.assembly;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;

/** The rules of joining, final check and packing, kept by the QA lead. */
@Service
public class BuildRulesBook {

    private final BuildRulesRepository rows;
    private final Crew crew;
    private final ActLog log;

    BuildRulesBook(BuildRulesRepository rows, Crew crew, ActLog log) {
        this.rows = rows;
        this.crew = crew;
        this.log = log;
    }

    /** Those in force; empty until the QA lead puts some in force. */
    @Transactional(readOnly = true)
    public Optional<BuildRules> inForce() {
        return rows.findAllByOrderById().stream()
                .filter(BuildRulesRow::inForce)
                .map(BuildRulesRow::rules)
                .findFirst();
    }

    /** The same for work that began at a moment: what was in work before any rules named it goes by paper. */
    Optional<BuildRules> inForce(String operation, @Nullable Instant begunAt) {
        List<BuildRulesRow> all = rows.findAllByOrderById();
        boolean before = begunAt != null
                && all.stream()
                        .map(BuildRulesRow::rules)
                        .filter(rules -> rules.names(operation) || rules.fits(operation))
                        .noneMatch(rules -> !begunAt.isBefore(rules.setAt()));
        return before ? Optional.empty() : inForce();
    }

    /** Puts rules in force. The caller has asked the QA lead for the own secret. */
    @Transactional
    public BuildRules putInForce(Act act, NewBuildRules content) {
        if (!log.opens(act, "put-build-rules-in-force", "build-rules", Chains.SHOP)) {
            return inForce().orElseThrow();
        }
        crew.require(act.by(), "The rules were not put in force.", Role.QA_LEAD);
        NewBuildRules read = content.checked();
        List<BuildRulesRow> all = rows.findAllByOrderById();
        all.stream().filter(BuildRulesRow::inForce).forEach(row -> {
            row.supersede(act);
            rows.saveAndFlush(row);
        });
        BuildRules set = rows.saveAndFlush(new BuildRulesRow(Components.letter(all.size()), read, act))
                .rules();
        log.event(Chains.SHOP, "build-rules-put-in-force", Map.of("letter", set.letter()));
        return set;
    }
}
