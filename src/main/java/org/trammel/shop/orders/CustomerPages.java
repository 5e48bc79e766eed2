package org.trammel.shop.orders;

import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.records.Act;
import org.trammel.shop.records.Refusal;
import org.trammel.shop.web.TypedFields;

/** What a customer told about themselves: seen, corrected and erased by the owner. */
@Controller
@RequestMapping("/customers/{id:\\d+}")
class CustomerPages {

    private final OrderReading reading;
    private final Customers customers;

    CustomerPages(OrderReading reading, Customers customers) {
        this.reading = reading;
        this.customers = customers;
    }

    @GetMapping
    String one(@PathVariable long id, SignedOn who, Model model) {
        if (!OrderReading.seesCustomers(who.person())) {
            throw Refusal.person(
                    "The customer's sheet is not shown.",
                    "What customers tell is for the owner and the QA lead.",
                    "Ask one of them.");
        }
        model.addAttribute("customer", reading.customerLine(id));
        model.addAttribute("orders", reading.ofCustomer(id));
        model.addAttribute("keeps", who.person().is(Role.OWNER));
        return "orders/customer";
    }

    @PostMapping
    String correct(Act act, @PathVariable long id, @RequestParam Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed, "The customer's data was not changed.");
        CustomerDetails details = OrderForm.customer(fields);
        fields.refuseIfWrong();
        customers.correct(act, id, details);
        return "redirect:/customers/" + id;
    }

    @PostMapping("/erasure")
    String erase(Act act, @PathVariable long id) {
        customers.erase(act, id);
        return "redirect:/customers/" + id;
    }
}
