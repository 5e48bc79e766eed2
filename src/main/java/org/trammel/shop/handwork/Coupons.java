package org.trammel.shop.handwork;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.calc.statistics.ToleranceInterval;
import org.trammel.calc.units.Answer;
import org.trammel.shop.gauges.Gauges;
import org.trammel.shop.people.Crew;
import org.trammel.shop.people.Role;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.ActLog;
import org.trammel.shop.records.Chains;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.routes.CharacteristicSheet;
import org.trammel.shop.settings.Settings;
import org.trammel.shop.travellers.ShopLimits;

/**
 * The conductivity that stock of each metal has, told from coupons of known stock. From ten coupons on the window takes the
 * place of the route's limits in every frame released afterwards; a frame in the shop keeps what it was released with.
 */
@Service
public class Coupons implements ShopLimits {

    /** Metals whose conductivity tells their temper. */
    static final List<String> METALS = List.of("AL6061", "AL7005");

    private static final String KIND = "CONDUCTIVITY";
    private static final String UNIT = "%IACS";

    private final CouponRepository coupons;
    private final Gauges gauges;
    private final Crew crew;
    private final Settings settings;
    private final ActLog log;

    Coupons(CouponRepository coupons, Gauges gauges, Crew crew, Settings settings, ActLog log) {
        this.coupons = coupons;
        this.gauges = gauges;
        this.crew = crew;
        this.settings = settings;
        this.log = log;
    }

    /** Coupons of a metal that count, oldest first. */
    @Transactional(readOnly = true)
    public List<Coupon> of(String metal) {
        List<CouponRow> all = coupons.findByMetalOrderById(metal);
        Set<Long> out =
                all.stream().map(CouponRow::takesOut).filter(Objects::nonNull).collect(Collectors.toSet());
        return all.stream()
                .filter(row -> row.takesOut() == null)
                .map(CouponRow::coupon)
                .filter(coupon -> !out.contains(coupon.id()))
                .toList();
    }

    /** The interval in which so large a share of known stock lies, or why there is none yet. */
    @Transactional(readOnly = true)
    public Answer<ToleranceInterval> interval(String metal) {
        return ToleranceInterval.of(
                of(metal).stream().map(one -> one.percent_IACS().doubleValue()).toList(),
                settings.number("coupon.share").doubleValue() / 100,
                settings.number("coupon.confidence").doubleValue() / 100);
    }

    /** Limits that a frame of the metal would be released with now; empty while the route's own stand. */
    @Transactional(readOnly = true)
    public Optional<Window> window(String metal) {
        return interval(metal) instanceof Answer.Determined<ToleranceInterval> told
                ? Optional.of(new Window(
                        tenths(told.value().least(), RoundingMode.CEILING),
                        tenths(told.value().greatest(), RoundingMode.FLOOR),
                        of(metal).size() + " coupons of known stock"))
                : Optional.empty();
    }

    @Override
    @Transactional(readOnly = true)
    public Optional<Window> of(String metal, CharacteristicSheet characteristic) {
        return KIND.equals(characteristic.gaugeKind()) && UNIT.equals(characteristic.unit())
                ? window(metal)
                : Optional.empty();
    }

    /** Inward: rounding never lets in what lies beyond. */
    private static BigDecimal tenths(double value, RoundingMode inward) {
        return BigDecimal.valueOf(value).setScale(1, inward);
    }

    /** A coupon as it was read. */
    public record Read(
            @Nullable String metal,
            @Nullable String coupon,
            @Nullable String knownBy,
            @Nullable BigDecimal percent_IACS,
            @Nullable String gauge) {}

    /** Takes the reading of a coupon. By the QA lead. */
    @Transactional
    public void read(Act act, Read entry) {
        String deed = "The coupon was not taken.";
        if (!log.opens(act, "read-coupon", "coupons", Chains.SHOP)) {
            return;
        }
        crew.require(act.by(), deed, Role.QA_LEAD);
        String metal = entry.metal() == null ? "" : entry.metal().strip();
        if (!METALS.contains(metal)) {
            throw Refusal.input(
                    "metal",
                    deed,
                    "Conductivity tells the temper of aluminium; "
                            + (metal.isEmpty() ? "no metal was chosen." : metal + " is none of it."),
                    "Choose one of " + String.join(", ", METALS) + ".");
        }
        String label = TypedText.line("coupon", "The label of the coupon", deed, entry.coupon(), 40);
        String knownBy = TypedText.line("knownBy", "What it is known by", deed, entry.knownBy(), 200);
        if (of(metal).stream().anyMatch(one -> one.coupon().equalsIgnoreCase(label))) {
            throw Refusal.input(
                    "coupon",
                    deed,
                    label + " is counted already; a coupon read twice is no second piece.",
                    "Take another coupon, or take this one out first.");
        }
        BigDecimal read = entry.percent_IACS();
        if (read == null || read.signum() <= 0 || read.compareTo(BigDecimal.valueOf(100)) > 0) {
            throw Refusal.input(
                    "value", deed, "A conductivity lies above 0 and up to 100 %IACS.", "Read the meter again.");
        }
        String gauge = entry.gauge() == null ? "" : entry.gauge().strip();
        if (gauge.isEmpty()) {
            throw Refusal.input(
                    "gauge", deed, "It is not said what it was read with.", "Choose the meter in your hand.");
        }
        gauges.keep(List.of(gauge));
        String code = gauges.require(gauge, KIND, UNIT, List.of(read), settings.dayOf(act.at()))
                .code();
        coupons.saveAndFlush(new CouponRow(metal, label, knownBy, read, code, act));
        log.event(Chains.SHOP, "coupon-read", Map.of("metal", metal, "coupon", label, "value", read.toPlainString()));
    }

    /** Takes a coupon out of the count, with a reason; it stays on record. */
    @Transactional
    public void takeOut(Act act, long id, @Nullable String reason) {
        String deed = "The coupon was not taken out.";
        if (!log.opens(act, "take-coupon-out", "coupons", Chains.SHOP)) {
            return;
        }
        crew.require(act.by(), deed, Role.QA_LEAD);
        CouponRow row = coupons.findById(id)
                .filter(one -> one.takesOut() == null)
                .orElseThrow(() -> Refusal.missing(deed, "There is no such coupon.", "Load the page again."));
        if (coupons.existsByTakesOut(id)) {
            throw Refusal.stale(deed, "It was taken out before.", "Load the page again.");
        }
        String why = TypedText.line("reason", "The reason", deed, reason, 200);
        coupons.saveAndFlush(row.without(why, act));
        log.event(Chains.SHOP, "coupon-taken-out", Map.of("coupon", id));
    }
}
