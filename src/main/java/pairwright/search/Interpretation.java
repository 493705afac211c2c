package pairwright.search;

import java.util.ArrayList;
import pairwright.model.Meaning;
import pairwright.model.Question;

/** Weighs the phrases of one sentence against each other, topic by topic. Used once. */
final class Interpretation {

    /** Options that are shown where nobody says how many. */
    private static final int USUAL_OPTIONS = 3;

    private final Sentence sentence;
    private final Draft draft;
    private final Amounts amounts;
    private final Beside beside;
    private final SourceWords sourceWords;
    private final SoundWords soundWords;
    private final LimitWords limitWords;

    Interpretation(Lexicon lexicon, Ambiguities ambiguities, Sentence sentence) {
        this.sentence = sentence;
        draft = new Draft(sentence);
        amounts = new Amounts(lexicon, sentence);
        var askBack = new AskBack(lexicon, ambiguities, sentence, draft);
        beside = new Beside(lexicon, sentence, draft, askBack, amounts);
        sourceWords = new SourceWords(lexicon, ambiguities, sentence, draft, askBack);
        soundWords = new SoundWords(lexicon, sentence, draft, askBack);
        limitWords = new LimitWords(lexicon, sentence, draft, amounts);
    }

    Meaning meaning() {
        deny();
        var sources = new ArrayList<>(draft.wanted(Kind.SOURCE));
        // neighbours first: what is beside is not recorded, and what is said of it is not said of the source
        var neighbours = beside.neighbours(sources);
        sourceWords.dropPlayers(sources);
        var circumstances = soundWords.circumstances();
        var source = sourceWords.source(sources, circumstances);
        var question = new Question(sentence.text(), source, sourceWords.ways(), soundWords.dynamics(), soundWords.room(),
                soundWords.character(), limitWords.limits(), neighbours, circumstances, soundWords.techniques(), USUAL_OPTIONS, null, null,
                limitWords.wishes());
        sourceWords.tellClues();
        return new Meaning(question, draft.understood(), draft.notUnderstood(amounts.all()), draft.others(), draft.asks());
    }

    /** "No drums", "without brushes": neither asks for them. */
    private void deny() {
        sentence.tags().stream()
                .filter(tag -> tag.kind() == Kind.SOURCE || tag.kind() == Kind.WAY || tag.kind() == Kind.ROOM
                        || tag.kind() == Kind.CIRCUMSTANCE)
                .filter(tag -> sentence.modifierBefore(tag).filter(found -> found.ids().contains("without")).isPresent())
                .forEach(draft::setAside);
    }
}
