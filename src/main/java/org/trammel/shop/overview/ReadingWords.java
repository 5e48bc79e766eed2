package org.trammel.shop.overview;

import java.math.BigDecimal;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.shop.inspection.ReadingLine;
import org.trammel.shop.inspection.Verdict;
import org.trammel.shop.routes.Rule;
import org.trammel.shop.travellers.FrameSheet;
import org.trammel.shop.web.Formats;
import org.trammel.shop.web.ScaleView;

/** Readings as a record says them. */
@Component
class ReadingWords {

    private static final int MOST_DECIMALS = 4;

    private final Formats formats;

    ReadingWords(Formats formats) {
        this.formats = formats;
    }

    Story.ReadingOf of(ReadingLine r, FrameSheet.@Nullable CharacteristicLine c, Names names) {
        int asked = c == null ? 0 : c.decimals();
        int decimals = Math.min(
                MOST_DECIMALS,
                Math.max(asked, Math.max(0, r.value().stripTrailingZeros().scale())));
        boolean sided = c != null && c.sided();
        String value = formats.with(sided ? r.value().abs() : r.value(), decimals, r.unit());
        if (sided && r.value().signum() != 0) {
            value += r.value().signum() > 0 ? " to drive" : " to non-drive";
        }
        return new Story.ReadingOf(
                r.readingId(),
                r.characteristicId(),
                r.code(),
                c == null ? "" : c.name(),
                value,
                r.raw().stream().map(formats::number).collect(Collectors.joining("; ")),
                bare(r.u()),
                r.unit(),
                r.record() == null ? r.gauge() : r.gauge() + ", given by " + r.record(),
                r.ruleUsed() == Rule.GUARDED ? "guarded, g " + formats.number(bare(r.guardBand())) : "plain",
                r.verdict().word(),
                kind(r.verdict()),
                r.lowerLimit() == null && r.upperLimit() == null ? null : scale(r, asked, sided),
                names.at(r.personId(), r.at()),
                r.at(),
                r.replaced(),
                c != null && c.readingId() != null && c.readingId() == r.readingId() && r.record() == null,
                r.reason());
    }

    private static ScaleView scale(ReadingLine r, int decimals, boolean sided) {
        ScaleView view = ScaleView.limits(
                        bare(r.lowerLimit()), bare(r.upperLimit()), bare(r.nominal()), r.unit(), decimals)
                .guarded(bare(r.guardBand()))
                .reading(bare(r.value()), r.verdict() == Verdict.NOTED ? null : kind(r.verdict()));
        return sided ? view.bySides() : view;
    }

    /** Columns keep more zeros than people wrote. */
    private static @Nullable BigDecimal bare(@Nullable BigDecimal figure) {
        if (figure == null) {
            return null;
        }
        BigDecimal bare = figure.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0) : bare;
    }

    private static String kind(Verdict verdict) {
        return switch (verdict) {
            case CONFORMING -> "conforming";
            case NOT_CONFORMING -> "not-conforming";
            case UNDECIDED -> "undecided";
            case NOTED -> "waiting";
        };
    }
}
