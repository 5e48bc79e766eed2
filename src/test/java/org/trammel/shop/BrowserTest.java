package org.trammel.shop;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestInstance;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.context.annotation.Import;
import org.springframework.core.annotation.AliasFor;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.ContextConfiguration;

/** A test of the whole application at a port, for a real browser, on an empty database of its own. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Documented
@Inherited
@Tag("browser")
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@ActiveProfiles("test")
@Import(ShopTestBeans.class)
@ContextConfiguration(initializers = TestEngine.Initializer.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
public @interface BrowserTest {

    /** {@code trammel.test.database=NAME}, and what else differs for this test, {@code name=value}. */
    @AliasFor(annotation = SpringBootTest.class, attribute = "properties")
    String[] value();
}
