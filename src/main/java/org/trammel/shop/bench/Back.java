package org.trammel.shop.bench;

import org.springframework.http.HttpStatus;
import org.springframework.web.servlet.view.RedirectView;
import org.springframework.web.util.UriComponentsBuilder;

/** After an act the browser asks for a page, so that going back or loading again never sends the act twice. */
final class Back {

    private Back() {}

    static RedirectView to(String path) {
        RedirectView view = new RedirectView(path, true, false, false);
        view.setStatusCode(HttpStatus.SEE_OTHER);
        return view;
    }

    static RedirectView toStations() {
        return to("/station");
    }

    static RedirectView toFrame(String tag) {
        return to(UriComponentsBuilder.fromPath("/station/{tag}")
                .buildAndExpand(tag)
                .encode()
                .toUriString());
    }

    static RedirectView toReading(String tag, long characteristicId) {
        return to(UriComponentsBuilder.fromPath("/station/{tag}")
                .queryParam("read", characteristicId)
                .buildAndExpand(tag)
                .encode()
                .toUriString());
    }
}
