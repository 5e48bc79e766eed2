package org.trammel.shop.people;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpMethod;
import org.springframework.security.authentication.AuthenticationManager;
import org.springframework.security.authentication.AuthenticationServiceException;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.AnonymousAuthenticationFilter;
import org.springframework.security.web.authentication.session.NullAuthenticatedSessionStrategy;
import org.springframework.security.web.context.RequestAttributeSecurityContextRepository;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.header.writers.CrossOriginOpenerPolicyHeaderWriter.CrossOriginOpenerPolicy;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.savedrequest.NullRequestCache;

/**
 * Who may come in at all. Everything is shut unless it is named here, and what each may do is checked again by the
 * services.
 */
@Configuration(proxyBeanMethods = false)
class SecurityConfiguration {

    private static final String ONLY_FROM_HERE = "default-src 'self'; img-src 'self' data: blob:; object-src 'none';"
            + " base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    /** The reading room of the API sets styles from its scripts. */
    private static final String FOR_API_DOCS = ONLY_FROM_HERE + "; style-src 'self' 'unsafe-inline'";

    private static final String[] THOSE_WHO_ACT = {
        Role.OWNER.name(),
        Role.QA_LEAD.name(),
        Role.ALIGNER.name(),
        Role.WELDER.name(),
        Role.HEAT_TREATER.name(),
        Role.STATION_WORKER.name(),
        Role.APPRENTICE.name()
    };

    @Bean
    @Order(1)
    SecurityFilterChain apiDocs(HttpSecurity http, Doorkeeper doorkeeper, LastSeen lastSeen, Clock clock, Porter porter)
            throws Exception {
        http.securityMatcher("/api/docs/**");
        return shut(http, new SignOnFilter(doorkeeper, lastSeen, clock), porter, FOR_API_DOCS)
                .authorizeHttpRequests(requests -> requests.anyRequest().authenticated())
                .build();
    }

    @Bean
    @Order(2)
    SecurityFilterChain doors(HttpSecurity http, Doorkeeper doorkeeper, LastSeen lastSeen, Clock clock, Porter porter)
            throws Exception {
        return shut(http, new SignOnFilter(doorkeeper, lastSeen, clock), porter, ONLY_FROM_HERE)
                .authorizeHttpRequests(requests -> requests.requestMatchers(Doors.STATIC)
                        .permitAll()
                        .requestMatchers(Doors.OPEN)
                        .permitAll()
                        .requestMatchers("/api/v1/sign-on", "/api/v1/sign-on/ping", "/actuator/health")
                        .permitAll()
                        .requestMatchers("/actuator/**")
                        .denyAll()
                        .requestMatchers("/sign-off", "/own-secrets/**", "/api/v1/own-secrets/**")
                        .authenticated()
                        // values in, values out: an auditor may compute too
                        .requestMatchers("/api/v1/calculations/**")
                        .authenticated()
                        .requestMatchers(HttpMethod.GET, "/**")
                        .authenticated()
                        .requestMatchers(HttpMethod.HEAD, "/**")
                        .authenticated()
                        .anyRequest()
                        .hasAnyRole(THOSE_WHO_ACT))
                .build();
    }

    /** There are no user names and passwords of Spring's own: people sign on at our own pages. */
    @Bean
    AuthenticationManager nobodyElse() {
        return SecurityConfiguration::refuse;
    }

    @Bean
    CookieCsrfTokenRepository pageTokens() {
        CookieCsrfTokenRepository tokens = CookieCsrfTokenRepository.withHttpOnlyFalse();
        tokens.setCookieCustomizer(cookie -> cookie.sameSite("Strict"));
        return tokens;
    }

    @Bean
    Porter porter(FirstStart firstStart) {
        return new Porter(firstStart);
    }

    private HttpSecurity shut(HttpSecurity http, SignOnFilter filter, Porter porter, String policy) throws Exception {
        return http.sessionManagement(session -> session.disable())
                .securityContext(
                        context -> context.securityContextRepository(new RequestAttributeSecurityContextRepository()))
                .requestCache(cache -> cache.requestCache(new NullRequestCache()))
                .csrf(csrf -> csrf.spa()
                        .csrfTokenRepository(pageTokens())
                        // Every request signs on anew here, and a new page token each time would shut all open pages.
                        .sessionAuthenticationStrategy(new NullAuthenticatedSessionStrategy()))
                .logout(logout -> logout.disable())
                .headers(headers -> headers.contentSecurityPolicy(csp -> csp.policyDirectives(policy))
                        .referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.SAME_ORIGIN))
                        .permissionsPolicyHeader(
                                permissions -> permissions.policy("camera=(self), microphone=(), geolocation=()"))
                        .crossOriginOpenerPolicy(opener -> opener.policy(CrossOriginOpenerPolicy.SAME_ORIGIN)))
                .addFilterBefore(filter, AnonymousAuthenticationFilter.class)
                .exceptionHandling(
                        answers -> answers.authenticationEntryPoint(porter).accessDeniedHandler(porter));
    }

    private static Authentication refuse(Authentication authentication) {
        throw new AuthenticationServiceException("People sign on at the sign-on page");
    }
}
