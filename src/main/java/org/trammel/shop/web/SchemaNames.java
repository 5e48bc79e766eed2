package org.trammel.shop.web;

import io.swagger.v3.core.jackson.TypeNameResolver;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names of the shapes in the description of the API: module and name, such as {@code ovens.Run}. By the name alone, which is
 * what the library takes, two modules' shapes of one name would be described as the same.
 */
final class SchemaNames extends TypeNameResolver {

    private static final Pattern OURS = Pattern.compile("org\\.trammel\\.(?:shop|calc)\\.(.+)");

    @Override
    protected String getNameOfClass(Class<?> type) {
        Matcher ours = OURS.matcher(type.getName());
        return ours.matches() ? ours.group(1).replace('$', '.') : super.getNameOfClass(type);
    }
}
