package org.trammel.shop.calculations;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.trammel.calc.scheduling.Blank;
import org.trammel.calc.scheduling.CutBar;
import org.trammel.calc.scheduling.CutPlan;
import org.trammel.calc.scheduling.TubeStock;

/** Which blank is cut from which bar. */
record NestingAnswer(
        @Schema(description = "in the order they are cut, the most urgent first")
        List<Bar> bars,

        @Schema(description = "what goes back to the rack, each with its lot")
        List<Stock> remnants,

        @Schema(description = "of what is used up, the part that becomes no tube")
        double wastePercent,

        @Schema(description = "by section and alloy") List<Share> shares,

        @Schema(description = "frames whose blanks of one kind come from several lots, with those lots")
        Map<String, Set<String>> splitFrames) {

    record Bar(
            Stock stock,
            List<Piece> blanks,
            int cuts,
            double kerfMm,
            double offcutMm,

            @Schema(description = "whether the offcut goes back to the rack")
            boolean kept) {

        static Bar of(CutBar bar) {
            return new Bar(
                    Stock.of(bar.stock()),
                    bar.blanks().stream().map(Piece::of).toList(),
                    bar.cuts(),
                    bar.kerf_mm(),
                    bar.offcut_mm(),
                    bar.kept());
        }
    }

    record Piece(String name, String frame, double lengthMm, int urgency) {

        static Piece of(Blank blank) {
            return new Piece(blank.name(), blank.frame(), blank.length_mm(), blank.urgency());
        }
    }

    record Stock(String section, String alloy, String lot, double lengthMm, boolean remnant) {

        static Stock of(TubeStock stock) {
            return new Stock(
                    stock.kind().section(), stock.kind().alloy(), stock.lot(), stock.length_mm(), stock.remnant());
        }
    }

    record Share(
            String section,
            String alloy,

            @Schema(description = "length of new bars that are opened")
            double newStockMm,

            @Schema(description = "what no plan can stay below")
            double leastNewStockMm,

            @Schema(description = "whether no plan opens less")
            boolean proven) {

        static Share of(CutPlan.Share share) {
            return new Share(
                    share.kind().section(),
                    share.kind().alloy(),
                    share.newStock_mm(),
                    share.leastNewStock_mm(),
                    share.proven());
        }
    }

    static NestingAnswer of(CutPlan plan) {
        return new NestingAnswer(
                plan.bars().stream().map(Bar::of).toList(),
                plan.remnants().stream().map(Stock::of).toList(),
                plan.waste_percent(),
                plan.shares().stream().map(Share::of).toList(),
                plan.lotsOfSplitFrames());
    }
}
