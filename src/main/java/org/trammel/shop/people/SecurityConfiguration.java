package org.trammel.shop.people;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;

/** Who may come in at all. What each may do is checked again by the services. */
@Configuration(proxyBeanMethods = false)
class SecurityConfiguration {

    @Bean
    SecurityFilterChain doors(HttpSecurity http) throws Exception {
        return http.sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .csrf(csrf -> csrf.spa())
                .authorizeHttpRequests(requests -> requests.requestMatchers(
                                "/sign-on", "/enrol", "/first-owner", "/api/v1/sign-on", "/actuator/health", "/error")
                        .permitAll()
                        .requestMatchers("/assets/**", "/fonts/**", "/css/**", "/js/**", "/favicon.ico")
                        .permitAll()
                        .anyRequest()
                        .authenticated())
                .build();
    }
}
