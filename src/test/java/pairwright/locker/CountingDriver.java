package pairwright.locker;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.Driver;
import java.sql.DriverManager;
import java.sql.DriverPropertyInfo;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Properties;
import java.util.logging.Logger;

/** Stands before the driver of SQLite while it is open, and writes down each statement that is run; not what a new connection is told, since a pool opens one when it will. */
public final class CountingDriver implements Driver, AutoCloseable {
    private final Driver real;
    private final List<String> run = Collections.synchronizedList(new ArrayList<>());

    private CountingDriver(Driver real) {
        this.real = real;
    }

    /** From now on whoever opens a file of SQLite gets counted. */
    public static CountingDriver open() throws SQLException {
        CountingDriver counting = new CountingDriver(DriverManager.getDriver("jdbc:sqlite:"));
        DriverManager.deregisterDriver(counting.real);
        DriverManager.registerDriver(counting);
        return counting;
    }

    /** What was run since the last time. */
    public List<String> taken() {
        synchronized (run) {
            List<String> taken = List.copyOf(run);
            run.clear();
            return taken;
        }
    }

    @Override
    public void close() throws SQLException {
        DriverManager.deregisterDriver(this);
        DriverManager.registerDriver(real);
    }

    @Override
    public Connection connect(String address, Properties properties) throws SQLException {
        Connection connection = real.connect(address, properties);
        return connection == null ? null : counted(Connection.class, connection, null);
    }

    private <T> T counted(Class<T> kind, T whole, String text) {
        return kind.cast(Proxy.newProxyInstance(kind.getClassLoader(), new Class<?>[] {kind}, (proxy, method, arguments) -> {
            if (method.getName().startsWith("execute")) {
                String statement = text != null ? text : String.valueOf(arguments[0]);
                if (!statement.startsWith("PRAGMA ")) {
                    run.add(statement);
                }
            }
            Object result;
            try {
                result = method.invoke(whole, arguments);
            } catch (InvocationTargetException thrown) {
                throw thrown.getCause();
            }
            if (result instanceof PreparedStatement prepared) {
                return counted(PreparedStatement.class, prepared, String.valueOf(arguments[0]));
            }
            return method.getName().equals("createStatement") ? counted(Statement.class, (Statement) result, null) : result;
        }));
    }

    @Override
    public boolean acceptsURL(String address) throws SQLException {
        return real.acceptsURL(address);
    }

    @Override
    public DriverPropertyInfo[] getPropertyInfo(String address, Properties properties) throws SQLException {
        return real.getPropertyInfo(address, properties);
    }

    @Override
    public int getMajorVersion() {
        return real.getMajorVersion();
    }

    @Override
    public int getMinorVersion() {
        return real.getMinorVersion();
    }

    @Override
    public boolean jdbcCompliant() {
        return real.jdbcCompliant();
    }

    @Override
    public Logger getParentLogger() throws java.sql.SQLFeatureNotSupportedException {
        return real.getParentLogger();
    }
}
