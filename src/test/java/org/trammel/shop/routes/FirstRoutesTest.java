package org.trammel.shop.routes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.trammel.shop.ShopTest;
import org.trammel.shop.Statements;

@ShopTest
class FirstRoutesTest {

    @Autowired
    private FirstRoutes first;

    @Autowired
    private RouteBook book;

    @Autowired
    private Statements statements;

    @Test
    void aShopThatHasNoRouteGetsTheStarterRoutesAsDrafts() {
        List<RouteFile> files = StarterRoutes.all();
        assertThat(book.routes()).hasSizeGreaterThanOrEqualTo(files.size());
        for (RouteFile file : files) {
            RouteSheet read = book.revision(first(file.sheet().code()));
            assertThat(read.operations()).isEqualTo(file.sheet().operations());
            assertThat(read.clocks()).isEqualTo(file.sheet().clocks());
            assertThat(read.metal()).isEqualTo(file.sheet().metal());
            assertThat(read.kind()).isEqualTo(file.sheet().kind());
            assertThat(read.children())
                    .extracting(ChildSheet::part)
                    .isEqualTo(
                            file.children().stream().map(RouteFile.Child::part).toList());
        }
    }

    @Test
    void aShopThatHasRoutesIsLeftAlone() {
        assertThat(first.layOut()).isZero();
    }

    @Test
    void aRouteWithItsPartsIsReadInAHandfulOfStatements() throws Exception {
        long whole = first("FS-6061");
        assertThat(statements.during(() -> book.revision(whole))).hasSizeLessThanOrEqualTo(8);
        long one = first("HT-6061");
        assertThat(statements.during(() -> book.revision(one))).hasSizeLessThanOrEqualTo(6);
        assertThat(statements.during(book::routes)).hasSize(2);
    }

    /** The revision that was laid out; another test may have released it since. */
    private long first(String code) {
        List<RevisionSummary> history = book.history(code);
        return history.get(history.size() - 1).id();
    }
}
