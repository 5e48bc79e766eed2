package org.trammel.shop.web;

import jakarta.servlet.DispatcherType;
import java.util.List;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

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

    @Bean
    FilterRegistrationBean<FileAddresses> fileAddresses() {
        FilterRegistrationBean<FileAddresses> registration = new FilterRegistrationBean<>(new FileAddresses());
        registration.setDispatcherTypes(DispatcherType.REQUEST, DispatcherType.ERROR);
        return registration;
    }
}
