package org.trammel.shop.web;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A JSON object with properties that may be left out, in which a name that is misspelt would be taken as left out: a
 * property of any other name is refused.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
public @interface OnlyTheseNames {}
