package pairwright.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Takes pictures of pages, so that somebody looks at them: at three widths, light and dark, and as printed. The first argument is the folder
 * they go to, the others are addresses such as {@code /guide}; without any, one of each kind of page.
 */
public final class Pictures {
    private static final int[] WIDTHS = {360, 800, 1400};

    private Pictures() {
    }

    /** @param arguments the folder, then addresses */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        List<String> given = List.of(arguments);
        Path folder = Files.createDirectories(Path.of(given.get(0)));
        try (Browser browser = Browser.start()) {
            List<String> pages = given.size() > 1 ? given.subList(1, given.size()) : EveryKind.addresses(browser);
            for (String page : pages) {
                take(browser, page, folder);
            }
        }
    }

    private static void take(Browser browser, String page, Path folder) throws IOException, InterruptedException {
        String name = name(page);
        browser.asNew();
        for (boolean dark : new boolean[] {false, true}) {
            if (dark) {
                browser.dark();
            } else {
                browser.light();
            }
            for (int width : WIDTHS) {
                browser.size(width, 900);
                browser.open(page);
                Files.write(folder.resolve(name + "-" + width + (dark ? "-dark" : "") + ".png"), browser.picture(width));
            }
        }
        browser.light();
        Path pdf = Files.write(folder.resolve(name + ".pdf"), browser.pdf(false));
        leafed(pdf, folder.resolve(name + "-print"));
        System.out.println(page + " -> " + folder.resolve(name));
    }

    /** Each leaf of a print as a picture, where a program is installed that can do that. */
    private static void leafed(Path pdf, Path to) throws IOException, InterruptedException {
        if (Browser.executable("pdftoppm") == null) {
            return;
        }
        List<String> command = new ArrayList<>(List.of("pdftoppm", "-r", "60", "-png", pdf.toString(), to.toString()));
        new ProcessBuilder(command).inheritIO().start().waitFor();
    }

    private static String name(String page) {
        StringBuilder name = new StringBuilder();
        page.chars().forEach(c -> name.append(java.lang.Character.isLetterOrDigit(c) ? (char) c : '-'));
        String plain = name.substring(1);
        return plain.isEmpty() ? "start" : plain.substring(0, Math.min(60, plain.length()));
    }
}
