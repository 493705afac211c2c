package pairwright.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pairwright.advice.Advisor;
import pairwright.advice.Knowledge;
import pairwright.advice.SetUpJudge;
import pairwright.advice.UnusableQuestion;
import pairwright.catalogue.Shown;
import pairwright.drawing.Reader;
import pairwright.model.Answer;
import pairwright.model.Fault;
import pairwright.model.Option;
import pairwright.model.Request;

/** One option as a sheet to hang up. */
public final class SetUpPage {
    private SetUpPage() {
    }

    /**
     * The sheet of option {@code option} of the answer, or of the microphones as they stand in {@code mic}.
     *
     * @return 200, or 400 with every fault
     */
    public static Page of(AtQuestion at) {
        Visit visit = at.visit();
        AskQuery query = at.query();
        SetUpQuery setUp = SetUpQuery.read(visit);
        List<Fault> faults = new ArrayList<>(query.faults());
        faults.addAll(setUp.faults());
        Used used = new Used(at.knowledge());
        String page = null;
        try {
            if (visit.first("mic") != null) {
                SetUpJudge.Judgement judged = new SetUpJudge(used, at.atHand()).judge(query.request(), setUp.setup());
                page = sheet(used.last(), query.request(), judged.question(), judged.option(), judged.stock(), List.of(), SetUpQuery.written(setUp.setup()), at);
            } else {
                Answer answer = new Advisor(used, at.atHand()).ask(query.request());
                Option option = option(answer, visit.first("option"), faults);
                page = option == null ? null : sheet(used.last(), query.request(), answer.question(), option, answer.stock(),
                        StockViews.missed(at, answer.out()), List.of(new Param("option", Integer.toString(option.rank()))), at);
            }
        } catch (UnusableQuestion unusable) {
            unusable.faults().stream().filter(fault -> !fault.at().equals("/option")).forEach(faults::add);
        }
        return faults.isEmpty() ? new Page(200, page) : AskPage.fault(at, faults, null);
    }

    private static Option option(Answer answer, String named, List<Fault> faults) {
        Integer rank = named == null ? Integer.valueOf(1) : AskQuery.WHOLE.matcher(named).matches() ? Integer.valueOf(named) : null;
        Option found = rank == null ? null : answer.options().stream().filter(option -> option.rank() == rank).findFirst().orElse(null);
        if (found == null) {
            faults.add(new Fault("option", (named == null ? "there is no option" : "there is no option \"" + Shown.of(named) + "\"")
                    + (answer.options().isEmpty() ? ": nothing fits this question. Ask it first" : ". Give 1 to " + answer.options().size())));
        }
        return found;
    }

    private static String sheet(Knowledge now, Request asked, Answer.Asked question, Option option, Answer.Stocked stock, List<StockView.Missed> missed,
            List<Param> which, AtQuestion at) {
        Visit visit = at.visit();
        Reader reader = visit.reader();
        List<Param> query = AskQuery.written(AnswerViews.shortest(now, asked, question.meant()));
        OptionView view = new OptionViews(now, question.meant(), at, query).of(option, "sheet", null);
        FetchList fetch = new FetchList(now.catalogue(), option, new Takes(at, question.meant()), at);
        String words = QuestionWords.of(now.catalogue(), question.meant(), reader);
        String date = reader.date(LocalDate.now(at.clock()));
        return at.html().fill("set-up.jte", Map.of("shell", at.html().shell("Set-up: " + words, "ask", visit), "view",
                new SetUpView(words, question.words(), date, stock == null ? "" : StockViews.sheet(at, question.meant()),
                        stock == null || stock.reachable() ? "" : StockViews.AWAY, view, fetch.carry(), fetch.rest(), missed, now.catalogue().sources().get(question.meant().source()).care().stream()
                        .map(reader::sentence).toList(), visit.to(Param.address("/", query)), visit.to(Param.address("/set-up", Param.joined(query, which))))));
    }
}
