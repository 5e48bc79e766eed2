package org.trammel.shop;

import javax.sql.DataSource;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Primary;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What every {@link ShopTest} has beside the application's own beans. */
@TestConfiguration(proxyBeanMethods = false)
@ComponentScan(
        basePackageClasses = ShopTest.class,
        useDefaultFilters = false,
        includeFilters = @ComponentScan.Filter(Fixture.class))
public class ShopTestBeans {

    @Bean
    @Primary
    TestClock testClock() {
        return new TestClock();
    }

    @Bean
    TestCrew testCrew(JdbcClient jdbc, TestClock clock) {
        return new TestCrew(jdbc, clock);
    }

    @Bean
    static Statements statements() {
        return new Statements();
    }

    @Bean
    static BeanPostProcessor countedDataSource(ObjectProvider<Statements> statements) {
        return new BeanPostProcessor() {
            @Override
            public Object postProcessAfterInitialization(Object bean, String name) {
                return bean instanceof DataSource source
                        ? statements.getObject().counting(source)
                        : bean;
            }
        };
    }
}
