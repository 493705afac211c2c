package pairwright.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import pairwright.advice.Knowledge;
import pairwright.drawing.Reader;
import pairwright.model.Answer;
import pairwright.model.Ask;
import pairwright.model.Catalogue;
import pairwright.model.Complaint;
import pairwright.model.MicType;
import pairwright.model.Naming;
import pairwright.model.Option;
import pairwright.model.Pattern;
import pairwright.model.PatternData;
import pairwright.model.Position;
import pairwright.model.Question;
import pairwright.model.Reading;
import pairwright.model.Request;
import pairwright.model.RuledOut;
import pairwright.model.Source;

/** Makes of an answer what its page shows. */
final class AnswerViews {
    private final Knowledge now;
    private final Catalogue catalogue;
    private final Request request;
    private final Answer answer;
    private final Answer.Asked asked;
    private final Question meant;
    private final AtQuestion at;
    private final Visit visit;
    private final Reader reader;
    private final List<Param> query;

    private AnswerViews(Knowledge now, Request request, Answer answer, AtQuestion at) {
        this.now = now;
        this.catalogue = now.catalogue();
        this.request = shortest(now, request, answer.question().meant());
        this.answer = answer;
        this.asked = answer.question();
        this.meant = asked.meant();
        this.at = at;
        this.visit = at.visit();
        this.reader = visit.reader();
        this.query = AskQuery.written(this.request);
    }

    static AnswerView of(Knowledge now, Request request, Answer answer, AtQuestion at) {
        return new AnswerViews(now, request, answer, at).view();
    }

    /** The same question with what the words say already left out. */
    static Request shortest(Knowledge now, Request request, Question meant) {
        if (request.words() == null || request.equals(Request.of(request.words()))) {
            return request;
        }
        Source source = meant.source() == null ? null : now.catalogue().sources().get(meant.source());
        return ShortQuery.of(request, now.reader().read(request.words()).question(), source);
    }

    /** What a form sends along beside what is chosen in it. */
    static List<Param> hidden(List<Param> query, Reader reader) {
        return reader.imperial() ? Param.joined(query, List.of(new Param("units", "imperial"))) : query;
    }

    private AnswerView view() {
        Source source = meant.source() == null ? null : catalogue.sources().get(meant.source());
        List<Param> hidden = hidden(query, reader);
        OptionViews views = new OptionViews(now, meant, at, hidden);
        List<OptionView> options = new ArrayList<>();
        for (Option option : answer.options()) {
            options.add(views.of(option, "o" + option.rank(), address("/set-up", new Param("option", Integer.toString(option.rank())))));
        }
        String heading = source != null ? QuestionWords.of(catalogue, meant, reader)
                : asked.ask().isEmpty() ? "No source was understood" : "Not certain yet";
        return new AnswerView(heading, address("/"), says(heading, options), asked.notUnderstood(), asked.ask().stream().map(this::back).toList(),
                readings(), source == null ? nearest() : List.of(), asked.assumed().stream().map(reader::sentence).toList(), heard(),
                PartsOf.of(catalogue, asked, reader), StockViews.of(at, answer), LockerQuery.written(request), options, sure(), address("/", new Param("draws", Integer.toString(Request.USUAL_DRAWS))),
                ruledOut(), instead(), Choices.mics(catalogue, null), patterns(), positions(source),
                Choices.of(catalogue.complaints().values(), Complaint::id, Complaint::name, List.of()), hidden);
    }

    private String says(String heading, List<OptionView> options) {
        if (options.isEmpty()) {
            return meant.source() == null ? heading + "." : "Nothing fits within these limits.";
        }
        return options.size() + (options.size() == 1 ? " option. " : " options. First: ") + options.get(0).title() + ".";
    }

    /** Null where nobody was heard before. */
    private AnswerView.HeardView heard() {
        return answer.heard() == null ? null : new AnswerView.HeardView(answer.heard().noted().stream().map(reader::sentence).toList(),
                answer.heard().changed().stream().map(reader::sentence).toList(), asking(request.heard(null)));
    }

    private String address(String path, Param... more) {
        return visit.to(Param.address(path, Param.joined(query, List.of(more))));
    }

    private String asking(Request other) {
        return visit.to(Param.address("/", AskQuery.written(shortest(now, other, meant))));
    }

    private AnswerView.Back back(Ask ask) {
        return new AnswerView.Back(reader.sentence(ask.says()), ask.choices().stream()
                .map(choice -> new AnswerView.Link(choice.name(), chosen(ask.words(), choice.say(), choice.as(), choice.id()))).distinct().toList());
    }

    /** A source or a room is chosen by its id; anything else by saying the words that mean it and nothing else. */
    private String chosen(String words, String say, String as, String id) {
        return switch (as) {
            case "source" -> asking(with(id, request.room(), request.words()));
            case "room" -> asking(with(request.source(), id, request.words()));
            default -> asking(with(request.source(), request.room(), said(words, say)));
        };
    }

    private String said(String words, String say) {
        String sentence = request.words() == null ? "" : request.words();
        int at = words.isEmpty() ? -1 : sentence.toLowerCase(Locale.ROOT).indexOf(words.toLowerCase(Locale.ROOT));
        return at < 0 || at + words.length() > sentence.length() ? (sentence.isEmpty() ? say : sentence + ", " + say)
                : sentence.substring(0, at) + say + sentence.substring(at + words.length());
    }

    private Request with(String source, String room, String words) {
        return new Request(words, source, request.ways(), request.dynamics(), room, request.character(), request.limits(), request.neighbours(),
                request.circumstances(), request.techniques(), request.options(), request.from(), request.until(), request.locker(),
                request.wishes(), request.lifted(), request.player(), null, Objects.equals(source, request.source()) ? request.heard() : null);
    }

    private List<AnswerView.Link> readings() {
        Set<AnswerView.Link> links = new LinkedHashSet<>();
        if (meant.source() != null) {
            for (Reading reading : asked.otherReadings()) {
                if (asked.ask().stream().flatMap(ask -> ask.choices().stream()).anyMatch(choice -> choice.id().equals(reading.id()))) {
                    continue; // it is asked back already
                }
                links.add(new AnswerView.Link(reading.name() + (reading.as().equals("source") ? "" : " (" + reading.as() + ")"),
                        chosen(reading.words(), Naming.small(reading.name()), reading.as(), reading.id())));
            }
        }
        return List.copyOf(links);
    }

    private List<AnswerView.Link> nearest() {
        Set<AnswerView.Link> links = new LinkedHashSet<>();
        for (Reading reading : asked.otherReadings()) {
            if (reading.as().equals("source")) {
                links.add(new AnswerView.Link(reading.name(), asking(with(reading.id(), request.room(), request.words()))));
            }
        }
        return List.copyOf(links);
    }

    private AnswerView.SureView sure() {
        return answer.sureness() == null ? null : new AnswerView.SureView(reader.sentence(answer.sureness().says()),
                answer.sureness().turns().stream().map(turn -> reader.sentence(turn.says())).toList(),
                answer.options().stream().map(option -> OptionViews.sure(option.sure(), option.rank())).toList());
    }

    private List<AnswerView.Out> ruledOut() {
        return answer.ruledOut().stream().map(out -> out(out, catalogue, visit)).toList();
    }

    static AnswerView.Out out(RuledOut out, Catalogue catalogue, Visit visit) {
        boolean limit = out.rule().equals("limit");
        return new AnswerView.Out(catalogue.mics().get(out.micType()).name(), visit.to("/mics/" + out.micType()), visit.reader().sentence(out.says()),
                limit ? null : out.rule(), limit ? null : visit.to("/rules/" + out.rule()));
    }

    private List<AnswerView.Link> instead() {
        Altered altered = new Altered(request, meant);
        return answer.instead().stream().map(way -> {
            Request without = altered.at(way.limit(), way.to() == null ? "" : way.to());
            return new AnswerView.Link(reader.sentence(way.says()), without == null ? null : asking(without));
        }).toList();
    }

    private List<Choice> patterns() {
        return Stream.concat(Stream.of(new Choice("", "Any pattern", true)),
                Stream.of(Pattern.values()).filter(pattern -> catalogue.mics().values().stream().filter(MicType::captures)
                                .flatMap(mic -> mic.patterns().stream()).map(PatternData::pattern).anyMatch(pattern::equals))
                        .map(pattern -> new Choice(pattern.id(), Choices.named(pattern.id()), false))).toList();
    }

    private static List<Choice> positions(Source source) {
        return source == null ? List.of() : Stream.concat(Stream.of(new Choice("", "Any place", true)),
                Choices.of(source.positions(), Position::id, Position::name, List.of()).stream()).toList();
    }
}
