package org.trammel.shop.orders;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

interface ShopOrderRepository extends JpaRepository<ShopOrder, Long> {

    Optional<ShopOrder> findByNumber(String number);

    /** The order an act entered; the same act sent twice enters one order. */
    Optional<ShopOrder> findByEnteredAct(UUID enteredAct);

    Optional<ShopOrder> findByDesignId(Long designId);

    List<ShopOrder> findByCustomerIdOrderById(long customerId);

    List<ShopOrder> findBySerialOrderByIdDesc(String serial);

    @Query("select o from ShopOrder o where o.state in :states order by o.promisedOn nulls last, o.id")
    List<ShopOrder> inStates(Collection<OrderState> states);

    @Query("select o from ShopOrder o where o.closedAt is not null order by o.closedAt desc, o.id desc")
    List<ShopOrder> closed(Limit limit);

    @Query("select o from ShopOrder o where o.closedAt < :before or (o.closedAt = :before and o.id < :beforeId)"
            + " order by o.closedAt desc, o.id desc")
    List<ShopOrder> closedBefore(Instant before, long beforeId, Limit limit);

    /** Number of an order: read before the act opens, so it loads nothing that may change. */
    @Query("select o.number from ShopOrder o where o.id = :id")
    Optional<String> numberOf(long id);

    /** Serial of its frame, read before the act opens likewise; empty if it has none. */
    @Query("select o.serial from ShopOrder o where o.id = :id and o.serial is not null")
    Optional<String> serialOf(long id);

    /** Numbers of orders whose customer's name or contact holds this part, in lower case; newest first. */
    @Query("select o.number from ShopOrder o, Customer c where c.id = o.customerId"
            + " and (lower(c.name) like :part escape '!' or lower(c.contact) like :part escape '!') order by o.id desc")
    List<String> numbersOfCustomers(String part, Limit limit);
}
