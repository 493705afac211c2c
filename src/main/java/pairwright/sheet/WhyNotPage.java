package pairwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pairwright.advice.Knowledge;
import pairwright.advice.UnusableQuestion;
import pairwright.advice.WhyNotFinder;
import pairwright.catalogue.Shown;
import pairwright.drawing.Reader;
import pairwright.model.Answer;
import pairwright.model.Fault;
import pairwright.model.Pattern;
import pairwright.model.Placement;
import pairwright.model.Request;
import pairwright.model.Setup;
import pairwright.model.WhyNot;
import pairwright.model.WhyNotRequest;

/** Why a type is not the first answer. */
public final class WhyNotPage {
    private WhyNotPage() {
    }

    /** The page, or with {@code part=why-not} what stands below the answer. */
    public static Page of(AtQuestion at) {
        Visit visit = at.visit();
        AskQuery query = at.query();
        List<Fault> faults = new ArrayList<>(query.faults());
        String named = visit.first("pattern");
        Pattern pattern = named == null ? null : SetUpQuery.pattern(named);
        if (named != null && pattern == null) {
            faults.add(new Fault("pattern", "there is no pattern \"" + Shown.of(named) + "\". Leave it out, or take one of the type's page"));
        }
        boolean chosen = visit.first("type") != null;
        if (!chosen) {
            faults.add(new Fault("type", "none is chosen. Choose a microphone type, by the name of its page, such as long-ribbon"));
        }
        Used used = new Used(at.knowledge());
        WhyNot whyNot = null;
        try {
            whyNot = new WhyNotFinder(used, at.atHand()).find(new WhyNotRequest(query.request(), visit.first("type"), pattern, visit.first("position")));
        } catch (UnusableQuestion unusable) {
            unusable.faults().stream().filter(fault -> chosen || !fault.at().equals("/micType")).forEach(faults::add);
        }
        String part = visit.first("part");
        if (!faults.isEmpty()) {
            return AskPage.fault(at, faults, part);
        }
        WhyNotView view = view(used.last(), query.request(), whyNot, at);
        return new Page(200, part != null ? at.html().fill("why-not-part.jte", Map.of("view", view))
                : at.html().fill("why-not.jte", Map.of("shell", at.html().shell(view.heading(), "ask", visit), "view", view)));
    }

    private static WhyNotView view(Knowledge now, Request asked, WhyNot whyNot, AtQuestion at) {
        Visit visit = at.visit();
        Reader reader = visit.reader();
        Answer.Asked question = whyNot.question();
        Request request = AnswerViews.shortest(now, asked, question.meant());
        List<Param> query = AskQuery.written(request);
        OptionViews views = new OptionViews(now, question.meant(), at, query);
        List<AnswerView.Out> stands = new ArrayList<>();
        whyNot.ruledOut().forEach(out -> stands.add(AnswerViews.out(out, now.catalogue(), visit)));
        Altered altered = new Altered(request, question.meant());
        List<AnswerView.Link> changes = whyNot.changes().stream().map(change -> new AnswerView.Link(reader.sentence(change.says()),
                href(change, whyNot, altered, now, query, visit))).toList();
        List<AnswerView.Link> limits = whyNot.limits().stream().map(limit -> {
            Request without = altered.at(inQuestion(limit.limit()), limit.to() == null ? "" : limit.to());
            return new AnswerView.Link(reader.sentence(limit.says()), without == null ? null : asking(now, without, question, visit));
        }).toList();
        Placement placed = whyNot.placement();
        return new WhyNotView(
                "Why not the " + pairwright.model.Naming.small(whyNot.name()) + "?",
                QuestionWords.of(now.catalogue(), question.meant(), reader),
                visit.to(Param.address("/", query)),
                visit.to("/mics/" + whyNot.micType()),
                reader.sentence(whyNot.says()),
                placed == null ? null : reader.sentence(pairwright.model.Naming.small(placed.positionName())) + ", " + placed.pattern().id() + ", " + reader.distance(placed.distanceM()),
                placed == null ? null : visit.to(Param.address("/moves", Param.joined(query, SetUpQuery.written(setup(placed))))),
                whyNot.score() == null ? null : Points.score(whyNot.score(), reader),
                whyNot.first() == null ? null : Points.score(whyNot.first().score(), reader),
                whyNot.first() == null ? null : views.words().title(whyNot.first()),
                whyNot.cautions().stream().map(caution -> views.caution(caution, false)).toList(),
                whyNot.losses().stream().map(loss -> new WhyNotView.Loss(loss.rule(), loss.title(), views.rule(loss.rule()),
                        Points.signed(loss.therePoints(), reader), Points.signed(loss.herePoints(), reader), Points.signed(-loss.lossPoints(), reader))).toList(),
                whyNot.losses().isEmpty() ? "" : Points.signed(-whyNot.losses().stream().mapToLong(loss -> Math.round(loss.lossPoints() * 100)).sum() / 100.0, reader),
                stands, limits, whyNot.inPair() == null ? "" : reader.sentence(whyNot.inPair().says()), whyNot.tried(), changes,
                whyNot.standing() == WhyNot.Standing.FIRST);
    }

    private static Setup setup(Placement at) {
        return new Setup("single", List.of(new Setup.Put(at.micType(), at.pattern(), at.position(), at.distanceM(), at.aimDegrees())));
    }

    private static String inQuestion(String pointer) {
        return pointer.startsWith("/question/") ? pointer.substring("/question".length()) : pointer;
    }

    private static String asking(Knowledge now, Request other, Answer.Asked question, Visit visit) {
        return visit.to(Param.address("/", AskQuery.written(AnswerViews.shortest(now, other, question.meant()))));
    }

    /** Where a change can be seen: the altered question, or the set-up it makes; null where the change does not say enough. */
    private static String href(WhyNot.Change change, WhyNot whyNot, Altered altered, Knowledge now, List<Param> query, Visit visit) {
        if (change.at().startsWith("/question/")) {
            Request other = altered.at(inQuestion(change.at()), change.to());
            return other == null ? null : asking(now, other, whyNot.question(), visit);
        }
        Placement at = whyNot.placement();
        if (at == null || !change.technique().equals("single")) {
            return null;
        }
        Setup.Put put = switch (change.at()) {
            case "/placement/distanceM" -> new Setup.Put(at.micType(), at.pattern(), at.position(), Double.valueOf(change.to()), at.aimDegrees());
            case "/placement/aimDegrees" -> new Setup.Put(at.micType(), at.pattern(), at.position(), at.distanceM(), Double.valueOf(change.to()));
            default -> null;
        };
        return put == null ? null : visit.to(Param.address("/moves", Param.joined(query, SetUpQuery.written(new Setup("single", List.of(put))))));
    }
}
