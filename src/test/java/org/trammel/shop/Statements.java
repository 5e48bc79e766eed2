package org.trammel.shop;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.CallableStatement;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.datasource.DelegatingDataSource;

/**
 * The SQL statements that the current thread sent, whoever sent them: JPA, JdbcClient or plain JDBC. A MockMvc request
 * runs on the thread of its test, so this counts a request:
 *
 * <pre>
 * List&lt;String&gt; sql = statements.during(() -&gt; mvc.perform(get("/station")));
 * assertThat(sql).hasSizeLessThanOrEqualTo(3);
 * </pre>
 *
 * A batch counts once. The copy of the settings is read anew every few seconds by whichever request comes first; that is
 * not the request's own, and it is left out here so that a slow machine counts like a fast one.
 */
public final class Statements {

    private static final Pattern REFRESHED = Pattern.compile("^select .* from setting(_definition)? ");

    private static final ThreadLocal<@Nullable List<String>> SENT = new ThreadLocal<>();

    /** Runs the work and tells what it sent, in order. */
    public List<String> during(Callable<?> work) throws Exception {
        List<String> outer = SENT.get();
        List<String> sent = new ArrayList<>();
        SENT.set(sent);
        try {
            work.call();
        } finally {
            SENT.set(outer);
        }
        if (outer != null) {
            outer.addAll(sent);
        }
        return sent;
    }

    DataSource counting(DataSource source) {
        return new DelegatingDataSource(source) {
            @Override
            public Connection getConnection() throws SQLException {
                return counted(super.getConnection());
            }

            @Override
            public Connection getConnection(String user, String password) throws SQLException {
                return counted(super.getConnection(user, password));
            }
        };
    }

    private static Connection counted(Connection connection) {
        return proxy(Connection.class, connection, (name, args, result) -> {
            String sql = args != null && args.length > 0 && args[0] instanceof String text ? text : "";
            if (result instanceof CallableStatement call) {
                return counted(CallableStatement.class, call, sql);
            }
            if (result instanceof PreparedStatement prepared) {
                return counted(PreparedStatement.class, prepared, sql);
            }
            return result instanceof Statement plain ? counted(Statement.class, plain, sql) : result;
        });
    }

    private static <S extends Statement> S counted(Class<S> type, S statement, String sql) {
        return proxy(type, statement, (name, args, result) -> {
            List<String> sent = SENT.get();
            if (sent != null && name.startsWith("execute")) {
                String one = args != null && args.length > 0 && args[0] instanceof String text ? text : sql;
                if (!REFRESHED.matcher(one).find()) {
                    sent.add(one);
                }
            }
            return result;
        });
    }

    private interface Answer {
        @Nullable
        Object after(String name, Object @Nullable [] args, @Nullable Object result);
    }

    private static <T> T proxy(Class<T> type, T target, Answer answer) {
        return type.cast(Proxy.newProxyInstance(type.getClassLoader(), new Class<?>[] {type}, (self, method, args) -> {
            try {
                return answer.after(method.getName(), args, method.invoke(target, args));
            } catch (InvocationTargetException e) {
                throw e.getCause();
            }
        }));
    }
}
