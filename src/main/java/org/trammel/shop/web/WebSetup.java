package org.trammel.shop.web;

import jakarta.servlet.DispatcherType;
import java.util.List;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.servlet.resource.ResourceUrlEncodingFilter;

/** Makes the module's conventions known to the framework. */
@Configuration(proxyBeanMethods = false)
class WebSetup implements WebMvcConfigurer {

    private final ActResolver acts;
    private final SignedOnResolver people;

    WebSetup(ActResolver acts, SignedOnResolver people) {
        this.acts = acts;
        this.people = people;
    }

    @Override
    public void addArgumentResolvers(List<HandlerMethodArgumentResolver> resolvers) {
        resolvers.add(acts);
        resolvers.add(people);
    }

    /** Declared as the framework's own type, else the framework adds a second one that asks for every link. */
    @Bean
    FilterRegistrationBean<ResourceUrlEncodingFilter> fileAddresses() {
        FilterRegistrationBean<ResourceUrlEncodingFilter> registration =
                new FilterRegistrationBean<>(new FileAddresses());
        registration.setDispatcherTypes(DispatcherType.REQUEST, DispatcherType.ERROR);
        return registration;
    }
}
