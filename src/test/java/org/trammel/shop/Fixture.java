package org.trammel.shop;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.TestComponent;
import org.springframework.context.annotation.Lazy;

/**
 * What tests of one module stand on, made when first asked for. Every {@link ShopTest} has them all, so that a test that
 * needs one starts no application of its own.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Documented
@TestComponent
@Lazy
public @interface Fixture {}
