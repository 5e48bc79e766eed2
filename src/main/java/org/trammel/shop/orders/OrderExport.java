package org.trammel.shop.orders;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Sort;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.trammel.shop.people.Person;
import org.trammel.shop.web.CsvFile;

/** All orders as a table; columns a reader may not see are not there at all. */
@Service
@Transactional(readOnly = true)
class OrderExport {

    private final ShopOrderRepository orders;
    private final CustomerRepository customers;

    OrderExport(ShopOrderRepository orders, CustomerRepository customers) {
        this.orders = orders;
        this.customers = customers;
    }

    CsvFile all(Person reader) {
        boolean personal = OrderReading.seesCustomers(reader);
        boolean money = OrderReading.seesMoney(reader);
        List<String> header = new ArrayList<>(List.of(
                "number",
                "serial",
                "state",
                "description",
                "metal",
                "kind",
                "country",
                "promised",
                "percentile",
                "ordered",
                "shipped",
                "route"));
        if (money) {
            header.addAll(List.of("price", "currency"));
        }
        if (personal) {
            header.addAll(List.of("customer", "contact"));
        }
        Map<Long, Customer> known = personal
                ? customers.findAll().stream().collect(Collectors.toMap(Customer::id, Function.identity()))
                : Map.of();
        CsvFile file = CsvFile.of(header.toArray(String[]::new));
        for (ShopOrder order : orders.findAll(Sort.by("id"))) {
            OrderSheet sheet = order.sheet();
            List<@Nullable Object> cells = new ArrayList<>();
            cells.add(sheet.number());
            cells.add(sheet.serial());
            cells.add(sheet.state().word());
            cells.add(sheet.description());
            cells.add(sheet.metal());
            cells.add(sheet.kind());
            cells.add(sheet.country());
            cells.add(sheet.promised());
            cells.add(sheet.percentile());
            cells.add(sheet.ordered());
            cells.add(sheet.shipped());
            cells.add(sheet.routeCode());
            if (money) {
                cells.add(order.priceAmount());
                cells.add(order.priceCurrency());
            }
            if (personal) {
                Customer customer = known.get(order.customerId());
                cells.add(customer == null ? null : customer.name());
                cells.add(customer == null ? null : customer.contact());
            }
            file.row(cells.toArray());
        }
        return file;
    }
}
