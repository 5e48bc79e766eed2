package org.trammel.shop.demo;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Primary;
import org.springframework.context.annotation.Profile;

@Configuration
@Profile("demo")
class DemoBeans {

    @Bean
    @Primary
    DemoClock demoClock() {
        return new DemoClock();
    }
}
