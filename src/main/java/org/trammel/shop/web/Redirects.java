package org.trammel.shop.web;

import org.springframework.stereotype.Component;
import org.thymeleaf.spring6.view.ThymeleafViewResolver;

/** A form that was carried out leads on with 303, which says plainly that the next request is a GET. */
@Component
class Redirects {

    Redirects(ThymeleafViewResolver views) {
        views.setRedirectHttp10Compatible(false);
    }
}
