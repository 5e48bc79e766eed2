package org.trammel.shop.ovens;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.trammel.shop.floor.Floor;
import org.trammel.shop.records.Words;

/** What people write of a run is kept once, apart from run, hold and log, and can be erased by itself. */
class ErasedRunWordsTest extends AtTheOven {

    @Autowired
    private Words words;

    @Autowired
    private Quenches quenches;

    @Autowired
    private JdbcClient jdbc;

    @Test
    void whyAFrameWasKeptBackOrTakenOutAndWhatWasNotedOfARunCanBeErased() {
        Programme now = programmes.of(programme).get(0);
        NewProgramme c = now.content();
        Programme drawn = programmes.draw(
                crew.act(qa),
                programme,
                null,
                new NewProgramme(
                        c.what(),
                        c.metals(),
                        c.guards(),
                        c.steps(),
                        null,
                        null,
                        null,
                        null,
                        null,
                        BigDecimal.TEN,
                        null,
                        false,
                        c.source()));
        programmes.approve(crew.act(qa), drawn.revisionId(), drawn.version());
        Floor.Frame out = frame();
        Floor.Frame kept = frame();
        Run load = loaded(out, kept);
        loads.takeOut(crew.act(heat), load.code(), out.travellerId(), "Rider Nine of Oak Row 2 comes for it");
        ovenRuns.sign(crew.act(heat), load.code(), heat, RunSigner.HEAT_TREATER);
        ovenRuns.sign(crew.act(second), load.code(), second, RunSigner.SECOND);
        ovenRuns.start(crew.act(heat), load.code());
        floor.tickAll(kept, heat);
        ovenRuns.door(crew.act(heat), load.code(), true, "Rider Nine looked in");
        clock.pass(java.time.Duration.ofMinutes(600));
        ovenRuns.stop(crew.act(heat), load.code());
        quenches.late(crew.act(heat), load.code(), new BigDecimal("8"), "Rider Nine timed it");
        record(load.code(), clock.instant().minus(java.time.Duration.ofMinutes(600)), 0);
        release.decide(crew.act(qa), load.code(), qa, Set.of(kept.travellerId()), "Rider Nine wants it softer");
        Run run = runs.byCode(load.code());
        assertThat(run.frames())
                .extracting(Run.Loaded::words)
                .containsExactly("Rider Nine of Oak Row 2 comes for it", "Rider Nine wants it softer");
        assertThat(run.doors()).extracting(Run.Door::words).containsExactly("Rider Nine looked in");
        assertThat(runs.quench(run.id()))
                .hasValueSatisfying(quench -> assertThat(quench.words()).isEqualTo("Rider Nine timed it"));
        assertThat(floor.sheet(kept).holds())
                .extracting(hold -> hold.words())
                .containsExactly("kept back from run " + load.code() + "; its sheet says why");
        assertThat(said()).isEqualTo(4);
        for (String table : List.of("oven_run_frame", "oven_run_door", "oven_run_quench")) {
            jdbc.sql("select words_id from " + table + " where run_id = ? and words_id is not null order by id")
                    .param(run.id())
                    .query(Long.class)
                    .list()
                    .forEach(id -> words.erase(crew.act(qa), id));
        }
        assertThat(said()).isZero();
        assertThat(runs.byCode(load.code()).frames())
                .extracting(Run.Loaded::words)
                .containsOnly("(erased)");
    }

    /** Places anywhere in the records that still say it. */
    private long said() {
        return jdbc.sql("select (select count(*) from kept_words_text where words like :what)"
                        + " + (select count(*) from hold where lift_words like :what or words like :what)"
                        + " + (select count(*) from log_entry where payload like :what)")
                .param("what", "%Rider Nine%")
                .query(Long.class)
                .single();
    }
}
