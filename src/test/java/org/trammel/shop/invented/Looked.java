package org.trammel.shop.invented;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.trammel.shop.Chromium;

/** Looks through a page: what axe finds in both themes, what sticks out at the side, what is too small to touch. */
final class Looked {

    private static final String AXE = axe();

    /** Every rule axe has; none is left out. */
    private static final String VIOLATIONS = """
            async theme => {
              document.documentElement.dataset.theme = theme;
              const found = await axe.run(document, {resultTypes: ['violations']});
              return found.violations.map(v => v.id + ' at ' + v.nodes.map(n => n.target).slice(0, 3).join(' | ')
                + ': ' + v.nodes[0].failureSummary.split('\\n')[1]);
            }""";

    /** By how much, and what: whatever ends beyond the page and lies in no part that scrolls by itself. */
    private static final String STICKS_OUT = """
            () => {
              const root = document.documentElement;
              const out = root.scrollWidth - root.clientWidth;
              if (out <= 0) return '';
              const scrolls = e => e && e !== document.body && e !== root
                && (getComputedStyle(e).overflowX !== 'visible' || scrolls(e.parentElement));
              const what = [...document.body.querySelectorAll('*')]
                .filter(e => Math.max(e.getBoundingClientRect().right,
                    e.clientWidth ? e.getBoundingClientRect().left + e.scrollWidth : 0) + scrollX > root.clientWidth + 0.5 && !scrolls(e.parentElement))
                .map(e => e.tagName.toLowerCase() + (typeof e.className === 'string' && e.className ? '.' + e.className : ''));
              return out + ' by ' + [...new Set(what)].slice(-4).join(', ');
            }""";

    /** What can be touched, without what stands in a line of text; a field is touched on its label too. */
    private static final String SMALL = """
            least => {
              const small = [];
              const seen = e => e.checkVisibility({visibilityProperty: true, opacityProperty: true});
              for (const e of document.querySelectorAll('a[href], button, input, select, textarea, summary')) {
                if (!seen(e) || e.type === 'hidden' || e.disabled || e.closest('.skip, .vh')) continue;
                let box = e.getBoundingClientRect();
                if (box.width < 2 || box.height < 2) continue;
                if (e.tagName === 'A' && getComputedStyle(e).display === 'inline') continue;
                let high = box.height;
                if (e.type === 'checkbox' || e.type === 'radio') {
                  high = Math.max(high, ...[...e.labels].map(l => l.getBoundingClientRect().height));
                }
                if (high < least - 0.6) {
                  small.push((e.id || e.name || e.className || e.tagName) + ' "'
                    + e.textContent.trim().slice(0, 20) + '" ' + Math.round(high));
                }
              }
              return [...new Set(small)].slice(0, 6);
            }""";

    private Looked() {}

    /** What axe finds in both themes; a picture of each is kept. What is printed has one theme only. */
    static List<String> through(Page page, String name) {
        List<String> found = new ArrayList<>();
        page.evaluate(AXE);
        boolean paper = page.locator("body.paper").count() > 0;
        for (String theme : paper ? List.of("paper") : List.of("night", "paper")) {
            for (Object one : (List<?>) page.evaluate(VIOLATIONS, theme)) {
                found.add(name + ", " + theme + ": " + one);
            }
            Chromium.picture(page, "screen-" + name + (theme.equals("night") ? "-night" : ""));
        }
        return found;
    }

    /** How far the page sticks out at the side at a width. */
    static List<String> sideways(Page page, String name, int width, int height) {
        page.setViewportSize(width, height);
        String out = (String) page.evaluate(STICKS_OUT);
        return out.isEmpty() ? List.of() : List.of(name + " at " + width + ": sticks out " + out);
    }

    /** What is lower than the least height of a target. */
    static List<String> small(Page page, String name, int least) {
        return ((List<?>) page.evaluate(SMALL, least))
                .stream()
                        .map(one -> name + ": under " + least + " high: " + one)
                        .toList();
    }

    private static String axe() {
        try (InputStream script = Objects.requireNonNull(Looked.class.getResourceAsStream("/axe.min.js"))) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8) + "; 0";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
