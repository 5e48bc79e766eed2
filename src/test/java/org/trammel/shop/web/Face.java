package org.trammel.shop.web;

import java.time.ZoneId;
import java.util.Currency;
import java.util.Locale;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.FilterType;
import org.springframework.mock.web.MockServletContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.context.support.AnnotationConfigWebApplicationContext;
import org.springframework.web.servlet.config.annotation.EnableWebMvc;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.spring6.templateresolver.SpringResourceTemplateResolver;
import org.thymeleaf.spring6.view.ThymeleafViewResolver;
import org.trammel.shop.TestClock;

/** The face alone, with sample controllers of a test and without a database. */
final class Face {

    private Face() {}

    static MockMvc with(Class<?>... samples) {
        AnnotationConfigWebApplicationContext context = new AnnotationConfigWebApplicationContext();
        context.setServletContext(new MockServletContext());
        context.register(Setup.class);
        context.register(samples);
        context.refresh();
        return MockMvcBuilders.webAppContextSetup(context)
                .addFilters(new SentByScriptFilter(), new ApiBodyFilter())
                .build();
    }

    /** A Swedish shop with invented data. */
    static House house() {
        return new House() {
            @Override
            public String name() {
                return "Aldervik Frameworks";
            }

            @Override
            public boolean demo() {
                return true;
            }

            @Override
            public ZoneId zone() {
                return ZoneId.of("Europe/Stockholm");
            }

            @Override
            public Locale locale() {
                return Locale.forLanguageTag("sv-SE");
            }

            @Override
            public Currency currency() {
                return Currency.getInstance("EUR");
            }

            @Override
            public String station(String code) {
                return code;
            }
        };
    }

    @TestConfiguration(proxyBeanMethods = false)
    @EnableWebMvc
    @ComponentScan(
            basePackageClasses = Formats.class,
            excludeFilters =
                    @ComponentScan.Filter(
                            type = FilterType.REGEX,
                            pattern = ".*Samples|.*Test(\\$.*)?|.*\\.Face.*|.*SettledHouse|.*ApiDescription"))
    static class Setup {

        @Bean
        TestClock clock() {
            return new TestClock();
        }

        @Bean
        House sampleHouse() {
            return house();
        }

        @Bean
        ThymeleafViewResolver views(ApplicationContext context) {
            SpringResourceTemplateResolver templates = new SpringResourceTemplateResolver();
            templates.setApplicationContext(context);
            templates.setPrefix("classpath:/templates/");
            templates.setSuffix(".html");
            templates.setCharacterEncoding("UTF-8");
            SpringTemplateEngine engine = new SpringTemplateEngine();
            engine.setTemplateResolver(templates);
            ThymeleafViewResolver views = new ThymeleafViewResolver();
            views.setTemplateEngine(engine);
            views.setCharacterEncoding("UTF-8");
            return views;
        }
    }
}
