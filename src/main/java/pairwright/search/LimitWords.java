package pairwright.search;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pairwright.model.Limits;
import pairwright.model.MicFamily;

/** What must be kept to: channels, power, gain, families and types of microphones; and which families are only wished for. */
final class LimitWords {

    private final Lexicon lexicon;
    private final Sentence sentence;
    private final Draft draft;
    private final Amounts amounts;
    private final Set<MicFamily> wishes = new LinkedHashSet<>();
    private Limits limits = Limits.NONE;

    LimitWords(Lexicon lexicon, Sentence sentence, Draft draft, Amounts amounts) {
        this.lexicon = lexicon;
        this.sentence = sentence;
        this.draft = draft;
        this.amounts = amounts;
    }

    Limits limits() {
        sentence.tags(Kind.LIMIT).forEach(tag -> {
            var words = lexicon.limit(tag.id());
            draft.understand(tag, "limit", words.id(), words.name());
            tighten(words.sets());
        });
        amounts.that("mics").stream()
                .filter(amount -> amount.value() >= 1 && amount.value() <= Limits.MOST_CHANNELS
                        && amount.value() == Math.rint(amount.value()))
                .forEach(amount -> {
                    measured(amount, Integer.toString((int) amount.value()));
                    tighten(channels((int) amount.value()));
                });
        amounts.that("preampGainDb").stream().filter(amount -> amount.value() <= Limits.MOST_GAIN_DB).forEach(amount -> {
            measured(amount, String.valueOf(Math.round(amount.value())));
            tighten(new Limits(null, null, amount.value(), null, null, null, null, null));
        });
        choices();
        return limits;
    }

    private void measured(Amounts.Amount amount, String value) {
        draft.understand(amount.first(), amount.end(), "limit", amount.id(), lexicon.quantity(amount.id()).name() + ": " + value);
    }

    private static Limits channels(int mics) {
        return new Limits(mics, null, null, null, null, null, null, null);
    }

    /** "No condensers", "only ribbons and dynamics", "ribbons only". */
    private void choices() {
        Tag before = null;
        String choice = null;
        for (var tag : sentence.tags()) {
            boolean isFamily = tag.kind() == Kind.FAMILY;
            boolean isType = tag.kind() == Kind.MIC_TYPE
                    && sentence.tags(Kind.FAMILY).noneMatch(family -> family.covers(tag));
            if (!isFamily && !isType) {
                continue;
            }
            var modifier = sentence.modifierBefore(tag).filter(found -> found.ids().contains("only")
                    || found.ids().contains("without"))
                    .or(() -> sentence.onlyAfter(tag));
            boolean isJoined = before != null && sentence.isJoined(before, tag);
            choice = modifier.map(found -> found.ids().contains("only") ? "only" : "without").orElse(isJoined ? choice : null);
            before = tag;
            if (choice != null) {
                choose(tag, modifier, choice.equals("only"));
            } else if (isWished(tag)) {
                wish(tag);
            }
        }
    }

    /** The families that were named without a word that makes a limit of them, in that order. To be asked after the limits. */
    List<MicFamily> wishes() {
        return List.copyOf(wishes);
    }

    /** "Avoid ribbons" and "very dynamic" wish for none. */
    private boolean isWished(Tag tag) {
        return sentence.modifierBefore(tag).filter(found -> found.ids().contains("less") || found.end() == tag.first()).isEmpty();
    }

    /** A family, or that of a type, that would be welcome. */
    private void wish(Tag tag) {
        if (tag.kind() == Kind.FAMILY) {
            var family = lexicon.family(tag.id());
            draft.understand(tag, "wish", family.id(), family.name());
            wishes.addAll(family.families());
        } else {
            draft.understand(tag, "wish", tag.id(), lexicon.micTypeName(tag.id()));
            tag.ids().forEach(type -> wishes.add(lexicon.micFamily(type)));
        }
    }

    private void choose(Tag tag, Optional<Tag> modifier, boolean only) {
        int first = Math.min(tag.first(), modifier.map(Tag::first).orElse(tag.first()));
        int end = Math.max(tag.end(), modifier.map(Tag::end).orElse(tag.end()));
        var id = (only ? "only-" : "without-") + tag.id();
        var prefix = only ? "Only: " : "Without: ";
        if (tag.kind() == Kind.FAMILY) {
            var family = lexicon.family(tag.id());
            draft.understand(first, end, "limit", id, prefix + family.name());
            tighten(only ? new Limits(null, null, null, null, family.families(), null, null, null)
                    : new Limits(null, null, null, null, null, family.families(), null, null));
        } else {
            draft.understand(first, end, "limit", id, prefix + lexicon.micTypeName(tag.id()));
            tighten(only ? new Limits(null, null, null, null, null, null, tag.ids(), null)
                    : new Limits(null, null, null, null, null, null, null, tag.ids()));
        }
        sentence.tags(Kind.NUMBER).filter(number -> only && first < number.first() && number.end() <= tag.first()).findFirst()
                .ifPresent(number -> tighten(channels((int) Double.parseDouble(number.id()))));
    }

    /** Of two limits on the same thing the tighter one counts. */
    private void tighten(Limits more) {
        limits = new Limits(
                least(limits.mics(), more.mics()),
                limits.phantom() == null ? more.phantom() : more.phantom() == null ? limits.phantom()
                        : Boolean.valueOf(limits.phantom() && more.phantom()),
                least(limits.preampGainDb(), more.preampGainDb()),
                least(negative(limits.preampNoiseDbu()), negative(more.preampNoiseDbu())) == null ? null
                        : negative(least(negative(limits.preampNoiseDbu()), negative(more.preampNoiseDbu()))),
                joined(limits.onlyFamilies(), more.onlyFamilies()),
                joined(limits.withoutFamilies(), more.withoutFamilies()),
                joined(limits.onlyMicTypes(), more.onlyMicTypes()),
                joined(limits.withoutMicTypes(), more.withoutMicTypes()));
    }

    private static <T extends Comparable<T>> T least(T one, T other) {
        return one == null || other != null && other.compareTo(one) < 0 ? other : one;
    }

    private static Double negative(Double value) {
        return value == null ? null : Double.valueOf(-value);
    }

    private static <T> List<T> joined(List<T> one, List<T> other) {
        var both = new LinkedHashSet<>(one);
        both.addAll(other);
        return List.copyOf(both);
    }
}
