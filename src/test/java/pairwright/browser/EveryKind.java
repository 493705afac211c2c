package pairwright.browser;

import java.util.ArrayList;
import java.util.List;

/** One address of each kind of page, and some that are likely to be wide, long or wrong. */
final class EveryKind {
    static final String PAIRS = "/?words=brushed+snare%2C+dark%2C+small+room%2C+no+phantom";
    static final String DANGERS = "/?words=trumpet%2C+dead+room%2C+no+phantom%2C+next+to+a+drum+kit";
    static final String WHY_NOT = "/why-not?words=brushed+snare%2C+dark&type=large-condenser-cardioid";

    /** Asked of the barn, and its sheet. */
    static final String FROM_LOCKER = "/?words=brushed+snare%2C+dark&locker=free";
    static final String FROM_LOCKER_SHEET = "/set-up?words=upright+piano%2C+stereo&locker=owned";

    private static final String PLAN = "/sessions/" + Barn.SESSION + "/";

    private static final List<String> ADDRESSES = List.of("/", PAIRS, FROM_LOCKER, FROM_LOCKER_SHEET, FROM_LOCKER + "&from=soon&locker=spoon", DANGERS, "/?words=snare&mics=1", "/?words=blorp+fnord",
            "/?words=snare&only=boundary&phantom=no&mics=1", "/?source=nosuch&gain=lots", WHY_NOT, "/catalogue", "/mics", "/mics/active-ribbon",
            "/sources/snare-drum", "/characters/dark", "/rooms/church", "/techniques/mid-side", "/complaints/boxy", "/rules", "/rules/SAF-005", "/numbers",
            "/numbers/comb", "/numbers/recording-angle", "/numbers/delay?distanceM=far", "/guide", "/listen", "/listen?what=pair", "/listen?what=bleed", "/listen?what=smell", "/no-such-page", "/lab", "/lab/course", "/lab/practice/choose/5/3", "/lab/practice/mend/3/3", "/lab/practice/curves/3/2?a.set-up-1=a&mark=yes", "/lab/practice/reckon/1/2?a.set-up-1=a&mark=yes", "/locker", "/locker?free=yes&kind=spoon&from=soon", "/locker/units/" + Barn.RIBBON, "/locker/units/" + Barn.CHANNEL,
            "/locker/units/new", "/locker/units/new?kind=mic", "/locker/units/" + Barn.RIBBON + "/alter", "/locker/units/" + Barn.RIBBON + "/remove",
            "/locker/history", "/locker/import", "/locker/bookings", "/locker/bookings/1", "/locker/bookings/1/alter", "/locker/bookings/1/cancel", "/locker/bookings/new",
            "/locker/bookings/new?until=soon", "/locker/bookings/new?unit=loft-pencil-1&unit=yard-vocal-1",
            "/sessions", "/sessions/new", "/sessions/buy?budget=0", "/sessions/" + Barn.SESSION, "/sessions/" + Barn.SESSION + "?units=imperial", "/sessions/" + Barn.SESSION + "/remove",
            "/locker/desk", "/locker/desk?way=back&by=Cleo&for=1&did=out&unit=loft-pencil-1&booking=2",
            "/locker/coverage", "/locker/coverage?served=maybe",
            PLAN + "plan", PLAN + "plan?plan=many", PLAN + "bleed", PLAN + "timing?rate=far", PLAN + "check", PLAN + "replan?price=much", PLAN + "sheets", PLAN + "sheets/all", PLAN + "recall");

    private EveryKind() {
    }

    /** All of them; the pages that follow an answer are found where it links to them. */
    static List<String> addresses(Browser browser) {
        List<String> all = new ArrayList<>(ADDRESSES);
        all.add(1, setUp(browser));
        all.add(2, moves(browser));
        all.addAll(exercises(browser));
        return all;
    }

    /** The pages of the exercises of a class. */
    static List<String> exercises(Browser browser) {
        String set = "/lab/exercises/" + browser.barn().exercises();
        return List.of("/lab/exercises", "/lab/exercises/new?benches=6&kind=choose", set, set + "/bench/1", set + "/bench/2", set + "/handouts", set + "/keys", set + "/feedback", set + "/marks");
    }

    static String setUp(Browser browser) {
        return browser.open(PAIRS).find(".option .actions a[href^='/set-up']").getDomAttribute("href");
    }

    /** What the form of the first option asks for without script. */
    static String moves(Browser browser) {
        return (String) browser.open(PAIRS).js("(f => { f.elements.heard.value = 'boxy'; "
                + "return f.getAttribute('action') + '?' + new URLSearchParams(new FormData(f)); })(document.querySelector('form.heard'))");
    }
}
