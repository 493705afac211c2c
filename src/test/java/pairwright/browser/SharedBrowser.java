package pairwright.browser;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.abort;

import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Hands one browser to all tests of a run and ends it after the last. Where there is no browser the tests are skipped and say so, unless
 * {@code PAIRWRIGHT_BROWSER=required} is set: then they fail.
 */
final class SharedBrowser implements BeforeAllCallback, BeforeEachCallback, AfterEachCallback, ParameterResolver {
    private static final ExtensionContext.Namespace HERE = ExtensionContext.Namespace.create(SharedBrowser.class);

    @Override
    public void beforeAll(ExtensionContext context) {
        String missing = Browser.missing();
        if (missing == null) {
            return;
        }
        if ("required".equals(System.getenv("PAIRWRIGHT_BROWSER"))) {
            fail(missing);
        }
        abort(missing);
    }

    @Override
    public void beforeEach(ExtensionContext context) {
        browser(context).asNew();
    }

    /** What was running says what the browser had to say, so that a failure can be understood. */
    @Override
    public void afterEach(ExtensionContext context) {
        context.getExecutionException().ifPresent(failed -> context.publishReportEntry("address", browser(context).driver().getCurrentUrl()));
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Browser.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return browser(context);
    }

    private static Browser browser(ExtensionContext context) {
        return context.getRoot().getStore(HERE).getOrComputeIfAbsent("browser", key -> Browser.start(), Browser.class);
    }
}
