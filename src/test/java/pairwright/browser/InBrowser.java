package pairwright.browser;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;

/** A class of tests in a real browser: its methods take a {@link Browser}, which is as new for each of them. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Tag("browser")
@ExtendWith(SharedBrowser.class)
@interface InBrowser {
}
