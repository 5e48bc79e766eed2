package org.trammel.shop.orders;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.designs.Band;
import org.trammel.shop.designs.Component;
import org.trammel.shop.designs.FrameWords;
import org.trammel.shop.designs.Unusual;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.records.TypedText;
import org.trammel.shop.routes.Kinds;

/** Whether what was typed for an order can be, before it is kept. */
final class OrderCheck {

    private static final int LINE = 200;
    private static final int SHORT = 60;
    private static final int RULES = 500;
    private static final int CONTACT = 400;
    private static final int COMPONENTS = 80;
    private static final Set<String> COUNTRIES = Set.of(Locale.getISOCountries());

    private static final Band HEIGHT = band("Body height", "cm", 60, 250, 135, 215);
    private static final Band INSEAM = band("Inside leg", "cm", 25, 140, 60, 105);
    private static final Band ARM = band("Arm length", "cm", 20, 120, 48, 80);
    private static final Band FOOT = band("Foot length", "cm", 10, 40, 20, 33);
    private static final Band MASS = band("Mass of the rider", "kg", 10, 250, 38, 125);

    private OrderCheck() {}

    private static Band band(String label, String unit, int least, int most, int usualFrom, int usualTo) {
        return new Band(
                label,
                unit,
                BigDecimal.valueOf(least),
                BigDecimal.valueOf(most),
                BigDecimal.valueOf(usualFrom),
                BigDecimal.valueOf(usualTo));
    }

    /**
     * @param kept what is kept of the rider, and was asked about when it was typed
     * @param unusual what is to be asked about is noted here
     */
    static OrderDetails details(String deed, OrderDetails typed, RiderDetails kept, Unusual unusual) {
        String metal = FrameWords.checkedMetal(deed, typed.metal());
        if (typed.components().size() > COMPONENTS) {
            throw Refusal.input(
                    "components",
                    deed,
                    typed.components().size() + " components are listed; " + COMPONENTS + " are kept.",
                    "Put small parts together on one line.");
        }
        return new OrderDetails(
                TypedText.line("description", "What was ordered", deed, typed.description(), LINE),
                metal,
                FrameWords.checkedKind(deed, metal, typed.kind()),
                typed.category(),
                country("country", deed, typed.country()),
                Objects.requireNonNullElse(
                        TypedText.lineOrNone("countryRules", "Country rules", deed, typed.countryRules(), RULES), ""),
                typed.frontBrakeLever(),
                rider(deed, typed.rider(), kept, unusual),
                components(deed, typed.components()));
    }

    /** A repair is of a frame that came back, and that frame has a serial. */
    static void refuseRepairOfNothing(String deed, OrderDetails details, boolean cameBack) {
        if (details.kind().equals(Kinds.REPAIR) && !cameBack) {
            throw Refusal.input(
                    "returnedSerial",
                    deed,
                    "A repair is ordered, and no serial says of which frame.",
                    "Enter a new order with the serial of the frame that came back, or choose another kind.");
        }
    }

    static List<Component> components(String deed, List<Component> typed) {
        return typed.stream()
                .map(one -> new Component(
                        TypedText.line("components", "The component", deed, one.what(), SHORT),
                        TypedText.line("components", "What " + one.what() + " is", deed, one.description(), LINE)))
                .toList();
    }

    private static RiderDetails rider(String deed, RiderDetails rider, RiderDetails kept, Unusual unusual) {
        check(HEIGHT, "rider.height", deed, rider.height(), kept.height(), unusual);
        check(INSEAM, "rider.inseam", deed, rider.inseam(), kept.inseam(), unusual);
        check(ARM, "rider.arm", deed, rider.arm(), kept.arm(), unusual);
        check(FOOT, "rider.foot", deed, rider.foot(), kept.foot(), unusual);
        check(MASS, "rider.mass", deed, rider.mass(), kept.mass(), unusual);
        BigDecimal height = rider.height();
        BigDecimal inseam = rider.inseam();
        if (height != null && inseam != null && inseam.compareTo(height) >= 0) {
            throw Refusal.input(
                    "rider.inseam",
                    deed,
                    "The inside leg, " + inseam.toPlainString() + " cm, is not shorter than the body, "
                            + height.toPlainString() + " cm.",
                    "Look whether the two were exchanged.");
        }
        return new RiderDetails(
                height,
                inseam,
                rider.arm(),
                rider.foot(),
                rider.mass(),
                TypedText.lineOrNone("rider.flexibility", "Flexibility", deed, rider.flexibility(), RULES));
    }

    private static void check(
            Band band,
            String field,
            String deed,
            @Nullable BigDecimal value,
            @Nullable BigDecimal kept,
            Unusual unusual) {
        if (value == null) {
            return;
        }
        if (Plain.number(value).scale() > 1) {
            throw Refusal.input(
                    field,
                    deed,
                    band.label() + " has more than one decimal.",
                    "Round it to a millimetre, or to a tenth of a kilogram.");
        }
        band.check(field, deed, value, kept != null && kept.compareTo(value) == 0 ? new Unusual() : unusual);
    }

    static CustomerDetails customer(String deed, CustomerDetails typed, LocalDate today) {
        LocalDate consent = typed.consentOn();
        if (consent != null && consent.isAfter(today)) {
            throw Refusal.input(
                    "customer.consentOn",
                    deed,
                    "The consent is dated " + consent + "; today is " + today + ".",
                    "Enter the day it was given.");
        }
        return new CustomerDetails(
                TypedText.line("customer.name", "The customer's name", deed, typed.name(), LINE),
                Objects.requireNonNullElse(
                        TypedText.wordsOrNone("customer.contact", "Contact", deed, shortened(deed, typed.contact())),
                        ""),
                country("customer.country", deed, typed.country()),
                consent);
    }

    private static @Nullable String shortened(String deed, @Nullable String contact) {
        if (contact != null && contact.strip().length() > CONTACT) {
            throw Refusal.input(
                    "customer.contact",
                    deed,
                    "Contact has " + contact.strip().length() + " characters; " + CONTACT + " are kept.",
                    "Keep address, telephone and mail only.");
        }
        return contact;
    }

    static String country(String field, String deed, @Nullable String typed) {
        String code = TypedText.line(field, "The country", deed, typed, 40).toUpperCase(Locale.ROOT);
        if (!COUNTRIES.contains(code)) {
            throw Refusal.input(
                    field,
                    deed,
                    "No country has the code " + code + ".",
                    "Type its two letters of ISO 3166-1, such as SE or NO.");
        }
        return code;
    }

    static OwnPartDetails ownPart(String deed, OwnPartDetails typed) {
        return new OwnPartDetails(
                TypedText.line("ownPart.what", "The customer's part", deed, typed.what(), SHORT),
                TypedText.line("ownPart.description", "The description", deed, typed.description(), LINE),
                typed.dueOn());
    }
}
