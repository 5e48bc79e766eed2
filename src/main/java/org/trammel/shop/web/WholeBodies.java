package org.trammel.shop.web;

import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Collection;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.core.MethodParameter;
import org.springframework.core.Nullness;
import org.springframework.http.HttpInputMessage;
import org.springframework.http.converter.HttpMessageConverter;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.servlet.mvc.method.annotation.RequestBodyAdviceAdapter;
import org.trammel.shop.records.Refusal;

/**
 * Nothing is missing from a JSON body but what may be: a property of a record that is not marked nullable must come,
 * and so must each element of its lists and maps. The first one that does not is named by its path.
 */
@ControllerAdvice
class WholeBodies extends RequestBodyAdviceAdapter {

    private static final String OURS = "org.trammel.";

    @Override
    public boolean supports(
            MethodParameter parameter, Type target, Class<? extends HttpMessageConverter<?>> converter) {
        return true;
    }

    @Override
    public Object afterBodyRead(
            @Nullable Object body,
            HttpInputMessage message,
            MethodParameter parameter,
            Type target,
            Class<? extends HttpMessageConverter<?>> converter) {
        if (body == null) {
            throw missing("body");
        }
        requireWhole(body, "");
        return body;
    }

    private static void requireWhole(Object value, String path) {
        if (!value.getClass().isRecord() || !value.getClass().getName().startsWith(OURS)) {
            return;
        }
        for (RecordComponent component : value.getClass().getRecordComponents()) {
            String name = path.isEmpty() ? component.getName() : path + "." + component.getName();
            Object held = read(component, value);
            boolean mayBeMissing = Nullness.forMethodReturnType(component.getAccessor()) == Nullness.NULLABLE;
            requireThere(held, name, mayBeMissing, component.getAnnotatedType());
        }
    }

    private static void requireThere(@Nullable Object value, String name, boolean mayBeMissing, AnnotatedType type) {
        if (value == null) {
            if (mayBeMissing) {
                return;
            }
            throw missing(name);
        }
        if (value instanceof Collection<?> elements) {
            int at = 0;
            for (Object element : elements) {
                requireThere(element, name + "[" + at++ + "]", mayBeMissing(type, 0), argument(type, 0));
            }
        } else if (value instanceof Map<?, ?> entries) {
            entries.forEach((key, element) ->
                    requireThere(element, name + "[" + key + "]", mayBeMissing(type, 1), argument(type, 1)));
        } else {
            requireWhole(value, name);
        }
    }

    private static Refusal missing(String name) {
        return Refusal.input(
                name, "Nothing was recorded.", name + " is missing.", "Send it again with a value for " + name + ".");
    }

    private static boolean mayBeMissing(AnnotatedType type, int index) {
        return argument(type, index).isAnnotationPresent(Nullable.class);
    }

    private static AnnotatedType argument(AnnotatedType type, int index) {
        return type instanceof AnnotatedParameterizedType generic
                ? generic.getAnnotatedActualTypeArguments()[index]
                : type;
    }

    private static @Nullable Object read(RecordComponent component, Object value) {
        try {
            component.getAccessor().setAccessible(true);
            return component.getAccessor().invoke(value);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException("Component " + component + " cannot be read", e);
        }
    }
}
