package org.trammel.shop.people;

import java.util.Comparator;
import java.util.List;
import org.springframework.security.authentication.AbstractAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;

/** Tells Spring Security who is signed on. */
final class SignedOnToken extends AbstractAuthenticationToken {

    private final transient SignedOn who;

    SignedOnToken(SignedOn who) {
        super(authorities(who));
        this.who = who;
        setAuthenticated(true);
    }

    private static List<SimpleGrantedAuthority> authorities(SignedOn who) {
        return who.person().roles().stream()
                .sorted(Comparator.naturalOrder())
                .map(role -> new SimpleGrantedAuthority(role.authority()))
                .toList();
    }

    @Override
    public Object getCredentials() {
        return "";
    }

    @Override
    public SignedOn getPrincipal() {
        return who;
    }

    @Override
    public String getName() {
        return who.person().initials();
    }
}
