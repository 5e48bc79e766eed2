package org.trammel.shop.orders;

import jakarta.persistence.CollectionTable;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.trammel.shop.designs.Component;
import org.trammel.shop.records.Act;

/** One order and the verbs that move it from ordered to shipped. */
@Entity
@Table(name = "shop_order")
class ShopOrder {

    @Id
    @GeneratedValue(strategy = GenerationType.IDENTITY)
    private Long id;

    private String number;
    private long customerId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private OrderState state;

    private String description;
    private String metal;
    private String kind;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Category category;

    private String country;
    private String countryRules;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private BrakeLever frontBrakeLever;

    private @Nullable BigDecimal priceAmount;
    private String priceCurrency;
    private @Nullable LocalDate promisedOn;
    private @Nullable BigDecimal promisedPercentile;
    private @Nullable String serial;
    private boolean returnedFrame;
    private @Nullable Long designId;
    private @Nullable Long designRevisionId;
    private @Nullable String routeCode;
    private long orderedBy;
    private Instant orderedAt;
    private UUID enteredAct;
    private @Nullable Instant beganAt;
    private @Nullable Instant finishedAt;
    private @Nullable Instant shippedAt;
    private @Nullable Instant returnedAt;
    private @Nullable Instant closedAt;
    private @Nullable Long cancelledBy;
    private @Nullable Instant cancelledAt;
    private @Nullable Long cancelledWords;

    @ElementCollection
    @CollectionTable(name = "order_component", joinColumns = @JoinColumn(name = "order_id"))
    @OrderColumn(name = "line")
    private List<Component> components = new ArrayList<>();

    @Version
    private long version;

    protected ShopOrder() {}

    ShopOrder(String number, long customerId, OrderDetails details, String currency, Act act) {
        this.number = number;
        this.customerId = customerId;
        this.state = OrderState.ORDERED;
        this.priceCurrency = currency;
        this.orderedBy = act.by();
        this.orderedAt = act.at();
        this.enteredAct = act.id();
        write(details);
    }

    void change(OrderDetails details) {
        OrderVerb.CHANGE.refuseUnless(number, state);
        write(details);
    }

    private void write(OrderDetails details) {
        description = details.description();
        metal = details.metal();
        kind = details.kind();
        category = details.category();
        country = details.country();
        countryRules = details.countryRules();
        frontBrakeLever = details.frontBrakeLever();
        if (!components.equals(details.components())) {
            components.clear();
            components.addAll(details.components());
        }
    }

    void design(long newDesignId) {
        OrderVerb.DESIGN.refuseUnless(number, state);
        designId = newDesignId;
        state = OrderState.DESIGNING;
    }

    /** A revision went to the customer: what was approved before is open again, unless the frame is in work. */
    void drawingSent() {
        if (state == OrderState.APPROVED) {
            state = OrderState.DESIGNING;
        }
    }

    void drawingApproved(long revisionId) {
        if (state == OrderState.DESIGNING) {
            state = OrderState.APPROVED;
            designRevisionId = revisionId;
        }
    }

    void promise(LocalDate on, BigDecimal percentile) {
        OrderVerb.PROMISE.refuseUnless(number, state);
        promisedOn = on;
        promisedPercentile = percentile;
    }

    void price(BigDecimal amount, String currency) {
        OrderVerb.PRICE.refuseUnless(number, state);
        priceAmount = amount;
        priceCurrency = currency;
    }

    void serial(String given) {
        serial = given;
    }

    void cameBack(String olderSerial) {
        serial = olderSerial;
        returnedFrame = true;
    }

    void begin(Act act, long revisionId, String route) {
        OrderVerb.BEGIN.refuseUnless(number, state);
        state = OrderState.IN_WORK;
        designRevisionId = revisionId;
        routeCode = route;
        if (beganAt == null) {
            beganAt = act.at();
        }
    }

    void finish(Act act) {
        OrderVerb.FINISH.refuseUnless(number, state);
        state = OrderState.READY_TO_SHIP;
        finishedAt = act.at();
    }

    void reopen() {
        OrderVerb.REOPEN.refuseUnless(number, state);
        state = OrderState.IN_WORK;
        finishedAt = null;
    }

    void ship(Act act) {
        OrderVerb.SHIP.refuseUnless(number, state);
        state = OrderState.SHIPPED;
        shippedAt = act.at();
        closedAt = act.at();
    }

    void takeBack(Act act) {
        OrderVerb.TAKE_BACK.refuseUnless(number, state);
        state = OrderState.RETURNED;
        returnedAt = act.at();
    }

    void cancel(Act act, long reason) {
        OrderVerb.CANCEL.refuseUnless(number, state);
        state = OrderState.CANCELLED;
        cancelledBy = act.by();
        cancelledAt = act.at();
        cancelledWords = reason;
        closedAt = act.at();
    }

    OrderSheet sheet() {
        return new OrderSheet(
                id,
                number,
                serial,
                returnedFrame,
                description,
                metal,
                kind,
                state,
                promisedOn,
                promisedPercentile == null ? null : Plain.number(promisedPercentile),
                designId,
                designRevisionId,
                routeCode,
                country,
                orderedAt,
                shippedAt);
    }

    OrderDetails details(RiderDetails rider) {
        return new OrderDetails(
                description, metal, kind, category, country, countryRules, frontBrakeLever, rider, components);
    }

    long id() {
        return id;
    }

    String number() {
        return number;
    }

    long customerId() {
        return customerId;
    }

    OrderState state() {
        return state;
    }

    @Nullable
    String serial() {
        return serial;
    }

    @Nullable
    Long designId() {
        return designId;
    }

    @Nullable
    BigDecimal priceAmount() {
        return priceAmount;
    }

    String priceCurrency() {
        return priceCurrency;
    }

    long orderedBy() {
        return orderedBy;
    }

    @Nullable
    Instant beganAt() {
        return beganAt;
    }

    @Nullable
    Instant finishedAt() {
        return finishedAt;
    }

    @Nullable
    Instant returnedAt() {
        return returnedAt;
    }

    @Nullable
    Instant closedAt() {
        return closedAt;
    }

    @Nullable
    Long cancelledBy() {
        return cancelledBy;
    }

    @Nullable
    Instant cancelledAt() {
        return cancelledAt;
    }

    @Nullable
    Long cancelledWords() {
        return cancelledWords;
    }

    long version() {
        return version;
    }
}
