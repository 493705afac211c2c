package pairwright.search;

import java.util.Comparator;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import pairwright.model.Catalogue;

/** One sentence on its way to its suggestions. Used once. */
final class Completing {
    private static final int NOT_HERE = -1;
    /** For what would follow words that say nothing; it is told only where those words are not the beginning of something. */
    private static final int AT_A_LOSS = 10;
    /** Phrases that are read to see whether they hold; of many that begin alike and do not, more would only cost time. */
    private static final int MOST_READ = 32;
    /** Of what is played in some way, so many sources are named. */
    private static final int MOST_OF_A_WAY = 5;
    /** Letters of words that say where a neighbour stands, before they are completed: many languages have short ones. */
    private static final int SHORTEST_BESIDE = 3;
    private static final String BESIDE = "next to the ";

    private final Catalogue catalogue;
    private final SentenceReader reader;
    private final Completions completions;
    private final Continuations continuations;
    private final String typed;
    private final Suggested suggested;
    private final Map<Integer, Head> heads = new LinkedHashMap<>();
    private int read;

    /** A phrase at the place where it may stand; {@code fit} is 0 for what the place asks for. */
    private record Candidate(Phrase phrase, Unfinished end, boolean inside, int fit) {
        /** Of one meaning, the one that takes in most of what is typed, then the name. */
        static final Comparator<Candidate> OF_ONE = Comparator.comparingInt((Candidate one) -> -one.end.words()).thenComparing(Candidate::inside)
                .thenComparing(one -> !one.phrase.isName()).thenComparing(one -> one.phrase.text().length()).thenComparing(one -> one.phrase.order());
        static final Comparator<Candidate> OF_ALL = Comparator.comparingInt(Candidate::fit).thenComparing(Candidate::inside)
                .thenComparing(one -> !one.phrase.isName()).thenComparing(one -> -one.end.words()).thenComparing(one -> one.phrase.text().length())
                .thenComparing(one -> one.phrase.order());
    }

    Completing(Catalogue catalogue, SentenceReader reader, Suggester.Vocabularies known, String typed, Suggested suggested) {
        this.catalogue = catalogue;
        this.reader = reader;
        this.completions = known.completions();
        this.continuations = known.continuations();
        this.typed = typed;
        this.suggested = suggested;
    }

    /** Whether the last word is done. */
    private boolean isOpen() {
        return java.lang.Character.isWhitespace(typed.charAt(typed.length() - 1));
    }

    private Head head(int end) {
        return heads.computeIfAbsent(end, any -> new Head(reader, suggested.sentence(typed.substring(0, end))));
    }

    /** The phrases that begin as the sentence ends, or nearly so where there is none. */
    void complete() {
        Head whole = head(typed.length());
        boolean isAsked = isOpen() && (whole.wants() == Head.Wants.NEIGHBOUR || whole.wants() == Head.Wants.ROOM);
        List<Unfinished> ends = isAsked ? List.of()
                : Unfinished.endsOf(typed).stream().filter(end -> !whole.cuts(typed.stripTrailing().length() - end.start())).toList();
        take(ends, completions::starting);
        if (suggested.isEmpty()) {
            take(ends, completions::near);
        }
    }

    private void take(List<Unfinished> ends, Function<String, List<Completions.Found>> lookUp) {
        Map<String, Candidate> best = new LinkedHashMap<>();
        for (Unfinished end : ends) {
            for (Completions.Found found : lookUp.apply(end.plain())) {
                Head head = head(end.start());
                int fit = fit(head, end, found.phrase());
                if (fit != NOT_HERE) {
                    best.merge(found.phrase().kind() + " " + found.phrase().id(), new Candidate(found.phrase(), end, found.inside(), fit),
                            (one, other) -> Candidate.OF_ONE.compare(one, other) <= 0 ? one : other);
                }
            }
        }
        Iterator<Candidate> inOrder = best.values().stream().sorted(Candidate.OF_ALL).iterator();
        while (inOrder.hasNext() && canTake()) {
            Candidate next = inOrder.next();
            if (next.fit() < AT_A_LOSS || suggested.isEmpty()) {
                take(next);
            }
        }
    }

    private void take(Candidate one) {
        Head head = head(one.end().start());
        String before = typed.substring(0, one.end().start());
        Phrase phrase = one.phrase();
        switch (phrase.kind()) {
            case BEFORE_NEIGHBOUR -> {
                String lead = phrase.text() + (phrase.text().equals("next to") ? " the " : " ");
                for (Phrase neighbour : continuations.after(Head.Wants.NEIGHBOUR).subList(0, 2)) {
                    take(head, before, lead, neighbour);
                }
            }
            case WAY -> {
                if (head.source() == null) {
                    catalogue.sources().values().stream().filter(source -> source.ways() != null && source.ways().stream().anyMatch(way -> way.id().equals(phrase.id())))
                            .limit(MOST_OF_A_WAY).forEach(source -> take(head, before, phrase.text() + " ", completions.name(Kind.SOURCE, source.id())));
                } else {
                    takeOrName(head, before, phrase);
                }
            }
            case SOURCE -> {
                if (head.source() == null || head.wants() == Head.Wants.NEIGHBOUR) {
                    takeOrName(head, before, phrase);
                } else {
                    take(head, before, BESIDE, completions.name(Kind.SOURCE, phrase.id()));
                }
            }
            default -> takeOrName(head, before, phrase);
        }
    }

    private boolean take(Head head, String before, String lead, Phrase phrase) {
        return take(head, before, lead, phrase, null);
    }

    private boolean take(Head head, String before, String lead, Phrase phrase, String word) {
        if (!canTake()) {
            return false;
        }
        read++;
        return suggested.take(head, before, lead, phrase, word);
    }

    /** Another word where it is understood so, else the name it stands for: "sax" may be any of four. */
    private void takeOrName(Head head, String before, Phrase phrase) {
        Phrase name = completions.name(phrase.kind(), phrase.id());
        String word = phrase.isName() ? null : phrase.text();
        if (!take(head, before, "", phrase, word) && name != null && !phrase.isName()) {
            take(head, before, "", name, word);
        }
    }

    /** How well a phrase fits where it would stand: 0 best. */
    private int fit(Head head, Unfinished end, Phrase phrase) {
        Kind kind = phrase.kind();
        return switch (head.wants()) {
            case NEIGHBOUR -> kind == Kind.SOURCE ? 0 : NOT_HERE;
            case QUANTITY -> kind == Kind.QUANTITY ? 0 : NOT_HERE;
            case ROOM -> kind == Kind.ROOM ? 0 : kind == Kind.CHARACTER ? 1 : NOT_HERE;
            case LIMIT -> kind == Kind.LIMIT || kind == Kind.FAMILY ? 0 : kind == Kind.CHARACTER ? 1 : NOT_HERE;
            case QUALITY -> kind == Kind.CHARACTER || kind == Kind.DYNAMIC ? 0 : NOT_HERE;
            case ANYTHING -> fitsAnywhere(head, end, phrase);
        };
    }

    private int fitsAnywhere(Head head, Unfinished end, Phrase phrase) {
        int fit = head.source() == null ? fitsFirst(phrase.kind()) : fitsLater(head, end, phrase);
        boolean isAsked = isOpen() && head(typed.length()).isAltered() && phrase.kind() != Kind.LIMIT;
        return fit == NOT_HERE || isAsked ? NOT_HERE : head.isAtALoss() ? fit + AT_A_LOSS : fit;
    }

    private static int fitsFirst(Kind kind) {
        return switch (kind) {
            case SOURCE -> 0;
            case WAY, CHARACTER, DYNAMIC, ROOM, CIRCUMSTANCE, TECHNIQUE, LIMIT -> 1;
            case FAMILY -> 2;
            default -> NOT_HERE;
        };
    }

    private int fitsLater(Head head, Unfinished end, Phrase phrase) {
        return switch (phrase.kind()) {
            case WAY -> catalogue.sources().get(head.source()).ways() != null
                    && catalogue.sources().get(head.source()).ways().stream().anyMatch(way -> way.id().equals(phrase.id())) ? 0 : NOT_HERE;
            case ROOM -> head.hasRoom() ? NOT_HERE : 0;
            case CHARACTER, DYNAMIC, CIRCUMSTANCE, TECHNIQUE, LIMIT -> 0;
            case FAMILY -> 1;
            case BEFORE_NEIGHBOUR -> end.plain().length() < SHORTEST_BESIDE ? NOT_HERE : 1;
            case SOURCE -> end.isNewPart() && phrase.isName() ? 2 : NOT_HERE; // "trumpet, dru": who plays beside it; "tenr sax" is one thing misspelt
            default -> NOT_HERE;
        };
    }

    /** What may be said next where the sentence may end here: of each kind in turn, told kind by kind. */
    void goOn() {
        Head whole = head(typed.length());
        if (whole.wants() != Head.Wants.ANYTHING) {
            for (Phrase phrase : isOpen() ? continuations.after(whole.wants()) : List.<Phrase>of()) {
                if (canTake() && (phrase.kind() != Kind.ROOM || !whole.hasRoom())) {
                    take(whole, typed, "", phrase);
                }
            }
            return;
        }
        if (whole.source() == null || !whole.isDone()) {
            return;
        }
        addInTurn(whole, continuations.of(whole.source()));
    }

    private void addInTurn(Head whole, List<List<Phrase>> kinds) {
        int before = suggested.list().size();
        List<Iterator<Phrase>> left = kinds.stream().map(List::iterator).toList();
        boolean isMore = true;
        while (isMore && canTake()) {
            isMore = false;
            for (Iterator<Phrase> phrases : left) {
                isMore |= oneOf(phrases, whole);
            }
        }
        suggested.gatherKinds(before);
    }

    private boolean oneOf(Iterator<Phrase> phrases, Head whole) {
        String said = Unfinished.said(typed);
        int known = suggested.list().size();
        while (phrases.hasNext() && canTake() && suggested.list().size() == known) {
            Phrase phrase = phrases.next();
            if (phrase.kind() == Kind.SOURCE) {
                take(whole, said, phrase.id().equals(whole.source()) ? "" : BESIDE, phrase);
            } else if (phrase.kind() != Kind.ROOM || !whole.hasRoom()) {
                take(whole, said + ",", "", phrase);
            }
        }
        return suggested.list().size() > known;
    }

    private boolean canTake() {
        return !suggested.isFull() && read < MOST_READ;
    }
}
