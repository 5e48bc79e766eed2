package org.trammel.shop.web;

import java.util.List;

/**
 * Shares of all, a row each, with the interval the true one lies in; their figures stand in a table beside it.
 *
 * @param finding the sentence the drawing is read out as
 * @param rows one below the other; at least one
 */
public record SharesView(String finding, List<Row> rows) {

    public SharesView {
        rows = List.copyOf(rows);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("There is nothing to draw");
        }
    }

    /**
     * A share.
     *
     * @param share from 0 to 1, as are the ends of its interval
     */
    public record Row(String name, double share, double low, double high) {}
}
