package org.trammel.shop.overview;

import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.trammel.calc.marks.SerialNumber;
import org.trammel.shop.coldstore.ColdStore;
import org.trammel.shop.orders.Orders;
import org.trammel.shop.people.Role;
import org.trammel.shop.people.SignedOn;
import org.trammel.shop.travellers.FrameIndex;
import org.trammel.shop.travellers.FrameSheet;

/** Frames, and the whole story of one. */
@Controller
class FramePages {

    private static final int PAGE = 50;

    private final FrameIndex index;
    private final Stories stories;
    private final BuildPapers papers;
    private final Orders orders;
    private final ColdStore coldStore;

    FramePages(FrameIndex index, Stories stories, BuildPapers papers, Orders orders, ColdStore coldStore) {
        this.index = index;
        this.stories = stories;
        this.papers = papers;
        this.orders = orders;
        this.coldStore = coldStore;
    }

    @GetMapping("/frames")
    String list(
            @RequestParam(defaultValue = "") String find,
            @RequestParam(defaultValue = "true") boolean open,
            @RequestParam(defaultValue = "" + Long.MAX_VALUE) long before,
            SignedOn who,
            Model model) {
        List<FrameSheet.Head> found = find.isBlank()
                ? index.page(open, before, PAGE)
                : index.find(find, orders.numbersOfCustomers(find, who.person()));
        model.addAttribute("customers", Orders.showsCustomersTo(who.person()));
        model.addAttribute("find", find.strip());
        model.addAttribute("open", open);
        model.addAttribute("frames", found);
        model.addAttribute(
                "next",
                find.isBlank() && found.size() == PAGE ? found.get(PAGE - 1).travellerId() : null);
        return "overview/frames";
    }

    /** A part's serial leads to the frame's story, which tells of all its parts. */
    @GetMapping("/frames/{serial}")
    String story(
            @PathVariable String serial,
            @RequestParam(defaultValue = "operation") String by,
            SignedOn who,
            Model model) {
        Story story = stories.of(frame(serial), who.person());
        model.addAttribute("story", story);
        model.addAttribute("cold", coldStore.of(story.serial()));
        model.addAttribute("anew", who.person().is(Role.QA_LEAD) ? story.toMakeAnew() : List.of());
        model.addAttribute("byTime", by.equals("time"));
        model.addAttribute("works", who.person().mayWork());
        model.addAttribute("qa", who.person().is(Role.QA_LEAD));
        return "overview/story";
    }

    /**
     * How it was built, on paper.
     *
     * @param named false for the customer's copy, which names nobody of the shop
     */
    @GetMapping("/frames/{serial}/build-record")
    String buildRecord(
            @PathVariable String serial,
            @RequestParam(defaultValue = "true") boolean named,
            SignedOn who,
            Model model) {
        model.addAttribute("paper", papers.of(frame(serial), who.person(), named));
        return "overview/build-record";
    }

    static String frame(String typed) {
        return SerialNumber.read(typed) instanceof SerialNumber.Result.Whole whole
                ? whole.serial().frame().stored()
                : typed;
    }
}
