package org.trammel.shop.demo;

import java.time.Clock;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Primary;
import org.springframework.context.annotation.Profile;

@Configuration
@Profile("demo")
class DemoBeans {

    @Bean
    @Primary
    DemoClock demoClock(@Qualifier("clock") Clock real) {
        return new DemoClock(real);
    }
}
