package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import pairwright.model.Basis;
import pairwright.model.HabitRank;
import pairwright.model.MicFamily;
import pairwright.model.MicType;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.PowerNeed;
import pairwright.model.Range;
import pairwright.rules.Figure;
import pairwright.sheet.ReadingParts.Fact;
import pairwright.sheet.ReadingParts.Grounds;
import pairwright.sheet.ReadingParts.Link;
import pairwright.sheet.ReadingParts.Mention;
import pairwright.sheet.ReadingParts.Plot;
import pairwright.sheet.ReadingParts.Spread;

/** A mic type to read. */
public final class MicPage {
    private static final List<String> RUGGED = List.of("fragile", "delicate", "ordinary", "sturdy", "takes a fall");
    private static final List<String> TIERS = List.of("lowest of five", "second of five", "middle of five", "fourth of five", "highest of five");

    private final Desk desk;
    private final MicType mic;

    private MicPage(Desk desk, MicType mic) {
        this.desk = desk;
        this.mic = mic;
    }

    /**
     * What the page shows.
     *
     * @param measured what its response was measured by; empty where it is that of the class
     */
    public record Content(String says, List<String> words, List<String> handling, List<Spread> figures, List<Fact> facts, Plot response, String measured,
            List<Polar> patterns, List<Link> numbers, List<Mention> first, List<Mention> second, List<Mention> avoid, List<Mention> pairs,
            List<Mention> complaints, Grounds grounds) {
    }

    /** One of its patterns; the plot is null for one that hears no air. */
    public record Polar(String name, String quietest, Plot plot) {
    }

    static Page of(Desk desk, MicType mic) {
        return desk.page("mic", desk.entry(Shelf.MICS, mic.name(), ReadingWords.family(mic.family())), "mic", new MicPage(desk, mic).content());
    }

    private Content content() {
        References named = new References(desk);
        return new Content(desk.measures().sentence(mic.says()), mic.words(), desk.measures().sentences(mic.handling()), figures(), facts(),
                Plots.octaves(desk, "response", "What it makes of a sound on its axis, from far away", "Response", mic.responseDb()), measured(), patterns(),
                numbers(), named.habits(mic, HabitRank.FIRST), named.habits(mic, HabitRank.SECOND), named.habits(mic, HabitRank.AVOID), named.pairs(mic),
                named.complaints(mic), desk.grounds(mic.confidence(), mic.basis()));
    }

    private String measured() {
        return mic.basis().stream().filter(rests -> rests.of().contains("responseDb") && rests.on() == Basis.MEASURED)
                .map(rests -> desk.measures().sentence(rests.note())).findFirst().orElse("");
    }

    private List<Polar> patterns() {
        List<Polar> patterns = new ArrayList<>();
        for (PatternData data : mic.patterns()) {
            patterns.add(new Polar(ReadingWords.pattern(data.pattern()), Plots.quietest(desk, data), Plots.polar(desk, "pattern-" + data.pattern().id(), data)));
        }
        return patterns;
    }

    private List<Spread> figures() {
        List<Spread> all = new ArrayList<>();
        add(all, "Sensitivity", mic.sensitivityMvPerPa(), "mV/Pa", "What it gives for a sound of 94 dB SPL. More of it needs less gain.");
        add(all, "Self-noise", mic.selfNoiseDba(), "dB(A)", "Its own hiss, as if a sound so loud were in the room. Less is quieter.");
        add(all, "Highest level", mic.maxDbSpl(), "dB SPL", "Where a steady tone distorts by 0.5 to 1 %. Peaks should stay below it.");
        add(all, "Source impedance", mic.impedanceOhm(), "ohm", "What stands behind its output. The input should have five times that or more.");
        add(all, "Input impedance", mic.inputOhm(), "ohm", "What the instrument drives. The more, the less it takes from a pickup.");
        add(all, "Largest input", mic.maxInputDbu(), "dBu", "The strongest signal it takes.");
        add(all, "Phantom current", mic.currentMa(), "mA", "What it draws from the supply, per channel.");
        boolean pounds = desk.visit().reader().imperial();
        if (mic.massKg() != null) {
            all.add(new Spread("Mass", mass(mic.massKg().low()), mass(mic.massKg().typical()), mass(mic.massKg().high()), pounds ? "lb" : "kg",
                    "With its usual mount. What hangs on the stand."));
        }
        return all;
    }

    /** The sentence converts; the unit stands in a column of its own. */
    private String mass(double massKg) {
        String text = desk.measures().sentence(Measures.plain(massKg, 2) + " kg");
        return text.substring(0, text.lastIndexOf(' '));
    }

    private void add(List<Spread> all, String name, Range range, String unit, String means) {
        if (range != null && unit.equals("ohm") && range.low() >= 1000) {
            add(all, name, new Range(range.low() / 1000, range.typical() / 1000, range.high() / 1000), "kohm", means);
        } else if (range != null) {
            int decimals = range.high() < 10 ? 2 : range.high() < 100 ? 1 : 0;
            all.add(new Spread(name, desk.measures().number(range.low(), decimals), desk.measures().number(range.typical(), decimals),
                    desk.measures().number(range.high(), decimals), unit, means));
        }
    }

    private List<Fact> facts() {
        List<Fact> all = new ArrayList<>();
        all.add(new Fact("Power", ReadingWords.power(mic.power()), phantom()));
        if (!mic.padsDb().isEmpty()) {
            all.add(new Fact("Pads", mic.padsDb().stream().map(pad -> desk.measures().number(pad, 0)).collect(Collectors.joining(" or ")) + " dB",
                    "In the body; so much louder may it get."));
        }
        all.add(new Fact("Low cut", mic.highPass() ? "In the body" : "None in the body", ""));
        if (mic.needsLoadOhm() != null) {
            all.add(new Fact("Wants a load of", desk.measures().sentence(Figure.forPeople(mic.needsLoadOhm(), "ohm")) + " or more", "The usual input may be too low."));
        }
        all.add(new Fact("Channels", Integer.toString(mic.channels()), mic.captures() ? "" : "It plays back and records nothing."));
        all.add(new Fact("Held", ReadingWords.address(mic.address()), ""));
        all.add(new Fact("Follows a stroke", ReadingWords.words(mic.speed()), "How fast its moving part is."));
        all.add(new Fact("Moving air", "Stands " + ReadingWords.tolerance(mic.blastTolerance()), ""));
        all.add(new Fact("Breath and damp", "Stands " + ReadingWords.tolerance(mic.humidityTolerance()), ""));
        all.add(new Fact("Robust", RUGGED.get(mic.ruggedness() - 1), ""));
        all.add(new Fact("Price class", TIERS.get(mic.tier() - 1), ""));
        return all;
    }

    private String phantom() {
        if (mic.passiveRibbon()) {
            return "Phantom off, and wait half a minute, before it is plugged.";
        }
        return switch (mic.power()) {
            case PHANTOM -> "It does not work without.";
            case OWN_SUPPLY -> "Connect it before its supply is switched on.";
            case PHANTOM_OR_BATTERY -> "One of the two.";
            case NONE -> "It needs no phantom power.";
        };
    }

    /** Calculations its figures go into. */
    private List<Link> numbers() {
        List<Link> all = new ArrayList<>();
        boolean isFirstOrder = mic.patterns().stream().anyMatch(data -> data.coefficient() != null && data.pattern() != Pattern.CONTACT
                && data.pattern() != Pattern.ELECTRICAL);
        if (isFirstOrder) {
            all.add(desk.at().link("/numbers/null-angles", "Where a pattern hears nothing"));
            if (mic.patterns().stream().anyMatch(data -> data.pattern() != Pattern.OMNI && data.pattern() != Pattern.HALF_OMNI)) {
                all.add(desk.at().link("/numbers/proximity", "How the bass rises up close"));
            }
        }
        if (mic.sensitivityMvPerPa() != null) {
            all.add(desk.at().link("/numbers/gain", "The gain it needs"));
            all.add(desk.at().link("/numbers/noise", "How far a source stands above the noise"));
        }
        if (mic.maxDbSpl() != null) {
            all.add(desk.at().link("/numbers/headroom", "Whether it stands the peaks"));
        }
        if (mic.passiveRibbon()) {
            all.add(desk.at().link("/numbers/ribbon-loading", "What the input takes from it"));
        }
        if (mic.power() == PowerNeed.PHANTOM || mic.power() == PowerNeed.PHANTOM_OR_BATTERY) {
            all.add(desk.at().link("/numbers/phantom-budget", "Whether the supply carries it"));
        }
        if (mic.family() != MicFamily.LINE && mic.family() != MicFamily.PICKUP) {
            all.add(desk.at().link("/numbers/stand-stability", "Whether the stand tips"));
        }
        return all;
    }
}
