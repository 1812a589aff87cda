package org.duskloom.cli;

import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/** Chromium without a window, as Debian's packages chromium and chromium-driver install it. */
final class Browser implements AutoCloseable {
    private static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    private static final Path DRIVER = Path.of("/usr/bin/chromedriver");

    /** It warns that it does not know every command of the newest browser; those used here it does not need to know. */
    private static final Logger SELENIUM = Logger.getLogger("org.openqa.selenium");

    private final ChromeDriver driver;

    private Browser(ChromeDriver driver) {
        this.driver = driver;
    }

    /** Skips the test, and says so, where there is no such browser. */
    static Browser open() {
        boolean there = Files.isExecutable(CHROMIUM) && Files.isExecutable(DRIVER);
        if (!there) {
            System.err.println("SKIPPED: tests of the page need " + CHROMIUM + " and " + DRIVER
                    + " (apt-get install chromium chromium-driver)");
        }
        assumeThat(there).as("chromium and chromium-driver are installed").isTrue();
        SELENIUM.setLevel(Level.SEVERE);
        ChromeOptions options = new ChromeOptions();
        options.setBinary(CHROMIUM.toFile());
        options.addArguments(
                "--headless=new",
                "--no-sandbox",
                "--disable-dev-shm-usage",
                "--enable-unsafe-swiftshader",
                "--autoplay-policy=no-user-gesture-required",
                "--hide-scrollbars");
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.ALL);
        logs.enable(LogType.PERFORMANCE, Level.ALL);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriverService service = new ChromeDriverService.Builder()
                .usingDriverExecutable(DRIVER.toFile())
                .build();
        ChromeDriver driver = new ChromeDriver(service, options);
        driver.manage().timeouts().scriptTimeout(Duration.ofSeconds(120));
        Browser browser = new Browser(driver);
        browser.size(1280, 800, 1);
        return browser;
    }

    /** The size of the page inside the window, and how many dots of the screen make one of the page. */
    void size(int width, int height, double density) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", density, "mobile", false));
    }

    /** What the pages that are opened from now on run first. */
    void before(String script) {
        driver.executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", script));
    }

    /** Opens a film and waits until it is shown. */
    void show(Path page) {
        driver.get(page.toUri().toString());
        await("await started; await player.film.ready(player.frame); await new Promise(requestAnimationFrame);"
                + " await new Promise(requestAnimationFrame);");
    }

    /** The page printed on A4, as a PDF. */
    byte[] pdf() {
        Map<String, Object> printed =
                driver.executeCdpCommand("Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", true));
        return Base64.getDecoder().decode((String) printed.get("data"));
    }

    /** Opens the page of a show that is watched. */
    void go(String address) {
        driver.get(address);
    }

    /** Opens another tab in front of those that are there. */
    void openTab(String address) {
        driver.switchTo().newWindow(WindowType.TAB);
        driver.get(address);
    }

    /** Closes the tab in front; the one before it is seen then. */
    void closeTab() {
        driver.close();
        List<String> tabs = List.copyOf(driver.getWindowHandles());
        driver.switchTo().window(tabs.get(tabs.size() - 1));
    }

    /** Puts one of the tabs in front, counted from 0 as they were opened. */
    void showTab(int index) {
        driver.switchTo().window(List.copyOf(driver.getWindowHandles()).get(index));
        driver.executeCdpCommand("Page.bringToFront", Map.of());
    }

    /** Waits until an expression of the page is true; how long it took at most, in milliseconds since 1970. */
    long when(String expression) {
        return ((Number) await("const isSo = () => " + expression + ";"
                        + " for (const end = Date.now() + 60000; !isSo(); ) {"
                        + "  if (Date.now() > end) throw new Error('it never is so: ' + isSo);"
                        + "  await new Promise((done) => setTimeout(done, 5)); }"
                        + " return Date.now();"))
                .longValue();
    }

    /** A figure of the browser's own, such as {@code JSEventListeners}, after it has thrown away what nobody needs. */
    double metric(String name) {
        driver.executeCdpCommand("HeapProfiler.collectGarbage", Map.of());
        driver.executeCdpCommand("Performance.enable", Map.of());
        List<?> metrics = (List<?>)
                driver.executeCdpCommand("Performance.getMetrics", Map.of()).get("metrics");
        return metrics.stream()
                .map(metric -> (Map<?, ?>) metric)
                .filter(metric -> name.equals(metric.get("name")))
                .mapToDouble(metric -> ((Number) metric.get("value")).doubleValue())
                .findFirst()
                .orElseThrow();
    }

    /** What an expression of the page is. */
    Object value(String expression, Object... arguments) {
        return driver.executeScript("return " + expression, arguments);
    }

    double number(String expression, Object... arguments) {
        return ((Number) value(expression, arguments)).doubleValue();
    }

    String text(String expression, Object... arguments) {
        return String.valueOf(value(expression, arguments));
    }

    /** Runs statements that may await; what they return. */
    Object await(String statements, Object... arguments) {
        Object answer = driver.executeAsyncScript(
                "const done = arguments[arguments.length - 1]; const given = [...arguments].slice(0, -1);"
                        + "(async () => {" + statements + "})().then((value) => done({value}),"
                        + " (fault) => done({fault: String(fault.stack)}));",
                arguments);
        Map<?, ?> map = (Map<?, ?>) answer;
        if (map.get("fault") != null) {
            throw new AssertionError("the page says: " + map.get("fault"));
        }
        return map.get("value");
    }

    /** Presses a key as a keyboard does. */
    void press(String key) {
        press(key, false);
    }

    void press(String key, boolean shift) {
        Map<String, Object> event = new HashMap<>();
        event.put("key", key);
        event.put("modifiers", shift ? 8 : 0);
        for (String type : List.of("keyDown", "keyUp")) {
            event.put("type", type);
            if (key.length() == 1) {
                event.put("text", type.equals("keyDown") ? key : "");
            }
            driver.executeCdpCommand("Input.dispatchKeyEvent", event);
        }
    }

    /** Clicks at a place of the page. */
    void click(double x, double y) {
        for (String type : List.of("mousePressed", "mouseReleased")) {
            driver.executeCdpCommand(
                    "Input.dispatchMouseEvent",
                    Map.of("type", type, "x", x, "y", y, "button", "left", "clickCount", 1));
        }
    }

    void move(String type, double x, double y, boolean pressed) {
        driver.executeCdpCommand(
                "Input.dispatchMouseEvent",
                Map.of("type", type, "x", x, "y", y, "button", pressed ? "left" : "none", "buttons", pressed ? 1 : 0));
    }

    /** What the page has complained of so far, once. */
    List<String> complaints() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .map(LogEntry::getMessage)
                // Of the software that stands in for a graphics card, not of the page.
                .filter(message -> !message.contains("GL Driver Message"))
                .toList();
    }

    /** The addresses that were asked for so far, once; data within the page are none. */
    List<String> requests() {
        return driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
                .map(LogEntry::getMessage)
                .filter(message -> message.contains("\"Network.requestWillBeSent\""))
                .map(message -> message.replaceAll("(?s).*\"request\":\\{.*?\"url\":\"([^\"]*)\".*", "$1"))
                .filter(address -> !address.startsWith("data:"))
                .toList();
    }

    void picture(Path target) throws IOException {
        Files.write(target, driver.getScreenshotAs(OutputType.BYTES));
    }

    @Override
    public void close() {
        driver.quit();
    }
}
