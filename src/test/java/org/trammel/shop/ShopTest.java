package org.trammel.shop;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.annotation.Import;
import org.springframework.core.annotation.AliasFor;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.ContextConfiguration;

/**
 * A test of the whole application on a database engine, with MockMvc, a {@link TestClock} and {@link Statements}.
 *
 * <p>Tests commit for real and share one database, so a test makes its own data under names that no other test uses.
 * Which engine runs is told by the system property {@code trammel.test.engine}; see {@link TestEngine}.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Documented
@Inherited
@Tag("database")
@SpringBootTest
@AutoConfigureMockMvc
@ActiveProfiles("test")
@Import(ShopTestBeans.class)
@ContextConfiguration(initializers = TestEngine.Initializer.class)
public @interface ShopTest {

    /**
     * Properties for this test only, {@code name=value}. Each different set starts another context, which is slow.
     * {@code trammel.test.database=NAME} gives the test an empty database of its own.
     */
    @AliasFor(annotation = SpringBootTest.class, attribute = "properties")
    String[] properties() default {};
}
