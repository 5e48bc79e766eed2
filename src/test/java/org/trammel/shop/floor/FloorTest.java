package org.trammel.shop.floor;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.test.context.bean.override.mockito.MockitoBean;
import org.trammel.shop.ShopTest;
import org.trammel.shop.designs.Designs;
import org.trammel.shop.orders.OrderedColours;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.routes.RouteBook;

/**
 * A test of what happens to a frame on the shop floor, on any small route it likes: the books of orders, designs and
 * routes stand in the {@link Floor}, everything else is the application.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Documented
@Inherited
@ShopTest
@MockitoBean(types = {Orders.class, OrderedColours.class, Designs.class, RouteBook.class})
public @interface FloorTest {}
