package pairwright.browser;

import java.io.File;
import java.time.Duration;
import java.util.Arrays;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;
import pairwright.advice.KnowledgeStore;
import pairwright.http.Server;

/**
 * Chromium without a window, and the real servers it looks at: one without a locker, whose answers are those of the whole catalogue, and for
 * addresses that begin with /locker, or ask something of a locker, that of the {@link Barn}.
 */
final class Browser implements AutoCloseable {
    private static final Logger SELENIUM = Logger.getLogger("org.openqa.selenium");
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    private static final List<String> FLAGS = List.of("--headless=new", "--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu", "--hide-scrollbars",
            "--disable-background-networking", "--disable-component-update", "--no-first-run", "--no-default-browser-check", "--disable-extensions",
            "--lang=en-GB", "--accept-lang=en-GB");

    private final Server server;
    private final Barn barn;
    private final ChromeDriver driver;
    private boolean inBarn;

    private Browser(Server server, Barn barn, ChromeDriver driver) {
        this.server = server;
        this.barn = barn;
        this.driver = driver;
    }

    /** What is not installed, and what to do; null where all is there. */
    static String missing() {
        return chromium() != null && chromedriver() != null ? null
                : "No Chromium with its driver here, so nothing was tried in a browser. Install the packages chromium and chromium-driver";
    }

    /** Starts both. */
    static Browser start() {
        SELENIUM.setLevel(Level.SEVERE);
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(chromium());
        options.addArguments(FLAGS);
        options.setCapability("goog:loggingPrefs", logs);
        // the driver is named, so that nothing looks for one elsewhere
        ChromeDriverService service = new ChromeDriverService.Builder().usingDriverExecutable(chromedriver()).withSilent(true).build();
        Server server = Server.start(KnowledgeStore.builtIn(), "127.0.0.1", 0);
        Barn barn = Barn.open();
        try {
            return new Browser(server, barn, new ChromeDriver(service, options));
        } catch (RuntimeException broken) {
            barn.close();
            server.close();
            throw broken;
        }
    }

    @Override
    public void close() {
        driver.quit();
        barn.close();
        server.close();
    }

    ChromeDriver driver() {
        return driver;
    }

    /** The address of the server it was last sent to, without a slash at its end. */
    String server() {
        return "http://127.0.0.1:" + (inBarn ? barn.port() : server.port());
    }

    /** Both servers: a page may still ask for a part of itself while the next one, of the other server, is opened. */
    List<String> servers() {
        return List.of("http://127.0.0.1:" + server.port(), "http://127.0.0.1:" + barn.port());
    }

    /** What the second server has. */
    Barn barn() {
        return barn;
    }

    /** Goes to an address of the server, or of the barn's. */
    Browser open(String path) {
        inBarn = path.startsWith("/locker") || path.startsWith("/sessions") || path.startsWith("/lab/exercises") || path.contains("locker=");
        driver.get(server() + path);
        // on a busy machine the driver may come back before the scripts of the page have run
        until(path + " is loaded", () -> "complete".equals(js("document.readyState")));
        return this;
    }

    /** Where it is: path, query and fragment. */
    String at() {
        return driver.getCurrentUrl().substring(server().length());
    }

    WebElement find(String css) {
        return driver.findElement(By.cssSelector(css));
    }

    List<WebElement> all(String css) {
        return driver.findElements(By.cssSelector(css));
    }

    /** Waits until something is true, and says what it waited for if it never is. */
    void until(String what, BooleanSupplier holds) {
        new WebDriverWait(driver, PATIENCE, Duration.ofMillis(25)).withMessage(what + ", at " + driver.getCurrentUrl()).until(any -> holds.getAsBoolean());
    }

    /** The value of an expression in the page. */
    Object js(String expression, Object... arguments) {
        return driver.executeScript("return (" + expression + ")", arguments);
    }

    /** As if it had just been opened: a desk's width, light, with script, nothing kept, no log. */
    void asNew() {
        cdp("Emulation.setScriptExecutionDisabled", Map.of("value", false));
        cdp("Emulation.setEmulatedMedia", Map.of("media", "", "features", List.of()));
        cdp("Network.enable", Map.of());
        cdp("Network.setExtraHTTPHeaders", Map.of("headers", Map.of()));
        size(1280, 900);
        light();
        open("/guide");
        driver.executeScript("localStorage.clear()");
        driver.get("about:blank");
        logs(LogType.BROWSER);
        logs(LogType.PERFORMANCE);
    }

    /** The size of what is seen of the page, in its own pixels. */
    void size(int width, int height) {
        cdp("Emulation.setDeviceMetricsOverride", Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    }

    void light() {
        media("", "light");
    }

    void dark() {
        media("", "dark");
    }

    /** As the page looks on paper. */
    void print() {
        media("print", "light");
    }

    void withoutScript() {
        cdp("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    }

    /** What the reader likes to read. */
    void language(String accepted) {
        cdp("Network.setExtraHTTPHeaders", Map.of("headers", Map.of("Accept-Language", accepted)));
    }

    /** The page as it would come out of a printer. */
    byte[] pdf(boolean letter) {
        Map<String, Object> paper = letter ? Map.of("paperWidth", 8.5, "paperHeight", 11) : Map.of("paperWidth", 8.27, "paperHeight", 11.69);
        Map<String, Object> asked = new HashMap<>(paper);
        asked.put("printBackground", false);
        asked.put("preferCSSPageSize", false);
        return Base64.getDecoder().decode((String) cdp("Page.printToPDF", asked).get("data"));
    }

    /** A picture of the whole page at this width. */
    byte[] picture(int width) {
        size(width, 600);
        size(width, Math.max(600, ((Number) js("document.documentElement.scrollHeight")).intValue()));
        return Base64.getDecoder().decode((String) cdp("Page.captureScreenshot", Map.of("format", "png")).get("data"));
    }

    /** What a log of the browser has gathered since it was last asked. */
    List<String> logs(String type) {
        return driver.manage().logs().get(type).getAll().stream().map(entry -> entry.getMessage()).toList();
    }

    Map<String, Object> cdp(String command, Map<String, Object> parameters) {
        return driver.executeCdpCommand(command, parameters);
    }

    private void media(String media, String scheme) {
        cdp("Emulation.setEmulatedMedia", Map.of("media", media, "features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
    }

    private static File chromium() {
        return executable("chromium", "chromium-browser", "google-chrome");
    }

    private static File chromedriver() {
        return executable("chromedriver");
    }

    static File executable(String... names) {
        List<String> folders = Arrays.asList(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator));
        return Stream.of(names).flatMap(name -> folders.stream().map(folder -> new File(folder, name))).filter(File::canExecute).findFirst().orElse(null);
    }
}
