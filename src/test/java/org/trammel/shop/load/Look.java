package org.trammel.shop.load;

import java.util.List;
import org.trammel.shop.outside.Tablet;

/** Looking at one page after the other. */
final class Look implements Clients.Deed {

    private final Tablet tablet;
    private final int port;
    private final List<Page> pages;
    private int next;

    /** A page, and words that stand on it and on no page that says something went wrong. */
    record Page(String path, String words) {}

    /** @param first page to begin with, so that not everybody looks at the same */
    Look(Tablet tablet, int port, List<Page> pages, int first) {
        this.tablet = tablet;
        this.port = port;
        this.pages = pages;
        this.next = first;
    }

    @Override
    public void once() throws Exception {
        Page page = pages.get(next++ % pages.size());
        Tablet.Answer answer = tablet.get(port, page.path());
        if (answer.status() != 200 || !answer.body().contains(page.words())) {
            throw new IllegalStateException(page + " was answered " + answer.status() + " " + answer.body());
        }
    }
}
