package pairwright.search;

import java.util.List;
import java.util.stream.Collectors;
import pairwright.model.Ask;
import pairwright.model.Naming;
import pairwright.model.Reading;

/** Words the questions back: what is unclear, what was made of it, and what to say for another. */
final class AskBack {

    private final Lexicon lexicon;
    private final Ambiguities ambiguities;
    private final Sentence sentence;
    private final Draft draft;

    AskBack(Lexicon lexicon, Ambiguities ambiguities, Sentence sentence, Draft draft) {
        this.lexicon = lexicon;
        this.ambiguities = ambiguities;
        this.sentence = sentence;
        this.draft = draft;
    }

    /**
     * Which of the readings of an ambiguous word is meant.
     *
     * @param used the reading that is answered; null if none is
     * @param because the words that pointed at it; empty if it is only the usual one
     */
    void which(Tag named, List<String> readings, String used, List<Tag> because) {
        var choices = readings.stream().map(id -> source("source", id)).toList();
        var others = choices.stream().filter(choice -> !choice.id().equals(used)).toList();
        String answered;
        if (used == null) {
            answered = "Nothing else in the sentence decides, so it is not answered yet. Say " + listed(choices) + ".";
        } else {
            var pointed = because.isEmpty() ? "" : " because of " + quoted(sentence.words(because.get(0)));
            answered = "Answered for " + Naming.small(lexicon.source(used).name()) + pointed + "; for another say " + listed(others) + ".";
        }
        draft.ask(new Ask(sentence.words(named), what(named) + " " + answered, choices));
    }

    /** Which of the readings of an ambiguous word plays next to it. */
    void whichNeighbour(Tag named) {
        var choices = named.ids().stream().map(id -> source("neighbour", id)).toList();
        draft.ask(new Ask(sentence.words(named), what(named) + " As a neighbour it was taken for " + Naming.small(choices.get(0).name())
                + "; for another say " + listed(choices.subList(1, choices.size())) + ".", choices));
    }

    private String what(Tag named) {
        var says = ambiguities.of(sentence, named).map(entry -> entry.says()).orElse("It names more than one source.");
        return quoted(sentence.words(named)) + ": " + Naming.small(says);
    }

    /** Sources beside the one that is answered. */
    void others(String used, List<Tag> rest, List<String> ids) {
        var choices = ids.stream().map(id -> source("source", id)).distinct().toList();
        boolean isOne = rest.size() == 1;
        var named = rest.stream().map(sentence::words).distinct().map(AskBack::quoted).collect(Collectors.collectingAndThen(Collectors.toList(), words -> joined(words, " and ")));
        draft.ask(new Ask(sentence.words(rest.get(0)), "Answered for " + Naming.small(lexicon.source(used).name()) + ". " + named
                + (isOne ? " was understood as a source too: ask for it on its own, " : " were understood as sources too: ask for each on its own, ")
                + listed(choices) + ", or say \"next to\" before " + (isOne ? "it if it plays" : "those that play") + " in the same room.",
                choices));
    }

    void otherRoom(Tag used, Tag other) {
        var name = lexicon.roomName(other.id());
        draft.ask(new Ask(sentence.words(other), "Answered for one room, " + Naming.small(lexicon.roomName(used.id())) + ". For "
                + quoted(sentence.words(other)) + " ask again with that room alone.",
                List.of(new Ask.Choice(Naming.small(name), "room", other.id(), name))));
    }

    private Ask.Choice source(String as, String id) {
        var name = lexicon.source(id).name();
        return new Ask.Choice(Naming.small(name), as, id, name);
    }

    /** What unknown words may have meant. */
    static Ask unknown(String words, List<Ask.Choice> choices) {
        return new Ask(words, quoted(words) + " is not known here. Do you mean " + listed(choices) + "?", choices);
    }

    static Ask.Choice named(Reading reading) {
        return new Ask.Choice(Naming.small(reading.name()), reading.as(), reading.id(), reading.name());
    }

    private static String listed(List<Ask.Choice> choices) {
        return joined(choices.stream().map(choice -> quoted(choice.say())).distinct().toList(), " or ");
    }

    private static String joined(List<String> words, String last) {
        int end = words.size() - 1;
        return end == 0 ? words.get(0) : String.join(", ", words.subList(0, end)) + last + words.get(end);
    }

    private static String quoted(String words) {
        return '"' + words + '"';
    }

}
