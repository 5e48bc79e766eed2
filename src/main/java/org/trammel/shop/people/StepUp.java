package org.trammel.shop.people;

import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;

/**
 * What a sheet asks the signed-on person for once more before something that weighs. Templates know it as
 * {@code @stepUp}; the controller then calls {@link Signatures#confirm}.
 */
@Component("stepUp")
public class StepUp {

    /** "Your PIN" at a tablet, "Your password" at a desk. */
    public String label() {
        Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
        boolean tablet =
                authentication != null && authentication.getPrincipal() instanceof SignedOn who && who.tablet();
        return tablet ? "Your PIN" : "Your password";
    }
}
