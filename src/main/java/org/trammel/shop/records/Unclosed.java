package org.trammel.shop.records;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import org.jspecify.annotations.Nullable;

/** A connection whose user may close it without closing its session. */
final class Unclosed implements InvocationHandler {

    private final Connection connection;
    private boolean closed;

    Unclosed(Connection connection) {
        this.connection = connection;
    }

    Connection proxy() {
        return (Connection)
                Proxy.newProxyInstance(Unclosed.class.getClassLoader(), new Class<?>[] {Connection.class}, this);
    }

    @Override
    public @Nullable Object invoke(Object proxy, Method method, Object @Nullable [] arguments) throws Throwable {
        if (method.getName().equals("close")) {
            closed = true;
            return null;
        }
        if (method.getName().equals("isClosed")) {
            return closed || connection.isClosed();
        }
        try {
            return method.invoke(connection, arguments);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }
}
