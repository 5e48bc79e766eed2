package org.trammel.shop.orders;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.trammel.calc.units.DecimalSign;
import org.trammel.shop.designs.Unusual;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.settings.Settings;

/** What is promised and at what price; every value ever agreed is kept with its reason. */
@Component
class OrderTerms {

    private static final BigDecimal DEAR = BigDecimal.valueOf(50_000);
    private static final BigDecimal DEAREST = BigDecimal.valueOf(10_000_000);
    private static final BigDecimal EVEN = BigDecimal.valueOf(50);
    private static final BigDecimal SURE = BigDecimal.valueOf(99);
    private static final int FAR_YEARS = 2;

    private final OrderPromiseRepository promises;
    private final OrderPriceRepository prices;
    private final OrderAct opening;
    private final Settings settings;

    OrderTerms(OrderPromiseRepository promises, OrderPriceRepository prices, OrderAct opening, Settings settings) {
        this.promises = promises;
        this.prices = prices;
        this.opening = opening;
        this.settings = settings;
    }

    /** @param deed what did not happen if it is refused */
    void promise(
            Act act,
            String deed,
            ShopOrder order,
            LocalDate on,
            @Nullable BigDecimal typedPercentile,
            String reason,
            boolean confirmed) {
        LocalDate today = settings.dayOf(act.at());
        if (on.isBefore(today)) {
            throw Refusal.input(
                    "promised", deed, on + " is past; today is " + today + ".", "Promise a day that is still to come.");
        }
        Unusual unusual = new Unusual();
        noteDay(act, on, unusual);
        unusual.ask(deed, confirmed);
        BigDecimal percentile = typedPercentile == null ? settings.number("promise.percentile") : typedPercentile;
        requireKeepable(deed, percentile);
        order.promise(on, percentile);
        promises.save(
                new OrderPromise(order.id(), on, percentile, opening.keep(order, "promise-reasoned", reason), act));
        opening.event(
                order,
                "date-promised",
                Map.of(
                        "on",
                        on.toString(),
                        "percentile",
                        Plain.number(percentile).toPlainString()));
    }

    void noteDay(Act act, LocalDate on, Unusual unusual) {
        if (on.isAfter(settings.dayOf(act.at()).plusYears(FAR_YEARS))) {
            unusual.add(
                    "promised",
                    on + " is more than " + FAR_YEARS + " years ahead.",
                    "Look at the year; confirm it if it is meant.");
        }
    }

    void notePrice(BigDecimal amount, Unusual unusual) {
        if (amount.signum() == 0 || amount.compareTo(DEAR) > 0) {
            unusual.add(
                    "price",
                    "A price of " + written(amount) + " " + settings.currency().getCurrencyCode()
                            + " is unusual for one frame.",
                    "Look at the decimal sign; confirm it if it is meant.");
        }
    }

    /** Refuses a share of promises that nobody can mean to keep, whether or not a day is promised yet. */
    static void requireKeepable(String deed, BigDecimal percentile) {
        if (percentile.stripTrailingZeros().scale() > 0) {
            throw Refusal.input(
                    "percentile",
                    deed,
                    DecimalSign.COMMA.write(percentile) + " in 100 is finer than any forecast tells.",
                    "Enter a whole number from 50 to 99.");
        }
        if (percentile.compareTo(EVEN) < 0 || percentile.compareTo(SURE) > 0) {
            throw Refusal.input(
                    "percentile",
                    deed,
                    DecimalSign.COMMA.write(percentile)
                            + " in 100 cannot be promised: 50 is even odds, above 99 nobody knows.",
                    "Enter a number from 50 to 99.");
        }
    }

    /** Refuses a share of its own for a promise that was not made; the shop's own share stands on every form. */
    void requireDayFor(String deed, BigDecimal percentile, @Nullable LocalDate promised) {
        if (promised == null && percentile.compareTo(settings.number("promise.percentile")) != 0) {
            throw Refusal.input(
                    "promised",
                    deed,
                    "It says to be kept in " + Plain.number(percentile).toPlainString()
                            + " of 100, and promises no day.",
                    "Enter the day that is promised, or leave the share as it was.");
        }
    }

    /** As the shop writes numbers, and as it was typed. */
    private String written(BigDecimal amount) {
        return DecimalSign.of(settings.locale()).write(amount);
    }

    /** @param deed what did not happen if it is refused */
    void price(Act act, String deed, ShopOrder order, BigDecimal amount, String reason, boolean confirmed) {
        int decimals = Math.max(0, settings.currency().getDefaultFractionDigits());
        if (amount.signum() < 0
                || amount.compareTo(DEAREST) > 0
                || Plain.number(amount).scale() > decimals) {
            throw Refusal.input(
                    "price",
                    deed,
                    "A price of " + written(amount) + " cannot be: not below zero, at most " + DEAREST.toPlainString()
                            + ", " + decimals + " decimals.",
                    "Type the amount in " + settings.currency().getCurrencyCode() + ".");
        }
        Unusual unusual = new Unusual();
        notePrice(amount, unusual);
        unusual.ask(deed, confirmed);
        String currency = settings.currency().getCurrencyCode();
        order.price(amount, currency);
        prices.save(new OrderPrice(order.id(), amount, currency, opening.keep(order, "price-reasoned", reason), act));
        opening.event(
                order, "price-agreed", Map.of("amount", Plain.number(amount).toPlainString(), "currency", currency));
    }
}
